import { within } from "../numerics/index.ts";

const DAYS_BY_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** kW/m2 outside the atmosphere at the mean distance of the sun: 1367 W/m2, the value in Duffie & Beckman, 1.2. */
const SOLAR_CONSTANT_KW_PER_M2 = 1.367;

/**
 * Monthly means of the daily irradiation on a horizontal plane outside the atmosphere.
 *
 * Private to this field: the grid holds clearness indices, which were made with this same function over the same days
 * (make/sun_h0.py), so that the two cancel. It averages every day of the month: near the polar circle one mean day
 * does not stand for the month.
 *
 * @param latitudeDeg  -90 to 90
 * @returns twelve values, kWh/m2 a day
 * @accuracy within 0.26 kWh/m2 of the tables in Duffie & Beckman, which use one mean day and a rougher declination
 * @source Duffie & Beckman, Solar Engineering of Thermal Processes, equation 1.10.3; Spencer (1971) for the
 *   declination and the distance of the sun
 */
export function extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg: number): number[] {
  const latitude = (within("latitudeDeg", latitudeDeg, -90, 90) * Math.PI) / 180;
  let dayOfYear = 1;
  return DAYS_BY_MONTH.map((days) => {
    let total = 0;
    for (let day = 0; day < days; day++) total += onDay(latitude, dayOfYear++);
    return total / days;
  });
}

function onDay(latitude: number, dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const declination =
    0.006918 -
    0.399912 * Math.cos(b) +
    0.070257 * Math.sin(b) -
    0.006758 * Math.cos(2 * b) +
    0.000907 * Math.sin(2 * b) -
    0.002697 * Math.cos(3 * b) +
    0.00148 * Math.sin(3 * b);
  const eccentricity =
    1.00011 +
    0.034221 * Math.cos(b) +
    0.00128 * Math.sin(b) +
    0.000719 * Math.cos(2 * b) +
    0.000077 * Math.sin(2 * b);
  const sunsetCos = -Math.tan(latitude) * Math.tan(declination);
  const sunset = Math.acos(Math.min(1, Math.max(-1, sunsetCos)));
  const height =
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset) +
    sunset * Math.sin(latitude) * Math.sin(declination);
  // In polar night the height is zero in exact arithmetic and a rounding error below it here.
  return Math.max(0, (24 / Math.PI) * SOLAR_CONSTANT_KW_PER_M2 * eccentricity * height);
}
