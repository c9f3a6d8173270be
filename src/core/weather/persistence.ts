import { clamp, mean, within } from "../numerics/index.ts";
import { DAYS_A_YEAR, MONTH_OF_DAY, twelveWithin } from "./calendar.ts";
import { normalOfShare } from "./gauss.ts";
import { AGUIAR_CLASSES, GRAHAM_HOLLANDS_LAG1, LEAST_LAG1, MOST_LAG1 } from "./tables.ts";

/**
 * How much a day's clearness is like the day's before, where nobody measured it: the correlation of neighbouring days
 * after their values have been turned into normal scores.
 *
 * A straight line through the classes of Aguiar, Collares-Pereira and Conde by least squares, moved so that it passes
 * Graham and Hollands' single value at their middle, and held between 0.05 and 0.40. Dull months remember more. The
 * class of 0.30 to 0.35 is left out: its 0.02 is an accident of few months.
 *
 * @param clearnessIndex  of the month, 0 to 1
 * @returns correlation, 0.05 to 0.40
 * @accuracy 0.1: single years at dry inland places had 0.09 to 0.16, at a damp one 0.30
 * @throws RangeFault outside the range above
 * @source Aguiar, Collares-Pereira and Conde 1988, Solar Energy 40, 269 (statistics worked from its matrices, see
 *         tables.ts); Graham and Hollands 1990, Solar Energy 44, 333 (from memory). Taking the first as normal scores
 *         although they are of the index itself is our simplification
 */
export function usualLag1(clearnessIndex: number): number {
  const index = within("clearnessIndex", clearnessIndex, 0, 1);
  const classes = AGUIAR_CLASSES.filter(({ isSmallSample }) => !isSmallSample);
  const middleIndex = mean(classes.map((each) => each.meanClearnessIndex));
  const middleLag1 = mean(classes.map((each) => each.lag1));
  let rise = 0;
  let run = 0;
  for (const { meanClearnessIndex, lag1 } of classes) {
    rise += (meanClearnessIndex - middleIndex) * (lag1 - middleLag1);
    run += (meanClearnessIndex - middleIndex) ** 2;
  }
  return clamp(GRAHAM_HOLLANDS_LAG1 + (rise / run) * (index - middleIndex), LEAST_LAG1, MOST_LAG1);
}

/** A month of one year says little: it counts as its days against this many of the whole record's. */
const RECORD_WEIGHT_DAYS = 60;
/** And the whole record counts against this many days of the usual value: one year moves it most of the way. */
const USUAL_WEIGHT_DAYS = 90;

/**
 * Correlation of neighbouring days in a record, month by month.
 *
 * Normal scores of the days' clearness within each month of each year; months are not joined, because a typical year
 * splices months of different years. A month of some thirty days by itself is uncertain by 0.18, so each is drawn
 * toward the record and the record toward usualLag1; weights are our choice. The known downward bias of a short
 * record is put back.
 *
 * @param record.clearnessIndexByDay  one or more years of 365 days, each 0 to 1.2; NaN where there is no sun
 * @param record.clearnessIndexByMonth  0 to 1 each
 * @returns twelve correlations, 0 to 0.6
 * @throws RangeFault outside the ranges above
 * @source bias -(1 + 3 r) / n of a series whose mean is its own: Marriott and Pope 1954, Biometrika 41, 390
 */
export function measuredLag1ByMonth(record: {
  readonly clearnessIndexByDay: ArrayLike<number>;
  readonly clearnessIndexByMonth: readonly number[];
}): readonly number[] {
  const usual = twelveWithin("clearnessIndexByMonth", record.clearnessIndexByMonth, 0, 1).map(usualLag1);
  const products = new Float64Array(12);
  const pairs = new Float64Array(12);
  const values = record.clearnessIndexByDay;
  let from = 0;
  for (let day = 1; day <= values.length; day += 1) {
    const month = MONTH_OF_DAY[from % DAYS_A_YEAR]!;
    if (day < values.length && MONTH_OF_DAY[day % DAYS_A_YEAR] === month) continue;
    const spell = Array.from({ length: day - from }, (_, i) => values[from + i]!);
    from = day;
    // below a dozen days of sun there is no correlation to speak of
    if (spell.filter(Number.isFinite).length < 12) continue;
    const scores = normalScores(spell);
    let product = 0;
    let square = 0;
    let lit = 0;
    scores.forEach((score, i) => {
      if (!Number.isFinite(score)) return;
      square += score * score;
      lit += 1;
      if (i > 0 && Number.isFinite(scores[i - 1]!)) product += score * scores[i - 1]!;
    });
    const r = square > 0 ? (product / square) * (lit / (lit - 1)) : 0;
    products[month]! += (r + (1 + 3 * r) / lit) * lit;
    pairs[month]! += lit;
  }
  const allPairs = pairs.reduce((total, count) => total + count, 0);
  const usualMean = mean(usual);
  const recordLag1 =
    (products.reduce((total, product) => total + product, 0) + USUAL_WEIGHT_DAYS * usualMean) /
    (allPairs + USUAL_WEIGHT_DAYS);
  return usual.map((usualOfMonth, month) => {
    const expected = recordLag1 + usualOfMonth - usualMean;
    const drawn = (products[month]! + RECORD_WEIGHT_DAYS * expected) / (pairs[month]! + RECORD_WEIGHT_DAYS);
    return clamp(drawn, 0, 0.6);
  });
}

/** Each value's place among its fellows as a normal deviate; equal values share their places; NaN stays NaN. */
function normalScores(values: readonly number[]): readonly number[] {
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  return values.map((value) => {
    if (!Number.isFinite(value)) return Number.NaN;
    const first = sorted.indexOf(value);
    const last = sorted.lastIndexOf(value);
    return normalOfShare(((first + last) / 2 + 0.5) / sorted.length);
  });
}
