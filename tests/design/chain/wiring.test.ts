import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief, Device } from "../../../src/design/brief.ts";
import { runOf } from "../../../src/design/chain/wire-run.ts";
import { wiringStage } from "../../../src/design/chain/wiring.ts";
import type { Run, Wiring } from "../../../src/design/design.ts";
import { designOf } from "../../../src/design/index.ts";
import { near } from "../../helpers/near.ts";
import { at, camera, changed, given, radio, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";

const wiring = (brief: Brief): Wiring => designOf(brief, syntheticWorld).wiring!;
const run = (brief: Brief, name: string): Run => wiring(brief).runs.find((one) => one.name === name)!;
const dcLamp = (dayW: number): Device => ({
  ...camera,
  name: "Lamp",
  kind: "camera",
  dayW: given(dayW),
  nightExtraW: given(0),
  feed: "dc",
});
const withLamp = (dayW: number, cameraHeightM: number) =>
  changed({ loads: { devices: [dcLamp(dayW)] }, mounting: { cameraHeightM: given(cameraHeightM) } });

describe("a DC feed, worked by hand", () => {
  // 20 W x 1.2 at the start / 12 V = 2.0 A; 8 m up from a box on the ground at 0.3 m, 1 m of slack: 8.7 m
  const lamp = run(withLamp(20, 8), "Feed of Lamp, 12 V from the converter");
  it("current and length", () => {
    near(lamp.currentA, 2, { within: 1e-6 });
    near(lamp.lengthM, 8.7, { within: 1e-6 });
  });
  it("3 % of 12 V is 0.36 V: 12 AWG (6.5 ohm/km at 75 degrees C) drops 2 x 8.7 x 2 x 6.5 / 1000 = 0.226 V; 14 AWG 0.36", () => {
    expect(["12 AWG", "14 AWG"]).toContain(lamp.awg);
    expect(lamp.dropFrac).toBeLessThanOrEqual(0.03);
    expect(lamp.isEnough).toBe(true);
  });
});

describe("fuses", () => {
  it("stand at the source of every run that can be fed a short, and bear 1.25 times the current", () => {
    for (const one of wiring(typicalBrief).runs) {
      if (one.from === "panels") expect(one.fuseA).toBeNull();
      else expect(one.fuseA!).toBeGreaterThanOrEqual(1.25 * one.currentA - 1e-9);
      expect(one.fuseReason).not.toBe("");
    }
  });
  it("two strings of panels need none, many do", () => {
    const many = changed(
      { power: { largestPanelW: given(50), controller: given("pwm") } },
      at(sites.north60),
    );
    expect(wiring(typicalBrief).stringFuseA).toBeNull();
    expect(wiring(many).stringFuseA).not.toBeNull();
  });
  it("each of several strings of blocks has its own, a single string has none", () => {
    const one = changed(
      { autonomy: { consequence: given("nuisance") }, power: { chemistry: given("lifepo4") } },
      at(sites.south5),
    );
    expect(wiring(typicalBrief).blockFuseA).not.toBeNull();
    expect(wiring(one).blockFuseA).toBeNull();
  });
  it("a bank above 100 Ah of lead-acid has a class T fuse (20 kA): 400 Ah x 40 = 16 kA", () => {
    const { shortCircuitA, mainFuseKind, mainFuseInterruptA } = wiring(typicalBrief);
    near(shortCircuitA, 16_000, { within: 1 });
    expect(mainFuseKind).toBe("class T fuse");
    near(mainFuseInterruptA, 20_000, { within: 1 });
  });
});

describe("a faulty load takes down only itself: 1.6 times (common practice, no source)", () => {
  it("24 V: 2.5 x 1.06 A asks for 3 A at the switch, 1.6 x 3 = 4.8 for 6 A at the bank", () => {
    expect(run(typicalBrief, "Load bus to PoE switch").fuseA).toBe(3);
    expect(run(typicalBrief, "Battery to load bus").fuseA).toBe(6);
  });
  it("12 V: 2.5 x 2.06 A asks for 7.5 A at the switch, 1.6 x 7.5 = 12 for 15 A at the bank", () => {
    const brief = changed({ power: { bankV: given(12) } }, at(sites.north60));
    expect(run(brief, "Load bus to PoE switch").fuseA).toBe(7.5);
    expect(run(brief, "Battery to load bus").fuseA).toBe(15);
  });
  it("the conductor bears the larger fuse: 16 A asks for 20 A, which NEC 240.4(D) forbids on 14 AWG", () => {
    const wanted = {
      name: "Main",
      from: "battery",
      to: "load bus",
      currentA: 1,
      lengthM: 1,
      systemV: 12,
      maxDropFrac: 0.01,
      fuse: "class-t",
    } as const;
    const ctx = { family: "awg", wireTempC: 30 } as const;
    expect(runOf(ctx, wanted)).toMatchObject({ fuseA: 3, awg: "14 AWG" });
    expect(runOf(ctx, { ...wanted, leastFuseA: 16 })).toMatchObject({
      fuseA: 20,
      awg: "12 AWG",
      currentA: 1,
    });
  });
  it("whatever the load and the bank, and no wire has more than NEC 240.4(D) allows", () => {
    const mostA: Readonly<Record<string, number>> = { "14 AWG": 15, "12 AWG": 20, "10 AWG": 30 };
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.constantFrom(12 as const, 24 as const, 48 as const),
        fc.boolean(),
        (watts, bankV, isPoe) => {
          const device = isPoe ? { ...camera, dayW: given(watts / 2) } : dcLamp(watts);
          const { runs, blockFuseA } = wiring(
            changed({ loads: { devices: [device, radio] }, power: { bankV: given(bankV) } }),
          );
          const largest = (of: (one: Run) => boolean) =>
            Math.max(...runs.filter(of).map(({ fuseA }) => fuseA ?? 0));
          const main = runs.find(({ name }) => name === "Battery to load bus")!;
          expect(main.isEnough).toBe(true);
          expect(main.fuseA!).toBeGreaterThanOrEqual(1.6 * largest(({ from }) => from === "load bus") - 1e-9);
          for (const { fuseA, awg } of runs) expect(fuseA ?? 0).toBeLessThanOrEqual(mostA[awg] ?? 1200);
          if (blockFuseA === null) return;
          const { inParallel } = designOf(
            changed({ loads: { devices: [device, radio] }, power: { bankV: given(bankV) } }),
            syntheticWorld,
          ).battery!;
          const atBank = largest(({ from, to }) => from === "battery" || to === "battery");
          expect(blockFuseA * inParallel).toBeGreaterThanOrEqual(1.6 * atBank - 1e-9);
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe("strings of blocks side by side", () => {
  it("together outlast the largest fuse that they feed: three strings, 6 A at the bank, 1.6 x 6 / 3 = 3.2 for 6 A each", () => {
    const { brief, climate, loads, battery, array, mounting } = designOf(typicalBrief, syntheticWorld);
    const three = { ...battery!, inParallel: 3 };
    const weak = { ...array!, chargeCurrentA: 2.5 };
    const { runs, blockFuseA } = wiringStage(brief, climate, loads, three, weak, mounting)!;
    // 1.25 x 2.5 = 3.1 asks for 6 A from the controller; the load's own is 6 A; twice a string's share would do with 3 A
    expect(runs.slice(1, 3).map(({ fuseA }) => fuseA)).toEqual([6, 6]);
    expect(blockFuseA).toBe(6);
  });
});

describe("several controllers", () => {
  const { brief, climate, loads, battery, array, mounting } = designOf(typicalBrief, syntheticWorld);
  const runsOf = (inParallel: number, controllers: number) =>
    wiringStage(
      brief,
      climate,
      loads,
      battery,
      { ...array!, inParallel, controllers, chargeCurrentA: 100, maxPowerA: 6 },
      mounting,
    )!.runs;
  it.each([
    // strings, controllers, A from the panels (6 A a string), A to the battery (100 A of all)
    [4, 2, 12, 50],
    [5, 2, 18, 60],
    [5, 1, 30, 100],
  ])("%i strings on %i: the fullest brings %i A in and %i A out", (strings, controllers, inA, outA) => {
    const [panels, bank] = runsOf(strings, controllers);
    near(panels!.currentA, inA, { within: 1e-9 });
    near(bank!.currentA, outA, { within: 1e-9 });
  });
});

describe("power over Ethernet", () => {
  it("a 9 W camera is class 3, a 7 W radio class 3, a 6 W one class 2 (12.95, 12.95, 6.49 W at the device)", () => {
    const brief = changed({ loads: { devices: [camera, radio, { ...radio, dayW: given(6) }] } });
    expect(wiring(brief).poeRuns.map(({ poeClass }) => poeClass)).toEqual([3, 3, 2]);
  });
  it("hardly loses anything on a mast: 44 V less a few hundredths", () => {
    for (const { deviceV, lossW } of wiring(typicalBrief).poeRuns) {
      near(deviceV, 43.93, { within: 0.03 });
      expect(lossW).toBeLessThan(0.03);
    }
  });
});

describe("units of the trade", () => {
  it("both sizes are named; the drop is that of the one sold there", () => {
    const german = at({ ...sites.colorado, countryCode: "DE" });
    const [american, metric] = [typicalBrief, german].map((brief) => run(brief, "Panels to controller"));
    expect(american!.awg).toMatch(/AWG/);
    expect(metric!.areaMm2).toBeGreaterThanOrEqual(1.5);
    expect(american!.dropV).not.toBe(metric!.dropV);
  });
});

describe("laws", () => {
  it("a longer cable, or more watts, never a thinner wire", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 150, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        (dayW, heightM) => {
          const base = run(withLamp(dayW, heightM), "Feed of Lamp, 12 V from the converter").areaMm2;
          expect(
            run(withLamp(dayW, heightM + 2), "Feed of Lamp, 12 V from the converter").areaMm2,
          ).toBeGreaterThanOrEqual(base);
          expect(
            run(withLamp(dayW + 20, heightM), "Feed of Lamp, 12 V from the converter").areaMm2,
          ).toBeGreaterThanOrEqual(base);
        },
      ),
      { numRuns: 25 },
    );
  });
  it("every run that is said to be enough keeps its drop", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 150, noNaN: true }),
        fc.constantFrom(12 as const, 24 as const, 48 as const),
        (dayW, bankV) => {
          const brief = changed({
            loads: { devices: [dcLamp(dayW), radio] },
            power: { bankV: given(bankV) },
          });
          for (const one of wiring(brief).runs) {
            if (one.isEnough) expect(one.dropFrac).toBeLessThanOrEqual(one.maxDropFrac + 1e-12);
          }
        },
      ),
      { numRuns: 20 },
    );
  });
});
