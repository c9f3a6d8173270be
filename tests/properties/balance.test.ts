// Laws of the hour-by-hour balance: no outside value, only what must hold for every post and every weather.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  BANK_TRAITS,
  type BalancePlant,
  type Chemistry,
  type LoadTier,
  simulateBalance,
} from "../../src/core/energy/index.ts";
import { tier, weather } from "../core/energy/balance/weather.ts";
import { nearRatio } from "../helpers/near.ts";

type Post = BalancePlant & { readonly years: number };

/** Evenly over the values. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((i) => min + ((max - min) * i) / 10_000);

const recipe = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  winterC: between(-25, 10),
  ratedW: between(60, 500),
  ratedAh: between(10, 400),
  healthFrac: between(0.5, 1),
  ownW: between(0, 3),
  chemistry: fc.constantFrom<Chemistry>("lead-vented", "lead-agm", "lead-gel", "lifepo4"),
  lossPerMonthFrac: between(0, 0.1),
  shedFrac: between(0.1, 0.5),
  moreFrac: between(0, 0.2),
  bandFrac: between(0.01, 0.25),
  watts: between(2, 20),
  isHeated: fc.boolean(),
});
type Recipe = typeof recipe extends fc.Arbitrary<infer R> ? R : never;

const made = (
  given: Recipe,
  options: { readonly isBanded: boolean; readonly losesByItself: boolean },
): Post => {
  const { outputRatio, ambientTempC } = weather({ seed: given.seed, years: 1, winterC: given.winterC });
  const banded = (shedBelowSocFrac: number): Pick<LoadTier, "shedBelowSocFrac" | "returnAboveSocFrac"> => ({
    shedBelowSocFrac,
    returnAboveSocFrac: shedBelowSocFrac + (options.isBanded ? given.bandFrac : 0),
  });
  const nightW = Float64Array.from({ length: 8760 }, (_, hour) =>
    hour % 24 < 7 || hour % 24 > 17 ? 1.4 * given.watts : 0.6 * given.watts,
  );
  return {
    years: 1,
    pv: { kind: "mppt", outputRatio, ratedW: given.ratedW },
    bank: {
      chemistry: given.chemistry,
      nominalV: given.chemistry === "lifepo4" ? 12.8 : 12,
      ratedAh: given.ratedAh,
      healthFrac: given.healthFrac,
      tempC: ambientTempC,
      traits: {
        ...BANK_TRAITS[given.chemistry],
        selfDischargePerMonthFrac: options.losesByItself ? given.lossPerMonthFrac : 0,
      },
      ...(given.isHeated ? { heater: { heaterW: 8, thermostatTempC: 5, heatLossWPerK: 0.3 } } : {}),
    },
    controller: { efficiencyFrac: 0.95, maxOutputA: 25, ownW: given.ownW },
    loads: [
      tier({ name: "link", watts: given.watts, ...banded(given.shedFrac) }),
      tier({
        name: "camera",
        priority: 2,
        wattsByHourOfYear: nightW,
        ...banded(given.shedFrac + given.moreFrac),
      }),
    ],
  };
};

const darkHours = (post: Post): readonly number[] =>
  simulateBalance(post).tiers.map(({ darkHoursPerYear }) => darkHoursPerYear);

/** Hours differ by rounding only. */
const ROUNDING_H = 1e-4;

const COLD_FRAC = 0.002;

const withPanel = (post: Post, ratio: number): Post =>
  post.pv.kind === "mppt" ? { ...post, pv: { ...post.pv, ratedW: post.pv.ratedW * ratio } } : post;
const withBank = (post: Post, ratio: number): Post => ({
  ...post,
  bank: { ...post.bank, ratedAh: post.bank.ratedAh * ratio },
});
const withLoad = (post: Post, ratio: number): Post => ({
  ...post,
  loads: post.loads.map((one) => ({
    ...one,
    wattsByHourOfYear: one.wattsByHourOfYear.map((w) => w * ratio),
  })),
});

const RUNS = { numRuns: 25 };

describe("energy", () => {
  it("closes in every hour, whatever is switched", () => {
    fc.assert(
      fc.property(recipe, fc.boolean(), fc.integer({ min: 1, max: 4 }), (given, isBanded, stepsPerHour) => {
        const found = simulateBalance({ ...made(given, { isBanded, losesByItself: true }), stepsPerHour });
        expect(found.largestResidualFrac).toBeLessThan(1e-9);
        const { energy } = found;
        const out =
          energy.servedWh +
          energy.ownWh +
          energy.controllerLossWh +
          energy.chargeLossWh +
          energy.dischargeLossWh +
          energy.selfDischargeWh +
          energy.storedWh;
        nearRatio(out, energy.pvUsedWh, { withinFrac: 1e-9 });
        expect(energy.pvWastedWh).toBeGreaterThan(-1e-6);
        for (const one of found.tiers) {
          expect(one.lossOfLoadEnergyFrac).toBeLessThanOrEqual(1 + 1e-12);
          expect(one.darkHoursPerYear).toBeLessThanOrEqual(8760 + 1e-6);
        }
        expect(Math.min(...found.lowestSocFracByMonth)).toBeGreaterThan(-1e-12);
      }),
      RUNS,
    );
  });
});

describe("without a band between thresholds", () => {
  it("more panel or less load never darkens any tier by more than cold and self-discharge explain", () => {
    fc.assert(
      fc.property(recipe, between(1, 2), (given, ratio) => {
        const post = made(given, { isBanded: false, losesByItself: true });
        const base = darkHours(post);
        for (const better of [withPanel(post, ratio), withLoad(post, 1 / ratio)]) {
          for (const [i, hours] of darkHours(better).entries()) {
            // three in 1200 broke the bare law, by 0.05 % at most: where a tier was fed longer the bank met a cold hour emptier
            expect(hours).toBeLessThanOrEqual(base[i]! * (1 + COLD_FRAC) + ROUNDING_H);
          }
        }
      }),
      RUNS,
    );
  });
  it("a larger bank, at a steady temperature and keeping its charge, never darkens the tier that is shed last", () => {
    fc.assert(
      fc.property(recipe, between(1, 2), (given, ratio) => {
        // a larger bank that was emptied in warmth stands deeper below what can be drawn when the cold comes
        const changing = made(given, { isBanded: false, losesByItself: false });
        const bank = { ...changing.bank, tempC: changing.bank.tempC.map(() => given.winterC) };
        const post = { ...changing, bank };
        const base = simulateBalance(post);
        const larger = simulateBalance(withBank(post, ratio));
        // the controller is the last of all: where it starves, its own draw empties the bank below the tiers' thresholds
        const rules = (found: typeof base): number =>
          base.controllerDarkHoursPerYear > 0
            ? found.controllerDarkHoursPerYear
            : found.tiers[0]!.darkHoursPerYear;
        expect(rules(larger)).toBeLessThanOrEqual(rules(base) + ROUNDING_H);
      }),
      RUNS,
    );
  });
});

describe("with a band", () => {
  it("more panel or less load darkens the tier shed last by no more than a band's worth for each return", () => {
    fc.assert(
      fc.property(recipe, between(1, 1.5), (given, ratio) => {
        const post = made(given, { isBanded: true, losesByItself: true });
        const before = simulateBalance(post);
        const bandH = (given.bandFrac * post.bank.nominalV * given.ratedAh) / given.watts;
        const returns = before.returnsPerYear + 2;
        for (const better of [withPanel(post, ratio), withLoad(post, 1 / ratio)]) {
          const after = simulateBalance(better).tiers[0]!;
          expect(after.darkHoursPerYear).toBeLessThanOrEqual(
            before.tiers[0]!.darkHoursPerYear + ratio * bandH * returns + ROUNDING_H,
          );
        }
      }),
      RUNS,
    );
  });
  it("a larger bank, at a steady temperature and keeping its charge, does so by no more either", () => {
    fc.assert(
      fc.property(recipe, between(1, 1.5), (given, ratio) => {
        const changing = made(given, { isBanded: true, losesByItself: false });
        const bank = { ...changing.bank, tempC: changing.bank.tempC.map(() => given.winterC) };
        const post = { ...changing, bank };
        const before = simulateBalance(post);
        fc.pre(before.controllerDarkHoursPerYear === 0);
        const bandH = (given.bandFrac * post.bank.nominalV * given.ratedAh) / given.watts;
        const returns = before.returnsPerYear + 2;
        expect(simulateBalance(withBank(post, ratio)).tiers[0]!.darkHoursPerYear).toBeLessThanOrEqual(
          before.tiers[0]!.darkHoursPerYear + ratio * bandH * returns + ROUNDING_H,
        );
      }),
      RUNS,
    );
  });
});

describe("the result does not hang on", () => {
  it("the order in which loads are listed, to the last bit", () => {
    fc.assert(
      fc.property(recipe, fc.boolean(), fc.integer({ min: 0, max: 5 }), (given, isBanded, turn) => {
        const post = made(given, { isBanded, losesByItself: true });
        const third = { ...post.loads[1]!, name: "lamp" };
        const loads = [...post.loads, third];
        const turned = [
          loads[turn % 3]!,
          loads[(turn + (turn > 2 ? 2 : 1)) % 3]!,
          loads[(turn + (turn > 2 ? 1 : 2)) % 3]!,
        ];
        expect(simulateBalance({ ...post, loads: turned })).toEqual(simulateBalance({ ...post, loads }));
      }),
      { numRuns: 15 },
    );
  });
  it("the step: halved, dark hours move by less than 5 % or an hour", () => {
    fc.assert(
      fc.property(recipe, fc.boolean(), (given, isBanded) => {
        const post = made(given, { isBanded, losesByItself: true });
        const whole = darkHours(post);
        const halved = simulateBalance({ ...post, stepsPerHour: 2 });
        for (const [i, { darkHoursPerYear }] of halved.tiers.entries()) {
          expect(Math.abs(darkHoursPerYear - whole[i]!)).toBeLessThanOrEqual(Math.max(1, 0.05 * whole[i]!));
        }
      }),
      RUNS,
    );
  });
});
