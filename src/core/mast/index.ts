export { type Cantilever, naturalFrequencyHz, tipDeflectionM, uniformTipDeflectionM } from "./beam.ts";
export {
  type BatteryVentilation,
  type BoxPlace,
  type BoxRise,
  batteryVentilation,
  boxRise,
  type ClosedBox,
  coolingAreaM2,
  type GassingBattery,
  SOLAR_ABSORPTANCE,
  WALL_WATTS_PER_M2K,
} from "./box.ts";
export {
  type Concrete,
  type ConcreteBag,
  concrete,
  EMBEDMENT_CAP_M,
  type Embedment,
  embedment,
  embedmentAtPressureM,
  type FootingLoad,
  ruleOfThumbDepthM,
  type Soil,
  type SoilStrength,
  soilStrength,
} from "./footing.ts";
export { type MastLoad, pickTube, type TubeCriterion, type TubeFit, type TubePick, tubeFit } from "./pick.ts";
export {
  LADDER_ANGLE_DEG,
  type Lifting,
  ladderFootM,
  liftingIndex,
  overheadLineClearanceM,
  recommendedWeightKg,
} from "./safety.ts";
export { measuredTube, type Tube, type TubeFamily, type TubeSection, tubeSection, tubes } from "./section.ts";
export { DIRECTIONALITY, PANEL_FORCE_COEFFICIENT } from "./tables.ts";
export {
  ALLOWABLE_STRESS_WIND_FRAC,
  boxForceCoefficient,
  type Exposure,
  exposureCoefficient,
  type PartForce,
  RIGID_GUST_FACTOR,
  type SiteWind,
  tubeForceCoefficient,
  velocityPressurePa,
  type WindLoad,
  type WindPart,
  windForceN,
  windLoad,
} from "./wind.ts";
