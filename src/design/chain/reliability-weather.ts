/** Hours of weather at the place and what one watt of panel gives in them, kept from answer to answer. */
import { bankTempC } from "../../core/energy/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import { HOURS_A_YEAR, planeYield, type WeatherYears, weatherYears } from "../../core/weather/index.ts";
import type { Brief } from "../brief.ts";
import type { Climate, Remember, Sun } from "../design.ts";
import { BANK_LAG_H, WEATHER_SEED } from "../practice/reliability.ts";
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

export function postWeather(
  brief: Brief,
  given: {
    readonly climate: Climate;
    readonly sun: Sun;
    readonly isDirect: boolean;
    readonly years: number;
  },
  remember: Remember,
): PostWeather {
  const { climate, sun, isDirect, years } = given;
  const place = {
    latitudeDeg: brief.place.site.value!.latitudeDeg,
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    dailyGhiQuantilesByMonth: climate.dailyGhiQuantilesByMonth,
    lag1ByMonth: climate.lag1ByMonth ?? undefined,
    meanTempCByMonth: climate.meanTempCByMonth,
    designColdTempC: climate.designColdTempC,
    designHotTempC: climate.designHotTempC,
    seed: WEATHER_SEED,
    years,
  };
  const { weather, bank } = remember("weather", place, () => {
    const drawn = weatherYears(place);
    return {
      weather: drawn,
      bank: bankTempC({ ambientTempC: drawn.ambientTempC, timeConstantH: BANK_LAG_H }).map((tempC) =>
        Math.max(COLDEST_BANK_C, tempC),
      ),
    };
  });
  const panel = panelOf(brief, sun);
  const at = (tiltDeg: number): Float64Array =>
    remember("yield", { place, panel, tiltDeg, isDirect }, () => {
      const { powerWPerRatedW, currentAPerRatedA } = planeYield({ ...panel, weather, tiltDeg });
      return isDirect ? currentAPerRatedA : powerWPerRatedW;
    });
  const winter = at(sun.tiltDeg);
  return {
    years,
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
