/** The lists and the design's own numbers: what is to be done fits what was worked out. */
import { describe, expect, it } from "vitest";
import { chargingVFromSoc, restVFromSoc } from "../../../src/core/energy/index.ts";
import { tiersOf } from "../../../src/design/chain/reliability-loads.ts";
import { type Design, designOf, type ListId, listsOf, type Step } from "../../../src/design/index.ts";
import { CELL_CHEMISTRY } from "../../../src/design/practice/battery.ts";
import { figureBlock } from "../../../src/report/facts.ts";
import { postLines, postSvg } from "../../../src/report/post-drawing.ts";
import { nearRatio } from "../../helpers/near.ts";
import { changed, given, syntheticWorld } from "../fixtures.ts";
import { briefs, designNamed, designs } from "./variants.ts";

const stepsOf = (design: Design, id: ListId): readonly Step[] =>
  listsOf(design).find((list) => list.id === id)!.steps;
const stepOf = (design: Design, list: ListId, id: string): Step => {
  const found = stepsOf(design, list).find((step) => step.id === id);
  if (found === undefined) throw new Error(`no step ${list}.${id}`);
  return found;
};
const loadStep = (design: Design, device: string): Step =>
  stepsOf(design, "commissioning").find(({ does }) => does.startsWith(`${device}: measure what`))!;
const idsOf = (design: Design, list: ListId) => stepsOf(design, list).map(({ id }) => id);
const textOf = ({ does, why, expects }: Step) => `${does} ${why} ${expects}`;
const powered = designs.filter(([, design]) => design.wiring !== null);
/** Every figure before this unit. */
const figures = (text: string, unit: string): readonly number[] =>
  Array.from(text.matchAll(new RegExp(`(-?\\d+(?:\\.\\d+)?) ${unit}(?![\\w/])`, "g")), ([, figure]) =>
    Number(figure),
  );

describe("fuses", () => {
  it.each(powered)("stand by name and rating, each where its run begins: %s", (_name, design) => {
    const { does } = stepOf(design, "installation", "fuses");
    const wiring = design.wiring!;
    for (const { name, fuseA } of wiring.runs) {
      if (fuseA !== null) expect(does).toContain(`${name}: ${fuseA} A`);
    }
    if (wiring.blockFuseA === null) expect(does).not.toContain("strings of blocks");
    else expect(does).toMatch(new RegExp(`strings of blocks: ${wiring.blockFuseA} A`));
    if (wiring.stringFuseA === null) expect(does).toContain("In the panels' wire: none needed.");
    else expect(does).toContain(`In each string of panels: ${wiring.stringFuseA} A`);
  });
  it("go in again in the steps that follow, all of them", () => {
    for (const [name, design] of powered) {
      const wiring = design.wiring!;
      const put = ["controllerOn", "heaterOn", "loadsOn", "panelOn"]
        .flatMap((id) => stepsOf(design, "installation").filter((step) => step.id === id))
        .map(({ does }) => does)
        .join(" ");
      for (const { fuseA, name: run } of wiring.runs) {
        if (fuseA !== null) expect(figures(put, "A"), `${name}: ${run}`).toContain(fuseA);
      }
      for (const fuseA of [wiring.blockFuseA, wiring.stringFuseA]) {
        if (fuseA !== null) expect(figures(put, "A"), name).toContain(fuseA);
      }
    }
  });
  it("are all among the spares", () => {
    for (const [name, design] of powered) {
      const spares = figures(stepOf(design, "tools", "fuses").does, "A");
      const wiring = design.wiring!;
      const wanted = [...wiring.runs.map(({ fuseA }) => fuseA), wiring.stringFuseA, wiring.blockFuseA];
      expect(new Set(spares), name).toEqual(new Set(wanted.filter((fuseA) => fuseA !== null)));
    }
  });
});

describe("devices of 12 V behind the converter", () => {
  const design = designNamed("by the mobile network");
  const part = (id: string) => design.parts.lines.find((line) => line.id === id)!;
  it("of a bank that swings above what they bear are fused after it, in table, parts, steps and settings", () => {
    expect(design.battery!.absorptionV).toBeGreaterThan(25);
    const run = design.wiring!.runs.find(({ to }) => to === "Cellular router")!;
    expect(run.name).toBe("Feed of Cellular router, 12 V from the converter");
    expect(run.fuseReason).toMatch(/^after the converter, on its 12 V side, never at the load bus/);
    expect(part("fuse.bus").specification.join()).not.toContain("router");
    expect(part("fuse.converter").name).toContain("after the converter");
    expect(part("fuse.converter").specification).toEqual([`${run.name}: ${run.fuseA} A`]);
    const [onBus, behind] = stepOf(design, "installation", "fuses").does.split("After the converter");
    expect(onBus).toContain("On the load bus: Load bus to PoE switch");
    expect(onBus).not.toContain("router");
    expect(behind).toContain("never on the load bus: Feed of Cellular router");
    const { does, expects } = stepOf(design, "installation", "loadsOn");
    expect(does).toMatch(/only when it shows 12 V put in the fuses behind it: Cellular router/);
    expect(expects).toContain("Between 11.4 V and 12.6 V behind the converter");
    expect(stepOf(design, "settings", "converter").does).toMatch(
      /output 12 V.*feeds Cellular router.*behind the converter/,
    );
  });
  it("are spoken of only where there are some", () => {
    for (const [name, one] of powered) {
      const has = one.wiring!.runs.some(({ from }) => from === "DC converter");
      expect(idsOf(one, "settings").includes("converter"), name).toBe(has);
      expect(
        one.parts.lines.some(({ id }) => id === "fuse.converter"),
        name,
      ).toBe(has);
    }
  });
});

describe("switches and fuses at the battery", () => {
  it("are bought one for each controller and one for the loads, and bear what they meet", () => {
    for (const [name, design] of powered) {
      const part = (id: string) => design.parts.lines.find((line) => line.id === id)!;
      const { controllers, coldOpenCircuitV, shortCircuitA, inParallel } = design.array!;
      const isHeated = design.brief.power.batteryHeaterW.value > 0;
      expect(part("fuse.main").quantity, name).toBe(controllers + (isHeated ? 2 : 1));
      expect(part("isolator").quantity, name).toBe(controllers + 1);
      const [panels] = part("isolator").specification;
      expect(figures(panels!, "V")[0], name).toBeGreaterThanOrEqual(Math.floor(coldOpenCircuitV));
      // NEC 690.8(A): 1.25 times the short-circuit current of all strings on one controller
      expect(figures(panels!, "A")[0], name).toBeGreaterThanOrEqual(
        1.25 * shortCircuitA * Math.ceil(inParallel / controllers),
      );
    }
  });
});

describe("voltages", () => {
  it("of the settings sheet are the battery stage's", () => {
    for (const [name, design] of powered) {
      const battery = design.battery!;
      const [absorptionV, floatV] = figures(stepOf(design, "settings", "charge").does, "V").slice(-2);
      expect(absorptionV, name).toBeCloseTo(battery.absorptionV, 1);
      expect(floatV, name).toBeCloseTo(battery.floatV, 1);
      const [offV, onV] = figures(stepOf(design, "settings", "disconnect").does, "V");
      expect(offV, name).toBeCloseTo(battery.lowVoltageDisconnectV, 1);
      expect(onV, name).toBeCloseTo(battery.reconnectV, 1);
      expect(offV, name).toBeLessThan(onV!);
    }
  });
  it("at which loads go and come back are those of the charges that the weather years switch at", () => {
    let withRelay = 0;
    for (const [name, { brief, battery, climate, sun, parts }] of powered) {
      const { chemistry, bankNominalV: nominalV, permittedDodFrac } = battery!;
      const cells = { chemistry: CELL_CHEMISTRY[chemistry], nominalV };
      const tiers = tiersOf(brief, { climate: climate!, sun: sun!, permittedDodFrac, demandRatio: 1 });
      const asPrinted = ({ shedBelowSocFrac, returnAboveSocFrac }: (typeof tiers)[number]) => [
        restVFromSoc({ ...cells, socFrac: shedBelowSocFrac }),
        chargingVFromSoc({ ...cells, socFrac: returnAboveSocFrac, chargeCRate: 1 / 20 }),
      ];
      // the sheet tells the picture first, the weather years shed it last
      const expected = tiers.toReversed().flatMap(asPrinted);
      const { does, why } = stepOf(designNamed(name), "settings", "disconnect");
      const printed = figures(does, "V");
      expect(printed.length, name).toBe(expected.length);
      printed.forEach((printedV, i) => {
        expect(Math.abs(printedV - expected[i]!), name).toBeLessThan(0.051);
      });
      const main = tiers.at(-1)!;
      const backPercent = Math.round(100 * main.returnAboveSocFrac);
      expect(figures(`${does} ${why}`, "%"), name).toContain(backPercent);
      const relay = parts.lines.find(({ id }) => id === "relay.voltage");
      expect(relay !== undefined, name).toBe(tiers.length > 1);
      expect(idsOf(designNamed(name), "installation").includes("relay"), name).toBe(tiers.length > 1);
      if (relay === undefined) continue;
      withRelay += 1;
      const [offV, onV] = figures(relay.specification[0]!, "V");
      expect([offV, onV], name).toEqual(printed.slice(2));
      expect(relay.specification[0], name).toContain(tiers[0]!.devices.split(",")[0]);
      // all of the rest goes together: no order is told among them
      expect(does, name).not.toMatch(/in this order/);
    }
    expect(withRelay).toBeGreaterThan(1);
  });
  it("of a string of panels lie round its own, and below what the controller bears", () => {
    let strings = 0;
    for (const [name, design] of powered) {
      const array = design.array!;
      const step = stepsOf(design, "installation").find(({ id }) => id === "strings");
      if (step === undefined) continue;
      strings += 1;
      const [hotV, coldV] = figures(step.expects, "V");
      const stringV = array.inSeries * array.openCircuitV;
      expect(hotV, name).toBeLessThan(stringV);
      expect(coldV, name).toBeGreaterThan(stringV);
      expect(coldV, name).toBeLessThanOrEqual(array.controllerMaxInputV);
    }
    expect(strings).toBeGreaterThan(10);
  });
  it("expected of a rested battery lie between empty and absorption", () => {
    for (const [name, design] of powered) {
      const { lowVoltageDisconnectV, absorptionV } = design.battery!;
      for (const restV of [
        ...figures(stepOf(design, "commissioning", "rest").expects, "V"),
        ...figures(stepOf(design, "installation", "bank").expects, "V").slice(0, 2),
      ]) {
        expect(restV, name).toBeGreaterThan(lowVoltageDisconnectV);
        expect(restV, name).toBeLessThan(absorptionV);
      }
    }
  });
});

describe("a post on a wall by the mobile network", () => {
  const design = designOf(
    changed(
      {
        mounting: { support: given("wall"), cameraHeightM: given(2.7) },
        link: { carrier: given("cellular") },
      },
      briefs["by the mobile network"],
    ),
    syntheticWorld,
  );
  const part = (id: string) => design.parts.lines.find((line) => line.id === id)!;
  it("buys no bracket for a pole, and one that turns the panels to the sun", () => {
    expect(part("panelMount").name).toBe("Panel bracket for a wall, that turns and tilts");
    expect(part("panelMount").specification.join()).toContain("turns to face azimuth 180°");
    expect(part("clamps").name).toMatch(/^Wall brackets/);
  });
  it("buys no surge protector for a far building that it does not have", () => {
    expect(part("surge.data")).toMatchObject({
      quantity: 1,
      specification: ["where each data line enters the box"],
    });
  });
  it("puts camera and panels side by side where they come at one height", () => {
    expect(stepOf(design, "installation", "brackets").does).toContain("put them side by side");
    const higher = designOf(changed({ mounting: { cameraHeightM: given(5) } }, design.brief), syntheticWorld);
    expect(stepOf(higher, "installation", "brackets").does).not.toContain("side by side");
  });
  it("is drawn without a pole and speaks of no moment at the ground", () => {
    const lines = postLines(design, { width: 80, glyphs: "ascii" }).join("\n");
    expect(lines).toContain(". wall");
    expect(lines).not.toContain("|");
    expect(postSvg(design)).toContain(">wall<");
  });
});

describe("the strongest gust", () => {
  it.each([
    ["an old pole", "pole"],
    ["a wall", "anchor"],
    ["a roof", "anchor"],
    ["panels on a ground frame", "frame"],
  ])("pushes in the steps with its whole force, not with 0.6 of it: %s", (name, id) => {
    const { mounting, findings } = designNamed(name);
    const wholeN = id === "frame" ? mounting.panelGustForceN : mounting.gustForceN;
    const step = stepOf(designNamed(name), "installation", id);
    expect(step.why).toContain("strongest gust");
    nearRatio(figures(textOf(step), "N")[0]!, wholeN, { withinFrac: 0.05 });
    nearRatio(figures(textOf(step), "kg").at(-1)!, wholeN / 9.80665, { withinFrac: 0.05 });
    if (id === "frame") return;
    // what hangs on a building bends nothing at the ground
    const { says } = findings.find((one) => one.id === "mounting.support")!;
    nearRatio(figures(says, "N")[0]!, mounting.gustForceN, { withinFrac: 0.01 });
    expect(says.includes("Nm")).toBe(id === "pole");
  });
});

describe("figures to be measured", () => {
  it("of each data cable are the wiring stage's", () => {
    let cables = 0;
    for (const [name, design] of powered) {
      for (const { device, deviceV } of design.wiring!.poeRuns) {
        if (deviceV === 0) continue;
        cables += 1;
        const { expects } = stepOf(design, "commissioning", "poe");
        const [, said] = new RegExp(`${device} ([\\d.]+) V`).exec(expects) ?? [];
        expect(Number(said), `${name}: ${device}`).toBeCloseTo(deviceV, 1);
      }
    }
    expect(cables).toBeGreaterThan(20);
  });
  it("of each device are the load stage's, also of one that runs by night only", () => {
    for (const [, design] of designs) {
      for (const { name: device, dayW, nightW, kind } of design.loads.lines) {
        // what a thermostat switches is tried with ice when it is built in (installation.heaterOn)
        if (kind === "converter" || kind === "heater" || Math.max(dayW, nightW) === 0) continue;
        const step = loadStep(design, device);
        const said = figures(step.expects, "W");
        nearRatio(said.at(-1) ?? Number.NaN, Math.max(dayW, nightW), { withinFrac: 0.05 });
      }
    }
    expect(loadStep(designNamed("by daylight, and a lamp by night"), "Lamp 1").expects).toMatch(
      /^10 W at night/,
    );
  });
  it("of each run name every run, none above the limit it was sized by", () => {
    for (const [name, design] of powered) {
      const { expects } = stepOf(design, "commissioning", "drops");
      for (const { name: run, dropV, isEnough } of design.wiring!.runs) {
        const [, limit] = new RegExp(`${run} ([\\d.]+) V`).exec(expects)!;
        if (isEnough) expect(Number(limit), `${name}: ${run}`).toBeGreaterThanOrEqual(dropV - 0.006);
      }
    }
  });
  it("of the link are its stage's, and the radar wait is said in whole words", () => {
    for (const [name, design] of designs) {
      const radio = design.link?.radio;
      if (radio == null) continue;
      expect(stepOf(design, "commissioning", "level").expects, name).toContain(
        `${Math.round(design.link!.budget!.nearToFar.expectedDbm)} dBm`,
      );
      expect(idsOf(design, "settings").includes("radar"), name).toBe(radio.needsRadarCheck);
      const { does } = stepOf(design, "settings", "radioBand");
      expect(does, name).toContain(`channel width fixed at ${radio.channelWidthMHz} MHz`);
      expect(does, name).toContain("the same at both ends");
      const [distanceM] = figures(does, "m").slice(-1);
      expect(distanceM, name).toBeGreaterThan(radio.distanceM);
    }
    expect(stepOf(designNamed("a radar band"), "commissioning", "powerCut").expects).toMatch(
      /after (1 minute|\d+ minutes) or more/,
    );
  });
  it("of the aim are true bearings where both ends are known, with the compass's own beside them", () => {
    const design = designNamed("coordinates of both ends");
    const { does, expects } = stepOf(design, "installation", "aim");
    // due east along 40 N: 90 degrees; a compass there points 7.5 degrees east of true north, so it shows 82.5
    expect(does).toContain("Bearing 90° from true north; a compass shows 82.5°");
    expect(does).toContain("magnetic declination (here 7.5° east)");
    // 853.9 m for 0.01 degrees at 40 N; from 3 m up to 20 m: atan(17/854) = 1.1 degrees
    expect(does).toContain("Tilt: 1.1° up");
    expect(stepOf(design, "installation", "farEnd").does).toMatch(
      /facing the post at 270° from true north, 1.1° down/,
    );
    const { budget } = design.link!;
    expect(expects).toContain(`at the post about ${Math.round(budget!.farToNear.expectedDbm)} dBm`);
    expect(expects).toMatch(/Too low: swing slowly .* Far too low: /);
  });
  it("of the panels name what a compass reads: 180 - 7.5 = 172.5 in Colorado (World Magnetic Model 2025)", () => {
    const { why } = stepOf(designNamed("new mast, radio, nothing owned"), "installation", "panel");
    expect(why).toMatch(/here it reads 17[23]° for that direction, the declination of 7\.\d° east taken off/);
  });
  it("of one panel in the hand stand beside those of a whole string", () => {
    let strings = 0;
    for (const [name, design] of powered) {
      const step = stepsOf(design, "installation").find(({ id }) => id === "ownedPanel");
      if (step === undefined) continue;
      strings += 1;
      const { coldOpenCircuitV, inSeries } = design.array!;
      const says = step.cautions.map((caution) => caution.says).join(" ");
      expect(says, name).toContain(`up to ${Number((coldOpenCircuitV / inSeries).toFixed(1))} V`);
    }
    expect(strings).toBeGreaterThan(0);
  });
  it("of the store are one figure in plan, parts and settings", () => {
    const design = designNamed("new mast, radio, nothing owned");
    const wanted = `${Math.ceil(design.view.storageGB)} GB`;
    expect(stepOf(design, "settings", "keep").does).toContain(wanted);
    expect(design.parts.lines.find(({ id }) => id === "storage")!.specification.join()).toContain(wanted);
    expect(JSON.stringify(figureBlock(design))).toContain(wanted);
  });
  it("of the aim say to correct for declination where only the distance is known", () => {
    const { does } = stepOf(designNamed("new mast, radio, nothing owned"), "installation", "aim");
    expect(does).toMatch(/from a map: true north, corrected for magnetic declination \(here 7.5° east\)/);
  });
  it("of the rules stand before the first switching on, with the caution of the waves", () => {
    for (const [name, design] of designs) {
      if (design.link?.radio == null) continue;
      expect(stepOf(design, "installation", "radioRules").does, name).toMatch(
        /^Check your own country's rules before switching on/,
      );
      for (const id of ["bench", "farEnd", "aim"])
        expect(
          stepOf(design, "installation", id).cautions.map(({ hazard }) => hazard),
          `${name}: ${id}`,
        ).toContain("radio waves");
    }
  });
  it("of the picture are the view stage's", () => {
    for (const [name, design] of designs) {
      for (const [i, scene] of design.view.scenes.entries()) {
        expect(stepOf(design, "commissioning", `picture${i + 1}`).expects, name).toContain(
          `${Math.round(scene.pxPerM)} pixels`,
        );
        expect(stepOf(design, "settings", `camera${i + 1}`).does, name).toContain(
          `${scene.pixelsAcross} x ${scene.pixelsDown} pixels`,
        );
      }
    }
  });
});

describe("a post of its kind", () => {
  const has = (name: string, list: ListId, id: string) => idsOf(designNamed(name), list).includes(id);
  const cases: readonly (readonly [
    list: ListId,
    id: string,
    on: readonly string[],
    off: readonly string[],
  ])[] = [
    ["installation", "hole", ["new mast, radio, nothing owned"], ["a wall", "a roof", "an old pole"]],
    ["installation", "anchor", ["a wall", "a roof"], ["an old pole", "by cable"]],
    ["installation", "pole", ["an old pole"], ["a wall", "by cable"]],
    ["installation", "frame", ["panels on a ground frame"], ["by cable", "no place"]],
    ["installation", "trench", ["by cable", "a roof by cable"], ["by the mobile network"]],
    ["installation", "aim", ["new mast, radio, nothing owned"], ["by cable", "recorded at the post"]],
    ["installation", "antenna", ["by the mobile network"], ["by cable", "recorded at the post"]],
    [
      "installation",
      "farEnd",
      ["by cable", "a radar band"],
      ["by the mobile network", "recorded at the post"],
    ],
    ["installation", "heaterPad", ["lithium kept warm"], ["lithium in frost", "no place"]],
    ["installation", "heaterOn", ["lithium kept warm"], ["lithium in frost", "no place"]],
    ["installation", "strings", ["many panels in parallel"], ["small post with lithium"]],
    ["installation", "ownedBattery", ["lithium battery owned"], ["by cable"]],
    ["installation", "ownedPanel", ["battery, panel and controller owned"], ["by cable"]],
    ["installation", "ownedController", ["battery, panel and controller owned"], ["by cable"]],
    ["installation", "ownedRadio", ["passive radio owned", "direct-current radio owned"], ["by cable"]],
    ["installation", "sign", ["by cable"], ["no camera"]],
    ["tools", "digging", ["by cable"], ["a roof", "an old pole"]],
    ["tools", "harness", ["a roof"], ["a wall", "by cable"]],
    ["tools", "drilling", ["a wall", "a roof"], ["by cable", "an old pole"]],
    ["tools", "rod", ["an old pole"], ["a wall"]],
    ["tools", "trenching", ["by cable"], ["by the mobile network"]],
    ["tools", "soda", ["lead in the tropics"], ["lithium in frost", "no place"]],
    ["tools", "card", ["by the mobile network"], ["by cable"]],
    ["tools", "talk", ["a radar band"], ["by cable"]],
    ["settings", "season", ["rests in winter", "runs in no month"], ["by cable"]],
    ["settings", "schedule", ["by the clock", "by daylight, and a lamp by night"], ["by cable"]],
    ["settings", "mobile", ["by the mobile network"], ["by cable"]],
    ["settings", "keep", ["by cable"], ["nothing kept", "no camera"]],
    ["settings", "apart", ["by cable"], ["recorded at the post"]],
    ["permissions", "sound", ["sound wanted"], ["by cable"]],
    ["permissions", "radio", ["a radar band"], ["by cable", "by the mobile network"]],
    ["upkeep", "pause", ["rests in winter"], ["by cable", "runs in no month"]],
    ["upkeep", "resume", ["rests in winter with lithium"], ["by cable"]],
    ["upkeep", "tilt", ["tilted twice a year"], ["by cable"]],
    ["upkeep", "snow", ["snow and dust", "one week of snow"], ["by cable"]],
    ["upkeep", "leaves", ["a radar band"], ["by cable"]],
    ["upkeep", "incident", ["by cable"], ["no camera"]],
    ["upkeep", "yearPrivacy", ["by cable"], ["no camera"]],
  ];
  it.each(cases)("has %s.%s where it is wanted and nowhere else", (list, id, on, off) => {
    for (const name of on) expect(has(name, list, id), name).toBe(true);
    for (const name of off) expect(has(name, list, id), name).toBe(false);
  });
  it("is never told of a radio, a mast or a trench that it has not", () => {
    const strays: string[] = [];
    for (const [name, design] of designs) {
      const { link, mounting, loads } = design.brief;
      const hasRadio = link.carrier.value === "radio" || loads.devices.some(({ kind }) => kind === "radio");
      const support = mounting.support.value;
      const strangers = [
        ...(hasRadio ? [] : [/\bradios?\b(?! rules|, building)/i]),
        ...(support === "wall" || support === "roof" ? [/\bmast\b|earth rod/] : []),
        ...(support === "newMast" ? [] : [/concrete mix|\bbags\b/]),
        ...(link.carrier.value === "cable" ? [] : [/\btrench\b/]),
        ...(design.array === null ? [/panels? (?:first|still)/] : []),
      ];
      for (const text of listsOf(design).flatMap(({ steps }) => steps.map(textOf))) {
        for (const stranger of strangers) if (stranger.test(text)) strays.push(`${name}: ${text}`);
      }
    }
    expect(strays).toEqual([]);
  });
  it("on a roof warns of its edge, on an old pole of the pole", () => {
    const hazards = (name: string) =>
      listsOf(designNamed(name)).flatMap(({ steps }) =>
        steps.flatMap(({ cautions }) => cautions.map(({ hazard }) => hazard)),
      );
    expect(hazards("a roof")).toContain("roof edge");
    expect(hazards("a wall")).not.toContain("roof edge");
    expect(hazards("an old pole")).toContain("weak pole");
    expect(hazards("by cable")).not.toContain("weak pole");
  });
  it("keeps sound off unless it was asked for", () => {
    expect(stepOf(designNamed("by cable"), "settings", "camera1").does).toContain("sound off");
    expect(stepOf(designNamed("sound wanted"), "settings", "camera1").does).not.toContain("sound off");
  });
  it("gives every camera and recorder an address of its own within the sixteen, RFC 1918", () => {
    for (const [name, design] of designs) {
      const { does } = stepOf(design, "settings", "addresses");
      const plan = does.slice(0, does.indexOf("All fixed"));
      const hosts = Array.from(plan.matchAll(/, \.(\d+) /g), ([, host]) => Number(host));
      expect(new Set(hosts).size, name).toBe(hosts.length);
      for (const host of hosts) expect(host).toBeGreaterThan(0);
      for (const host of hosts) expect(host).toBeLessThan(15);
      for (const { name: device, kind } of design.brief.loads.devices) {
        if (kind === "camera" || kind === "recorder") expect(plan, name).toContain(device);
      }
    }
  });
});

describe("the calendar", () => {
  it("has every interval: first week, month, quarter, year, and what happens between", () => {
    for (const [name, design] of powered) {
      const ids = idsOf(design, "upkeep");
      for (const id of ["first", "month", "quarter", "yearElectric", "yearMechanic", "yearNetwork"]) {
        expect(ids, name).toContain(id);
      }
      for (const id of ["capacity", "storm", "low", "end"]) expect(ids, name).toContain(id);
    }
  });
});

describe("what cuts the loads off", () => {
  it.each(designs)(
    "%s: lies in the wire of all loads, carries its fuse and is mounted before the bank",
    (_, design) => {
      const { battery, wiring, parts } = design;
      const main = wiring?.runs.find(({ to }) => to === "load bus");
      const part = parts.lines.find(({ id }) => id === "disconnect.load");
      if (battery === null || main === undefined) {
        expect(part).toBeUndefined();
        return;
      }
      const said = part!.specification.join(" ");
      expect(said).toContain(`off at ${Number(battery.lowVoltageDisconnectV.toFixed(1))} V`);
      expect(Number(/at least (\d+) A/.exec(said)![1])).toBeGreaterThanOrEqual(main.fuseA ?? main.currentA);
      const ids = stepsOf(design, "installation").map(({ id }) => id);
      expect(ids.indexOf("disconnect")).toBeGreaterThan(ids.indexOf("fuses"));
      expect(ids.indexOf("disconnect")).toBeLessThan(ids.indexOf("bank"));
      const controller = parts.lines.find(({ id }) => id === "controller");
      expect(controller?.specification.join(" ") ?? "").not.toContain("cuts the loads");
    },
  );
});
