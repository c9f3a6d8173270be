import { clamp, within } from "../numerics/index.ts";

/**
 * Sunset hour angle that divides winter from the other seasons in the Erbs daily and monthly correlations.
 */
const WINTER_SUNSET_DEG = 81.4;

/**
 * Diffuse share of the global horizontal irradiation of a month.
 *
 * The correlation is given for a clearness index of 0.3 to 0.8. Above, its value at 0.8 is held. Below, a
 * straight line runs from its value at 0.3 to 1 at 0: our own choice (holding the value would promise beam
 * light in the dullest winters); the line stays within 0.03 of Page's correlation 1 - 1.13 K in the winter
 * season.
 *
 * @param month.clearnessIndex       0 to 1.2: global over extraterrestrial irradiation, both level
 * @param month.sunsetHourAngleDeg   0 to 180, of the month's mean day
 * @returns fraction, 0 to 1
 * @throws RangeFault outside the ranges above
 * @source Erbs, Klein and Duffie 1982, monthly form; Duffie and Beckman eq. 2.12.1 (coefficients from memory;
 *         they give that book's worked 0.41 at an index of 0.48)
 */
export function monthlyDiffuseFrac(month: {
  readonly clearnessIndex: number;
  readonly sunsetHourAngleDeg: number;
}): number {
  const index = within("clearnessIndex", month.clearnessIndex, 0, 1.2);
  const isWinter = within("sunsetHourAngleDeg", month.sunsetHourAngleDeg, 0, 180) <= WINTER_SUNSET_DEG;
  const k = clamp(index, 0.3, 0.8);
  const frac = isWinter
    ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3
    : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3;
  return index < 0.3 ? 1 - ((1 - frac) * index) / 0.3 : frac;
}

/**
 * Diffuse share of the global horizontal irradiation of a day.
 *
 * @param day.clearnessIndex       0 to 1.2
 * @param day.sunsetHourAngleDeg   0 to 180
 * @returns fraction, 0 to 1
 * @throws RangeFault outside the ranges above
 * @source Erbs, Klein and Duffie 1982, daily form; Duffie and Beckman eq. 2.11.1
 */
export function dailyDiffuseFrac(day: {
  readonly clearnessIndex: number;
  readonly sunsetHourAngleDeg: number;
}): number {
  const k = within("clearnessIndex", day.clearnessIndex, 0, 1.2);
  const isWinter = within("sunsetHourAngleDeg", day.sunsetHourAngleDeg, 0, 180) <= WINTER_SUNSET_DEG;
  if (isWinter) {
    return k < 0.715 ? 1 - 0.2727 * k + 2.4495 * k ** 2 - 11.9514 * k ** 3 + 9.3879 * k ** 4 : 0.143;
  }
  // as printed it passes 1 by up to 0.008 below an index of 0.11
  return k < 0.722 ? Math.min(1, 1 + 0.2832 * k - 2.5557 * k ** 2 + 0.8448 * k ** 3) : 0.175;
}

/**
 * Diffuse share of the global horizontal irradiance of an hour.
 *
 * @param clearnessIndex  0 to 2 (broken cloud can lift a single hour above 1)
 * @returns fraction, 0.165 to 1
 * @throws RangeFault outside the range above
 * @source Erbs, Klein and Duffie 1982, Solar Energy 28, 293; Duffie and Beckman eq. 2.10.1
 */
export function hourlyDiffuseFrac(clearnessIndex: number): number {
  const k = within("clearnessIndex", clearnessIndex, 0, 2);
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k <= 0.8) return 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4;
  return 0.165;
}

/**
 * Diffuse share of the global horizontal irradiation of a day, without seasons.
 *
 * @param clearnessIndex  0 to 1.2
 * @returns fraction, 0.2 to 0.99
 * @throws RangeFault outside the range above
 * @source Collares-Pereira and Rabl 1979; Duffie and Beckman 2nd edition prints 21.865 for the cubic term
 *         (from memory), another printing has 21.856: at most 0.004 apart
 */
export function collaresPereiraRablDiffuseFrac(clearnessIndex: number): number {
  const k = within("clearnessIndex", clearnessIndex, 0, 1.2);
  if (k <= 0.17) return 0.99;
  if (k < 0.75) return 1.188 - 2.272 * k + 9.473 * k ** 2 - 21.865 * k ** 3 + 14.648 * k ** 4;
  return k < 0.8 ? 0.632 - 0.54 * k : 0.2;
}
