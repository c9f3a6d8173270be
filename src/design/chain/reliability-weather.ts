/** Hours of weather at the place and what one watt of panel gives in them, kept from answer to answer. */
import { bankTempC } from "../../core/energy/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import {
  HOURS_A_YEAR,
  ownYears,
  planeYield,
  unpackHours,
  type WeatherYears,
  weatherYears,
} from "../../core/weather/index.ts";
import type { Brief } from "../brief.ts";
import type { Climate, Remember, Sun } from "../design.ts";
import { BANK_LAG_H, FULL_EFFORT, WEATHER_SEED } from "../practice/reliability.ts";
import { POWER_PER_K } from "../practice/sold.ts";
import { ALBEDO } from "../practice/sun.ts";

/** The battery's curves end here; nothing works below it anyway. */
const COLDEST_BANK_C = -60;

export interface PostWeather {
  readonly years: number;
  readonly ambientTempC: Float64Array;
  readonly bankTempC: Float64Array;
  /** W per rated W for a tracking controller, A per rated A for a direct one; every hour of the years. */
  readonly outputRatio: Float64Array;
}

interface Setting {
  readonly climate: Climate;
  readonly sun: Sun;
  readonly isDirect: boolean;
}

/** Years drawn from the place's climate. Few years are the first of many, so that nothing is drawn twice. */
export function postWeather(
  brief: Brief,
  given: Setting & { readonly years: number },
  remember: Remember,
): PostWeather {
  const { climate, years } = given;
  const place = {
    latitudeDeg: brief.place.site.value!.latitudeDeg,
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    dailyGhiQuantilesByMonth: climate.dailyGhiQuantilesByMonth,
    lag1ByMonth: climate.lag1ByMonth ?? undefined,
    meanTempCByMonth: climate.meanTempCByMonth,
    designColdTempC: climate.designColdTempC,
    designHotTempC: climate.designHotTempC,
    seed: WEATHER_SEED,
    years: Math.max(years, FULL_EFFORT.years),
  };
  const all = underWeather(brief, { ...given, from: place, weather: () => weatherYears(place) }, remember);
  const first = (hourly: Float64Array): Float64Array => hourly.subarray(0, years * HOURS_A_YEAR);
  return {
    years,
    ambientTempC: first(all.ambientTempC),
    bankTempC: first(all.bankTempC),
    outputRatio: first(all.outputRatio),
  };
}

/** The one year of the builder's own file, hour by hour as it stands there; null where they brought none. */
export function ownPostWeather(brief: Brief, given: Setting, remember: Remember): PostWeather | null {
  const hours = brief.place.ownSun.value?.hours ?? null;
  if (hours === null) return null;
  const weather = (): WeatherYears => ownYears({ ...hours, ...unpackHours(hours.packed), years: 1 });
  return underWeather(brief, { ...given, from: hours, weather }, remember);
}

/** @param given.from  all that the weather follows from */
function underWeather(
  brief: Brief,
  given: Setting & { readonly from: object; readonly weather: () => WeatherYears },
  remember: Remember,
): PostWeather {
  const { from, sun, isDirect } = given;
  const { weather, bank } = remember("weather", from, () => {
    const hours = given.weather();
    return {
      weather: hours,
      bank: bankTempC({ ambientTempC: hours.ambientTempC, timeConstantH: BANK_LAG_H }).map((tempC) =>
        Math.max(COLDEST_BANK_C, tempC),
      ),
    };
  });
  const panel = panelOf(brief, sun);
  const at = (tiltDeg: number): Float64Array =>
    remember("yield", { from, panel, tiltDeg, isDirect }, () => {
      const { powerWPerRatedW, currentAPerRatedA } = planeYield({ ...panel, weather, tiltDeg });
      return isDirect ? currentAPerRatedA : powerWPerRatedW;
    });
  const winter = at(sun.tiltDeg);
  return {
    years: weather.years,
    ambientTempC: weather.ambientTempC,
    bankTempC: bank,
    outputRatio:
      sun.summerTiltDeg === null ? winter : joined(winter, at(sun.summerTiltDeg), sun.summerMonths, weather),
  };
}

/** The panel as the weather finds it, but for its tilt. */
export function panelOf(brief: Brief, sun: Sun) {
  return {
    azimuthDeg: sun.azimuthDeg,
    albedoByMonth: MEAN_DAY_BY_MONTH.map(() => ALBEDO),
    horizon: brief.place.horizon.value,
    snowCoveredFracByMonth: sun.snowFracByMonth,
    soilingLossFrac: brief.place.soilingFrac.value,
    powerTempCoefficientPerK: POWER_PER_K,
    seed: WEATHER_SEED,
  };
}

/** One tilt in some months, another in the rest. */
function joined(
  winter: Float64Array,
  summer: Float64Array,
  summerMonths: readonly number[],
  { years }: WeatherYears,
): Float64Array {
  const hourly = winter.slice();
  MEAN_DAY_BY_MONTH.forEach(({ firstDayOfYear, days }, month) => {
    if (!summerMonths.includes(month)) return;
    for (let year = 0; year < years; year += 1) {
      const from = year * HOURS_A_YEAR + (firstDayOfYear - 1) * 24;
      hourly.set(summer.subarray(from, from + days * 24), from);
    }
  });
  return hourly;
}
