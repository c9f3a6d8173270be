// Weather made up for the laws and the bench: no place has it. Seeded, so that a failure can be seen again.
import type { BalancePlant, LoadTier } from "../../../../src/core/energy/index.ts";

/** Numbers from 0 to 1 in an order fixed by the seed (linear congruence modulo 2^32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Sun with seasons and dull spells, power over rating; and air that is cold in winter and at night. */
export function weather(given: {
  readonly seed: number;
  readonly years: number;
  readonly winterC?: number;
}): {
  readonly outputRatio: Float64Array;
  readonly ambientTempC: Float64Array;
} {
  const next = seeded(given.seed);
  const hours = given.years * 8760;
  const outputRatio = new Float64Array(hours);
  const ambientTempC = new Float64Array(hours);
  const winterC = given.winterC ?? 0;
  let clear = 0.5;
  let mildK = 0;
  for (let hour = 0; hour < hours; hour++) {
    const day = Math.floor(hour / 24);
    const season = -Math.cos((2 * Math.PI * ((day % 365) + 10)) / 365);
    if (hour % 24 === 0) {
      clear = Math.min(1, Math.max(0.03, 0.6 * clear + 0.8 * next() - 0.1));
      mildK = 0.8 * mildK + 4 * (next() - 0.5);
    }
    const height = Math.sin((Math.PI * ((hour % 24) - 6)) / 12) * (0.7 + 0.2 * season) - 0.1 + 0.1 * season;
    outputRatio[hour] = Math.max(0, height) * clear;
    ambientTempC[hour] =
      winterC + 10 * (1 + season) + mildK + 5 * Math.sin((Math.PI * ((hour % 24) - 9)) / 12);
  }
  return { outputRatio, ambientTempC };
}

export const LOSSLESS = {
  chargeEfficiencyFrac: 1,
  dischargeEfficiencyFrac: 1,
  selfDischargePerMonthFrac: 0,
  maxChargeCRate: 1e6,
  acceptanceH: 0,
} as const;

export const steady = (watts: number): Float64Array => new Float64Array(8760).fill(watts);

export const tier = (given: Partial<LoadTier> & { readonly watts?: number }): LoadTier => ({
  name: given.name ?? "all",
  priority: given.priority ?? 1,
  wattsByHourOfYear: given.wattsByHourOfYear ?? steady(given.watts ?? 10),
  shedBelowSocFrac: given.shedBelowSocFrac ?? 0,
  returnAboveSocFrac: given.returnAboveSocFrac ?? given.shedBelowSocFrac ?? 0,
  ...(given.byAmbient === undefined ? {} : { byAmbient: given.byAmbient }),
});

/** A post of common size, about 20 W, with two tiers and real losses. */
export function typicalPlant(given: {
  readonly seed: number;
  readonly years: number;
  readonly winterC?: number;
}): BalancePlant & { readonly years: number } {
  const { outputRatio, ambientTempC } = weather(given);
  return {
    years: given.years,
    pv: { kind: "mppt", outputRatio, ratedW: 260 },
    bank: { chemistry: "lead-agm", nominalV: 24, ratedAh: 150, healthFrac: 0.9, tempC: ambientTempC },
    controller: { efficiencyFrac: 0.96, maxOutputA: 20, ownW: 1 },
    loads: [
      tier({ name: "link", watts: 8, shedBelowSocFrac: 0.3, returnAboveSocFrac: 0.45 }),
      tier({ name: "camera", priority: 2, watts: 12, shedBelowSocFrac: 0.5, returnAboveSocFrac: 0.65 }),
    ],
  };
}
