export { type ArrayPower, arrayPower, type ControllerKind, parallelModules } from "./array.ts";
export { type BankLayout, type BlockSize, layoutBank } from "./bank.ts";
export { type BatteryCapacity, batteryCapacity } from "./capacity.ts";
export { type ChargeSettings, chargeCurrentBoundsA, chargeSettings, rechargeTime } from "./charge.ts";
export { type Chemistry, isLead, type LeadChemistry } from "./chemistry.ts";
export { layoutPanels, type PanelLayout } from "./panels.ts";
export { capacityFrac, FREEZING_MARGIN_K, frostSafeDodFrac } from "./temperature.ts";
