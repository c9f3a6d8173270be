/**
 * Solar constant of the classical handbook tables.
 *
 * @source Duffie and Beckman, Solar Engineering of Thermal Processes, section 1.2; FAO-56 uses the same value
 *         (0.0820 MJ/m2/min). Newer measurements lie near 1361; daily and monthly ratios do not depend on it.
 */
export const SOLAR_CONSTANT_W_PER_M2 = 1367;

/** One month, as the mean-day method sees it. */
export interface MeanDay {
  /** Day of the year (1 = 1 January) whose extraterrestrial irradiation is nearest to the month's mean. */
  readonly dayOfYear: number;
  readonly firstDayOfYear: number;
  readonly days: number;
}

/**
 * Mean day of each month, January first.
 *
 * @source Klein 1977 (Solar Energy 19, 325), recommended average days; Duffie and Beckman table 1.6.1
 */
export const MEAN_DAY_BY_MONTH: readonly MeanDay[] = [
  { dayOfYear: 17, firstDayOfYear: 1, days: 31 },
  { dayOfYear: 47, firstDayOfYear: 32, days: 28 },
  { dayOfYear: 75, firstDayOfYear: 60, days: 31 },
  { dayOfYear: 105, firstDayOfYear: 91, days: 30 },
  { dayOfYear: 135, firstDayOfYear: 121, days: 31 },
  { dayOfYear: 162, firstDayOfYear: 152, days: 30 },
  { dayOfYear: 198, firstDayOfYear: 182, days: 31 },
  { dayOfYear: 228, firstDayOfYear: 213, days: 31 },
  { dayOfYear: 258, firstDayOfYear: 244, days: 30 },
  { dayOfYear: 288, firstDayOfYear: 274, days: 31 },
  { dayOfYear: 318, firstDayOfYear: 305, days: 30 },
  { dayOfYear: 344, firstDayOfYear: 335, days: 31 },
];
