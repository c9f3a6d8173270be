import { interpolate, within } from "../numerics/index.ts";
import { type Chemistry, isLead } from "./chemistry.ts";
import {
  CELL_VOLTAGES,
  CHARGE_FRAC_BY_FREEZING_TEMP_C,
  COLD_FAST_CAPACITY_FRAC_BY_TEMP_C,
  IEEE_485_SIZE_FACTOR_BY_TEMP_C,
  LIFEPO4_CAPACITY_FRAC_BY_TEMP_C,
  SLOW_LEAD_CAPACITY_FRAC_BY_TEMP_C,
} from "./tables.ts";

/** Rates in h at which the two lead-acid curves hold. */
const FAST_RATE_H = 8;
const SLOW_RATE_H = 100;

/**
 * Capacity that a battery gives at a temperature, as a fraction of its rating at 25 deg C and at the same
 * rate.
 *
 * Lead-acid at 100 h and slower follows a slow-rate curve, at 8 h and faster the IEEE 485 table (continued
 * below -3.9 deg C with an army figure); between, straight over the logarithm of the rate, which is our own
 * choice. Never above 1: warmth is not counted as gain.
 *
 * @param cell.tempC      coldest sustained battery temperature (not air), -40 to 60
 * @param cell.hourRateH  capacity over current, 1 to 10000; solar banks stand at 50 to 500
 * @returns fraction; for lithium iron phosphate 0 below -20 deg C, where it must not be discharged
 * @accuracy 0.1 below 0 deg C: makers differ, take their curve when it is known
 * @throws RangeFault outside the ranges above
 * @source see the tables: IEEE 485 table 1, TM 10-6140-200-14, common practice
 */
export function capacityFrac(cell: {
  readonly chemistry: Chemistry;
  readonly tempC: number;
  readonly hourRateH?: number;
}): number {
  const tempC = within("tempC", cell.tempC, -40, 60);
  const hourRateH = within("hourRateH", cell.hourRateH ?? SLOW_RATE_H, 1, 10_000);
  if (!isLead(cell.chemistry)) {
    return tempC < CELL_VOLTAGES.lifepo4.dischargeMinTempC
      ? 0
      : interpolate(LIFEPO4_CAPACITY_FRAC_BY_TEMP_C, tempC);
  }
  const slow = interpolate(SLOW_LEAD_CAPACITY_FRAC_BY_TEMP_C, tempC);
  return interpolate(
    [
      [Math.log(FAST_RATE_H), fastLeadCapacityFrac(tempC)],
      [Math.log(SLOW_RATE_H), slow],
    ],
    Math.log(hourRateH),
  );
}

function fastLeadCapacityFrac(tempC: number): number {
  const coldestOfTableC = IEEE_485_SIZE_FACTOR_BY_TEMP_C[0]![0];
  if (tempC < coldestOfTableC) return interpolate(COLD_FAST_CAPACITY_FRAC_BY_TEMP_C, tempC);
  return Math.min(1, 1 / interpolate(IEEE_485_SIZE_FACTOR_BY_TEMP_C, tempC));
}

/**
 * Kelvin kept between the coldest electrolyte and its freezing point: our own choice; the table differs from
 * others by as much.
 */
export const FREEZING_MARGIN_K = 5;

/**
 * Deepest discharge at which lead-acid electrolyte stays liquid on the coldest night, with FREEZING_MARGIN_K
 * to spare. A frozen block bursts.
 *
 * @param coldestTempC  coldest battery temperature, -60 to 60
 * @returns fraction of capacity that may be taken out, 1 in mild places, 0 where even a full block may freeze
 * @accuracy 0.05; straight lines between the table's five points
 * @throws RangeFault outside the range above
 * @source US Army TM 5-3820-256-24-4 table 2
 */
export function frostSafeDodFrac(coldestTempC: number): number {
  const mustStayLiquidAtC = within("coldestTempC", coldestTempC, -60, 60) - FREEZING_MARGIN_K;
  const [coldestPointC] = CHARGE_FRAC_BY_FREEZING_TEMP_C[0]!;
  if (mustStayLiquidAtC < coldestPointC) return 0;
  return 1 - interpolate(CHARGE_FRAC_BY_FREEZING_TEMP_C, mustStayLiquidAtC);
}
