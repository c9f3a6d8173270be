// Laws of the energy field: no outside value, only what must hold everywhere, and small cases worked by hand.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  arrayPower,
  autonomyDaysSuggestion,
  type BlockSize,
  batteryCapacity,
  type Chemistry,
  capacityFrac,
  chargeSettings,
  coldVoc,
  frostSafeDodFrac,
  hotVmp,
  layoutBank,
  layoutPanels,
  necColdFactorRatio,
  parallelModules,
  rechargeTime,
  seasonalDeficit,
} from "../../../src/core/energy/index.ts";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { near } from "../../helpers/near.ts";

const CHEMISTRIES: readonly Chemistry[] = ["lead-vented", "lead-agm", "lead-gel", "lifepo4"];
/**
 * Evenly over the values: fast-check's own double is even over bit patterns, nearly all of them close to 0.
 */
const frac = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => min + ((max - min) * i) / 1_000_000);
const byMonth = (min: number, max: number) => fc.array(frac(min, max), { minLength: 12, maxLength: 12 });

const bank = fc.record({
  dailyAh: frac(0, 1000),
  autonomyDays: frac(0, 200),
  maxDodFrac: frac(0.1, 1),
  maxDailyDodFrac: frac(0.05, 1),
  endOfLifeFrac: frac(0.5, 1),
  capacityFrac: frac(0.1, 1),
  designMarginFrac: frac(0, 0.5),
  largestRunningA: frac(0, 100),
});

describe("batteryCapacity", () => {
  it("more days, a colder battery, a shallower depth or more margin never ask for less", () => {
    fc.assert(
      fc.property(bank, frac(0, 1), (given, step) => {
        const base = batteryCapacity(given).requiredAh;
        const harder = [
          { ...given, autonomyDays: given.autonomyDays + 10 * step },
          { ...given, dailyAh: given.dailyAh * (1 + step) },
          { ...given, capacityFrac: given.capacityFrac * (1 - 0.4 * step) },
          { ...given, maxDodFrac: Math.max(0.1, given.maxDodFrac * (1 - step)) },
          { ...given, maxDailyDodFrac: Math.max(0.05, given.maxDailyDodFrac * (1 - step)) },
          { ...given, endOfLifeFrac: Math.max(0.5, given.endOfLifeFrac * (1 - step)) },
          { ...given, designMarginFrac: given.designMarginFrac + 0.5 * step },
        ];
        for (const one of harder) {
          expect(batteryCapacity(one).requiredAh).toBeGreaterThanOrEqual(base * (1 - 1e-12));
        }
      }),
    );
  });
  it("takes the largest of three, never their product", () => {
    fc.assert(
      fc.property(bank, (given) => {
        const got = batteryCapacity(given);
        const three = [got.dodAdjustedAh, got.dailyDodAdjustedAh, got.endOfLifeAdjustedAh];
        expect(got.governingAh).toBe(Math.max(...three));
        near(got.requiredAh, (got.governingAh / given.capacityFrac) * (1 + given.designMarginFrac), {
          within: 1e-9 * (1 + got.requiredAh),
        });
      }),
    );
  });
  it("refuses what lies outside its ranges", () => {
    const good = {
      dailyAh: 10,
      autonomyDays: 5,
      maxDodFrac: 0.5,
      maxDailyDodFrac: 0.2,
      endOfLifeFrac: 0.8,
      capacityFrac: 0.9,
      designMarginFrac: 0.1,
      largestRunningA: 1,
    };
    for (const bad of [
      { maxDodFrac: 0.05 },
      { capacityFrac: 0 },
      { dailyAh: -1 },
      { designMarginFrac: 1.5 },
      { largestDailyAh: 9 },
      { autonomyDays: Number.NaN },
    ]) {
      expect(() => batteryCapacity({ ...good, ...bad })).toThrow(RangeFault);
    }
  });
});

describe("capacity and frost", () => {
  it("capacity never rises as it gets colder, never falls as the rate slows, and stays in 0..1", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHEMISTRIES),
        frac(-40, 60),
        frac(-40, 60),
        frac(1, 1000),
        frac(1, 1000),
        (chemistry, t1, t2, h1, h2) => {
          const at = (tempC: number, hourRateH: number) => capacityFrac({ chemistry, tempC, hourRateH });
          expect(at(Math.min(t1, t2), h1)).toBeLessThanOrEqual(at(Math.max(t1, t2), h1) + 1e-12);
          expect(at(t1, Math.min(h1, h2))).toBeLessThanOrEqual(at(t1, Math.max(h1, h2)) + 1e-12);
          expect(at(t1, h1)).toBeGreaterThanOrEqual(0);
          expect(at(t1, h1)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
  it("a colder night never allows a deeper discharge", () => {
    fc.assert(
      fc.property(frac(-60, 60), frac(-60, 60), (t1, t2) => {
        const colder = frostSafeDodFrac(Math.min(t1, t2));
        expect(colder).toBeLessThanOrEqual(frostSafeDodFrac(Math.max(t1, t2)) + 1e-12);
        expect(colder).toBeGreaterThanOrEqual(0);
        expect(colder).toBeLessThanOrEqual(1);
      }),
    );
  });
});

const block = fc.record({
  blockV: fc.constantFrom(2, 6, 12),
  capacityAh: fc.integer({ min: 5, max: 400 }),
  massKg: frac(1, 80),
});

describe("layoutBank", () => {
  it("covers what was asked, no string too many, at the bank voltage", () => {
    fc.assert(
      fc.property(
        frac(0.1, 3000),
        fc.constantFrom(12, 24, 48),
        fc.array(block),
        frac(5, 90),
        (ah, v, sizes, kg) => {
          const got = layoutBank({ requiredAh: ah, bankV: v, sizes, maxBlockKg: kg });
          const fitting = sizes.filter((size) => size.massKg <= kg);
          if (!got) {
            expect(fitting).toHaveLength(0);
            return;
          }
          expect(got.bankAh).toBeGreaterThanOrEqual(ah - 1e-6);
          expect((got.parallel - 1) * got.block.capacityAh).toBeLessThan(ah);
          expect(got.series * got.block.blockV).toBe(v);
          expect(got.blocks).toBe(got.series * got.parallel);
          expect(got.block.massKg).toBeLessThanOrEqual(kg);
          near(got.totalMassKg, got.blocks * got.block.massKg, { within: 1e-9 });
          expect(got.exceedsMaxParallel).toBe(got.parallel > 4);
          for (const other of fitting) {
            const strings = Math.ceil(ah / other.capacityAh - 1e-9);
            expect(got.parallel).toBeLessThanOrEqual(Math.max(1, strings));
            if (strings === got.parallel) {
              expect(got.bankAh).toBeLessThanOrEqual(strings * other.capacityAh);
            }
          }
        },
      ),
    );
  });
  const sizes: readonly BlockSize[] = [
    { blockV: 12, capacityAh: 55, massKg: 18 },
    { blockV: 12, capacityAh: 100, massKg: 30 },
    { blockV: 12, capacityAh: 120, massKg: 35 },
    { blockV: 12, capacityAh: 200, massKg: 60 },
  ];
  it("says what decided", () => {
    const layout = (requiredAh: number, maxBlockKg?: number) =>
      layoutBank({ requiredAh, bankV: 24, sizes, ...(maxBlockKg === undefined ? {} : { maxBlockKg }) });
    expect(layout(110)).toMatchObject({ parallel: 1, bankAh: 120, blocks: 2, decidedBy: "least-overshoot" });
    expect(layout(150)).toMatchObject({ parallel: 1, bankAh: 200, decidedBy: "fewest-strings" });
    expect(layout(150, 40)).toMatchObject({
      parallel: 2,
      bankAh: 200,
      decidedBy: "block-mass",
      totalMassKg: 120,
    });
    expect(layout(50, 20)).toMatchObject({ bankAh: 55, decidedBy: "one-fits" });
    expect(layout(500, 20)).toMatchObject({
      parallel: 10,
      exceedsMaxParallel: true,
      decidedBy: "block-mass",
    });
    expect(layout(50, 10)).toBeNull();
  });
  it("takes 12.8 V blocks for a 24 V system, and never 6 V blocks for a 9 V one", () => {
    const lithium = layoutBank({
      requiredAh: 90,
      bankV: 24,
      sizes: [{ blockV: 12.8, capacityAh: 100, massKg: 11 }],
    });
    expect(lithium).toMatchObject({ series: 2, parallel: 1 });
    expect(
      layoutBank({ requiredAh: 90, bankV: 9, sizes: [{ blockV: 6, capacityAh: 100, massKg: 11 }] }),
    ).toBeNull();
  });
});

describe("layoutPanels", () => {
  it("covers what was asked with no panel too many", () => {
    fc.assert(
      fc.property(
        frac(0.1, 3000),
        fc.array(fc.integer({ min: 5, max: 500 }), { minLength: 1 }),
        frac(5, 500),
        (requiredW, sizesW, largestW) => {
          const got = layoutPanels({ requiredW, sizesW, largestW });
          if (!got) {
            expect(Math.min(...sizesW)).toBeGreaterThan(largestW);
            return;
          }
          expect(got.arrayW).toBeGreaterThanOrEqual(requiredW - 1e-6);
          expect((got.count - 1) * got.panelW).toBeLessThan(requiredW);
          expect(got.panelW).toBeLessThanOrEqual(largestW);
        },
      ),
    );
  });
  it("says what decided, and when there are too many", () => {
    const sizesW = [50, 100, 175, 200];
    expect(layoutPanels({ requiredW: 160, sizesW })).toMatchObject({
      count: 1,
      panelW: 175,
      decidedBy: "least-overshoot",
    });
    expect(layoutPanels({ requiredW: 190, sizesW })).toMatchObject({
      panelW: 200,
      decidedBy: "fewest-panels",
    });
    expect(layoutPanels({ requiredW: 190, sizesW, largestW: 120 })).toMatchObject({
      count: 2,
      panelW: 100,
      decidedBy: "panel-size",
    });
    expect(layoutPanels({ requiredW: 900, sizesW, maxCount: 2 })).toMatchObject({
      count: 5,
      exceedsMaxCount: true,
    });
    expect(layoutPanels({ requiredW: 90, sizesW, largestW: 40 })).toBeNull();
  });
});

const flat = (value: number) => Array.from({ length: 12 }, () => value);
const plant = {
  dailyWhByMonth: flat(480),
  poaDailyKWhPerM2ByMonth: [2, 3, 4, 4, 5, 5, 5, 5, 4, 3, 2.5, 1.6],
  arrayToLoadRatio: 1.3,
  systemLossFrac: 0.15,
  moduleHeatLossFracByMonth: flat(0),
  batteryEfficiencyFrac: 0.85,
  controller: { kind: "mppt", efficiencyFrac: 0.96 } as const,
};

describe("arrayPower", () => {
  it("by hand: 480 Wh x 1.3 / (1.6 h x 0.85 x 0.85 x 0.96) = 562.3 W, in December", () => {
    const got = arrayPower(plant);
    near(got.requiredW!, 624 / (1.6 * 0.6936), { within: 0.001 });
    near(got.requiredW!, 562.3, { within: 0.05 });
    expect(got).toMatchObject({ designMonth: 11, bridgedMonths: [], yearRequiredW: null });
  });
  it("heat takes from a tracking controller; a direct one loses by voltage instead: I_mp x V_batt", () => {
    const hot = arrayPower({ ...plant, moduleHeatLossFracByMonth: flat(0.1) });
    near(hot.requiredW! / arrayPower(plant).requiredW!, 1 / 0.9, { within: 1e-9 });
    const direct = { kind: "pwm", moduleVmpV: 18, batteryV: 13.5 } as const;
    const cool = arrayPower({ ...plant, controller: direct });
    near(cool.usableFracByMonth[0]!, 0.85 * 0.85 * 0.75, { within: 1e-12 });
    const warm = arrayPower({ ...plant, controller: direct, moduleHeatLossFracByMonth: flat(0.15) });
    near(warm.requiredW!, cool.requiredW!, { within: 1e-9 });
    const scorching = arrayPower({ ...plant, controller: direct, moduleHeatLossFracByMonth: flat(0.3) });
    near(scorching.usableFracByMonth[0]!, 0.85 * 0.85 * 0.7, { within: 1e-12 });
  });
  it("months of polar night are bridged, and the rest of the year carries them", () => {
    const got = arrayPower({
      ...plant,
      poaDailyKWhPerM2ByMonth: [0, 1.5, 4, 5, 5, 5, 5, 4, 3, 1.7, 0.4, 0],
      darkPoaKWhPerM2: 0.5,
    });
    expect(got.bridgedMonths).toEqual([0, 10, 11]);
    expect(got.requiredWByMonth[0]).toBeNull();
    expect(got.designMonth).toBe(1);
    expect(got.yearRequiredW!).toBeLessThan(got.requiredW!);
    // nine even months of one sun hour carry twelve months' demand: 365 / 275 of what each asks by itself
    const even = arrayPower({ ...plant, poaDailyKWhPerM2ByMonth: [0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0] });
    near(even.requiredW!, (even.requiredWByMonth[1]! * 365) / (365 - 31 - 30 - 31), { within: 1e-6 });
    expect(even.designMonth).toBeNull();
    // a year of nothing but dark months has no answer
    const never = arrayPower({ ...plant, poaDailyKWhPerM2ByMonth: flat(0) });
    expect(never).toMatchObject({ requiredW: null, designMonth: null });
    expect(never.bridgedMonths).toHaveLength(12);
  });
  it("is finite and not negative; every month by itself is carried; more sun or less load never asks for more", () => {
    fc.assert(
      fc.property(byMonth(0, 2000), byMonth(0, 10), frac(1, 3), frac(0, 0.5), (load, poa, ratio, loss) => {
        const given = {
          ...plant,
          dailyWhByMonth: load,
          poaDailyKWhPerM2ByMonth: poa,
          arrayToLoadRatio: ratio,
          systemLossFrac: loss,
        };
        const got = arrayPower(given);
        got.requiredWByMonth.forEach((w, month) => {
          if (w === null) return;
          expect(Number.isFinite(w)).toBe(true);
          expect(w).toBeGreaterThanOrEqual(0);
          const yieldWh = (got.requiredW ?? 0) * poa[month]! * got.usableFracByMonth[month]!;
          expect(yieldWh).toBeGreaterThanOrEqual(load[month]! * ratio - 1e-6);
        });
        const sunnier = arrayPower({
          ...given,
          poaDailyKWhPerM2ByMonth: poa.map((h) => Math.max(0.1, h) + 1),
        });
        if (got.requiredW !== null && got.bridgedMonths.length === 0) {
          expect(sunnier.requiredW!).toBeLessThanOrEqual(got.requiredW + 1e-9);
        }
      }),
    );
  });
  it("the ampere-hour form gives the same array as the watt-hour form for a direct controller", () => {
    // 40 Ah a day, A:L 1.3, SL 0.15, 1.6 h, I_mp 5.5 A: 52 / (0.85 x 1.6 x 5.5) = 6.95, by hand
    const modules = parallelModules({
      dailyAh: 40,
      arrayToLoadRatio: 1.3,
      systemLossFrac: 0.15,
      peakSunHours: 1.6,
      moduleImpA: 5.5,
    });
    near(modules.exact, 6.952, { within: 0.0005 });
    expect(modules.whole).toBe(7);
    const inWatts = arrayPower({
      ...plant,
      dailyWhByMonth: flat(40 * 12),
      batteryEfficiencyFrac: 1,
      controller: { kind: "pwm", moduleVmpV: 18, batteryV: 12 },
    });
    near(inWatts.requiredW! / (5.5 * 18), modules.exact, { within: 1e-9 });
  });
});

describe("strings", () => {
  it("the colder, the higher the open-circuit voltage", () => {
    fc.assert(
      fc.property(frac(-70, 40), frac(-70, 40), frac(-0.005, 0), (t1, t2, coefficient) => {
        const at = (recordLowTempC: number) =>
          coldVoc({
            moduleVocV: 22,
            vocTempCoefficientPerK: Math.min(coefficient, -0.0025),
            modulesInSeries: 2,
            recordLowTempC,
          }).coldVocV;
        expect(at(Math.min(t1, t2))).toBeGreaterThanOrEqual(at(Math.max(t1, t2)) - 1e-9);
      }),
    );
    expect(necColdFactorRatio(40)).toBe(1);
  });
  it("by hand: 18 V at -0.0045/K and 65 deg C is 14.76 V, less 0.5 V: short of 14.4 + 0.5 V, two in series are enough", () => {
    const module = {
      moduleVmpV: 18,
      vmpTempCoefficientPerK: -0.0045,
      hottestCellTempC: 65,
      highestChargeV: 14.4,
      dropV: 0.5,
      controllerHeadroomV: 0.5,
    };
    const one = hotVmp({ ...module, modulesInSeries: 1 });
    near(one.hotVmpV, 14.26, { within: 1e-9 });
    near(one.headroomV, -0.64, { within: 1e-9 });
    expect(one.modulesNeeded).toBe(2);
    expect(hotVmp({ ...module, modulesInSeries: 2 }).headroomV).toBeGreaterThan(0);
  });
});

describe("charging", () => {
  it("colder never means a lower absorption voltage, and float lies below absorption", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CHEMISTRIES),
        fc.constantFrom(12, 24, 36, 48),
        frac(-60, 80),
        frac(-60, 80),
        (chemistry, nominalV, t1, t2) => {
          const at = (tempC: number) => chargeSettings({ chemistry, nominalV, tempC });
          const cold = at(Math.min(t1, t2));
          expect(cold.absorptionV).toBeGreaterThanOrEqual(at(Math.max(t1, t2)).absorptionV - 1e-9);
          expect(cold.floatV!).toBeLessThan(cold.absorptionV);
          expect(cold.lowVoltageDisconnectV).toBeLessThan(cold.floatV!);
          expect(cold.highestChargeV).toBeGreaterThanOrEqual(cold.absorptionV);
        },
      ),
    );
  });
  it("half a cell is refused", () => {
    expect(() => chargeSettings({ chemistry: "lead-agm", nominalV: 13, tempC: 25 })).toThrow(RangeFault);
  });
  it("by hand: 90 Ah at 10 A and 0.9 take 10 h, 4 days of 2.5 sun hours", () => {
    const got = rechargeTime({ usedAh: 90, chargeA: 10, coulombicEfficiencyFrac: 0.9, peakSunHours: 2.5 });
    near(got.hours, 10, { within: 1e-9 });
    near(got.days, 4, { within: 1e-9 });
  });
});

describe("autonomy and season", () => {
  it("more sun never asks for more days; nearer the pole never for fewer; no step at 1.5 sun hours", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0.95 as const, 0.99 as const),
        frac(0, 15),
        frac(0, 15),
        frac(0, 90),
        frac(0, 90),
        (availability, h1, h2, l1, l2) => {
          const at = (peakSunHours: number, latitudeDeg: number) =>
            autonomyDaysSuggestion({ peakSunHours, availability, latitudeDeg }).days;
          expect(at(Math.max(h1, h2), l1)).toBeLessThanOrEqual(at(Math.min(h1, h2), l1) + 1e-9);
          expect(at(h1, Math.max(l1, l2))).toBeGreaterThanOrEqual(at(h1, Math.min(l1, l2)) - 1e-9);
          near(at(1.4999999, l1), at(1.5, l1), { within: 0.001 });
          expect(at(h1, l1)).toBeGreaterThan(1);
        },
      ),
    );
  });
  it("storage with which the year never runs dry, and with less it does", () => {
    fc.assert(
      fc.property(byMonth(0, 500), byMonth(0, 900), (load, supply) => {
        const { storageWh, isYearCovered } = seasonalDeficit({
          dailyWhByMonth: load,
          dailySupplyWhByMonth: supply,
        });
        fc.pre(isYearCovered && storageWh > 100);
        const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        // three years from full, month by month, counting how low it falls
        const lowest = (capacityWh: number): number => {
          let heldWh = capacityWh;
          let lowestWh = capacityWh;
          for (let i = 0; i < 36; i += 1) {
            heldWh = Math.min(capacityWh, heldWh + days[i % 12]! * (supply[i % 12]! - load[i % 12]!));
            lowestWh = Math.min(lowestWh, heldWh);
          }
          return lowestWh;
        };
        expect(lowest(storageWh)).toBeGreaterThanOrEqual(-1e-6);
        expect(lowest(storageWh - 1)).toBeLessThan(0);
      }),
    );
  });
});
