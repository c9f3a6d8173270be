export { type ArrayPower, arrayPower, type ControllerKind, parallelModules } from "./array.ts";
export { type AutonomyDays, type Availability, autonomyDaysSuggestion, recoveryDays } from "./autonomy.ts";
export {
  type AmbientLoad,
  type Balance,
  type BalanceBank,
  type BalanceController,
  type BalancePlant,
  type BankHeater,
  type BankLife,
  balanceUnlessDarker,
  bankLifeYears,
  bankTempC,
  type ChargeReading,
  type ComingDay,
  chargingVFromSoc,
  type DarkestSpell,
  type EnergyTotals,
  equalReliabilityPairs,
  type LoadTier,
  type Outlook,
  outlook,
  type PvSupply,
  REFILLED_FRAC,
  type ReliabilityPair,
  rainflow,
  restVFromSoc,
  simulateBalance,
  socFromRestVoltage,
  type TierBalance,
  type TierOutlook,
} from "./balance/index.ts";
export { type BankLayout, type BlockSize, layoutBank } from "./bank.ts";
export { insulatedBoxLossWPerK } from "./box-loss.ts";
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
export { BANK_TRAITS, type BankTraits } from "./tables.ts";
export { capacityFrac, FREEZING_MARGIN_K, frostSafeDodFrac } from "./temperature.ts";
