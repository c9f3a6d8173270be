/** How a panel on a post is set up, and what snow takes from it. */
import { clamp, sum } from "../../core/numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import type { ByMonth } from "../design.ts";

/** Flatter glass keeps its dirt. @source common practice, no source: at least 10 to 15 degrees */
export const LEAST_TILT_DEG = 15;

/**
 * The panel is laid back from the tilt that is best for the worst month's mean by as much as costs that month no more than this:
 * dull days, which empty the bank, are brighter on it.
 * @source judgement, from thirty weather years with the same parts at eleven places: 0, 1, 2 and 5 % left 1709, 1609, 1583 and
 *         1553 dark hours together, and at 2 % no place was darker by more than an hour
 */
export const GENTLE_TILT_LOSS_FRAC = 0.02;

/** From this share of a month on snow is worth naming as a cause. @source judgement */
export const MUCH_SNOW_FRAC = 0.3;

/** Where snow lies for weeks it must slide. @source common practice, no source: steeper where snow falls, 45 degrees and more */
export const SNOWY_LEAST_TILT_DEG = 45;
/** From so many weeks of snow a year on. @source judgement */
export const SNOWY_WEEKS = 2;

/** @source common practice, no source; fresh snow reflects more, which is not counted on */
export const ALBEDO = 0.2;

/** Snow is spread over the months whose mean is below this, and over the three coldest at least. @source judgement */
export const SNOW_MONTH_TEMP_C = 1;

/** Even in the snowiest month the panel is taken to be bare for a tenth of the days. @source judgement */
export const MOST_SNOW_FRAC = 0.9;

/**
 * Share of each month in which snow lies on the panel, from the weeks a year the builder named.
 * @source judgement: the weeks spread evenly over the frost months
 */
export function snowFracByMonth(winter: {
  readonly snowWeeks: number;
  readonly meanTempCByMonth: ByMonth;
}): ByMonth {
  const { snowWeeks, meanTempCByMonth } = winter;
  if (snowWeeks <= 0) return meanTempCByMonth.map(() => 0);
  const thirdColdestC = meanTempCByMonth.toSorted((a, b) => a - b)[2]!;
  const limitC = Math.max(SNOW_MONTH_TEMP_C, thirdColdestC);
  const isSnowy = meanTempCByMonth.map((tempC) => tempC <= limitC);
  const days = sum(MEAN_DAY_BY_MONTH.map((month, i) => (isSnowy[i] ? month.days : 0)));
  const frac = clamp((snowWeeks * 7) / days, 0, MOST_SNOW_FRAC);
  return isSnowy.map((snowy) => (snowy ? frac : 0));
}
