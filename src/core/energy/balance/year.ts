import { within } from "../../numerics/index.ts";
import { COLDEST_C, LAST_ROW, type Prepared, ROWS_PER_K } from "./prepare.ts";
import {
  AGEING_EXCESS,
  AVAILABLE_WH,
  BUS_TOTAL_WH,
  BUS_WH,
  CHARGE_STEPS,
  DRAWN_TOTAL_WH,
  DRAWN_WH,
  FED_WH,
  FROZEN_H,
  MISSING_WH,
  ON_COUNT,
  PHASE,
  RECOVERIES,
  RECOVERY_H,
  RECOVERY_SUM_H,
  RECOVERY_WORST_H,
  RETURNS,
  SELF_WH,
  STORED_TOTAL_WH,
  STORED_WH,
  type Tally,
  WORST_RESIDUAL,
} from "./state.ts";
import { bookDark, switchedStep } from "./switched-step.ts";
import type { YearOfLoads } from "./watts.ts";

/** Days before each month of a year of 365. */
export const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
/** A bank counts as refilled from here on: the last part of lead-acid is never quite reached. */
export const REFILLED_FRAC = 0.95;

/**
 * Runs one year: the engine of the balance. It is called once a year because an engine compiles a function of 8760 turns
 * better than one of 262 800.
 *
 * The bank is followed as what is missing from full. Cold takes capacity away at the bottom, so nothing is destroyed when it
 * sets in and all comes back with warmth.
 *
 * @param firstHour  of this year in the hourly inputs
 * @param year       place in the tally
 */
export function runYear(
  plant: Prepared,
  state: Float64Array,
  tally: Tally,
  loads: YearOfLoads,
  firstHour: number,
  year: number,
): void {
  const { outputRatio, rated, limit, isPwm, bankTempC, heater, stepH, storeWh, chargeLimitW, acceptanceH } =
    plant;
  const { capacityFracByRow, selfDischargeByRow, chargeableByRow, frozenBelowFracByRow, ageingExcessByRow } =
    plant;
  const { tierCount, shedDepth, returnDepth } = plant;
  const { watts, firstW } = loads;
  const efficiency = plant.efficiencyFrac;
  const chargeEfficiency = plant.chargeEfficiencyFrac;
  // a quotient costs as much as many products
  const perCharge = 1 / chargeEfficiency;
  const perDischarge = stepH / plant.dischargeEfficiencyFrac;
  const chargeLossFrac = perCharge - 1;
  const dischargeLossFrac = 1 - plant.dischargeEfficiencyFrac;
  const perStore = 1 / storeWh;
  const steps = Math.round(1 / stepH);
  const taper = acceptanceH > 0 ? Math.exp(-stepH / acceptanceH) : 0;
  // as locals: a loader that keeps modules apart looks an imported name up each time, in every hour
  const coldestC = COLDEST_C;
  const rowsPerK = ROWS_PER_K;
  const rowCount = LAST_ROW + 1;
  const chargeSteps = CHARGE_STEPS;
  const book = bookDark;
  // below this the rounding of the store itself shows
  const leastTurnoverWh = 1e-6 * storeWh;
  const { totals, hoursByCharge } = tally;

  let on = state[ON_COUNT]!;
  let phase = state[PHASE]!;
  let onW = firstW[on]!;
  let shedAt = on > 0 ? shedDepth[on - 1]! : -1;
  // while all are connected no charge is high enough for another to return
  let returnAt = on < tierCount ? returnDepth[on]! : -1;
  let recoveryH = state[RECOVERY_H]!;
  const refilledWh = (1 - REFILLED_FRAC) * storeWh;
  let missing = state[MISSING_WH]!;
  let available = 0;
  let busTotal = 0;
  let storedTotal = 0;
  let drawnTotal = 0;
  let selfTotal = 0;
  let frozen = 0;
  let ageing = 0;
  let worst = totals[WORST_RESIDUAL]!;
  let hour = 0;
  let step = 0;
  let month = 0;
  for (let day = 0; day < 365; day++) {
    if (day === DAYS_BEFORE_MONTH[month + 1]) month += 1;
    const slot = year * 12 + month;
    const scale = month * (chargeSteps + 1);
    let low = 1;
    let lowRow = rowCount - 1;
    let lowOn = on;
    let high = 0;
    let sum = 0;
    // an inner loop over the parts of an hour, of which there is mostly one, would cost a tenth of all
    for (const end = hour + 24; hour < end; ) {
      const ratio = outputRatio[firstHour + hour]!;
      if (!(ratio >= 0)) within("outputRatio", ratio, 0, 10);
      let tempC = bankTempC[firstHour + hour]!;
      if (heater !== null && tempC < heater.thermostatTempC) {
        tempC = Math.min(heater.thermostatTempC, tempC + heater.heaterW / heater.heatLossWPerK);
      }
      const warm = (tempC - coldestC) * rowsPerK + 0.5;
      if (!(warm >= 0 && warm < rowCount)) within("tempC", tempC, -60, 70);
      const row = warm | 0;
      const capacityWh = storeWh * capacityFracByRow[row]!;
      const selfFrac = selfDischargeByRow[row]!;
      const isChargeable = chargeableByRow[row] === 1;
      const loadW = onW[hour]!;
      const shedWh = shedAt * capacityWh;
      const returnWh = returnAt * capacityWh;
      const before = missing;
      const lost = (storeWh - missing) * selfFrac;
      missing += lost;
      let arrayW = ratio * rated;
      let busW: number;
      if (isPwm) {
        const bankV = chargingV(plant, missing, arrayW, loadW, row);
        busW = Math.min(arrayW, limit) * bankV * efficiency;
        arrayW *= bankV;
      } else {
        busW = Math.min(arrayW * efficiency, limit);
      }
      const netW = busW - loadW;
      let fedWh = loadW * stepH;
      let busWh = busW * stepH;
      let stored = 0;
      let drawn = 0;
      let after = missing;
      if (netW < 0) {
        after = missing - netW * perDischarge;
        drawn = after - missing;
      } else {
        if (isChargeable) {
          const rateW = Math.min(netW * chargeEfficiency, chargeLimitW);
          const straight = missing - rateW * stepH;
          const bend = acceptanceH * rateW;
          if (missing <= bend) after = missing * taper;
          else if (straight >= bend) after = straight;
          else if (acceptanceH === 0) after = 0;
          else after = bend * Math.exp(((missing - bend) / rateW - stepH) / acceptanceH);
        }
        stored = missing - after;
        busWh = fedWh + stored * perCharge;
      }
      // nothing is switched in most hours; the rest are followed in full
      if (missing < shedWh && after <= shedWh && after > returnWh) {
        missing = after;
        if (on < tierCount) book(tally, watts, hour, slot, on, stepH);
      } else {
        const returns = state[RETURNS]!;
        const weather = { busW, capacityWh, isChargeable, hour, slot };
        missing = switchedStep(plant, state, tally, loads, weather, missing);
        busWh = state[BUS_WH]!;
        fedWh = state[FED_WH]!;
        stored = state[STORED_WH]!;
        drawn = state[DRAWN_WH]!;
        on = state[ON_COUNT]!;
        onW = firstW[on]!;
        shedAt = on > 0 ? shedDepth[on - 1]! : -1;
        returnAt = on < tierCount ? returnDepth[on]! : -1;
        if (on < tierCount && phase === 0) phase = 1;
        if (state[RETURNS]! > returns && phase === 1) phase = 2;
      }
      if (phase === 2) {
        recoveryH += stepH;
        if (missing <= refilledWh) {
          bookRecovery(totals, recoveryH);
          recoveryH = 0;
          phase = 0;
        }
      }

      const residual = Math.abs(
        busWh - (fedWh + stored * chargeLossFrac + drawn * dischargeLossFrac + lost + (before - missing)),
      );
      const turnover = busWh + drawn + lost + leastTurnoverWh;
      if (residual > worst * turnover) worst = residual / turnover;
      available += arrayW * stepH;
      busTotal += busWh;
      storedTotal += stored;
      drawnTotal += drawn;
      selfTotal += lost;

      if (step + 1 < steps) {
        step += 1;
        continue;
      }
      step = 0;
      const chargeFrac = 1 - missing * perStore;
      sum += chargeFrac;
      if (chargeFrac <= low) {
        low = chargeFrac;
        lowRow = row;
        lowOn = on;
      }
      if (chargeFrac > high) high = chargeFrac;
      hoursByCharge[scale + ((chargeFrac * chargeSteps + 0.5) | 0)]! += 1;
      if (chargeFrac < frozenBelowFracByRow[row]!) frozen += 1;
      ageing += ageingExcessByRow[row]!;
      hour += 1;
    }
    tally.dailyLowFrac[year * 365 + day] = low;
    tally.dailyLowCapacityFrac[year * 365 + day] = capacityFracByRow[lowRow]!;
    tally.dailyLowOnCount[year * 365 + day] = lowOn;
    tally.dailyHighFrac[year * 365 + day] = high;
    tally.dailyMeanFrac[year * 365 + day] = sum / 24;
  }
  state[MISSING_WH] = missing;
  state[PHASE] = phase;
  state[RECOVERY_H] = recoveryH;
  totals[AVAILABLE_WH]! += available;
  totals[BUS_TOTAL_WH]! += busTotal;
  totals[STORED_TOTAL_WH]! += storedTotal;
  totals[DRAWN_TOTAL_WH]! += drawnTotal;
  totals[SELF_WH]! += selfTotal;
  totals[FROZEN_H]! += frozen;
  totals[AGEING_EXCESS]! += ageing;
  totals[WORST_RESIDUAL] = worst;
}

/** Voltage at which a PWM controller ties array to bank: rest plus the rise of the charge current, up to absorption. */
export function chargingV(
  plant: Prepared,
  missingWh: number,
  arrayA: number,
  loadW: number,
  row: number,
): number {
  const { restV, ratedAh } = plant;
  const last = restV.length - 1;
  const place = Math.max(0, 1 - missingWh / plant.storeWh) * last;
  const i = Math.min(place | 0, last - 1);
  const rest = restV[i]! + (place - i) * (restV[i + 1]! - restV[i]!);
  const chargeA = Math.min(arrayA, plant.limit) - loadW / plant.nominalV;
  return Math.min(rest + (plant.riseVPerCRate * chargeA) / ratedAh, plant.absorptionVByRow[row]!);
}

function bookRecovery(totals: Float64Array, hours: number): void {
  totals[RECOVERIES]! += 1;
  totals[RECOVERY_SUM_H]! += hours;
  totals[RECOVERY_WORST_H] = Math.max(totals[RECOVERY_WORST_H]!, hours);
}
