/** A climate and a sun whose figures are round, for sums that are worked by hand. */
import { extraterrestrialDailyKWhPerM2, MEAN_DAY_BY_MONTH } from "../../../src/core/sun/index.ts";
import type { Climate, Sun } from "../../../src/design/design.ts";

const every = <T>(value: T): readonly T[] => Array.from({ length: 12 }, () => value);

/** 25 degrees C all year, clearness 0.5 at the latitude of the typical brief (40 N), coldest hour 7 degrees C. */
export const evenClimate: Climate = {
  ghiDailyKWhPerM2ByMonth: MEAN_DAY_BY_MONTH.map(
    ({ dayOfYear }) => 0.5 * extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg: 40 }),
  ),
  sunSource: "made up",
  otherGhiDailyKWhPerM2ByMonth: null,
  otherSunSource: null,
  ghiUncertaintyFrac: 0.08,
  dailyGhiQuantilesByMonth: every(Array.from({ length: 16 }, () => 1)),
  lag1ByMonth: null,
  meanTempCByMonth: every(25),
  designColdTempC: 7,
  recordColdTempC: 0,
  designHotTempC: 38,
  elevationM: 0,
  rainRateMmPerH: 42,
  refractivityGradientPerKm: -200,
  terrainRoughnessM: 50,
  dataSource: "made up",
};

/** Three peak sun hours in every month, nine hours of daylight in December, fifteen in June. */
export const evenSun: Sun = {
  tiltDeg: 55,
  azimuthDeg: 180,
  facing: "south",
  poaDailyKWhPerM2ByMonth: every(3),
  beamShadeFracByMonth: every(0),
  diffuseShadeFrac: 0,
  shadeFracByMonth: every(0),
  latitudeTiltDeg: 40,
  latitudePoaDailyKWhPerM2ByMonth: every(2.9),
  latitudeLossFrac: 0,
  equatorLossFrac: 0,
  summerTiltDeg: null,
  summerMonths: [],
  twoTiltsWorstGainFrac: 0,
  twoTiltsYearGainFrac: 0,
  daylightHByMonth: [9, 10, 12, 13, 14, 15, 15, 14, 12, 11, 10, 9],
  clockMinusSolarH: 0,
  snowFracByMonth: every(0),
  designMonth: 11,
  cellTempCByMonth: every(44.8),
};
