import { mean } from "../numerics/index.ts";
import { DAYS_A_YEAR, meanByMonth } from "./calendar.ts";
import type { WeatherYears } from "./weather-years.ts";

/**
 * How much the same month differs from year to year in a run of weather: standard deviation of its mean daily global
 * irradiation over its mean of all years.
 *
 * @returns twelve fractions; 0 for a month without light and for a single year. Measured in mid latitudes: 0.08 to 0.12
 *          (from memory)
 */
export function yearlySpreadFracByMonth(weather: WeatherYears): readonly number[] {
  const byYear = Array.from({ length: weather.years }, (_, year) =>
    meanByMonth(weather.dailyGhiKWhPerM2.subarray(year * DAYS_A_YEAR, (year + 1) * DAYS_A_YEAR)),
  );
  return Array.from({ length: 12 }, (_, month) => {
    const values = byYear.map((months) => months[month]!);
    const middle = mean(values);
    if (middle === 0 || values.length < 2) return 0;
    const square = values.reduce((total, value) => total + (value - middle) ** 2, 0) / (values.length - 1);
    return Math.sqrt(square) / middle;
  });
}
