export { acosHeldRad, cosDeg, degOfRad, radOfDeg, sinDeg, tanDeg, turnDeg } from "./angle.ts";
export {
  daylightHours,
  extraterrestrialDailyKWhPerM2,
  extraterrestrialSpanKWhPerM2,
  type LatitudeDay,
  sunsetHourAngleDeg,
} from "./day.ts";
export {
  cooperDeclinationDeg,
  distanceFactorRatio,
  equationOfTimeMin,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
} from "./declination.ts";
export { extraterrestrialDailyKWhPerM2ByMonth } from "./monthly.ts";
export { MEAN_DAY_BY_MONTH, type MeanDay, SOLAR_CONSTANT_W_PER_M2 } from "./tables.ts";
