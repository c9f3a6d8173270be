/** The same post by the ampere-hour worksheets of Sandia's handbook: a second opinion, never built by. */
import {
  worksheetArray,
  worksheetBattery,
  worksheetDesignCurrent,
  worksheetLoadAh,
} from "../../core/energy/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import { monthName } from "../chain/words.ts";
import type { ArraySizing, Battery, Sun } from "../design.ts";
import type { MonthSum } from "./array-sums.ts";
import { handFigure, numbered, type SumLine, withUnit } from "./line.ts";

const SAND = "SAND87-7023 worksheet";
/** @source SAND87-7023 worksheet 4, default factor (from memory) */
const MODULE_DERATE_FRAC = 0.9;
/** So many the worksheet takes. */
const MOST_DAYS = 400;
/** Shortest sun hours that the worksheet is given; a month at rest asks for nothing and may have none. */
const LEAST_SUN_HOURS = 0.05;

export interface SecondOpinion {
  readonly lines: readonly SumLine[];
  readonly requiredAh: number;
  /** In whole panels. */
  readonly panelsW: number;
}

/** @returns null where months without sun are bridged: the worksheets know no such bank */
export function secondOpinion(given: {
  readonly battery: Battery;
  readonly array: ArraySizing;
  readonly sun: Sun;
  readonly months: readonly MonthSum[];
}): SecondOpinion | null {
  const { battery, array, sun, months } = given;
  if (array.darkMonths.length > 0 || battery.autonomyDays > MOST_DAYS) return null;
  if (months.every(({ dailyWh }) => dailyWh === 0)) return null;
  const { bankNominalV, capacityAtTemperatureFrac, permittedDodFrac } = battery;
  const loadOf = (dailyWh: number) =>
    worksheetLoadAh({
      // at the battery: converters and wires are counted already
      loads: [
        { count: 1, loadW: dailyWh / 24, hoursPerDay: 24, daysPerWeek: 7, conversionEfficiencyFrac: 1 },
      ],
      nominalV: bankNominalV,
      wireEfficiencyFrac: 1,
      batteryEfficiencyFrac: array.batteryEfficiencyFrac,
    });
  const correctedAhByMonth = months.map(({ dailyWh }) => loadOf(dailyWh).correctedDailyAh);
  const largest = months.reduce((most, one) => (one.dailyWh > most.dailyWh ? one : most));
  const { dailyAh, correctedDailyAh } = loadOf(largest.dailyWh);
  const { requiredAh } = worksheetBattery({
    correctedDailyAh,
    storageDays: battery.autonomyDays,
    maxDodFrac: clamp(permittedDodFrac, 0.1, 1),
    capacityFrac: clamp(capacityAtTemperatureFrac, 0.05, 1),
    batteryAh: battery.blockAh,
    batteryV: Math.min(battery.blockV, bankNominalV),
    systemV: bankNominalV,
  });
  const { designA, designMonth } = worksheetDesignCurrent({
    correctedDailyAhByMonth: correctedAhByMonth,
    tilts: [
      {
        tiltDeg: sun.tiltDeg,
        peakSunHoursByMonth: months.map(({ sunHours }) => Math.max(sunHours, LEAST_SUN_HOURS)),
      },
    ],
  });
  const hotV = array.hotMaxPowerV / array.inSeries;
  const { deratedA, parallel, series } = worksheetArray({
    designA,
    moduleDerateFrac: MODULE_DERATE_FRAC,
    moduleImpA: array.maxPowerA,
    systemV: bankNominalV,
    hotModuleVmpV: hotV,
  });
  const panelsW = parallel * series * array.panelW;
  const lines = numbered("S", [
    {
      what: "Charge that a day takes from the sun, what the battery loses put back (the wires are counted in the loads)",
      sum: `${withUnit(dailyAh, "Ah")} / ${handFigure(array.batteryEfficiencyFrac)}`,
      value: correctedDailyAh,
      unit: "Ah",
      source: `${SAND} 1`,
    },
    {
      what: "Capacity: for the days without sun, over depth and cold, without age and margin",
      sum: `${withUnit(correctedDailyAh, "Ah")} x ${handFigure(battery.autonomyDays)} / ${handFigure(permittedDodFrac)} / ${handFigure(capacityAtTemperatureFrac)}`,
      value: requiredAh,
      unit: "Ah",
      source: `${SAND} 3`,
    },
    {
      what: `Design current: the largest month's, ${monthName(designMonth)}`,
      sum: `${withUnit(correctedAhByMonth[designMonth]!, "Ah")} / ${withUnit(months[designMonth]!.sunHours, "h")}`,
      value: designA,
      unit: "A",
      source: `${SAND} 2, for the tilt that is built`,
    },
    {
      what: "The same with panels a tenth below their rating",
      sum: `${withUnit(designA, "A")} / ${handFigure(MODULE_DERATE_FRAC)}`,
      value: deratedA,
      unit: "A",
      source: `${SAND} 4, default factor (from memory)`,
    },
    {
      what: "Panels side by side, rounded up",
      sum: `${withUnit(deratedA, "A")} / ${withUnit(array.maxPowerA, "A")}`,
      value: parallel,
      unit: "",
      source: `${SAND} 4`,
    },
    {
      what: "Panels in series, rounded up: 1.2 times the bank's voltage over a hot panel's",
      sum: `1.2 x ${withUnit(bankNominalV, "V")} / ${withUnit(hotV, "V")}`,
      value: series,
      unit: "",
      source: `${SAND} 4`,
    },
    {
      what: "Panels in all",
      sum: `${parallel} x ${series} x ${withUnit(array.panelW, "W")}`,
      value: panelsW,
      unit: "W",
      source: "arithmetic; counted in amperes, so that what a tracking controller wins is not in it",
    },
  ]);
  return { lines, requiredAh, panelsW };
}
