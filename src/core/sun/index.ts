export {
  cooperDeclinationDeg,
  daylightHours,
  distanceFactorRatio,
  equationOfTimeMin,
  extraterrestrialDailyKWhPerM2,
  extraterrestrialSpanKWhPerM2,
  type LatitudeDay,
  MEAN_DAY_BY_MONTH,
  type MeanDay,
  SOLAR_CONSTANT_W_PER_M2,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
  sunsetHourAngleDeg,
} from "../astronomy/index.ts";
export { beamTiltRatio, type Plane, skyViewFrac } from "./beam.ts";
export { type BestPlane, bestPlane } from "./best-plane.ts";
export { type BestTilt, bestTilt } from "./best-tilt.ts";
export {
  faimanModuleTempC,
  type ModuleMount,
  modulePowerW,
  monthlyHeatLossFrac,
  noctCellTempC,
  sandiaModuleTempC,
  type Weather,
} from "./cell.ts";
export { compassWord } from "./compass.ts";
export {
  collaresPereiraRablDiffuseFrac,
  dailyDiffuseFrac,
  hourlyDiffuseFrac,
  monthlyDiffuseFrac,
} from "./diffuse.ts";
export { type GhiFromTilted, ghiFromTilted } from "./ghi-from-tilted.ts";
export {
  ashraeIncidenceRatio,
  type EffectiveIncidence,
  effectiveIncidenceDeg,
  type GlassView,
  glassIncidenceRatio,
  glassView,
  irradianceThroughGlassWPerM2,
} from "./glass.ts";
export {
  type HorizonPoint,
  type HorizonProfile,
  horizonFrom,
  type Obstacle,
  treeElevationDeg,
} from "./horizon.ts";
export { type HorizonLoss, horizonLoss } from "./horizon-loss.ts";
export type { HorizonRefusal, HorizonRefused } from "./horizon-refusal.ts";
export { diffuseHourFrac, globalHourFrac } from "./hour-share.ts";
export {
  clearSkyGhiWPerM2,
  isotropicPoa,
  type PlaneIrradiance,
  relativeAirMassRatio,
  type SplitIrradiance,
  splitIrradiance,
} from "./irradiance.ts";
export { DARK_MONTH_GHI_KWH_PER_M2, type PlaneWish, type TiltResult } from "./judged-plane.ts";
export { type LevelSun, type MonthlyPoa, monthlyPoa } from "./monthly-poa.ts";
export type { Surroundings } from "./open-sky.ts";
export {
  FIRST_UTC_MS,
  incidenceDeg,
  LAST_UTC_MS,
  type SunPosition,
  sunDirection,
  sunPosition,
} from "./position.ts";
export {
  type HorizonRead,
  readHorizon,
  type UnderstoodObstacle,
} from "./read-horizon.ts";
export { hayDaviesPoa, hdkrPoa, perezPoa, type SkyLight, type SkyPlaneIrradiance } from "./sky-models.ts";
export { type SunTimes, sunTimes } from "./sun-times.ts";
export { type SeasonTilt, type TiltPair, tiltPair } from "./tilt-pair.ts";
export { type ClearSky, turbidClearSky } from "./turbid-sky.ts";
export { huldModulePowerW, moduleCurrentRatio, type SiliconFit, weakLightRatio } from "./weak-light.ts";
