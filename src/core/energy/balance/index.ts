export { bankTempC } from "./bank-temp.ts";
export { rainflow } from "./cycles.ts";
export { type BankLife, bankLifeYears } from "./life.ts";
export { type ComingDay, type Outlook, outlook, type TierOutlook } from "./outlook.ts";
export { equalReliabilityPairs, type ReliabilityPair } from "./pairs.ts";
export type {
  AmbientLoad,
  BalanceBank,
  BalanceController,
  BalancePlant,
  BankHeater,
  LoadTier,
  PvSupply,
} from "./plant.ts";
export { type ChargeReading, chargingVFromSoc, restVFromSoc, socFromRestVoltage } from "./rest-voltage.ts";
export type { Balance, DarkestSpell, EnergyTotals, TierBalance } from "./result.ts";
export { balanceUnlessDarker, simulateBalance } from "./simulate.ts";
export { REFILLED_FRAC } from "./year.ts";
