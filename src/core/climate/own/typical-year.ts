import { MEAN_DAY_BY_MONTH } from "../../astronomy/index.ts";
import { mean, sum } from "../../numerics/index.ts";
import { dailyShares } from "./daily-shares.ts";
import { filledSeries } from "./filled-series.ts";
import { type IrradiationCheck, monthlyIrradiation } from "./monthly-irradiation.ts";
import { type FileRefused, refused } from "./refusal.ts";

export const HOURS_A_YEAR = 8760;
export const DAYS_BY_MONTH: readonly number[] = MEAN_DAY_BY_MONTH.map(({ days }) => days);

/** What is read of every hour. */
export type HourlySeries = "ghi" | "dni" | "dhi" | "temp" | "wind";

export interface YearPlace {
  readonly station: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** Of the clock that the hours are told by, without summer time. */
  readonly utcOffsetH: number;
}

/**
 * One year of hours, made of months of different years, as typical-year files have it. Hour 0 is from midnight to one
 * on 1 January, local standard time; there is no 29 February. Lists by month have twelve entries.
 */
export interface TypicalYear extends YearPlace {
  readonly kind: "year";
  readonly layout: "EPW" | "TMY3";
  /** On the level. */
  readonly ghiWPerM2: Float64Array;
  /** Square to the sun; null where the file has none. */
  readonly dniWPerM2: Float64Array | null;
  /** From the sky, on the level; null where the file has none. */
  readonly dhiWPerM2: Float64Array | null;
  readonly tempC: Float64Array;
  /** At the station's mast, mostly 10 m; null where the file has none. */
  readonly windMPerS: Float64Array | null;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly meanTempCByMonth: readonly number[];
  readonly lowestTempC: number;
  readonly highestTempC: number;
  /** As Climate has them: sixteen equally likely daily irradiations over the month's mean, dullest first. */
  readonly dailyGhiQuantilesByMonth: readonly (readonly number[])[];
  /** Hours without a value, filled from the same hour of neighbouring days. */
  readonly filledHours: Readonly<Record<HourlySeries, number>>;
  readonly checks: readonly IrradiationCheck[];
}

export type TypicalYearRefusal =
  | "not-this-layout"
  | "damaged-header"
  | "not-hourly"
  | "leap-day"
  | "wrong-number-of-rows"
  | "out-of-order"
  | "unreadable-row"
  | "impossible-value"
  | "too-much-missing"
  | "impossible-irradiation"
  | "clock-shifted";

export type YearRefused = FileRefused<TypicalYearRefusal>;

/** The middle of the light may lie this far from solar noon: cloudy afternoons shift it by half an hour at most. */
const NOON_TOLERANCE_H = 1.5;

/** Hours whose rows are read and in order, NaN where a value is missing, into the year with its means. */
export function typicalYear(read: {
  readonly layout: TypicalYear["layout"];
  readonly place: YearPlace;
  readonly series: Readonly<Record<HourlySeries, Float64Array>>;
}): TypicalYear | YearRefused {
  const { layout, place, series } = read;
  const ghi = filledSeries(series.ghi);
  const temp = filledSeries(series.temp);
  if (ghi.values === null || temp.values === null) {
    const [what, filled] =
      ghi.values === null ? (["irradiation", ghi] as const) : (["temperature", temp] as const);
    return refused("too-much-missing", `The ${what} is missing in ${filled.missingHours} of the 8760 hours.`);
  }
  const [dni, dhi, wind] = [filledSeries(series.dni), filledSeries(series.dhi), filledSeries(series.wind)];
  const ghiWPerM2 = ghi.values;
  const dailyKWhPerM2 = Array.from(
    { length: 365 },
    (_, day) => sum(ghiWPerM2.subarray(day * 24, day * 24 + 24)) / 1000,
  );
  const daysByMonth = byMonth(dailyKWhPerM2, 1);
  const { ghiDailyKWhPerM2ByMonth, checks } = monthlyIrradiation({
    values: daysByMonth.map(mean),
    unit: "kWh/m2 a day",
    latitudeDeg: place.latitudeDeg,
  });
  if (ghiDailyKWhPerM2ByMonth === null) {
    return refused(
      "impossible-irradiation",
      `A month has more sun than reaches latitude ${place.latitudeDeg} from space: the latitude or the unit is wrong.`,
    );
  }
  const noonH = middleOfLightSolarH(ghiWPerM2, place);
  if (Math.abs(noonH - 12) > NOON_TOLERANCE_H) {
    return refused(
      "clock-shifted",
      `The middle of the light lies at ${noonH.toFixed(1)} h of solar time instead of 12: longitude, time zone or the order of the hours is wrong.`,
    );
  }
  return {
    kind: "year",
    layout,
    ...place,
    ghiWPerM2,
    dniWPerM2: dni.values,
    dhiWPerM2: dhi.values,
    tempC: temp.values,
    windMPerS: wind.values,
    ghiDailyKWhPerM2ByMonth,
    meanTempCByMonth: byMonth([...temp.values], 24).map(mean),
    lowestTempC: temp.values.reduce((lowest, tempC) => Math.min(lowest, tempC)),
    highestTempC: temp.values.reduce((highest, tempC) => Math.max(highest, tempC)),
    dailyGhiQuantilesByMonth: daysByMonth.map(dailyShares),
    filledHours: {
      ghi: ghi.missingHours,
      dni: dni.missingHours,
      dhi: dhi.missingHours,
      temp: temp.missingHours,
      wind: wind.missingHours,
    },
    checks,
  };
}

function byMonth(values: readonly number[], perDay: number): readonly (readonly number[])[] {
  let from = 0;
  return DAYS_BY_MONTH.map((days) => {
    const to = from + days * perDay;
    const month = values.slice(from, to);
    from = to;
    return month;
  });
}

/** Mean hour of the light in solar time, the equation of time left out (it is nothing over a year); 12 without light. */
function middleOfLightSolarH(ghiWPerM2: Float64Array, place: YearPlace): number {
  const shiftH = place.longitudeDeg / 15 - place.utcOffsetH;
  // as a direction on the clock, so that light over midnight has a middle too
  let x = 0;
  let y = 0;
  ghiWPerM2.forEach((ghi, hour) => {
    const turn = (2 * Math.PI * ((hour % 24) + 0.5 + shiftH)) / 24;
    x += ghi * Math.cos(turn);
    y += ghi * Math.sin(turn);
  });
  if (x === 0 && y === 0) return 12;
  return ((Math.atan2(y, x) * 12) / Math.PI + 24) % 24;
}
