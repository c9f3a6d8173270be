import { within } from "../numerics/index.ts";
import { NEC_690_7_FACTOR_BY_LOWEST_TEMP_C } from "./tables.ts";

/**
 * Stand-in where a module is colder than the table and its sheet gives no coefficient: common practice, no
 * source.
 */
const STEEPEST_VOC_COEFFICIENT_PER_K = -0.004;

/** Open-circuit voltage in the record cold, by both ways. */
export interface ColdVoc {
  /** null when the sheet gives no coefficient and the table serves. */
  readonly byCoefficientV: number | null;
  /** null below -40 deg C, where the table ends; its last line is then still a floor under coldVocV. */
  readonly byTableV: number | null;
  /**
   * The higher of the two: compare it with the controller's absolute maximum input, never with its nominal.
   */
  readonly coldVocV: number;
}

/**
 * Highest open-circuit voltage of a string, at dawn on the coldest day: the higher of coefficient and table.
 *
 * @param string.moduleVocV               at 25 deg C, 1 to 1000
 * @param string.vocTempCoefficientPerK   negative, -0.006 to 0; null when the sheet is silent
 * @param string.modulesInSeries          1 to 100
 * @param string.recordLowTempC           -70 to 40, of the air
 * @throws RangeFault outside the ranges above
 * @source NEC 690.7: coefficient method Voc x (1 + beta (T - 25)), and table 690.7(A); taking the higher is
 *         our own choice
 */
export function coldVoc(string: {
  readonly moduleVocV: number;
  readonly vocTempCoefficientPerK: number | null;
  readonly modulesInSeries: number;
  readonly recordLowTempC: number;
}): ColdVoc {
  const vocV =
    within("moduleVocV", string.moduleVocV, 1, 1000) *
    within("modulesInSeries", string.modulesInSeries, 1, 100);
  const lowTempC = within("recordLowTempC", string.recordLowTempC, -70, 40);
  const factor = necColdFactorRatio(lowTempC);
  const coefficient =
    string.vocTempCoefficientPerK ?? (factor === null ? STEEPEST_VOC_COEFFICIENT_PER_K : null);
  const byCoefficientV =
    coefficient === null
      ? null
      : vocV * (1 + within("vocTempCoefficientPerK", coefficient, -0.006, 0) * (lowTempC - 25));
  const byTableV = factor === null ? null : vocV * factor;
  // colder than the table may not come out below the table's last line
  const floorV = byTableV ?? vocV * NEC_690_7_FACTOR_BY_LOWEST_TEMP_C.at(-1)![1];
  return { byCoefficientV, byTableV, coldVocV: Math.max(byCoefficientV ?? 0, floorV) };
}

/**
 * Factor on open-circuit voltage of crystalline silicon at an air temperature; a temperature between two
 * printed bands takes the colder one.
 *
 * @returns 1 at 25 deg C and warmer; null below -40, where the table ends
 * @source NEC table 690.7(A)
 */
export function necColdFactorRatio(lowTempC: number): number | null {
  const band = NEC_690_7_FACTOR_BY_LOWEST_TEMP_C.find(([lowestTempC]) => lowTempC >= lowestTempC);
  return band?.[1] ?? null;
}

/** Working voltage in the heat against what the battery asks. */
export interface HotVmp {
  /** Of the whole string at the hottest cell, cable and diode drop taken off. */
  readonly hotVmpV: number;
  /**
   * hotVmpV less the highest charge voltage and the controller's own need: negative means the bank is never
   * filled.
   */
  readonly headroomV: number;
  /** Fewest modules in series with which the headroom is not negative. */
  readonly modulesNeeded: number;
}

/**
 * Lowest working voltage of a string, at the hottest cell, against the highest charge voltage.
 *
 * @param string.moduleVmpV              at 25 deg C, 1 to 1000
 * @param string.vmpTempCoefficientPerK  negative, -0.008 to 0; the power coefficient serves when the sheet
 *         gives no other
 * @param string.modulesInSeries         1 to 100
 * @param string.hottestCellTempC        25 to 120
 * @param string.highestChargeV          1 to 1000, equalising included where it is used
 * @param string.dropV                   cable and diode at full current, 0 to 20
 * @param string.controllerHeadroomV     what a tracking controller wants above the battery, 0 to 20
 * @throws RangeFault outside the ranges above
 * @source IEEE 1562, number of modules in series (rule from memory)
 */
export function hotVmp(string: {
  readonly moduleVmpV: number;
  readonly vmpTempCoefficientPerK: number;
  readonly modulesInSeries: number;
  readonly hottestCellTempC: number;
  readonly highestChargeV: number;
  readonly dropV: number;
  readonly controllerHeadroomV: number;
}): HotVmp {
  const riseK = within("hottestCellTempC", string.hottestCellTempC, 25, 120) - 25;
  const hotFactor = 1 + within("vmpTempCoefficientPerK", string.vmpTempCoefficientPerK, -0.008, 0) * riseK;
  const hotModuleV = within("moduleVmpV", string.moduleVmpV, 1, 1000) * hotFactor;
  const dropV = within("dropV", string.dropV, 0, 20);
  const wantedV =
    within("highestChargeV", string.highestChargeV, 1, 1000) +
    within("controllerHeadroomV", string.controllerHeadroomV, 0, 20);
  const hotVmpV = within("modulesInSeries", string.modulesInSeries, 1, 100) * hotModuleV - dropV;
  return {
    hotVmpV,
    headroomV: hotVmpV - wantedV,
    modulesNeeded: Math.max(1, Math.ceil((wantedV + dropV) / hotModuleV - 1e-9)),
  };
}
