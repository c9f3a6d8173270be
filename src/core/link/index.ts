export { type AddressPlan, addressPlan } from "./address-plan.ts";
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
export { type CarrierChoice, COPPER_REACH_M, carrierChoices } from "./choose-carrier.ts";
export { type RadioCandidate, radioCandidates } from "./choose-radio.ts";
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
export { type DeltaBullingtonLoss, deltaBullingtonLoss } from "./delta-bullington.ts";
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
export {
  type ClearanceRule,
  clearanceRules,
  type HeightChoice,
  type LowestHeights,
  lowestHeights,
  minimumEarthRatio,
  PRACTICAL_RULE,
} from "./heights.ts";
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
export { type PathLoss, pathLoss, type SurveyedPath } from "./path-loss.ts";
export type { PathRefusal, PathRefused } from "./path-refusal.ts";
export {
  type PathSection,
  pathSection,
  type SectionObstacle,
  type SectionSample,
} from "./path-section.ts";
export { CHECK_RULES, type PowerLimit, type RadioBand } from "./radio-band.ts";
export { RADIO_CLASSES, type RadioClass, type RadioClassId } from "./radio-classes.ts";
export type { RadioNeed, RadioSpecification } from "./radio-trial.ts";
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
export { type ObstaclesRead, readObstacles, type UnderstoodPathObstacle } from "./read-obstacles.ts";
export { type ProfileRead, readProfile } from "./read-profile.ts";
export { type RadioRegion, regionOfCountry } from "./regions.ts";
export { bandsForOutdoorPointToPoint, bandsOfRegion, powerLimitDbm } from "./rules.ts";
export {
  type Sector,
  type SectorLoad,
  type SectorPost,
  type SectorPostUse,
  sectorLoad,
} from "./sector.ts";
export { type AntennaAim, antennaAim, type LevelVerdict, levelVerdict } from "./setting-up.ts";
export { effectiveHeights, type SmoothSurface, smoothSurface } from "./smooth-earth.ts";
export { type EarthSurface, type SphericalPath, sphericalEarthLossDb } from "./spherical-earth.ts";
export {
  groundAtM,
  meanTerrainM,
  profileObstacles,
  terrainRoughnessM,
  thinnedProfile,
} from "./terrain.ts";
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
export {
  type Direction,
  type RadioEnd,
  type TwoWayBudget,
  type TwoWayLink,
  twoWayAvailability,
  twoWayBudget,
} from "./two-way.ts";
export { treeLossDb, woodGammaDbPerM, woodLossDb, woodMaxDb } from "./vegetation.ts";
