import { within } from "../../numerics/index.ts";

/** How far two sources are apart in the month that sizes. */
export interface ComparedSources {
  /** 0 = January. */
  readonly month: number;
  readonly firstKWhPerM2: number;
  readonly secondKWhPerM2: number;
  /** What the brighter has more than the duller, over the duller. */
  readonly differenceFrac: number;
  /** Up to a tenth, up to a quarter, more: then the builder has to say which to trust. */
  readonly agreement: "agree" | "caution" | "choose";
  /** Of the two by that month; the first where they are equal. */
  readonly lower: "first" | "second";
}

/** @source common practice, no source */
export const CAUTION_ABOVE_FRAC = 0.1;
export const CHOOSE_ABOVE_FRAC = 0.25;

/** Below this a month is dark and a difference counts as if it were this bright: 0 against 0.02 is no quarrel. */
const DARK_KWH_PER_M2 = 0.1;

/**
 * Two sources of monthly irradiation beside each other.
 *
 * @param sources.firstGhiDailyKWhPerM2ByMonth, secondGhiDailyKWhPerM2ByMonth  12 entries each, 0 to 15
 * @param sources.month  the sizing month, 0 to 11
 * @throws RangeFault outside the ranges above
 */
export function comparedSources(sources: {
  readonly firstGhiDailyKWhPerM2ByMonth: readonly number[];
  readonly secondGhiDailyKWhPerM2ByMonth: readonly number[];
  readonly month: number;
}): ComparedSources {
  within("months of firstGhiDailyKWhPerM2ByMonth", sources.firstGhiDailyKWhPerM2ByMonth.length, 12, 12);
  within("months of secondGhiDailyKWhPerM2ByMonth", sources.secondGhiDailyKWhPerM2ByMonth.length, 12, 12);
  const month = within("month", sources.month, 0, 11);
  const first = within("ghiDailyKWhPerM2", sources.firstGhiDailyKWhPerM2ByMonth[month]!, 0, 15);
  const second = within("ghiDailyKWhPerM2", sources.secondGhiDailyKWhPerM2ByMonth[month]!, 0, 15);
  const differenceFrac = Math.abs(first - second) / Math.max(DARK_KWH_PER_M2, Math.min(first, second));
  // 3.3 against 3 is a tenth, whatever the last bit says
  const isAbove = (limitFrac: number): boolean => differenceFrac > limitFrac + 1e-9;
  return {
    month,
    firstKWhPerM2: first,
    secondKWhPerM2: second,
    differenceFrac,
    agreement: isAbove(CHOOSE_ABOVE_FRAC) ? "choose" : isAbove(CAUTION_ABOVE_FRAC) ? "caution" : "agree",
    lower: second < first ? "second" : "first",
  };
}
