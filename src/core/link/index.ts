export {
  beamwidthFromGainDeg,
  dishBeamwidthDeg,
  dishGainDbi,
  elevationBeamwidthDeg,
  farFieldM,
  misalignmentLossDb,
  permittedLeanDeg,
  polarisationLossDb,
} from "./antenna.ts";
export { type Availability, availability, type LinkClimate, outageHPerYear } from "./availability.ts";
export { AGEING_DB, eirpDbm, FADE_MARGIN_DB, levelV, linkBudget } from "./budget.ts";
export {
  type BullingtonLoss,
  bullingtonLoss,
  type ProfilePoint,
  type TerrainPath,
} from "./bullington.ts";
export {
  CLEARANCE_FRAC,
  type ClearingHeights,
  type Obstacle,
  type ObstacleKind,
  type Path,
  type PathClearance,
  type PointClearance,
  pathClearance,
  straightGround,
} from "./clearance.ts";
export { aimTiltDeg, earthBulgeM, effectiveEarthRatio, MEDIAN_K, radioHorizonM } from "./earth.ts";
export {
  deygoutLossDb,
  dominantEdgeCorrectionDb,
  doubleEdgeCorrectionDb,
  type EdgePath,
  type EdgePoint,
  epsteinPetersonLossDb,
} from "./edges.ts";
export {
  CLOSEST_APPROACH_M,
  exposureDistanceM,
  PUBLIC_LIMIT_W_PER_M2,
  powerDensityWPerM2,
  REFLECTION_RATIO,
} from "./exposure.ts";
export { freeSpaceLossDb, wavelengthM } from "./free-space.ts";
export { fresnelRadiusM } from "./fresnel.ts";
export { type Air, gasDbPerKm, gasLossDb } from "./gas.ts";
export { averageTerrainLossDb, knifeEdgeLossDb, knifeEdgeV } from "./knife-edge.ts";
export type { ChannelWidthMHz, RadioStandard, WifiStandard } from "./modulation-tables.ts";
export {
  barnettVigantsFrac,
  type MultipathPath,
  multipathExceededFrac,
  multipathOccurrenceByMapFrac,
  multipathOccurrenceFrac,
  multipathOccurrenceQuickFrac,
  yearFromWorstMonthFrac,
} from "./multipath.ts";
export { type DiffractionMethod, type ObstacleLoss, obstacleLoss } from "./obstacle-loss.ts";
export { CHECK_RULES, type PowerLimit, type RadioBand } from "./radio-band.ts";
export { POLARISATION_TILT_DEG, rainCoefficients, rainDbPerKm } from "./rain.ts";
export {
  type RainOutage,
  type RainPath,
  rainDistanceRatio,
  rainExceededDb,
  rainOutage,
  rainPathLossDb,
  rainScaledDb,
} from "./rain-path.ts";
export {
  type AirInterface,
  bestRate,
  minimumSensitivityDbm,
  phyRateMbps,
  type RadioRow,
  type RateStep,
  rateSteps,
  thermalNoiseDbm,
} from "./rates.ts";
export { type RadioRegion, regionOfCountry } from "./regions.ts";
export { bandsForOutdoorPointToPoint, bandsOfRegion, powerLimitDbm } from "./rules.ts";
export {
  acknowledgementWait,
  type CapacityCheck,
  capacityCheck,
  netThroughputMbps,
  PLANNING_FACTOR_FRAC,
  sharedAirtimeFrac,
  VIDEO_OVERHEAD_FRAC,
  VIDEO_SHARE_FRAC,
  wiredPortMbps,
} from "./throughput.ts";
export { treeLossDb, woodGammaDbPerM, woodLossDb, woodMaxDb } from "./vegetation.ts";
