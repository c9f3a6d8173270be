import type { Prepared } from "./prepare.ts";

/** Where the run stands, as one Float64Array so that the loop stays fast: these are its places. */
export const MISSING_WH = 0;
/** Tiers connected now, the controller included: always the most important ones. */
export const ON_COUNT = 1;
/** 0 all is fed, 1 something is shed, 2 something has returned and the bank is not yet full again. */
export const PHASE = 2;
export const RECOVERY_H = 3;
/** Connections so far of a tier that was shed. */
export const RETURNS = 4;
/** What the last step moved. */
export const BUS_WH = 5;
export const FED_WH = 6;
export const STORED_WH = 7;
export const DRAWN_WH = 8;
const PLACES = 9;

/** A full bank with every tier connected. */
export function fullState(plant: Prepared): Float64Array {
  const state = new Float64Array(PLACES);
  state[ON_COUNT] = plant.tierCount;
  return state;
}

/** Which totals stand where. */
export const AVAILABLE_WH = 0;
export const BUS_TOTAL_WH = 1;
export const STORED_TOTAL_WH = 2;
export const DRAWN_TOTAL_WH = 3;
export const SELF_WH = 4;
export const FROZEN_H = 5;
/** How much faster than at 25 deg C the bank ages, less one, summed over the hours. */
export const AGEING_EXCESS = 6;
export const WORST_RESIDUAL = 7;
export const RECOVERIES = 8;
export const RECOVERY_SUM_H = 9;
export const RECOVERY_WORST_H = 10;
const TOTALS = 11;

/** Steps of the scale on which the median charge is read. */
export const CHARGE_STEPS = 500;

/** What a run adds up. A month's place in `darkH` and `unmetWh` is tier x months + year x 12 + month. */
export interface Tally {
  readonly months: number;
  readonly darkH: Float64Array;
  readonly unmetWh: Float64Array;
  /** Wanted, and hours in which something was wanted, same places. */
  readonly wantedWh: Float64Array;
  readonly wantedH: Float64Array;
  readonly dailyLowFrac: Float64Array;
  readonly dailyHighFrac: Float64Array;
  readonly dailyMeanFrac: Float64Array;
  /** Share of the store that could be drawn in the hour of each day's lowest charge. */
  readonly dailyLowCapacityFrac: Float64Array;
  /** Tiers connected when that hour ends, the controller included. */
  readonly dailyLowOnCount: Uint8Array;
  /** Hours at each step of charge, by month of the year. */
  readonly hoursByCharge: Float64Array;
  readonly totals: Float64Array;
}

export function emptyTally(tierCount: number, years: number): Tally {
  const months = years * 12;
  return {
    months,
    darkH: new Float64Array(tierCount * months),
    unmetWh: new Float64Array(tierCount * months),
    wantedWh: new Float64Array(tierCount * months),
    wantedH: new Float64Array(tierCount * months),
    dailyLowFrac: new Float64Array(years * 365),
    dailyHighFrac: new Float64Array(years * 365),
    dailyMeanFrac: new Float64Array(years * 365),
    dailyLowCapacityFrac: new Float64Array(years * 365),
    dailyLowOnCount: new Uint8Array(years * 365),
    hoursByCharge: new Float64Array(12 * (CHARGE_STEPS + 1)),
    totals: new Float64Array(TOTALS),
  };
}
