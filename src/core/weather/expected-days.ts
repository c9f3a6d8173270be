import { within } from "../numerics/index.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR } from "./calendar.ts";
import { levelYear } from "./level-year.ts";
import { SOLAR_CLOCK, sunSteps } from "./sun-steps.ts";
import { fillSun, meanClearBeamByDay, type WeatherYears } from "./weather-years.ts";

/**
 * Days of which only the irradiation is expected, as weather that planeYield takes: year k is dark but for its day
 * `dayOfYear`, which has the k-th irradiation; so all are worked in one run. Hours, and beam and diffuse, as in
 * weatherYears; the air keeps one temperature.
 *
 * @param days.latitudeDeg        -90 to 90
 * @param days.dayOfYear          1 to 365, the same for all: the sun's path
 * @param days.dailyGhiKWhPerM2   0 to 15 each, 1 to 1000 of them
 * @param days.tempC              of the air, -90 to 60
 * @returns by solar time; dark where the sun does not rise on that day
 * @throws RangeFault outside the ranges above
 * @source as weatherYears
 */
export function expectedDays(days: {
  readonly latitudeDeg: number;
  readonly dayOfYear: number;
  readonly dailyGhiKWhPerM2: readonly number[];
  readonly tempC: number;
}): WeatherYears {
  const latitudeDeg = within("latitudeDeg", days.latitudeDeg, -90, 90);
  const day = within("dayOfYear", days.dayOfYear, 1, DAYS_A_YEAR) - 1;
  within("part of a day", day % 1, 0, 0);
  const years = within("days", days.dailyGhiKWhPerM2.length, 1, 1000);
  const weather: WeatherYears = {
    latitudeDeg,
    years,
    clock: SOLAR_CLOCK,
    dailyGhiKWhPerM2: new Float64Array(years * DAYS_A_YEAR),
    ghiWPerM2: new Float64Array(years * HOURS_A_YEAR),
    diffuseWPerM2: new Float64Array(years * HOURS_A_YEAR),
    ambientTempC: new Float64Array(years * HOURS_A_YEAR).fill(within("tempC", days.tempC, -90, 60)),
  };
  const level = levelYear(sunSteps({ latitudeDeg, clock: SOLAR_CLOCK }), latitudeDeg);
  const meanClearBeam = meanClearBeamByDay(level);
  days.dailyGhiKWhPerM2.forEach((daily, year) => {
    weather.dailyGhiKWhPerM2[year * DAYS_A_YEAR + day] = within("dailyGhiKWhPerM2", daily, 0, 15);
    fillSun(weather, level, meanClearBeam, year);
  });
  return weather;
}
