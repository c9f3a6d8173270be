import { clamp, seededDraws, within } from "../numerics/index.ts";
import { dailyDiffuseFrac, MEAN_DAY_BY_MONTH } from "../sun/index.ts";
import {
  ambientOf,
  anomalyAt,
  DAILY_SWING,
  dailyAnomalies,
  dailyRangeK,
  FIT_SEED,
  FIT_YEARS,
} from "./ambient.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR, MONTH_OF_DAY, meanByMonth, twelveWithin } from "./calendar.ts";
import { type DayDistribution, dayDistribution, shareOf } from "./day-distribution.ts";
import { type LevelYear, levelYear } from "./level-year.ts";
import { usualLag1 } from "./persistence.ts";
import { type HourClock, SOLAR_CLOCK, sunSteps } from "./sun-steps.ts";

/** What a place's weather is drawn from; lists by month have twelve entries, January first. A Climate fits as it is. */
export interface WeatherPlace {
  /** -90 to 90, north positive. */
  readonly latitudeDeg: number;
  /** Monthly means of daily global horizontal irradiation, 0 to 15. */
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  /** Sixteen equally likely daily values over the month's mean, dullest first, 0 to 20. */
  readonly dailyGhiQuantilesByMonth: readonly (readonly number[])[];
  /** Correlation of neighbouring days as normal scores, 0 to 0.95; usualLag1 when left out. */
  readonly lag1ByMonth?: readonly number[] | undefined;
  /** -90 to 60. */
  readonly meanTempCByMonth: readonly number[];
  /** The lowest and the highest hour of a typical year, -100 to 70. */
  readonly designColdTempC: number;
  readonly designHotTempC: number;
}

/**
 * Hours of weather on the level. Years of 8760 hours one after another, no 29 February; hour 0 of a year runs from
 * midnight to one on 1 January by `clock`, and every value is the mean of its hour.
 */
export interface WeatherYears {
  readonly latitudeDeg: number;
  readonly years: number;
  readonly clock: HourClock;
  /** years * 365 */
  readonly dailyGhiKWhPerM2: Float64Array;
  /** years * 8760, global on the level */
  readonly ghiWPerM2: Float64Array;
  /** years * 8760, of that from the sky, not more than it */
  readonly diffuseWPerM2: Float64Array;
  /** years * 8760, of the air */
  readonly ambientTempC: Float64Array;
}

// large and unlike: with small numbers the first draws of two streams may coincide
const SUN_STREAM = 0x9e37_79b9;
const AIR_STREAM = 0x85eb_ca6b;

/**
 * Weather of many years that nobody measured, with the place's own monthly means, spread of days and memory from day to
 * day.
 *
 * Clearness: normal values, each correlated with the day's before, are turned into daily clearness by the month's own
 * distribution (a Gaussian copula), times the extraterrestrial irradiation of the day. The expectation of a month is
 * the given mean exactly; a single month or year is not. Hours of a day are those of long averages, without the
 * flicker of passing clouds. Beam and diffuse are parted by the day: the hourly correlation is made of real,
 * flickering hours and would be wrong on smooth ones; the day's beam is spread over the hours as under a cloudless sky
 * and never exceeds that sky's share. Temperature knows of the day's clearness only through its daily swing.
 *
 * Light in a month without a sunrise is dropped, and a monthly mean above the extraterrestrial is held to it.
 *
 * @param place.seed   whole number, 0 to 4294967295: the same seed gives the same years
 * @param place.years  1 to 1000; 30 when left out
 * @returns years by solar time; 0 in polar night
 * @accuracy monthly means vary from year to year by what the spread of days and their memory explain (in mid latitudes
 *           about 11 % in winter and 7 % in summer); slower swings of climate are not in it. See README for what was
 *           checked
 * @throws RangeFault outside the ranges above and of WeatherPlace
 * @source Graham, Hollands and Brunger 1988, Solar Energy 40, 83 (daily clearness through normal scores; from memory);
 *         Collares-Pereira and Rabl 1979; Erbs, Klein and Duffie 1982
 */
export function weatherYears(
  place: WeatherPlace & { readonly seed: number; readonly years?: number },
): WeatherYears {
  const years = Math.floor(within("years", place.years ?? 30, 1, 1000));
  const latitudeDeg = within("latitudeDeg", place.latitudeDeg, -90, 90);
  const given = {
    ghiDailyKWhPerM2: twelveWithin("ghiDailyKWhPerM2ByMonth", place.ghiDailyKWhPerM2ByMonth, 0, 15),
    meanTempC: twelveWithin("meanTempCByMonth", place.meanTempCByMonth, -90, 60),
    designColdTempC: within("designColdTempC", place.designColdTempC, -100, 70),
    designHotTempC: within("designHotTempC", place.designHotTempC, -100, 70),
  };
  within("months of dailyGhiQuantilesByMonth", place.dailyGhiQuantilesByMonth.length, 12, 12);
  const level = levelYear(sunSteps({ latitudeDeg, clock: SOLAR_CLOCK }), latitudeDeg);
  const outside = level.extraterrestrialDailyKWhPerM2;
  const outsideByMonth = meanByMonth(outside);
  const clearnessIndexByMonth = given.ghiDailyKWhPerM2.map((ghi, month) =>
    outsideByMonth[month]! > 0 ? Math.min(1, ghi / outsideByMonth[month]!) : 0,
  );
  const sun = {
    outside,
    clearnessIndexByMonth,
    lag1ByMonth:
      place.lag1ByMonth === undefined
        ? clearnessIndexByMonth.map(usualLag1)
        : twelveWithin("lag1ByMonth", place.lag1ByMonth, 0, 0.95),
    distributions: place.dailyGhiQuantilesByMonth.map((dailyGhiQuantiles, month) =>
      dayDistribution({
        dailyGhiQuantiles,
        clearnessIndex: clearnessIndexByMonth[month]!,
        trendVariance: trendVariance(outside, month),
      }),
    ),
  };
  const days = drawnDays({ ...sun, years, seed: place.seed });
  const weather: WeatherYears = {
    latitudeDeg,
    years,
    clock: SOLAR_CLOCK,
    dailyGhiKWhPerM2: days,
    ghiWPerM2: new Float64Array(years * HOURS_A_YEAR),
    diffuseWPerM2: new Float64Array(years * HOURS_A_YEAR),
    ambientTempC: new Float64Array(years * HOURS_A_YEAR),
  };
  const ambient = ambientOf({
    meanTempCByMonth: given.meanTempC,
    designColdTempC: given.designColdTempC,
    designHotTempC: given.designHotTempC,
    rangeKByDay: drawnDays({ ...sun, years: FIT_YEARS, seed: FIT_SEED }).map((daily, i) =>
      rangeOf(daily, outside[i % DAYS_A_YEAR]!),
    ),
  });
  const anomalies = dailyAnomalies(seededDraws({ seed: place.seed, stream: AIR_STREAM }), years);
  const meanClearBeamFrac = meanClearBeamByDay(level);
  for (let year = 0; year < years; year += 1) {
    fillSun(weather, level, meanClearBeamFrac, year);
    fillAir(weather, level, ambient, anomalies, year);
  }
  return weather;
}

/** Daily irradiation, kWh/m2, years * 365. */
function drawnDays(from: {
  readonly years: number;
  readonly seed: number;
  readonly outside: Float64Array;
  readonly clearnessIndexByMonth: readonly number[];
  readonly lag1ByMonth: readonly number[];
  readonly distributions: readonly DayDistribution[];
}): Float64Array {
  const draws = seededDraws({ seed: from.seed, stream: SUN_STREAM });
  const days = new Float64Array(from.years * DAYS_A_YEAR);
  let normal = draws.normal();
  for (let i = 0; i < days.length; i += 1) {
    const day = i % DAYS_A_YEAR;
    const month = MONTH_OF_DAY[day]!;
    const lag1 = from.lag1ByMonth[month]!;
    normal = lag1 * normal + Math.sqrt(1 - lag1 * lag1) * draws.normal();
    days[i] =
      from.outside[day]! * from.clearnessIndexByMonth[month]! * shareOf(from.distributions[month]!, normal);
  }
  return days;
}

function rangeOf(dailyKWhPerM2: number, extraterrestrialDailyKWhPerM2: number): number {
  const outside = extraterrestrialDailyKWhPerM2;
  return dailyRangeK({
    clearnessIndex: outside > 0 ? dailyKWhPerM2 / outside : 0,
    extraterrestrialDailyKWhPerM2,
  });
}

function trendVariance(outside: Float64Array, month: number): number {
  const { firstDayOfYear, days } = MEAN_DAY_BY_MONTH[month]!;
  const values = outside.subarray(firstDayOfYear - 1, firstDayOfYear - 1 + days);
  const middle = values.reduce((total, value) => total + value, 0) / days;
  if (middle === 0) return 0;
  return values.reduce((total, value) => total + (value / middle - 1) ** 2, 0) / days;
}

/** Of a cloudless day's light, what comes straight from the sun. */
export function meanClearBeamByDay(level: LevelYear): Float64Array {
  const means = new Float64Array(DAYS_A_YEAR);
  for (let hour = 0; hour < HOURS_A_YEAR; hour += 1) {
    means[Math.floor(hour / 24)]! += level.globalHourFrac[hour]! * level.clearBeamFrac[hour]!;
  }
  return means;
}

/** Lays the days of one year over its hours; a day without irradiation is left dark. */
export function fillSun(
  weather: WeatherYears,
  level: LevelYear,
  meanClearBeam: Float64Array,
  year: number,
): void {
  const { ghiWPerM2, diffuseWPerM2, dailyGhiKWhPerM2 } = weather;
  for (let day = 0; day < DAYS_A_YEAR; day += 1) {
    const outside = level.extraterrestrialDailyKWhPerM2[day]!;
    const daily = dailyGhiKWhPerM2[year * DAYS_A_YEAR + day]!;
    if (outside === 0 || daily === 0) continue;
    const clearnessIndex = clamp(daily / outside, 0, 1);
    const sunsetHourAngleDeg = level.sunsetHourAngleDeg[day]!;
    const beamFrac = 1 - dailyDiffuseFrac({ clearnessIndex, sunsetHourAngleDeg });
    const ofClear = meanClearBeam[day]! > 0 ? Math.min(1, beamFrac / meanClearBeam[day]!) : 0;
    for (let hour = day * 24; hour < day * 24 + 24; hour += 1) {
      const ghi = 1000 * daily * level.globalHourFrac[hour]!;
      const at = year * HOURS_A_YEAR + hour;
      ghiWPerM2[at] = ghi;
      diffuseWPerM2[at] = ghi * (1 - level.clearBeamFrac[hour]! * ofClear);
    }
  }
}

function fillAir(
  weather: WeatherYears,
  level: LevelYear,
  ambient: ReturnType<typeof ambientOf>,
  anomalies: Float64Array,
  year: number,
): void {
  const { ambientTempC } = weather;
  for (let day = 0; day < DAYS_A_YEAR; day += 1) {
    const i = year * DAYS_A_YEAR + day;
    const outside = level.extraterrestrialDailyKWhPerM2[day]!;
    const rangeK = rangeOf(weather.dailyGhiKWhPerM2[i]!, outside);
    const meanTempC = ambient.meanTempCByDay[day]!;
    const spreadK = ambient.spreadKByDay[day]!;
    for (let hour = 0; hour < 24; hour += 1) {
      ambientTempC[i * 24 + hour] =
        meanTempC + spreadK * anomalyAt(anomalies, i, hour) + rangeK * DAILY_SWING[hour]!;
    }
  }
}
