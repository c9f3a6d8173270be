/** How the weather years are run, and what a simulated pair must be beside reliable. */

import type { TopicId } from "../brief.ts";

/** How much is run through, and how finely pairs are tried. */
export interface Effort {
  readonly years: number;
  /** Least and most panel power that is tried, over what the handbook asks. */
  readonly arrayRatios: readonly [number, number];
  /** Each array that is tried is larger than the one before by about this; layouts that come out alike are tried once. */
  readonly arrayStepRatio: number;
  /** The same for banks. */
  readonly bankStepRatio: number;
}

/**
 * A dull spell that comes once in ten years is met three times; pairs differ by no more than sold sizes do.
 * @source judgement
 */
export const FULL_EFFORT: Effort = {
  years: 30,
  arrayRatios: [0.5, 2.4],
  arrayStepRatio: 1.08,
  bankStepRatio: 1.1,
};

/** While most of what is drawn is still to come, nobody should wait for the last digit. @source judgement */
export const FIRST_EFFORT: Effort = {
  years: 10,
  arrayRatios: [0.5, 2.4],
  arrayStepRatio: 1.25,
  bankStepRatio: 1.4,
};
const FIRST_TOPICS: readonly TopicId[] = ["loads", "hours"];

export const effortOf = (openTopics: readonly TopicId[]): Effort =>
  FIRST_TOPICS.some((topic) => openTopics.includes(topic)) ? FIRST_EFFORT : FULL_EFFORT;

/** Any would do; a fixed one gives the same brief the same figures. */
export const WEATHER_SEED = 20_260;

/**
 * No simulated bank lasts less than this without any sun: dirt, a fault or a forgotten branch are in no weather year.
 * @source AS/NZS 4509.2:2010: two to five days at least, as quoted by an Australian training body
 */
export const LEAST_SIMULATED_DAYS = 2;

/** A boxed bank follows the air with this delay. @source judgement: tens of kilos of lead in an insulated box */
export const BANK_LAG_H = 24;

/**
 * Where the bank bridges dark months the handbook's array is sized for the bright ones only. Larger ones catch what light the dim
 * months have, and so shorten the bridge.
 * @source judgement
 */
export const MOST_ARRAY_RATIO_WHERE_BRIDGED = 11;
/** From the largest array that others are tried with up to that. @source judgement */
export const ARRAY_STEP_RATIO_WHERE_BRIDGED = 1.25;
/** Banks are tried up to so many times the handbook's, if that is more than the days below. @source judgement */
export const MOST_BANK_RATIO = 1.5;
/**
 * The handbook's bank of months counts neither age nor the builder's margin nor what it loses by itself in the meantime. Larger
 * ones are tried up to so many times its size.
 * @source judgement
 */
export const MOST_BANK_RATIO_WHERE_BRIDGED = 2.5;
/**
 * Banks are tried up to so many days of the heaviest load, or to the handbook's own size. Under long snow the dull season
 * is as long as a polar one.
 * @source UNAVCO article 190 (2007): 90 days at 60 degrees, where its table begins
 */
export const MOST_SIMULATED_DAYS = 90;
