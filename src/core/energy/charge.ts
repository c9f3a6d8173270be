import { clamp, within } from "../numerics/index.ts";
import { type Chemistry, isLead } from "./chemistry.ts";
import { CELL_VOLTAGES } from "./tables.ts";

/** What the controller is set to, for the whole bank. */
export interface ChargeSettings {
  readonly cellsInSeries: number;
  /** At the given battery temperature. */
  readonly absorptionV: number;
  readonly floatV: number | null;
  readonly equaliseV: number | null;
  /** Highest voltage that the loads and the controller meet at this temperature. */
  readonly highestChargeV: number;
  /** At 25 deg C, as it is entered in a controller that compensates by itself. */
  readonly absorptionAt25V: number;
  readonly floatAt25V: number | null;
  readonly equaliseAt25V: number | null;
  /** Whole bank; 0: none, and the controller's compensation must be switched off. */
  readonly compensationVPerK: number;
  /** Loads are cut off here; not compensated. */
  readonly lowVoltageDisconnectV: number;
  readonly chargeMinTempC: number;
  readonly chargeMaxTempC: number;
  readonly dischargeMinTempC: number;
  readonly dischargeMaxTempC: number;
  /** Whether the battery may be charged at the given temperature. */
  readonly isChargeAllowed: boolean;
}

/** Compensation is held beyond these: common practice, no source. */
const COMPENSATED_FROM_C = -20;
const COMPENSATED_TO_C = 50;

/**
 * Charge voltages, cut-off and temperature limits of a bank.
 *
 * @param bank.nominalV  12, 24, 36 or 48 (12.8, 25.6 ... for lithium iron phosphate mean the same), or any
 *                       lead-acid bank of whole 2 V cells up to 120
 * @param bank.tempC     battery temperature, -60 to 80
 * @returns V for the whole bank; the maker's sheet goes before these
 * @throws RangeFault outside the ranges above, and for a voltage that is no whole number of cells
 * @source from memory, see CELL_VOLTAGES
 */
export function chargeSettings(bank: {
  readonly chemistry: Chemistry;
  readonly nominalV: number;
  readonly tempC: number;
}): ChargeSettings {
  const cell = CELL_VOLTAGES[bank.chemistry];
  const nominalV = within("nominalV", bank.nominalV, 2, 120);
  const cellsInSeries = isLead(bank.chemistry) ? nominalV / 2 : 4 * Math.round(nominalV / 12.8);
  within("part of a cell in nominalV", cellsInSeries % 1, 0, 0);
  within("cellsInSeries", cellsInSeries, 1, 60);
  const tempC = within("tempC", bank.tempC, -60, 80);
  const shiftV = cell.compensationVPerK * (clamp(tempC, COMPENSATED_FROM_C, COMPENSATED_TO_C) - 25);
  const bankV = (cellV: number): number => cellV * cellsInSeries;
  const bankVOrNull = (cellV: number | null, addedV: number): number | null =>
    cellV === null ? null : bankV(cellV + addedV);
  const absorptionV = bankV(cell.absorptionV + shiftV);
  const equaliseV = bankVOrNull(cell.equaliseV, shiftV);
  return {
    cellsInSeries,
    absorptionV,
    floatV: bankVOrNull(cell.floatV, shiftV),
    equaliseV,
    highestChargeV: Math.max(absorptionV, equaliseV ?? 0),
    absorptionAt25V: bankV(cell.absorptionV),
    floatAt25V: bankVOrNull(cell.floatV, 0),
    equaliseAt25V: bankVOrNull(cell.equaliseV, 0),
    compensationVPerK: bankV(cell.compensationVPerK),
    lowVoltageDisconnectV: bankV(cell.disconnectV),
    chargeMinTempC: cell.chargeMinTempC,
    chargeMaxTempC: cell.chargeMaxTempC,
    dischargeMinTempC: cell.dischargeMinTempC,
    dischargeMaxTempC: cell.dischargeMaxTempC,
    isChargeAllowed: tempC >= cell.chargeMinTempC && tempC <= cell.chargeMaxTempC,
  };
}

/**
 * Charge currents between which the array should lie: less never reaches absorption nor mixes the acid, more
 * gasses and heats.
 *
 * @param bank.capacityAh  above 0
 * @throws RangeFault outside the range above
 * @source common practice, no source: C/20 to C/5 for lead-acid; up to C/2 for lithium iron phosphate,
 *         without a lower bound
 */
export function chargeCurrentBoundsA(bank: { readonly chemistry: Chemistry; readonly capacityAh: number }): {
  readonly minA: number;
  readonly maxA: number;
} {
  const capacityAh = within("capacityAh", bank.capacityAh, 0.1, 1e7);
  return isLead(bank.chemistry)
    ? { minA: capacityAh / 20, maxA: capacityAh / 5 }
    : { minA: 0, maxA: capacityAh / 2 };
}

/**
 * Hours of full charge current to put back what was taken out, and the same in days of peak sun.
 *
 * @param charge.usedAh                  0 or more
 * @param charge.chargeA                 array current less what the load takes meanwhile, above 0
 * @param charge.coulombicEfficiencyFrac 0.5 to 1: 0.85 to 0.90 vented, 0.90 to 0.95 sealed, 0.99 lithium
 * @param charge.peakSunHours            a day of the month in question, 0.05 to 20
 * @throws RangeFault outside the ranges above
 * @source arithmetic; efficiencies from memory. Absorption, in which the current falls, is not in it
 */
export function rechargeTime(charge: {
  readonly usedAh: number;
  readonly chargeA: number;
  readonly coulombicEfficiencyFrac: number;
  readonly peakSunHours: number;
}): { readonly hours: number; readonly days: number } {
  const hours =
    within("usedAh", charge.usedAh, 0, 1e7) /
    (within("chargeA", charge.chargeA, 0.001, 1e5) *
      within("coulombicEfficiencyFrac", charge.coulombicEfficiencyFrac, 0.5, 1));
  return { hours, days: hours / within("peakSunHours", charge.peakSunHours, 0.05, 20) };
}
