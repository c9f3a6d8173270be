/** A class of months in the library of day-to-day transitions. */
export interface AguiarClass {
  /** Of the monthly clearness index. */
  readonly belowIndex: number;
  /** Of the daily index in the class: mean, standard deviation and correlation with the day before. */
  readonly meanClearnessIndex: number;
  readonly sd: number;
  readonly lag1: number;
  /** The matrix was made of too few months to show memory. */
  readonly isSmallSample: boolean;
}

const ofClass = (
  belowIndex: number,
  meanClearnessIndex: number,
  sd: number,
  lag1: number,
  isSmallSample = false,
): AguiarClass => ({ belowIndex, meanClearnessIndex, sd, lag1, isSmallSample });

/**
 * Stationary statistics of the ten transition matrices, worked from the numbers of the library as shipped with the R
 * package solaR (data MTM; rows divided by their sums).
 *
 * @source Aguiar, Collares-Pereira and Conde 1988, Solar Energy 40, 269
 */
export const AGUIAR_CLASSES: readonly AguiarClass[] = [
  ofClass(0.3, 0.241, 0.156, 0.39),
  ofClass(0.35, 0.334, 0.167, 0.02, true),
  ofClass(0.4, 0.374, 0.166, 0.28),
  ofClass(0.45, 0.429, 0.167, 0.31),
  ofClass(0.5, 0.476, 0.167, 0.33),
  ofClass(0.55, 0.526, 0.157, 0.31),
  ofClass(0.6, 0.575, 0.153, 0.23),
  ofClass(0.65, 0.62, 0.136, 0.24),
  ofClass(0.7, 0.668, 0.119, 0.2),
  ofClass(1, 0.728, 0.073, 0.25),
];

/** One correlation for all places: Graham and Hollands 1990, Solar Energy 44, 333 (from memory). */
export const GRAHAM_HOLLANDS_LAG1 = 0.29;

/** Single measured years lay between these: 0.09 (Golden, Colorado) to 0.30 (Zurich); a margin is our choice. */
export const LEAST_LAG1 = 0.05;
export const MOST_LAG1 = 0.4;

/** Clearest and dullest day that a month is given beyond its own sixteenths: the outer states of the library above. */
export const CLEAREST_DAY_INDEX = 0.86;
export const DULLEST_DAY_INDEX = 0.02;

/**
 * Correlation of the mean temperature of neighbouring days.
 *
 * @source common practice, 0.6 to 0.8 in mid latitudes (from memory)
 */
export const TEMPERATURE_LAG1 = 0.7;

/**
 * Daily range of temperature over the square of the clearness index: Hargreaves and Samani turned round, with a
 * coefficient of 0.17 between their 0.16 inland and 0.19 at the coast.
 *
 * @source FAO-56 eq. 50
 */
export const RANGE_K_PER_INDEX_SQUARED = 1 / 0.17 ** 2;
/** No day ranges wider: judgement. */
export const WIDEST_RANGE_K = 25;
/** Extraterrestrial irradiation at which the daily swing has fallen to half: judgement, for the polar winter. */
export const HALF_SWING_KWH_PER_M2 = 1;
