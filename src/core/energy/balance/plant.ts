import type { Chemistry } from "../chemistry.ts";
import type { BankTraits } from "../tables.ts";

/** Hours of a year here: the calendar has 365 days, January first; hour `i` covers [i, i+1). */
export const HOURS_OF_YEAR = 8760;

/** What the array gives, hour by hour, and how the controller joins it to the bank. */
export type PvSupply =
  /** The controller tracks the maximum power point. */
  | {
      readonly kind: "mppt";
      /** Power at the maximum power point over rated power, 0 or more, one entry an hour of the whole span. */
      readonly outputRatio: Float64Array;
      readonly ratedW: number;
    }
  /**
   * The array is tied to the bank and gives its current at the bank's voltage, whatever its own would be. That
   * holds while its voltage at maximum power stays above the bank's.
   */
  | {
      readonly kind: "pwm";
      /** Current at maximum power over rated current at maximum power. */
      readonly outputRatio: Float64Array;
      /** Of one string. */
      readonly ratedA: number;
      readonly strings: number;
    };

export interface BalanceController {
  /** 0.5 to 1. */
  readonly efficiencyFrac: number;
  /**
   * Into the bank and its loads together; for "mppt" taken as power at the nominal voltage, the cautious
   * reading.
   */
  readonly maxOutputA: number;
  /** Always drawn, also while all loads are shed; it ends only with an empty bank and no sun. */
  readonly ownW: number;
}

/** Keeps a bank from falling below a temperature; its energy is a load that is fed to the last. */
export interface BankHeater {
  readonly heaterW: number;
  readonly thermostatTempC: number;
  /** Heat that leaves the box for each kelvin; the heater runs as much as it takes, up to heaterW. */
  readonly heatLossWPerK: number;
}

export interface BalanceBank {
  readonly chemistry: Chemistry;
  /** 12, 24 ... (12.8 and so on for lithium iron phosphate). */
  readonly nominalV: number;
  /** At 25 deg C and a slow rate, when new. */
  readonly ratedAh: number;
  /** Capacity left over capacity when new, 0.3 to 1: 0.8 for a bank about to be replaced. */
  readonly healthFrac: number;
  /** Temperature of the bank (bankTempC), -60 to 70, one entry an hour of the whole span. */
  readonly tempC: Float64Array;
  /** BANK_TRAITS of the chemistry when left out. */
  readonly traits?: BankTraits;
  readonly heater?: BankHeater;
}

/** A load that the air outside switches on. */
export interface AmbientLoad {
  readonly runs: "below" | "above";
  readonly tempC: number;
  readonly watts: number;
  /** Twelve, January first: months in which it may run; all when left out. */
  readonly runsInMonth?: readonly boolean[];
}

/**
 * Loads that are shed and return together.
 *
 * Thresholds are of what the bank can give at its present temperature and health, 0 to 1, not of its rating. A
 * less important tier must not be shed later, nor return earlier, than a more important one.
 */
export interface LoadTier {
  readonly name: string;
  /** 1 is the most important, shed last. */
  readonly priority: number;
  /** At the terminals of the bank, 8760 entries. */
  readonly wattsByHourOfYear: Float64Array;
  readonly shedBelowSocFrac: number;
  /**
   * At least shedBelowSocFrac. Equal: the tier is fed for that part of the time for which there is energy, an
   * idle limit that no relay reaches; otherwise at least 0.005 more.
   */
  readonly returnAboveSocFrac: number;
  readonly byAmbient?: readonly AmbientLoad[];
}

/** A stand-alone post and the weather it stands in. */
export interface BalancePlant {
  readonly pv: PvSupply;
  readonly bank: BalanceBank;
  readonly controller: BalanceController;
  readonly loads: readonly LoadTier[];
  /** Needed where a tier has byAmbient; one entry an hour of the whole span. */
  readonly ambientTempC?: Float64Array;
}
