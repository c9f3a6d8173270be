/** How the weather years are run, and what a simulated pair must be beside reliable. */

import type { TopicId } from "../brief.ts";

/** How much is run through, and how finely pairs are tried. */
export interface Effort {
  readonly years: number;
  /** Panel powers that are tried, over what the handbook asks. */
  readonly arrayRatios: readonly number[];
  /** Each bank that is tried is larger than the one before by about this. */
  readonly bankStepRatio: number;
}

/**
 * A dull spell that comes once in ten years is met three times; pairs differ by no more than sold sizes do.
 * @source judgement
 */
export const FULL_EFFORT: Effort = {
  years: 30,
  arrayRatios: [0.5, 0.65, 0.8, 1, 1.25, 1.55, 1.9, 2.4],
  bankStepRatio: 1.25,
};

/** While answers that move the sizes are still to come, nobody should wait for the last digit. @source judgement */
export const FIRST_EFFORT: Effort = {
  years: 10,
  arrayRatios: [0.6, 0.8, 1, 1.3, 1.8],
  bankStepRatio: 1.4,
};
export const MOVING_TOPICS: readonly TopicId[] = ["loads", "hours", "autonomy", "power"];

/** Any would do; a fixed one gives the same brief the same figures. */
export const WEATHER_SEED = 20_260;

/**
 * No simulated bank lasts less than this without any sun: dirt, a fault or a forgotten branch are in no weather year.
 * @source AS/NZS 4509.2:2010: two to five days at least, as quoted by an Australian training body
 */
export const LEAST_SIMULATED_DAYS = 2;

/** What is shed before the camera goes off while the bank still has this much more. @source judgement */
export const EARLY_SHED_FRAC = 0.1;
/** Loads come back when the bank has this much more than when they went off. @source judgement: 12.6 V after 11.5 V */
export const RECONNECT_BAND_FRAC = 0.15;

/** A boxed bank follows the air with this delay. @source judgement: tens of kilos of lead in an insulated box */
export const BANK_LAG_H = 24;

/**
 * Where the bank bridges dark months the handbook's array is sized for the bright ones only. Larger ones catch what light the dim
 * months have, and so shorten the bridge.
 * @source judgement
 */
export const MORE_ARRAY_RATIOS_WHERE_BRIDGED: readonly number[] = [3.5, 5, 7.5, 11];
/** Banks are tried up to so many days of the heaviest load, or to the handbook's own size. @source judgement */
export const MOST_SIMULATED_DAYS = 30;
