import { interpolate, within } from "../../numerics/index.ts";
import { chargeSettings } from "../charge.ts";
import type { Chemistry } from "../chemistry.ts";
import { CELL_AT_REST } from "../tables.ts";

/** What a voltage at rest says of the charge. */
export interface ChargeReading {
  readonly socFrac: number;
  /** The charge lies between these. */
  readonly lowestSocFrac: number;
  readonly highestSocFrac: number;
  /** The two lie more than 0.3 apart: the voltage says nearly nothing. */
  readonly isBlind: boolean;
}

const BLIND_SPAN_FRAC = 0.3;

/**
 * State of charge from the voltage of a bank at rest: no current in or out for some hours, best before sunrise with the loads
 * off, at about 25 deg C.
 *
 * Lithium iron phosphate keeps nearly the same voltage from about 0.2 to 0.9 of its charge: there the reading is blind, and
 * says so; count ampere-hours instead.
 *
 * @param bank.restV     0 or more; beyond the curve it is held at empty or full
 * @param bank.nominalV  as for chargeSettings
 * @accuracy as given with each reading: 0.015 V a lead-acid cell (0.09 V at 12 V), 0.02 V a lithium cell
 * @throws RangeFault outside the ranges above
 * @source curves from memory, see CELL_AT_REST
 */
export function socFromRestVoltage(bank: {
  readonly chemistry: Chemistry;
  readonly restV: number;
  readonly nominalV: number;
}): ChargeReading {
  const { restVByChargeFrac, restScatterV } = CELL_AT_REST[bank.chemistry];
  const cellV = within("restV", bank.restV, 0, 1000) / cellsOf(bank);
  const chargeByV = restVByChargeFrac.map(([socFrac, atV]) => [atV, socFrac] as const);
  const lowestSocFrac = interpolate(chargeByV, cellV - restScatterV);
  const highestSocFrac = interpolate(chargeByV, cellV + restScatterV);
  return {
    socFrac: interpolate(chargeByV, cellV),
    lowestSocFrac,
    highestSocFrac,
    isBlind: highestSocFrac - lowestSocFrac > BLIND_SPAN_FRAC,
  };
}

/**
 * Voltage of a bank at rest at a state of charge; the inverse of the above.
 *
 * @param bank.socFrac  0 to 1
 * @returns V for the whole bank, at about 25 deg C
 * @throws RangeFault outside the range above
 * @source from memory, see CELL_AT_REST
 */
export function restVFromSoc(bank: {
  readonly chemistry: Chemistry;
  readonly socFrac: number;
  readonly nominalV: number;
}): number {
  const { restVByChargeFrac } = CELL_AT_REST[bank.chemistry];
  return cellsOf(bank) * interpolate(restVByChargeFrac, within("socFrac", bank.socFrac, 0, 1));
}

/**
 * Voltage of a bank while it is charged, before absorption begins: at rest, and the rise that the current brings.
 *
 * Lithium iron phosphate keeps nearly one voltage from about 0.2 to 0.9 of its charge, under current as at rest: there a voltage
 * belongs to no one charge.
 *
 * @param bank.socFrac      0 to 1
 * @param bank.chargeCRate  current in A over rated Ah, 0 to 0.5
 * @returns V for the whole bank at about 25 deg C, at most its absorption voltage
 * @accuracy lead-acid: some 0.3 V at 12 V and C/20. The model of Copetti, Lorenzo and Chenlo (1993, from memory) stands 0.4 to
 *           0.6 V higher at half charge; it is fitted to fewer, smaller batteries. Lithium: 0.02 V a cell
 * @throws RangeFault outside the ranges above
 * @source from memory, rise common practice without a source, see CELL_AT_REST
 */
export function chargingVFromSoc(bank: {
  readonly chemistry: Chemistry;
  readonly socFrac: number;
  readonly nominalV: number;
  readonly chargeCRate: number;
}): number {
  const { absorptionAt25V, cellsInSeries } = chargeSettings({ ...bank, tempC: 25 });
  const riseV = CELL_AT_REST[bank.chemistry].riseVPerCRate * within("chargeCRate", bank.chargeCRate, 0, 0.5);
  return Math.min(restVFromSoc(bank) + cellsInSeries * riseV, absorptionAt25V);
}

function cellsOf({
  chemistry,
  nominalV,
}: {
  readonly chemistry: Chemistry;
  readonly nominalV: number;
}): number {
  return chargeSettings({ chemistry, nominalV, tempC: 25 }).cellsInSeries;
}
