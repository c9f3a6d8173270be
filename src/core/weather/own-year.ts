import type { TypicalYear } from "../climate/index.ts";
import { clamp, within } from "../numerics/index.ts";
import { hourlyDiffuseFrac } from "../sun/index.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR, meanByMonth } from "./calendar.ts";
import { levelYear } from "./level-year.ts";
import type { OwnHours } from "./packed-hours.ts";
import { measuredLag1ByMonth } from "./persistence.ts";
import { SOLAR_CLOCK, sunSteps } from "./sun-steps.ts";
import { CLEAREST_DAY_INDEX } from "./tables.ts";
import type { WeatherPlace, WeatherYears } from "./weather-years.ts";

type OwnYear = Pick<
  TypicalYear,
  | "latitudeDeg"
  | "ghiWPerM2"
  | "ghiDailyKWhPerM2ByMonth"
  | "dailyGhiQuantilesByMonth"
  | "meanTempCByMonth"
  | "lowestTempC"
  | "highestTempC"
>;

/** Share of diffuse light is read at a cosine of at least this, as splitIrradiance does (pvlib 0.16.1). */
const LEAST_COSINE = 0.065;
const SOLAR_NORMAL_W_PER_M2 = 1367;

/**
 * A builder's typical year as weather, the same year again and again: run it twice and score the second, so that the
 * battery's first state does not count.
 *
 * The hours stay the clock's; the sun is worked at the clock's hours. Where the file has no diffuse light it is parted
 * hour by hour, which is right here because these hours are real ones. Beam above what the clearest air passes (a
 * slip of the clock near sunrise) is counted as diffuse.
 *
 * @param own.years  1 to 1000; 2 when left out
 * @throws RangeFault outside that range, or for lists that have not 8760 hours
 * @source Erbs, Klein and Duffie 1982, hourly
 */
export function ownYears(own: OwnHours & { readonly years?: number }): WeatherYears {
  const years = Math.floor(within("years", own.years ?? 2, 1, 1000));
  within("hours of ghiWPerM2", own.ghiWPerM2.length, HOURS_A_YEAR, HOURS_A_YEAR);
  within("hours of tempC", own.tempC.length, HOURS_A_YEAR, HOURS_A_YEAR);
  const clock = { kind: "standard", longitudeDeg: own.longitudeDeg, utcOffsetH: own.utcOffsetH } as const;
  const { extraterrestrialWPerM2 } = levelYear(
    sunSteps({ latitudeDeg: own.latitudeDeg, clock }),
    own.latitudeDeg,
  );
  const ghi = own.ghiWPerM2.map((value) => within("ghiWPerM2", value, 0, 2000));
  const diffuse = ghi.map((value, hour) => {
    const outside = extraterrestrialWPerM2[hour]!;
    const split =
      own.dhiWPerM2?.[hour] ??
      value * hourlyDiffuseFrac(clamp(value / Math.max(outside, SOLAR_NORMAL_W_PER_M2 * LEAST_COSINE), 0, 1));
    return clamp(split, Math.max(0, value - CLEAREST_DAY_INDEX * outside), value);
  });
  const repeated = (values: Float64Array): Float64Array => {
    const all = new Float64Array(years * values.length);
    for (let year = 0; year < years; year += 1) all.set(values, year * values.length);
    return all;
  };
  return {
    latitudeDeg: own.latitudeDeg,
    years,
    clock,
    dailyGhiKWhPerM2: repeated(dailySums(ghi)),
    ghiWPerM2: repeated(ghi),
    diffuseWPerM2: repeated(diffuse),
    ambientTempC: repeated(own.tempC),
  };
}

/**
 * What weatherYears needs to draw years like a builder's typical one: its means, its spread of days and its memory.
 *
 * @throws RangeFault as measuredLag1ByMonth
 * @source see measuredLag1ByMonth; the rest is the year's own
 */
export function ownWeatherPlace(own: OwnYear): WeatherPlace {
  const outside = levelYear(
    sunSteps({ latitudeDeg: own.latitudeDeg, clock: SOLAR_CLOCK }),
    own.latitudeDeg,
  ).extraterrestrialDailyKWhPerM2;
  const outsideByMonth = meanByMonth(outside);
  return {
    latitudeDeg: own.latitudeDeg,
    ghiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    dailyGhiQuantilesByMonth: own.dailyGhiQuantilesByMonth,
    lag1ByMonth: measuredLag1ByMonth({
      clearnessIndexByDay: dailySums(own.ghiWPerM2).map((daily, day) =>
        outside[day]! > 0 ? daily / outside[day]! : Number.NaN,
      ),
      clearnessIndexByMonth: own.ghiDailyKWhPerM2ByMonth.map((ghi, month) =>
        outsideByMonth[month]! > 0 ? clamp(ghi / outsideByMonth[month]!, 0, 1) : 0,
      ),
    }),
    meanTempCByMonth: own.meanTempCByMonth,
    designColdTempC: own.lowestTempC,
    designHotTempC: own.highestTempC,
  };
}

function dailySums(wPerM2: Float64Array): Float64Array {
  const days = new Float64Array(DAYS_A_YEAR);
  for (let hour = 0; hour < HOURS_A_YEAR; hour += 1) days[Math.floor(hour / 24)]! += wPerM2[hour]! / 1000;
  return days;
}
