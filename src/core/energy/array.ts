import { within } from "../numerics/index.ts";
import { DARK_MONTH_GHI_KWH_PER_M2, MEAN_DAY_BY_MONTH } from "../sun/index.ts";

/** How the controller joins array and battery. */
export type ControllerKind =
  /** Tracks the maximum power point; efficiency 0.94 to 0.98 is usual. */
  | { readonly kind: "mppt"; readonly efficiencyFrac: number }
  /**
   * Joins them directly: the array works at battery voltage and gives I_mp x V_batt. Both voltages of the
   * same string.
   */
  | { readonly kind: "pwm"; readonly moduleVmpV: number; readonly batteryV: number };

/** Lists have 12 entries, January first. */
export interface ArrayPower {
  /** Rating that each month by itself asks for; null where the month is bridged. */
  readonly requiredWByMonth: readonly (number | null)[];
  /**
   * Largest of them, and of yearRequiredW when months are bridged; null when no month has both sun and
   * demand.
   */
  readonly requiredW: number | null;
  /**
   * Month (0 = January) that asks for most; null as above, and when the whole year asks for more than any
   * month.
   */
  readonly designMonth: number | null;
  /**
   * Months with demand and too little sun for any array: the bank carries them, the other months must refill
   * it.
   */
  readonly bridgedMonths: readonly number[];
  /** Rating with which the sunny months carry the whole year's demand; null without bridged months. */
  readonly yearRequiredW: number | null;
  /** Energy delivered to the load over rating times peak sun hours, after all losses. */
  readonly usableFracByMonth: readonly number[];
}

/**
 * Array rating by the worst month: daily demand times the array-to-load ratio, over peak sun hours and
 * losses.
 *
 * A month with less sun on the plane than darkPoaKWhPerM2 is bridged from the bank instead of setting the
 * array; the rest of the year must then carry it (our own rule, for places with polar night).
 *
 * @param plant.dailyWhByMonth             demand of a day, 0 or more each
 * @param plant.poaDailyKWhPerM2ByMonth    0 to 20 each
 * @param plant.arrayToLoadRatio           1 to 5: 1.1 to 1.2 non-critical, 1.3 to 1.4 and more critical or
 *         dull places
 * @param plant.systemLossFrac             0 to 0.6: wiring, dust, mismatch; 0.10 to 0.20 usual
 * @param plant.moduleHeatLossFracByMonth  -0.3 to 0.5 each (monthlyHeatLossFrac)
 * @param plant.batteryEfficiencyFrac      0.5 to 1: all energy is taken to pass the battery, the cautious
 *         reading
 * @param plant.darkPoaKWhPerM2            0.1 when left out
 * @returns W, with every month's figure
 * @throws RangeFault outside the ranges above
 * @source IEEE 1562 (form and ratios from memory), in Wh instead of Ah
 */
export function arrayPower(plant: {
  readonly dailyWhByMonth: readonly number[];
  readonly poaDailyKWhPerM2ByMonth: readonly number[];
  readonly arrayToLoadRatio: number;
  readonly systemLossFrac: number;
  readonly moduleHeatLossFracByMonth: readonly number[];
  readonly batteryEfficiencyFrac: number;
  readonly controller: ControllerKind;
  readonly darkPoaKWhPerM2?: number;
}): ArrayPower {
  const ratio = within("arrayToLoadRatio", plant.arrayToLoadRatio, 1, 5);
  const darkKWhPerM2 = within("darkPoaKWhPerM2", plant.darkPoaKWhPerM2 ?? DARK_MONTH_GHI_KWH_PER_M2, 0.01, 2);
  const fixedFrac =
    (1 - within("systemLossFrac", plant.systemLossFrac, 0, 0.6)) *
    within("batteryEfficiencyFrac", plant.batteryEfficiencyFrac, 0.5, 1);
  within("months of dailyWhByMonth", plant.dailyWhByMonth.length, 12, 12);
  within("months of poaDailyKWhPerM2ByMonth", plant.poaDailyKWhPerM2ByMonth.length, 12, 12);
  within("months of moduleHeatLossFracByMonth", plant.moduleHeatLossFracByMonth.length, 12, 12);

  const usableFracByMonth = plant.moduleHeatLossFracByMonth.map(
    (heatLossFrac) =>
      fixedFrac * controllerFrac(plant.controller, within("moduleHeatLossFrac", heatLossFrac, -0.3, 0.5)),
  );
  const bridgedMonths: number[] = [];
  let yearDemandWh = 0;
  let yearKWhPerM2Usable = 0;
  const requiredWByMonth = plant.dailyWhByMonth.map((demand, month) => {
    const dailyWh = within("dailyWh", demand, 0, 1e7);
    const poa = within("poaDailyKWhPerM2", plant.poaDailyKWhPerM2ByMonth[month]!, 0, 20);
    const { days } = MEAN_DAY_BY_MONTH[month]!;
    yearDemandWh += dailyWh * days;
    yearKWhPerM2Usable += poa * usableFracByMonth[month]! * days;
    if (poa < darkKWhPerM2 && dailyWh > 0) {
      bridgedMonths.push(month);
      return null;
    }
    return dailyWh > 0 ? (dailyWh * ratio) / (poa * usableFracByMonth[month]!) : 0;
  });

  const yearRequiredW =
    bridgedMonths.length > 0 && bridgedMonths.length < 12 && yearKWhPerM2Usable > 0
      ? (yearDemandWh * ratio) / yearKWhPerM2Usable
      : null;
  const largestW = Math.max(...requiredWByMonth.map((w) => w ?? 0));
  const requiredW = Math.max(largestW, yearRequiredW ?? 0);
  return {
    requiredWByMonth,
    requiredW: requiredW > 0 ? requiredW : null,
    designMonth: requiredW > 0 && largestW === requiredW ? requiredWByMonth.indexOf(largestW) : null,
    bridgedMonths,
    yearRequiredW,
    usableFracByMonth,
  };
}

/**
 * Share of the rated energy that passes the controller, heat included. A direct controller holds the module
 * below its maximum power point, so heat takes nothing until it pulls that point below the battery voltage.
 */
function controllerFrac(controller: ControllerKind, heatLossFrac: number): number {
  if (controller.kind === "mppt") {
    return within("efficiencyFrac", controller.efficiencyFrac, 0.5, 1) * (1 - heatLossFrac);
  }
  const moduleVmpV = within("moduleVmpV", controller.moduleVmpV, 1, 1000);
  const heldFrac = within("batteryV", controller.batteryV, 1, 1000) / moduleVmpV;
  return Math.min(heldFrac, 1 - heatLossFrac);
}

/**
 * Modules in parallel for a controller that works at battery voltage, in ampere-hours.
 *
 * @param array.dailyAh            L_DA, 0 or more, at the system voltage
 * @param array.arrayToLoadRatio   A:L, 1 to 5
 * @param array.systemLossFrac     SL, 0 to 0.6
 * @param array.peakSunHours       SH of the design month at the design tilt, 0.1 to 20
 * @param array.moduleImpA         current at maximum power, above 0
 * @throws RangeFault outside the ranges above
 * @source IEEE 1562: N_p = (L_DA x A:L) / ((1 - SL) x SH x I_mp) (from memory)
 */
export function parallelModules(array: {
  readonly dailyAh: number;
  readonly arrayToLoadRatio: number;
  readonly systemLossFrac: number;
  readonly peakSunHours: number;
  readonly moduleImpA: number;
}): { readonly exact: number; readonly whole: number } {
  const exact =
    (within("dailyAh", array.dailyAh, 0, 1e6) * within("arrayToLoadRatio", array.arrayToLoadRatio, 1, 5)) /
    ((1 - within("systemLossFrac", array.systemLossFrac, 0, 0.6)) *
      within("peakSunHours", array.peakSunHours, 0.1, 20) *
      within("moduleImpA", array.moduleImpA, 0.01, 100));
  return { exact, whole: Math.ceil(exact - 1e-9) };
}
