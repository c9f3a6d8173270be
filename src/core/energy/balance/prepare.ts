import { clamp, interpolate, within } from "../../numerics/index.ts";
import { chargeSettings } from "../charge.ts";
import { isLead } from "../chemistry.ts";
import { BANK_TRAITS, CELL_AT_REST, CHARGE_FRAC_BY_FREEZING_TEMP_C } from "../tables.ts";
import { capacityFrac } from "../temperature.ts";
import type { BalancePlant, BankHeater, LoadTier } from "./plant.ts";

/** Tables by temperature have a row every tenth of a kelvin from COLDEST_C on. */
export const COLDEST_C = -60;
const WARMEST_C = 70;
export const ROWS_PER_K = 10;
export const LAST_ROW = (WARMEST_C - COLDEST_C) * ROWS_PER_K;
const REST_STEPS = 100;
const HOURS_OF_MONTH = 730;
/** A smaller band than this would have a relay chatter. */
const LEAST_BAND_FRAC = 0.005;

/** A plant made ready for the loop: only numbers and Float64Arrays. Row 0 of each list of tiers is the controller itself. */
export interface Prepared {
  readonly stepH: number;
  readonly isPwm: boolean;
  readonly outputRatio: Float64Array;
  /** W, or A for PWM. */
  readonly rated: number;
  /** W at the bank, or A for PWM. */
  readonly limit: number;
  readonly efficiencyFrac: number;
  readonly nominalV: number;
  readonly ratedAh: number;
  readonly riseVPerCRate: number;
  /** Rest voltage of the bank at each hundredth of its charge. */
  readonly restV: Float64Array;
  /** What is in store when full, so that nominalV x ratedAh x healthFrac can be taken out at the terminals. */
  readonly storeWh: number;
  readonly chargeEfficiencyFrac: number;
  readonly dischargeEfficiencyFrac: number;
  /** Into store. */
  readonly chargeLimitW: number;
  readonly acceptanceH: number;
  readonly bankTempC: Float64Array;
  readonly heater: BankHeater | null;
  readonly ambientTempC: Float64Array | null;
  readonly capacityFracByRow: Float64Array;
  /** Part of what is stored that is lost in one step. */
  readonly selfDischargeByRow: Float64Array;
  /** 1 where the bank may be charged. */
  readonly chargeableByRow: Float64Array;
  /** Below this charge the electrolyte is ice; -1: never. */
  readonly frozenBelowFracByRow: Float64Array;
  readonly absorptionVByRow: Float64Array;
  /** How much faster than at 25 deg C the bank ages, less one; 0 where it is colder. */
  readonly ageingExcessByRow: Float64Array;
  /** Most important first. */
  readonly tiers: readonly LoadTier[];
  readonly ownW: number;
  readonly tierCount: number;
  /** Greatest missing part of the capacity at which a tier is still fed, and at which it returns. */
  readonly shedDepth: Float64Array;
  readonly returnDepth: Float64Array;
}

/** Loads in an order that no longer depends on how they were listed: most important first. */
export function inOrder(loads: readonly LoadTier[]): readonly LoadTier[] {
  const tiers = [...loads].sort(
    (a, b) =>
      a.priority - b.priority ||
      a.shedBelowSocFrac - b.shedBelowSocFrac ||
      a.returnAboveSocFrac - b.returnAboveSocFrac ||
      (a.name < b.name ? -1 : 1),
  );
  within("tiers that share a name", tiers.length - new Set(tiers.map(({ name }) => name)).size, 0, 0);
  let lastShed = 0;
  let lastReturn = 0;
  for (const { priority, shedBelowSocFrac, returnAboveSocFrac } of tiers) {
    within("priority", priority, 1, 1000);
    lastShed = within("shedBelowSocFrac", shedBelowSocFrac, lastShed, 0.99);
    const least = returnAboveSocFrac === shedBelowSocFrac ? lastShed : lastShed + LEAST_BAND_FRAC;
    lastReturn = within("returnAboveSocFrac", returnAboveSocFrac, Math.max(least, lastReturn), 0.995);
  }
  return tiers;
}

/** @throws RangeFault for a value outside its range */
export function prepare(plant: BalancePlant, stepsPerHour: number): Prepared {
  const { pv, bank, controller } = plant;
  const tiers = inOrder(plant.loads);
  const stepH = 1 / within("stepsPerHour", stepsPerHour, 1, 60);
  within("part of a step", stepsPerHour % 1, 0, 0);
  const traits = bank.traits ?? BANK_TRAITS[bank.chemistry];
  const dischargeEfficiencyFrac = within("dischargeEfficiencyFrac", traits.dischargeEfficiencyFrac, 0.5, 1);
  const chargeEfficiencyFrac = within("chargeEfficiencyFrac", traits.chargeEfficiencyFrac, 0.5, 1);
  const selfFrac = within("selfDischargePerMonthFrac", traits.selfDischargePerMonthFrac, 0, 0.5);
  const nominalV = within("nominalV", bank.nominalV, 2, 120);
  const ratedAh = within("ratedAh", bank.ratedAh, 0.1, 1e7);
  const deliverableWh = nominalV * ratedAh * within("healthFrac", bank.healthFrac, 0.3, 1);
  const storeWh = deliverableWh / dischargeEfficiencyFrac;
  const maxOutputA = within("maxOutputA", controller.maxOutputA, 0, 1e6);
  const ownW = within("ownW", controller.ownW, 0, 1e4);
  const isPwm = pv.kind === "pwm";
  const rated = isPwm
    ? within("ratedA", pv.ratedA, 0, 1e4) * within("strings", pv.strings, 0, 1e4)
    : within("ratedW", pv.ratedW, 0, 1e7);

  let meanW = ownW;
  for (const { wattsByHourOfYear } of tiers) {
    let total = 0;
    for (let hour = 0; hour < wattsByHourOfYear.length; hour++) {
      const watts = wattsByHourOfYear[hour]!;
      if (!(watts >= 0 && watts <= 1e6)) within("watts", watts, 0, 1e6);
      total += watts;
    }
    meanW += total / Math.max(1, wattsByHourOfYear.length);
  }
  const hourRateH = clamp(deliverableWh / Math.max(meanW, 1e-6), 1, 10_000);

  const rows = LAST_ROW + 1;
  const capacityFracByRow = new Float64Array(rows);
  const selfDischargeByRow = new Float64Array(rows);
  const chargeableByRow = new Float64Array(rows);
  const frozenBelowFracByRow = new Float64Array(rows).fill(-1);
  const absorptionVByRow = new Float64Array(rows);
  const ageingExcessByRow = new Float64Array(rows);
  const coarse = LAST_ROW / ROWS_PER_K;
  const cold = { chemistry: bank.chemistry, hourRateH };
  const capacityByK: number[] = [];
  for (let k = 0; k <= coarse; k++) {
    capacityByK.push(capacityFrac({ ...cold, tempC: clamp(COLDEST_C + k, -40, 60) }));
  }
  const at25 = { chemistry: bank.chemistry, nominalV };
  const settings = chargeSettings({ ...at25, tempC: 25 });
  const iceBelowC = isLead(bank.chemistry)
    ? CHARGE_FRAC_BY_FREEZING_TEMP_C.at(-1)![0]
    : Number.NEGATIVE_INFINITY;
  const perStep = (selfFrac / HOURS_OF_MONTH) * stepH;
  for (let row = 0; row < rows; row++) {
    const tempC = COLDEST_C + row / ROWS_PER_K;
    const k = Math.min(Math.floor(row / ROWS_PER_K), coarse - 1);
    const part = row / ROWS_PER_K - k;
    // lithium stops at its lowest temperature at once; between whole kelvins it must not be smeared
    capacityFracByRow[row] =
      capacityByK[k] === 0 ? 0 : capacityByK[k]! + part * (capacityByK[k + 1]! - capacityByK[k]!);
    const speed = 2 ** ((tempC - 25) / 10);
    selfDischargeByRow[row] = perStep * speed;
    chargeableByRow[row] = tempC >= settings.chargeMinTempC && tempC <= settings.chargeMaxTempC ? 1 : 0;
    ageingExcessByRow[row] = Math.max(0, speed - 1);
    absorptionVByRow[row] =
      settings.absorptionAt25V + settings.compensationVPerK * clamp(tempC - 25, -45, 25);
    if (tempC <= iceBelowC) frozenBelowFracByRow[row] = interpolate(CHARGE_FRAC_BY_FREEZING_TEMP_C, tempC);
  }

  const { restVByChargeFrac, riseVPerCRate } = CELL_AT_REST[bank.chemistry];
  const restV = Float64Array.from(
    { length: REST_STEPS + 1 },
    (_, i) => settings.cellsInSeries * interpolate(restVByChargeFrac, i / REST_STEPS),
  );
  return {
    stepH,
    isPwm,
    outputRatio: pv.outputRatio,
    rated,
    limit: isPwm ? maxOutputA : maxOutputA * nominalV,
    efficiencyFrac: within("efficiencyFrac", controller.efficiencyFrac, 0.5, 1),
    nominalV,
    ratedAh,
    riseVPerCRate: riseVPerCRate * settings.cellsInSeries,
    restV,
    storeWh,
    chargeEfficiencyFrac,
    dischargeEfficiencyFrac,
    chargeLimitW:
      within("maxChargeCRate", traits.maxChargeCRate, 0, 1e6) * ratedAh * nominalV * chargeEfficiencyFrac,
    acceptanceH: within("acceptanceH", traits.acceptanceH, 0, 100),
    bankTempC: bank.tempC,
    heater: bank.heater ?? null,
    ambientTempC: plant.ambientTempC ?? null,
    capacityFracByRow,
    selfDischargeByRow,
    chargeableByRow,
    frozenBelowFracByRow,
    absorptionVByRow,
    ageingExcessByRow,
    tiers,
    ownW,
    tierCount: tiers.length + 1,
    shedDepth: Float64Array.of(1, ...tiers.map(({ shedBelowSocFrac }) => 1 - shedBelowSocFrac)),
    returnDepth: Float64Array.of(1, ...tiers.map(({ returnAboveSocFrac }) => 1 - returnAboveSocFrac)),
  };
}
