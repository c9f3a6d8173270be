/** What the place gives: climate, and the sun on the panel. */
import type { ByMonth } from "./note.ts";

export interface Climate {
  /** Of the source that counts: the map, or the builder's own figures. */
  readonly ghiDailyKWhPerM2ByMonth: ByMonth;
  /** Who says so. */
  readonly sunSource: string;
  /** Of the source that does not count; null where there is only one. */
  readonly otherGhiDailyKWhPerM2ByMonth: ByMonth | null;
  readonly otherSunSource: string | null;
  readonly ghiUncertaintyFrac: number;
  /** Sixteen equally likely daily irradiations over the month's mean, dullest first. */
  readonly dailyGhiQuantilesByMonth: readonly ByMonth[];
  /** Correlation of neighbouring days as normal scores; null where nobody measured it and the usual one counts. */
  readonly lag1ByMonth: ByMonth | null;
  readonly meanTempCByMonth: ByMonth;
  /** Lowest hour of a typical year. */
  readonly designColdTempC: number;
  /** Lowest hour in some decades: for the highest voltage a string can reach. */
  readonly recordColdTempC: number;
  /** Highest hour of a typical year. */
  readonly designHotTempC: number;
  readonly elevationM: number;
  /** Rain rate exceeded for 0.01 % of the year. */
  readonly rainRateMmPerH: number;
  /** In the lowest 65 m, not exceeded for 1 % of the year; negative. */
  readonly refractivityGradientPerKm: number;
  /** Standard deviation of the ground's heights over some 110 km. */
  readonly terrainRoughnessM: number;
  readonly dataSource: string;
}

export interface Sun {
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  /** The same as one of eight winds: mostly "south" or "north", the equator's side. */
  readonly facing: string;
  /** What facing the equator would lose in its worst month, because hills or trees stand there; 0 mostly. */
  readonly equatorLossFrac: number;
  /** On the panel, after horizon and snow, before soiling. */
  readonly poaDailyKWhPerM2ByMonth: ByMonth;
  /** What stands round the panel takes this much straight from the sun, from the sky, and of all together. */
  readonly beamShadeFracByMonth: ByMonth;
  readonly diffuseShadeFrac: number;
  readonly shadeFracByMonth: ByMonth;
  /** The same as poaDailyKWhPerM2ByMonth at the latitude rule's tilt. */
  readonly latitudeTiltDeg: number;
  readonly latitudePoaDailyKWhPerM2ByMonth: ByMonth;
  /** What that tilt would lose in its worst month. */
  readonly latitudeLossFrac: number;
  /** Second tilt for the lighter months, where the builder will climb twice a year; else null. */
  readonly summerTiltDeg: number | null;
  /** Months of the second tilt, 0 = January; empty without one. */
  readonly summerMonths: readonly number[];
  /** What two tilts gather more than the best single one: in the worst month, and over the year. */
  readonly twoTiltsWorstGainFrac: number;
  readonly twoTiltsYearGainFrac: number;
  /** Hours of daylight on the mean day of each month. */
  readonly daylightHByMonth: ByMonth;
  /** Local clock time less solar time, hours: schedules by the clock are moved by it. */
  readonly clockMinusSolarH: number;
  /** Share of each month in which snow lies on the panel (already taken off the irradiation). */
  readonly snowFracByMonth: ByMonth;
  /** Month with the lowest ratio of sun on the panel to energy asked, among those in which the post runs; 0 = January. */
  readonly designMonth: number;
  /** Mean cell temperature while the sun shines. */
  readonly cellTempCByMonth: ByMonth;
}
