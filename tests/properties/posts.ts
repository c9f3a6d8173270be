// Posts for the laws: every chemistry, one to four tiers, bands, heaters, both kinds of controller. None was ever built.
import fc from "fast-check";
import {
  BANK_TRAITS,
  type BalancePlant,
  type Chemistry,
  type LoadTier,
} from "../../src/core/energy/index.ts";
import { type Switching, switchingOf } from "../../src/design/practice/switching.ts";
import { weather } from "../core/energy/balance/weather.ts";

export type Post = BalancePlant & { readonly years: number };

/** Evenly over the values. */
export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((i) => min + ((max - min) * i) / 10_000);

export const recipe = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  winterC: between(-20, 10),
  chemistry: fc.constantFrom<Chemistry>("lead-vented", "lead-agm", "lead-gel", "lifepo4"),
  controller: fc.constantFrom("mppt", "mppt", "pwm"),
  watts: between(2, 20),
  tierCount: fc.integer({ min: 1, max: 4 }),
  /** What the array gives in a mean hour, over what all loads take. */
  sunRatio: between(2, 6),
  /** Days that the bank's rating is worth. */
  days: between(1.5, 10),
  healthFrac: between(0.5, 1),
  ownW: between(0, 0.6),
  lossPerMonthFrac: between(0, 0.1),
  offFrac: between(0.1, 0.5),
  bandFrac: between(0.01, 0.25),
  earlierFrac: between(0, 0.12),
  isBankHeated: fc.boolean(),
  isThermostat: fc.boolean(),
});
export type Recipe = typeof recipe extends fc.Arbitrary<infer R> ? R : never;

export interface Rules {
  /** "shipped": as the design sets its tiers. */
  readonly bands?: "none" | "made up" | "shipped";
  /** At one temperature, keeping its charge. */
  readonly isSteady?: boolean;
  readonly years?: number;
}

/** Watts by tier over those of the first. */
const SHARES = [1, 0.6, 0.35, 0.5];

export function postOf(given: Recipe, rules: Rules = {}): Post {
  const years = rules.years ?? 1;
  const { outputRatio, ambientTempC } = weather({ seed: given.seed, years, winterC: given.winterC });
  const shares = SHARES.slice(0, given.tierCount);
  const meanW = given.watts * shares.reduce((all, share) => all + share, given.isThermostat ? 0.3 : 0);
  const meanRatio = outputRatio.reduce((all, ratio) => all + ratio, 0) / outputRatio.length;
  const ratedW = (given.sunRatio * meanW) / meanRatio;
  const nominalV = given.chemistry === "lifepo4" ? 12.8 : 12;
  const isLossy = !(rules.isSteady ?? false);
  const heater = { heaterW: 0.4 * given.watts, thermostatTempC: 5, heatLossWPerK: 0.02 * given.watts };
  return {
    years,
    pv:
      given.controller === "mppt"
        ? { kind: "mppt", outputRatio, ratedW }
        : { kind: "pwm", outputRatio, ratedA: ratedW / 13, strings: 1 },
    bank: {
      chemistry: given.chemistry,
      nominalV,
      ratedAh: (24 * given.days * meanW) / nominalV,
      healthFrac: given.healthFrac,
      tempC: isLossy ? ambientTempC : new Float64Array(ambientTempC.length).fill(given.winterC),
      traits: {
        ...BANK_TRAITS[given.chemistry],
        selfDischargePerMonthFrac: isLossy ? given.lossPerMonthFrac : 0,
      },
      ...(given.isBankHeated ? { heater } : {}),
    },
    controller: { efficiencyFrac: 0.95, maxOutputA: 1000, ownW: given.ownW },
    ambientTempC,
    loads: shares.map((share, i) => tierOf(given, rules, share * given.watts, i)),
  };
}

/** Off and on of the tier shed last, and of each before it as much earlier as the design has it. */
export function shippedSwitching(offFrac: number, i: number): Switching {
  const { main, early } = switchingOf(1 - offFrac);
  return {
    offSocFrac: main.offSocFrac + i * (early.offSocFrac - main.offSocFrac),
    backSocFrac: Math.min(0.95, main.backSocFrac + i * (early.backSocFrac - main.backSocFrac)),
  };
}

function tierOf(given: Recipe, { bands = "made up" }: Rules, watts: number, i: number): LoadTier {
  const shipped = shippedSwitching(given.offFrac, i);
  const shedBelowSocFrac = bands === "shipped" ? shipped.offSocFrac : given.offFrac + i * given.earlierFrac;
  const backSocFrac = {
    none: shedBelowSocFrac,
    shipped: shipped.backSocFrac,
    "made up": shedBelowSocFrac + given.bandFrac,
  }[bands];
  return {
    name: ["picture", "link", "lamp", "extras"][i]!,
    priority: i + 1,
    wattsByHourOfYear: new Float64Array(8760).map((_, hour) =>
      hour % 24 < 7 || hour % 24 > 17 ? 1.3 * watts : 0.7 * watts,
    ),
    shedBelowSocFrac,
    returnAboveSocFrac: Math.min(0.95, backSocFrac),
    ...(given.isThermostat && i % 2 === 0
      ? {
          byAmbient: [
            { runs: "below", tempC: 0, watts: 0.5 * watts },
            { runs: "above", tempC: 22, watts: 0.2 * watts },
          ],
        }
      : {}),
  };
}

export function withPanel(post: Post, ratio: number): Post {
  const { pv } = post;
  return {
    ...post,
    pv: pv.kind === "mppt" ? { ...pv, ratedW: pv.ratedW * ratio } : { ...pv, ratedA: pv.ratedA * ratio },
  };
}

export function withBank(post: Post, ratio: number): Post {
  return { ...post, bank: { ...post.bank, ratedAh: post.bank.ratedAh * ratio } };
}

export function withLoad(post: Post, ratio: number): Post {
  return {
    ...post,
    loads: post.loads.map((one) => ({
      ...one,
      wattsByHourOfYear: one.wattsByHourOfYear.map((watts) => watts * ratio),
      ...(one.byAmbient === undefined
        ? {}
        : { byAmbient: one.byAmbient.map((load) => ({ ...load, watts: load.watts * ratio })) }),
    })),
  };
}
