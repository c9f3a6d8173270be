import { interpolate, type SeededDraws, seededDraws } from "../numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../sun/index.ts";
import { DAYS_A_YEAR, meanByMonth } from "./calendar.ts";
import {
  HALF_SWING_KWH_PER_M2,
  RANGE_K_PER_INDEX_SQUARED,
  TEMPERATURE_LAG1,
  WIDEST_RANGE_K,
} from "./tables.ts";

/** Air temperature of a place as the generator sees it. */
export interface Ambient {
  /** Expected mean of each day of the year; its mean over a month is the month's. */
  readonly meanTempCByDay: Float64Array;
  /** Standard deviation of a day's mean about that. */
  readonly spreadKByDay: Float64Array;
}

/**
 * Course of the day over its range, hour 0 from midnight to one, solar time; mean 0, range 1.
 *
 * @source Erbs 1984, Fourier series of hourly normals; Duffie and Beckman section 9 (coefficients from memory)
 */
export const DAILY_SWING: Readonly<Float64Array> = Float64Array.from({ length: 24 }, (_, hour) => {
  const t = (2 * Math.PI * hour) / 24;
  return (
    0.4632 * Math.cos(t - 3.805) +
    0.0984 * Math.cos(2 * t - 0.36) +
    0.0168 * Math.cos(3 * t - 0.822) +
    0.0138 * Math.cos(4 * t - 3.513)
  );
});

const COLDEST_HOUR = DAILY_SWING.indexOf(Math.min(...DAILY_SWING));
const HOTTEST_HOUR = DAILY_SWING.indexOf(Math.max(...DAILY_SWING));

/** Range between a day's coldest and hottest hour. */
export function dailyRangeK(day: {
  readonly clearnessIndex: number;
  readonly extraterrestrialDailyKWhPerM2: number;
}): number {
  const outside = day.extraterrestrialDailyKWhPerM2;
  const rangeK = Math.min(WIDEST_RANGE_K, RANGE_K_PER_INDEX_SQUARED * day.clearnessIndex ** 2);
  return (rangeK * outside) / (outside + HALF_SWING_KWH_PER_M2);
}

/** Years that the spread is fitted over, of a seed of their own: the fit is the same whatever years are drawn. */
export const FIT_YEARS = 20;
export const FIT_SEED = 20_260;
const LEAST_SPREAD_K = 0.2;
const MOST_SPREAD_K = 15;

/**
 * Daily means and their spread, so that the lowest and the highest hour of a year lie on average over many years at the
 * two given temperatures. The spread goes over from its value in the coldest month to that in the hottest in step with
 * the mean temperature.
 *
 * Where even steady weather passes a given extreme the spread stays at 0.2 K and the extreme is overshot.
 *
 * @param place.rangeKByDay  daily ranges of FIT_YEARS years
 */
export function ambientOf(place: {
  readonly meanTempCByMonth: readonly number[];
  readonly designColdTempC: number;
  readonly designHotTempC: number;
  readonly rangeKByDay: Float64Array;
}): Ambient {
  const meanTempCByDay = smoothDays(place.meanTempCByMonth);
  const coldest = Math.min(...place.meanTempCByMonth);
  const hottest = Math.max(...place.meanTempCByMonth);
  const warmthByDay = meanTempCByDay.map((tempC) =>
    hottest > coldest ? Math.min(1, Math.max(0, (tempC - coldest) / (hottest - coldest))) : 0.5,
  );
  const anomalies = dailyAnomalies(seededDraws({ seed: FIT_SEED }), FIT_YEARS);
  /** Mean over the years of the lowest (side -1) or highest (side 1) hour. */
  const extremeTempC = (side: -1 | 1, coldK: number, hotK: number): number => {
    const hour = side < 0 ? COLDEST_HOUR : HOTTEST_HOUR;
    let total = 0;
    for (let year = 0; year < FIT_YEARS; year += 1) {
      let extreme = -Infinity;
      for (let day = 0; day < DAYS_A_YEAR; day += 1) {
        const spreadK = coldK + (hotK - coldK) * warmthByDay[day]!;
        const at = year * DAYS_A_YEAR + day;
        const tempC =
          meanTempCByDay[day]! +
          spreadK * anomalyAt(anomalies, at, hour) +
          place.rangeKByDay[at]! * DAILY_SWING[hour]!;
        extreme = Math.max(extreme, side * tempC);
      }
      total += side * extreme;
    }
    return total / FIT_YEARS;
  };
  let coldK = 5;
  let hotK = 3;
  for (let round = 0; round < 3; round += 1) {
    coldK = halved((spreadK) => extremeTempC(-1, spreadK, hotK) > place.designColdTempC);
    hotK = halved((spreadK) => extremeTempC(1, coldK, spreadK) < place.designHotTempC);
  }
  return { meanTempCByDay, spreadKByDay: warmthByDay.map((warmth) => coldK + (hotK - coldK) * warmth) };
}

/** Largest spread for which more is still needed. */
function halved(isTooNarrow: (spreadK: number) => boolean): number {
  let low = LEAST_SPREAD_K;
  let high = MOST_SPREAD_K;
  for (let i = 0; i < 10; i += 1) {
    const middle = (low + high) / 2;
    if (isTooNarrow(middle)) low = middle;
    else high = middle;
  }
  return low === LEAST_SPREAD_K ? low : (low + high) / 2;
}

/** Standard normal, each day's like the day's before. */
export function dailyAnomalies(draws: SeededDraws, years: number): Float64Array {
  const anomalies = new Float64Array(years * DAYS_A_YEAR);
  const fresh = Math.sqrt(1 - TEMPERATURE_LAG1 ** 2);
  let anomaly = draws.normal();
  for (let day = 0; day < anomalies.length; day += 1) {
    anomaly = TEMPERATURE_LAG1 * anomaly + fresh * draws.normal();
    anomalies[day] = anomaly;
  }
  return anomalies;
}

/** Straight from noon to noon, so that midnight brings no jump. */
export function anomalyAt(anomalies: Float64Array, day: number, hour: number): number {
  const here = anomalies[day]!;
  const away = (hour - 11.5) / 24;
  const beside = away < 0 ? (anomalies[day - 1] ?? here) : (anomalies[day + 1] ?? here);
  return here + (beside - here) * Math.abs(away);
}

/** A course of the year whose mean over each month is the month's; straight between the months' middles. */
function smoothDays(meanByMonthGiven: readonly number[]): Float64Array {
  const middles = MEAN_DAY_BY_MONTH.map(({ firstDayOfYear, days }) => firstDayOfYear - 1 + days / 2);
  const heights = [...meanByMonthGiven];
  const course = new Float64Array(DAYS_A_YEAR);
  // each round adds what the months still lack; twelve bring it below a thousandth
  for (let round = 0; round < 12; round += 1) {
    const points = middles.map((middle, month) => [middle, heights[month]!] as const);
    const closed = [
      [middles[11]! - DAYS_A_YEAR, heights[11]!] as const,
      ...points,
      [middles[0]! + DAYS_A_YEAR, heights[0]!] as const,
    ];
    for (let day = 0; day < DAYS_A_YEAR; day += 1) course[day] = interpolate(closed, day + 0.5);
    const found = meanByMonth(course);
    meanByMonthGiven.forEach((wanted, month) => {
      heights[month]! += wanted - found[month]!;
    });
  }
  return course;
}
