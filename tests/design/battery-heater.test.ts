// A lithium bank that is kept warm: its box, and with it the heat, is as large as the bank. Laws but where a sum by hand stands.
import { describe, expect, it } from "vitest";
import { chainUnder } from "../../src/design/chain/chain.ts";
import { type Brief, type Design, designOf, listsOf, type World } from "../../src/design/index.ts";
import { batteryBoxLossWPerK } from "../../src/design/practice/battery-box.ts";
import { near } from "../helpers/near.ts";
import { at, changed, given, simulatedWorld, sites, syntheticWorld } from "./fixtures.ts";

const heated = (heaterW: number, brief?: Brief): Brief =>
  changed({ power: { chemistry: given("lifepo4"), batteryHeaterW: given(heaterW) } }, brief);
const sky = ({ climate, sun }: Design) => ({ climate, sun, refusal: null });
const methods = [
  ["handbook", syntheticWorld],
  ["simulation", simulatedWorld],
] as const;

describe("the box of a bank", () => {
  it("by hand: 12.8 V 100 Ah in 25.6 litres, 30 mm of foam: 1.2 x 0.035 x (17.38 + 1.91 + 0.04) = 0.81 W/K", () => {
    near(batteryBoxLossWPerK(1280), 0.812, { within: 0.002 });
  });
  it("loses three times as much for five such blocks", () => {
    near(batteryBoxLossWPerK(5 * 1280) / batteryBoxLossWPerK(1280), 5 ** (2 / 3), { within: 0.15 });
  });
});

describe.each(methods)("a heated bank by the %s", (method, world) => {
  it.each([5, 30, 100, 200])(
    "of %d W is reckoned for the bank that is built, in loads and temperature",
    (heaterW) => {
      const { loads, battery, climate, array } = designOf(heated(heaterW), world);
      expect(array!.sizedBy).toBe(method);
      const lossWPerK = batteryBoxLossWPerK(battery!.bankAh * battery!.bankNominalV);
      expect(battery!.boxLossWPerK).toBe(lossWPerK);
      near(loads.batteryBoxLossWPerK!, lossWPerK, { within: 1e-9 });
      const outsideC = Math.min(...climate!.meanTempCByMonth);
      near(battery!.temperatureC, Math.min(5, outsideC + heaterW / lossWPerK), { within: 1e-9 });
    },
  );
  it("draws in the coldest month no more than it has, nor than the box loses there", () => {
    for (const heaterW of method === "handbook" ? [5, 30, 200] : [30]) {
      const { loads, battery, climate } = designOf(at(sites.north60, heated(heaterW)), world);
      const bare = designOf(at(sites.north60, heated(0)), syntheticWorld).loads;
      const coldest = climate!.meanTempCByMonth.indexOf(Math.min(...climate!.meanTempCByMonth));
      const heatWh = loads.dailyWhByMonth[coldest]! - bare.dailyWhByMonth[coldest]!;
      const lostWh = 24 * battery!.boxLossWPerK * (5 - climate!.meanTempCByMonth[coldest]!);
      expect(heatWh).toBeLessThanOrEqual(Math.min(24 * heaterW, 1.02 * lostWh) + 1e-6);
      expect(heatWh).toBeGreaterThan(0.8 * Math.min(24 * heaterW, lostWh));
    }
  });
  it("asked what if nothing were changed, stays as it is", () => {
    const design = designOf(heated(60), world);
    const again = chainUnder(design.brief, sky(design), world, design);
    near(again.battery!.wantedAh / design.battery!.wantedAh, 1, { within: 1e-9 });
    near(again.array!.wantedW / design.array!.wantedW, 1, { within: 1e-9 });
    near(again.loads.largestDailyWh, design.loads.largestDailyWh, { within: 1e-6 });
  });
  it("with the watts that the finding names, has nothing more to be warned of", () => {
    for (const site of [sites.colorado, { ...sites.north40, latitudeDeg: 48 }]) {
      const bare = designOf(at(site, heated(0)), world);
      const frost = bare.findings.find(({ id }) => id === "battery.lithiumFrost")!;
      const neededW = frost.numbers.neededHeaterW as number;
      expect(frost.change).toContain(`${neededW} W or more`);
      const warmed = designOf(at(site, heated(neededW)), world);
      expect(warmed.battery!.needsWarmth).toBe(false);
      expect(warmed.findings.some(({ id }) => id === "battery.lithiumFrost")).toBe(false);
    }
  });
});

describe("every pair that is tried", () => {
  it("is heated by its own size", () => {
    const tried = new Map<number, number>();
    const watching: World = {
      ...syntheticWorld,
      simulation: {
        remember: (task, known, work) => {
          if (task === "balance") {
            const [{ bank }] = known as [
              { bank: { ratedAh: number; nominalV: number; heater: { heatLossWPerK: number } } },
            ];
            tried.set(bank.ratedAh * bank.nominalV, bank.heater.heatLossWPerK);
          }
          return work();
        },
      },
    };
    const { reliability } = designOf(heated(60), watching);
    expect(reliability!.pairs.length).toBeGreaterThan(1);
    expect(tried.size).toBeGreaterThan(5);
    for (const [bankWh, lossWPerK] of tried) expect(lossWPerK).toBe(batteryBoxLossWPerK(bankWh));
  });
});

describe("where no heater that is sold would do", () => {
  it("only lead is advised", () => {
    const frost = designOf(at(sites.north71, heated(0)), syntheticWorld).findings.find(
      ({ id }) => id === "battery.lithiumFrost",
    )!;
    expect(frost.change).toMatch(/^Choose sealed lead-acid \(AGM\) \(to keep so large/);
    expect(frost.numbers.neededHeaterW).toBeUndefined();
  });
});

describe("the heater's own wire, fuse and parts", () => {
  const design = designOf(heated(130), syntheticWorld);
  const { wiring, parts, battery, loads } = design;
  const run = wiring!.runs.find(({ to }) => to === "battery heater")!;

  it("by hand: 130 W on 12.8, 25.6 or 51.2 V, at the absorption voltage, with a fuse of 1.25 times that or more", () => {
    const { bankNominalV, absorptionV } = battery!;
    const amperes = (130 / bankNominalV) * (absorptionV / bankNominalV);
    near(run.currentA, amperes, { within: 1e-9 });
    // NEC 210.20(A): 1.25 times what lasts
    expect(run.fuseA!).toBeGreaterThanOrEqual(1.25 * amperes);
    expect(run.isEnough).toBe(true);
    expect(run.dropFrac).toBeLessThanOrEqual(run.maxDropFrac);
  });
  it("comes straight from the battery: cut off with the loads, a frozen bank would never be charged again", () => {
    expect(run.from).toBe("battery");
    const main = wiring!.runs.find(({ to }) => to === "load bus")!;
    const bare = designOf(heated(0), syntheticWorld);
    const bareMain = bare.wiring!.runs.find(({ to }) => to === "load bus")!;
    near(
      main.currentA * battery!.lowVoltageDisconnectV,
      bareMain.currentA * bare.battery!.lowVoltageDisconnectV,
      {
        within: 1e-6,
      },
    );
    expect(loads.peakW).toBeGreaterThan(bare.loads.peakW + 130);
  });
  it("is bought: pad, foam for the box, wire and fuse", () => {
    const part = (id: string) => parts.lines.find((line) => line.id === id);
    expect(part("batteryHeater")!.specification[0]).toContain("130 W");
    // by hand: a cube that holds twice 10 litres a kWh, 3 cm of foam on all sides
    const sideM = Math.cbrt((0.02 * battery!.bankAh * battery!.bankNominalV) / 1000) + 0.06;
    near(part("boxFoam")!.quantity, 6 * sideM ** 2, { within: 0.1 });
    expect(part("boxFoam")!.unit).toBe("m2");
    expect(part("fuse.main")!.specification[0]).toContain(`Battery to battery heater: ${run.fuseA} A`);
    expect(parts.lines.some(({ specification }) => specification.includes(run.name))).toBe(true);
  });
  it("none of it without a heater", () => {
    const bare = designOf(heated(0), syntheticWorld);
    expect(bare.wiring!.runs.some(({ to }) => to === "battery heater")).toBe(false);
    expect(bare.parts.lines.filter(({ id }) => id === "batteryHeater" || id === "boxFoam")).toEqual([]);
  });
  it("is built in after its caution, and tried with ice before the loads", () => {
    const { steps } = listsOf(design).find(({ id }) => id === "installation")!;
    const pad = steps.find(({ id }) => id === "heaterPad")!;
    expect(pad.cautions[0]!.says).toMatch(/^Fire: a heater pad without its thermostat/);
    expect(pad.does).toContain(`Battery to battery heater: ${run.fuseA} A`);
    const on = steps.find(({ id }) => id === "heaterOn")!;
    expect(on.does).toContain(`${run.fuseA} A fuse of the battery heater`);
    expect(on.cautions.map(({ hazard }) => hazard)).toEqual(["fire", "short circuit", "lithium", "polarity"]);
    expect(steps.indexOf(on)).toBeLessThan(steps.findIndex(({ id }) => id === "loadsOn"));
  });
});
