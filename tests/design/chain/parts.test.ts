import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import { assumedFactWords, designOf } from "../../../src/design/index.ts";
import { controllerBand } from "../../../src/design/practice/prices.ts";
import { near } from "../../helpers/near.ts";
import { anyBrief } from "../arbitrary.ts";
import { at, camera, changed, given, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";

const design = (brief: Brief) => designOf(brief, syntheticWorld);
const line = (brief: Brief, id: string) => design(brief).parts.lines.find((part) => part.id === id);

describe("what to buy", () => {
  it("panels at 0.8 to 1.3 USD per W: 2 x 120 W, 192 to 312", () => {
    const panel = line(typicalBrief, "panel")!;
    expect(panel.quantity).toBe(2);
    near(panel.lowPrice, 192, { within: 0.01 });
    near(panel.highPrice, 312, { within: 0.01 });
  });
  it("blocks of lead at 1.8 to 3 USD per Ah: 8 x 100 Ah, 1440 to 2400", () => {
    const battery = line(typicalBrief, "battery")!;
    near(battery.lowPrice, 1440, { within: 0.01 });
    near(battery.highPrice, 2400, { within: 0.01 });
  });
  it("what is owned costs nothing, and only what is missing is bought", () => {
    const owner = changed({ parts: { panel: given({ ratedW: 120, openCircuitV: 23, count: 1 }) } });
    const owned = line(owner, "panel")!;
    const more = line(owner, "panel.more")!;
    expect([owned.isOwned, owned.quantity, owned.highPrice]).toEqual([true, 1, 0]);
    expect([more.isOwned, more.quantity]).toEqual([false, design(owner).array!.panels - 1]);
  });
  it("a controller that does not suit is not counted as owned", () => {
    const figures = { kind: "mppt" as const, maxInputV: 150, maxChargeA: 60, chargesLifepo4: false };
    const owns = (maxInputV: number) => changed({ parts: { controller: given({ ...figures, maxInputV }) } });
    expect(line(owns(150), "controller")!.isOwned).toBe(true);
    expect(line(owns(40), "controller")!.isOwned).toBe(false);
  });
  it("two controllers: twice the wire, both ways, and each has its fuse and its share of the battery's switch", () => {
    const twice = changed({ power: { bankV: given(12) } }, at(sites.north60));
    const { array, wiring, parts } = design(twice);
    expect(array!.controllers).toBe(2);
    const named = (name: string) =>
      parts.lines.find(({ id, specification }) => id.startsWith("wire.") && specification.includes(name))!;
    const runOf = (name: string) => wiring!.runs.find((one) => one.name === name)!;
    // 6.7 m one way: 2 x 2 x 6.7 = 26.8; 1 m to the bank: 2 x 2 x 1 = 4
    near(runOf("Panels to controller").lengthM, 6.7, { within: 0.01 });
    expect(named("Panels to controller, 2 times").quantity).toBe(27);
    expect(named("Controller to battery, 2 times").quantity).toBe(4);
    // 40 A for each controller and 15 A for the loads
    expect([runOf("Controller to battery").fuseA, runOf("Battery to load bus").fuseA]).toEqual([40, 15]);
    expect(line(twice, "isolator")!.specification.join()).toContain("and 95 A DC");
    // 40 A at 75 V: 3000 / 2000 = 1.5; 2 x 1.5 x 40 to 150 USD
    near(line(twice, "controller")!.lowPrice, 120, { within: 0.01 });
    near(line(twice, "controller")!.highPrice, 450, { within: 0.01 });
  });
  it.each([
    // worked by hand from the bands of a small one, 40 to 150 and 15 to 40 USD (from memory)
    ["mppt", 10, 50, 40, 150],
    ["mppt", 20, 100, 40, 150],
    ["mppt", 60, 150, 180, 675],
    ["pwm", 20, 50, 15, 40],
    ["pwm", 60, 150, 45, 120],
  ] as const)(
    "a controller (%s) of %i A and %i V costs %i to %i USD",
    (kind, ratedA, maxInputV, low, high) => {
      const band = controllerBand({ kind, ratedA, maxInputV });
      near(band[0], low, { within: 1e-9 });
      near(band[1], high, { within: 1e-9 });
    },
  );
  it("that a device runs on 12 V is said to be taken where nobody has read its label", () => {
    const with12V = (origin: "estimate" | "assumed") =>
      changed({
        loads: {
          devices: [
            camera,
            { ...camera, name: "Recorder 1", kind: "recorder", feed: "dc", takes12V: given(true, origin) },
          ],
        },
      });
    expect(line(with12V("assumed"), "device.2")!.specification).toContain(
      "12 V DC is taken and nobody has read its label: read it",
    );
    expect(assumedFactWords(with12V("assumed"))).toContain("that it runs on 12 V: Recorder 1");
    expect(line(with12V("estimate"), "device.2")!.specification).toContain("12 V DC");
    expect(assumedFactWords(with12V("estimate"))).toEqual([]);
  });
  it("a conductor is named as it is sold there: by gauge in America, by square millimetres elsewhere, each size once", () => {
    const names = (brief: Brief) =>
      design(brief).parts.lines.flatMap(({ id, name }) => (id.startsWith("wire.") ? [name] : []));
    for (const brief of [typicalBrief, at(sites.north60)])
      expect(new Set(names(brief)).size).toBe(names(brief).length);
    expect(names(typicalBrief).join()).toMatch(/AWG/);
    expect(names(typicalBrief).join()).not.toContain("mm2");
    expect(names(at(sites.north60)).join()).toMatch(/mm2/);
    expect(names(at(sites.north60)).join()).not.toContain("AWG");
  });
  it("ports and budget of the switch are those of the classes in the table of wires: 15.4 W for each class 3 (IEEE 802.3)", () => {
    // camera 9 W and radio 7 W are class 3 (12.95 W at the device): 2 x 15.4 = 30.8
    const { wiring } = design(typicalBrief);
    expect(wiring!.poeRuns.map(({ poeClass }) => poeClass)).toEqual([3, 3]);
    const words = line(typicalBrief, "switch")!.specification;
    expect(words[0]).toBe("at least 2 ports to IEEE 802.3: Camera class 3, Radio class 3");
    expect(words[2]).toMatch(/^at least 31 W for all ports together/);
    expect(line(typicalBrief, "camera.1")!.specification.join()).toContain(
      "PoE to IEEE 802.3, class 3 or lower",
    );
    // a camera of 20 W is class 4, 30 W at the switch
    const big = changed({ loads: { devices: [{ ...camera, dayW: given(20), nightExtraW: given(0) }] } });
    expect(line(big, "switch")!.specification.join()).toMatch(/Camera class 4.*at least 30 W/);
  });
  it("the converter gives what its devices ask at most, and a quarter more: 1.25 x (2.4 x 5 + 1.2 x 10) = 30 W, 2.5 A at 12 V", () => {
    const dc = {
      nightExtraW: given(0),
      feed: "dc" as const,
      schedule: { kind: "always" as const },
      priority: 1,
    };
    const devices = [
      { ...dc, name: "Cellular router", kind: "cellular router" as const, dayW: given(5) },
      { ...dc, name: "Recorder 1", kind: "recorder" as const, dayW: given(10) },
    ];
    expect(
      line(changed({ loads: { devices }, link: { carrier: given("cellular") } }), "converter")!.specification,
    ).toContain("output 12 V, at least 30 W (2.5 A) without a break");
  });
  it("the specification of the switch covers the bank's whole swing", () => {
    expect(line(typicalBrief, "switch")!.specification.join()).toContain("22 to 31 V");
  });
  it("has ids of its own for every line", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const ids = design(brief).parts.lines.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 30 },
    );
  });
});

describe("money", () => {
  it("is the sum of the lines and 15 % for what is forgotten", () => {
    const { parts, money } = design(typicalBrief);
    const low = parts.lines.reduce((total, part) => total + part.lowPrice, 0);
    near(money.lowTotal, low * 1.15, { within: 0.01 });
    expect(money.highTotal).toBeGreaterThan(money.lowTotal);
  });
  it("in euros by the stated rate, in dollars where no rate is known", () => {
    const euros = design({ ...typicalBrief, currency: "EUR" }).money;
    expect(euros.currency).toBe("EUR");
    near(euros.lowParts, 0.9 * design(typicalBrief).money.lowParts, { within: 0.5 });
    expect(design({ ...typicalBrief, currency: "XXX" }).money.currency).toBe("USD");
  });
  it("without a place prices what can be priced", () => {
    const ids = design(at(null)).parts.lines.map(({ id }) => id);
    expect(ids).toContain("camera.1");
    expect(ids).toContain("mast");
    expect(ids).not.toContain("battery");
  });
  it("more days of autonomy never cost less", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), (askedDays) => {
        const cost = (days: number) =>
          design(
            changed(
              {
                autonomy: { consequence: given("days"), askedDays: given(days) },
                power: { bankV: given(24) },
              },
              at(sites.north40),
            ),
          ).parts.lines.find(({ id }) => id === "battery")!.lowPrice;
        expect(cost(askedDays + 5)).toBeGreaterThanOrEqual(cost(askedDays));
      }),
      { numRuns: 15 },
    );
  });
});
