import { mean } from "../numerics/index.ts";
import { extraterrestrialDailyKWhPerM2 } from "./day.ts";
import { spencerDeclinationDeg, spencerDistanceFactorRatio } from "./declination.ts";
import { MEAN_DAY_BY_MONTH } from "./tables.ts";

/**
 * Monthly means of the daily irradiation on a level plane outside the atmosphere, over every day of the month: near the
 * polar circle one mean day does not stand for it.
 *
 * The climate grid holds clearness indices that were made with this same function over the same days
 * (climate/make/sun_h0.py), so that the two cancel.
 *
 * @param latitudeDeg  -90 to 90
 * @returns twelve values, kWh/m2 a day
 * @accuracy within 0.26 kWh/m2 of the tables in Duffie & Beckman, which use one mean day and a rougher declination
 * @throws RangeFault outside the range above
 * @source Duffie & Beckman, Solar Engineering of Thermal Processes, equation 1.10.3; Spencer (1971) for the
 *   declination and the distance of the sun
 */
export function extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg: number): number[] {
  return MEAN_DAY_BY_MONTH.map(({ firstDayOfYear, days }) =>
    mean(
      Array.from({ length: days }, (_, day) => {
        const dayOfYear = firstDayOfYear + day;
        return extraterrestrialDailyKWhPerM2({
          dayOfYear,
          latitudeDeg,
          declinationDeg: spencerDeclinationDeg(dayOfYear),
          distanceRatio: spencerDistanceFactorRatio(dayOfYear),
        });
      }),
    ),
  );
}
