/** What a word for a day to come is worth, and the battery it falls on. */
import { mean } from "../../core/numerics/index.ts";

export type SkyKind = "sunny" | "partly" | "overcast" | "rain";

/**
 * Which sixteenths of the month's days, dullest first (0 to 15), a word stands for: an eighth of all days is rain, a quarter
 * each is overcast or sunny, the rest lies between. Together they are the whole month.
 * @source judgement: a forecast's words have no measure; whoever has a figure in kWh/m2 gives that
 */
const SIXTEENTHS: Readonly<Record<SkyKind, readonly [from: number, to: number]>> = {
  rain: [0, 1],
  overcast: [2, 5],
  partly: [6, 11],
  sunny: [12, 15],
};

/**
 * Irradiation of a day of that kind over the month's mean.
 *
 * @param quantiles  sixteen equally likely daily irradiations over the month's mean, dullest first
 */
export function skyRatio(kind: SkyKind, quantiles: readonly number[]): number {
  const [from, to] = SIXTEENTHS[kind];
  return mean(quantiles.slice(from, to + 1));
}

/** Half way from new to the end of its life: nobody has measured the bank that stands there. @source judgement */
export const PRESENT_HEALTH_FRAC = 0.9;

/**
 * A voltage at rest outside these, over the bank's nominal one, was read while it was charged, or belongs to another bank.
 * @source judgement: lead-acid rests at 0.96 to 1.06, lithium iron phosphate at 0.87 to 1.07; the same with room
 */
export const REST_V_RATIO = { least: 0.8, most: 1.15 } as const;
