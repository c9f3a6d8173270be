export { type ArrayPower, arrayPower, type ControllerKind, parallelModules } from "./array.ts";
export { type AutonomyDays, type Availability, autonomyDaysSuggestion, recoveryDays } from "./autonomy.ts";
export { type BankLayout, type BlockSize, layoutBank } from "./bank.ts";
export { type BatteryCapacity, batteryCapacity } from "./capacity.ts";
export { type ChargeSettings, chargeCurrentBoundsA, chargeSettings, rechargeTime } from "./charge.ts";
export { type Chemistry, isLead, type LeadChemistry } from "./chemistry.ts";
export { layoutPanels, type PanelLayout } from "./panels.ts";
export {
  type WorksheetLoad,
  type WorksheetTilt,
  worksheetArray,
  worksheetBattery,
  worksheetDesignCurrent,
  worksheetLoadAh,
} from "./sandia.ts";
export { type SeasonalDeficit, seasonalDeficit } from "./seasonal.ts";
export { type ColdVoc, coldVoc, type HotVmp, hotVmp, necColdFactorRatio } from "./string.ts";
export { capacityFrac, FREEZING_MARGIN_K, frostSafeDodFrac } from "./temperature.ts";
