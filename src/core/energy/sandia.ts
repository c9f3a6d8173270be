import { sum, within } from "../numerics/index.ts";

/*
 * The worksheets of Stand-Alone Photovoltaic Systems: A Handbook of Recommended Design Practices,
 * SAND87-7023, in ampere-hours. That they run load, design current, battery, array was read in the published
 * worksheets; cell-by-cell logic and default factors are from memory.
 */

/** One kind of device on worksheet 1. */
export interface WorksheetLoad {
  readonly count: number;
  readonly loadW: number;
  readonly hoursPerDay: number;
  readonly daysPerWeek: number;
  /** 0.3 to 1, of the converter that feeds it; 1 when it hangs on the battery. */
  readonly conversionEfficiencyFrac: number;
}

/**
 * Worksheet 1: daily load in ampere-hours, and corrected for wires and battery.
 *
 * @param sheet.nominalV               of the system, 2 to 1000
 * @param sheet.wireEfficiencyFrac     0.5 to 1, default factor 0.98
 * @param sheet.batteryEfficiencyFrac  0.5 to 1, default factor 0.90
 * @throws RangeFault outside the ranges above
 * @source SAND87-7023 worksheet 1
 */
export function worksheetLoadAh(sheet: {
  readonly loads: readonly WorksheetLoad[];
  readonly nominalV: number;
  readonly wireEfficiencyFrac: number;
  readonly batteryEfficiencyFrac: number;
}): { readonly dailyWh: number; readonly dailyAh: number; readonly correctedDailyAh: number } {
  const dailyWh = sum(
    sheet.loads.map(
      (load) =>
        (within("count", load.count, 0, 1e4) *
          within("loadW", load.loadW, 0, 1e6) *
          within("hoursPerDay", load.hoursPerDay, 0, 24) *
          within("daysPerWeek", load.daysPerWeek, 0, 7)) /
        7 /
        within("conversionEfficiencyFrac", load.conversionEfficiencyFrac, 0.3, 1),
    ),
  );
  const dailyAh = dailyWh / within("nominalV", sheet.nominalV, 2, 1000);
  return {
    dailyWh,
    dailyAh,
    correctedDailyAh:
      dailyAh /
      within("wireEfficiencyFrac", sheet.wireEfficiencyFrac, 0.5, 1) /
      within("batteryEfficiencyFrac", sheet.batteryEfficiencyFrac, 0.5, 1),
  };
}

/** One tilt on worksheet 2, 12 months of sun hours. */
export interface WorksheetTilt {
  readonly tiltDeg: number;
  readonly peakSunHoursByMonth: readonly number[];
}

/**
 * Worksheet 2: design current. For each tilt the month that asks for most; of the tilts the one that asks for
 * least.
 *
 * @param sheet.correctedDailyAhByMonth  12 entries
 * @param sheet.tilts                    at least one; sun hours 0.05 to 20
 * @throws RangeFault outside the ranges above
 * @source SAND87-7023 worksheet 2
 */
export function worksheetDesignCurrent(sheet: {
  readonly correctedDailyAhByMonth: readonly number[];
  readonly tilts: readonly WorksheetTilt[];
}): { readonly designA: number; readonly tiltDeg: number; readonly designMonth: number } {
  within("months of correctedDailyAhByMonth", sheet.correctedDailyAhByMonth.length, 12, 12);
  within("tilts", sheet.tilts.length, 1, 100);
  const byTilt = sheet.tilts.map(({ tiltDeg, peakSunHoursByMonth }) => {
    within("months of peakSunHoursByMonth", peakSunHoursByMonth.length, 12, 12);
    const currentsA = sheet.correctedDailyAhByMonth.map(
      (ah, month) =>
        within("correctedDailyAh", ah, 0, 1e6) /
        within("peakSunHours", peakSunHoursByMonth[month]!, 0.05, 20),
    );
    const designA = Math.max(...currentsA);
    return { designA, tiltDeg, designMonth: currentsA.indexOf(designA) };
  });
  return byTilt.reduce((best, tilt) => (tilt.designA < best.designA ? tilt : best));
}

/**
 * Worksheet 3: battery.
 *
 * @param sheet.correctedDailyAh  0 or more
 * @param sheet.storageDays       0 to 400
 * @param sheet.maxDodFrac        0.1 to 1, default factor 0.8 for deep-cycle
 * @param sheet.capacityFrac      0.05 to 1, share left in the cold, 0.9 common
 * @param sheet.batteryAh         of one battery, above 0
 * @param sheet.batteryV          of one battery, 2 to systemV
 * @throws RangeFault outside the ranges above
 * @source SAND87-7023 worksheet 3
 */
export function worksheetBattery(sheet: {
  readonly correctedDailyAh: number;
  readonly storageDays: number;
  readonly maxDodFrac: number;
  readonly capacityFrac: number;
  readonly batteryAh: number;
  readonly batteryV: number;
  readonly systemV: number;
}): { readonly requiredAh: number; readonly parallel: number; readonly series: number } {
  const requiredAh =
    (within("correctedDailyAh", sheet.correctedDailyAh, 0, 1e6) *
      within("storageDays", sheet.storageDays, 0, 400)) /
    within("maxDodFrac", sheet.maxDodFrac, 0.1, 1) /
    within("capacityFrac", sheet.capacityFrac, 0.05, 1);
  const systemV = within("systemV", sheet.systemV, 2, 1000);
  return {
    requiredAh,
    parallel: Math.ceil(requiredAh / within("batteryAh", sheet.batteryAh, 0.1, 1e5) - 1e-9),
    series: Math.round(systemV / within("batteryV", sheet.batteryV, 2, systemV)),
  };
}

/**
 * Worksheet 4: array. The battery needs 1.2 times its nominal voltage.
 *
 * @param sheet.designA           0 or more
 * @param sheet.moduleDerateFrac  0.5 to 1, default factor 0.90
 * @param sheet.moduleImpA        above 0
 * @param sheet.systemV           nominal, 2 to 1000
 * @param sheet.hotModuleVmpV     at the highest cell temperature, above 0
 * @throws RangeFault outside the ranges above
 * @source SAND87-7023 worksheet 4
 */
export function worksheetArray(sheet: {
  readonly designA: number;
  readonly moduleDerateFrac: number;
  readonly moduleImpA: number;
  readonly systemV: number;
  readonly hotModuleVmpV: number;
}): { readonly deratedA: number; readonly parallel: number; readonly series: number } {
  const deratedA =
    within("designA", sheet.designA, 0, 1e5) / within("moduleDerateFrac", sheet.moduleDerateFrac, 0.5, 1);
  const neededV = 1.2 * within("systemV", sheet.systemV, 2, 1000);
  return {
    deratedA,
    parallel: Math.ceil(deratedA / within("moduleImpA", sheet.moduleImpA, 0.01, 100) - 1e-9),
    series: Math.ceil(neededV / within("hotModuleVmpV", sheet.hotModuleVmpV, 1, 1000) - 1e-9),
  };
}
