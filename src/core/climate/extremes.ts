import { clamp } from "../numerics/index.ts";
import {
  COLD_GAP_K,
  COLD_GAP_PER_RANGE,
  COLD_RESIDUAL_K,
  COLD_WIDEST_RANGE_K,
  HOT_GAP_K,
  HOT_GAP_PER_RANGE,
  HOT_LARGEST_GAP_K,
  RECORD_SHARE_OF_GAP,
} from "./tables.ts";

export interface ExtremeTemperatures {
  /** the lowest hour of a typical year */
  readonly designColdTempC: number;
  /** the lowest hour in about twenty years, on the careful side: for the highest voltage that a string can reach */
  readonly recordColdTempC: number;
  /** the highest hour of a typical year */
  readonly designHotTempC: number;
}

/**
 * Extreme hours from the means of the coldest and the hottest month.
 *
 * The gap between a month's mean and its extreme hour grows with the year's range of monthly means: a place beside a warm
 * sea has little of both.
 *
 * @param coldestMonthTempC, hottestMonthTempC  means of those months, the second not below the first
 * @returns the lowest and the highest hour of a typical year, and a lowest hour in about twenty years
 * @accuracy lowest hour: standard deviation 3.6 K and worst 8 K over 55 stations (3.7 K when each is left out of the
 *   fit), and where the year ranges wider than 33 K rather too cold; highest hour: 2.5 K over 20 stations, worst 7 K
 *   too low (Sydney); the twenty-year value is not checked
 * @source fitted by make/fit_extremes.py to the stations in tests/reference/climate-stations; how far records lie below
 *   the typical year is from memory (see tables)
 */
export function extremeTemperatures(means: {
  readonly coldestMonthTempC: number;
  readonly hottestMonthTempC: number;
}): ExtremeTemperatures {
  const { coldestMonthTempC, hottestMonthTempC } = means;
  const rangeK = hottestMonthTempC - coldestMonthTempC;
  const coldGapK = COLD_GAP_K + COLD_GAP_PER_RANGE * clamp(rangeK, 0, COLD_WIDEST_RANGE_K);
  const hotGapK = Math.min(HOT_GAP_K + HOT_GAP_PER_RANGE * rangeK, HOT_LARGEST_GAP_K);
  const designColdTempC = coldestMonthTempC - coldGapK;
  return {
    designColdTempC,
    recordColdTempC: designColdTempC - RECORD_SHARE_OF_GAP * coldGapK - COLD_RESIDUAL_K,
    designHotTempC: hottestMonthTempC + hotGapK,
  };
}
