export { ambientFactor, ampacityA, groupingFactor } from "./ampacity.ts";
export {
  type Conductor,
  type ConductorFamily,
  columnAmpacityA,
  conductorOhmPerKm,
  conductors,
} from "./conductor.ts";
export { awgAreaMm2, awgDiameterMm, COPPER, copperOhmPerKm, copperResistanceRatio } from "./copper.ts";
export { type ConstantPowerDrop, constantPowerDrop, type VoltageDrop, voltageDrop } from "./drop.ts";
export { groundingGauge, type LightningLocation, lightningFlashesPerYear, rodOhm } from "./earth.ts";
export { type FuseFamily, type FuseKind, type FusePick, fuseKind, pickFuse } from "./fuse.ts";
export {
  type ConductorCriterion,
  type ConductorFit,
  type ConductorPick,
  conductorFit,
  pickConductor,
  type WireRun,
} from "./pick.ts";
export {
  classFor,
  ETHERNET_CHANNEL_M,
  POE_CLASSES,
  type PoeClass,
  type PoeClassPick,
  poeAtDevice,
  poeLoopOhm,
} from "./poe.ts";
export {
  type BankChemistry,
  type InterruptingAdvice,
  interruptingAdvice,
  shortCircuitA,
  typicalShortCircuitA,
} from "./shortcircuit.ts";
export {
  type PvCircuitCurrents,
  pvCircuitCurrents,
  type StringFuse,
  type StringFuseReason,
  stringFuse,
} from "./strings.ts";
