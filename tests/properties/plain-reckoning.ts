/**
 * The same post reckoned a second way, three minutes at a time with no event sought: slow, short, and written apart from the balance. It
 * shares with it only the curves of the cells (capacity against cold, charging temperatures), and knows no PWM controller.
 */

import { chargeSettings } from "../../src/core/energy/charge.ts";
import { capacityFrac } from "../../src/core/energy/index.ts";
import type { Post } from "./posts.ts";

const STEPS_PER_HOUR = 20;
const STEP_H = 1 / STEPS_PER_HOUR;

const tenth = (tempC: number): number => Math.floor(tempC * 10 + 0.5) / 10;

/** Hours a year in which a tier wants power and has none, most important first. */
export function plainDarkHours({
  pv,
  bank,
  controller,
  loads,
  ambientTempC,
  years,
}: Post): readonly number[] {
  if (pv.kind !== "mppt") throw new Error("only for a tracking controller");
  const traits = bank.traits!;
  const heater = bank.heater;
  const deliverableWh = bank.nominalV * bank.ratedAh * bank.healthFrac;
  const storeWh = deliverableWh / traits.dischargeEfficiencyFrac;
  const mean = (hourly: Float64Array): number => hourly.reduce((all, one) => all + one, 0) / hourly.length;
  const meanW = loads.reduce((all, one) => all + mean(one.wattsByHourOfYear), controller.ownW);
  const hourRateH = Math.min(10_000, Math.max(1, deliverableWh / meanW));
  const { chargeMinTempC, chargeMaxTempC } = chargeSettings({
    chemistry: bank.chemistry,
    nominalV: bank.nominalV,
    tempC: 25,
  });

  let storedWh = storeWh;
  const isOn = loads.map(() => true);
  const darkSteps = loads.map(() => 0);
  // the first turn through the first year only finds the charge with which a year begins
  for (let turn = -1; turn < years; turn += 1) {
    for (let hour = 0; hour < 8760; hour += 1) {
      const at = Math.max(0, turn) * 8760 + hour;
      // to the tenth, as the balance reads its tables: a band may turn a hair of capacity into a day
      let tempC = tenth(bank.tempC[at]!);
      let ownW = controller.ownW;
      if (heater !== undefined && bank.tempC[at]! < heater.thermostatTempC) {
        ownW += Math.min(heater.heaterW, (heater.thermostatTempC - bank.tempC[at]!) * heater.heatLossWPerK);
        tempC = tenth(
          Math.min(heater.thermostatTempC, bank.tempC[at]! + heater.heaterW / heater.heatLossWPerK),
        );
      }
      const drawableWh = storeWh * capacityFrac({ chemistry: bank.chemistry, hourRateH, tempC });
      const lostPerStep = ((traits.selfDischargePerMonthFrac * STEP_H) / 730) * 2 ** ((tempC - 25) / 10);
      const isChargeable = tempC >= chargeMinTempC && tempC <= chargeMaxTempC;
      const outdoorC = ambientTempC![at]!;
      const wantedW = loads.map(({ wattsByHourOfYear, byAmbient }) =>
        (byAmbient ?? []).reduce(
          (all, load) =>
            (load.runs === "below" ? outdoorC < load.tempC : outdoorC > load.tempC) ? all + load.watts : all,
          wattsByHourOfYear[hour]!,
        ),
      );
      const sunW = Math.min(
        pv.outputRatio[at]! * pv.ratedW * controller.efficiencyFrac,
        controller.maxOutputA * bank.nominalV,
      );
      for (let step = 0; step < STEPS_PER_HOUR; step += 1) {
        storedWh -= storedWh * lostPerStep;
        // what can be drawn at this temperature, over what could be drawn of a full bank
        const chargeFrac = drawableWh > 0 ? 1 - (storeWh - storedWh) / drawableWh : Number.NEGATIVE_INFINITY;
        loads.forEach((tier, k) => {
          if (chargeFrac <= tier.shedBelowSocFrac) isOn[k] = false;
          else if (chargeFrac >= tier.returnAboveSocFrac) isOn[k] = true;
        });
        let netW = sunW - (chargeFrac > 0 ? ownW : Math.min(ownW, sunW));
        loads.forEach((_, k) => {
          if (isOn[k]) netW -= wantedW[k]!;
          else if (turn >= 0 && wantedW[k]! > 0) darkSteps[k]! += 1;
        });
        if (netW < 0) storedWh += (netW * STEP_H) / traits.dischargeEfficiencyFrac;
        else if (isChargeable) {
          const acceptedW = traits.acceptanceH > 0 ? (storeWh - storedWh) / traits.acceptanceH : Infinity;
          const offeredW = netW * traits.chargeEfficiencyFrac;
          const limitW = traits.maxChargeCRate * bank.ratedAh * bank.nominalV * traits.chargeEfficiencyFrac;
          storedWh = Math.min(storeWh, storedWh + Math.min(acceptedW, offeredW, limitW) * STEP_H);
        }
      }
    }
  }
  return darkSteps.map((steps) => (steps * STEP_H) / years);
}
