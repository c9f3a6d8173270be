/** The array's power by the worksheet of IEEE 1562 in watt-hours, line by line and month by month. */
import { sum } from "../../core/numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../core/sun/index.ts";
import type { Brief } from "../brief.ts";
import { heldByBatteryFrac } from "../chain/array.ts";
import { arrayNotes } from "../chain/array-notes.ts";
import { askedOnly } from "../chain/sun.ts";
import { monthName } from "../chain/words.ts";
import type { ArraySizing, Sun } from "../design.ts";
import {
  DIM_MONTH_KWH_PER_M2,
  leastArrayToLoadRatio,
  MISMATCH_LOSS_FRAC,
  WIRING_LOSS_FRAC,
} from "../practice/array.ts";
import { POWER_PER_K } from "../practice/sold.ts";
import { handFigure, numbered, type SumLine, withUnit } from "./line.ts";

/** What a month by itself asks of the array. */
export interface MonthSum {
  /** 0 = January. */
  readonly month: number;
  readonly dailyWh: number;
  /** Hours of full sun a day on the panel: its kWh/m2 over 1 kW/m2; where the bank bridges dark months, as many as are counted. */
  readonly sunHours: number;
  readonly cellTempC: number;
  readonly heatKeepsFrac: number;
  /** Of what the panels' rating promises, what reaches the loads. */
  readonly arrivesFrac: number;
  /** null for a month at rest, and for one left to the bank. */
  readonly requiredW: number | null;
}

interface Given {
  readonly brief: Brief;
  readonly sun: Sun;
  readonly array: ArraySizing;
  readonly dailyWhByMonth: readonly number[];
}

const fixedFrac = ({ soilingFrac, batteryEfficiencyFrac }: ArraySizing): number =>
  (1 - soilingFrac) * (1 - WIRING_LOSS_FRAC) * (1 - MISMATCH_LOSS_FRAC) * batteryEfficiencyFrac;

const controllerFrac = ({ brief, array }: Given, heatKeepsFrac: number): number =>
  array.controller === "mppt"
    ? array.controllerEfficiencyFrac * heatKeepsFrac
    : Math.min(heldByBatteryFrac(brief), heatKeepsFrac);

export function monthSums(given: Given): readonly MonthSum[] {
  const { brief, sun, array, dailyWhByMonth } = given;
  return askedOnly(brief, dailyWhByMonth).map((dailyWh, month) => {
    const poaKWhPerM2 = sun.poaDailyKWhPerM2ByMonth[month]!;
    const heatKeepsFrac = 1 - array.heatLossFracByMonth[month]!;
    const requiredW = array.requiredWByMonth[month]!;
    return {
      month,
      dailyWh,
      sunHours:
        array.darkMonths.length > 0 && requiredW > 0
          ? Math.max(poaKWhPerM2, DIM_MONTH_KWH_PER_M2)
          : poaKWhPerM2,
      cellTempC: sun.cellTempCByMonth[month]!,
      heatKeepsFrac,
      arrivesFrac: fixedFrac(array) * controllerFrac(given, heatKeepsFrac),
      requiredW: requiredW > 0 ? requiredW : null,
    };
  });
}

/** The month that decides; undefined where all are left to the bank. */
const mostAsking = (months: readonly MonthSum[]): MonthSum | undefined =>
  months.filter(({ requiredW }) => requiredW !== null).toSorted((a, b) => b.requiredW! - a.requiredW!)[0];

/** The losses and the ratio; then, after the months, what they come to. */
export function arraySums(given: Given, months: readonly MonthSum[]): readonly SumLine[] {
  const { brief, sun, array } = given;
  const { autonomy, power } = brief;
  const notes = arrayNotes;
  const top = mostAsking(months);
  const at = top ?? months[sun.designMonth]!;
  const month = monthName(at.month);
  const isTracking = array.controller === "mppt";
  const share = (what: string, value: number, source: string, sum = "") => ({
    what,
    sum,
    value,
    unit: "",
    source,
  });
  const kept = [1 - array.soilingFrac, 1 - WIRING_LOSS_FRAC, 1 - MISMATCH_LOSS_FRAC];
  const rest = isTracking
    ? [at.heatKeepsFrac, array.controllerEfficiencyFrac]
    : [Math.min(heldByBatteryFrac(brief), at.heatKeepsFrac)];
  const factors = [...kept, ...rest, array.batteryEfficiencyFrac].map(handFigure);
  const losses = notes.systemLossFrac.source;
  return numbered("A", [
    share(
      `Array-to-load ratio: the larger of 1 + your margin and the standard's for ${CLASS_WORDS[autonomy.consequence.value]}`,
      array.arrayToLoadRatio,
      notes.arrayToLoadRatio.source,
      `largest of ${handFigure(1 + power.marginFrac.value)}, ${handFigure(leastArrayToLoadRatio(autonomy))}`,
    ),
    share("Share that dirt leaves", kept[0]!, notes.soilingFrac.source),
    share("Share that the wires leave", kept[1]!, losses),
    share("Share that unlike panels and overstated ratings leave", kept[2]!, losses),
    share(
      `Share that heat leaves in ${month}, with cells at ${handFigure(at.cellTempC)} °C (above 1 in the cold)`,
      at.heatKeepsFrac,
      notes.heatLossFracByMonth.source,
      `1 - ${handFigure(-POWER_PER_K)} x (${handFigure(at.cellTempC)} - 25)`,
    ),
    ...(isTracking
      ? [
          share(
            "Share that the tracking controller passes on",
            array.controllerEfficiencyFrac,
            notes.controllerEfficiencyFrac.source,
          ),
        ]
      : [
          share(
            "Share that a direct controller leaves, holding the panel at the battery's voltage; of this and of heat only the smaller counts",
            heldByBatteryFrac(brief),
            notes.controllerEfficiencyFrac.source,
          ),
        ]),
    share(
      "Share of what goes into the battery that comes out again, taken on all energy",
      array.batteryEfficiencyFrac,
      notes.batteryEfficiencyFrac.source,
    ),
    share(`What arrives in ${month}`, at.arrivesFrac, "arithmetic", factors.join(" x ")),
    share("The system's loss", 1 - at.arrivesFrac, losses, `1 - ${handFigure(at.arrivesFrac)}`),
    ...requiredLines(given, months, top),
  ]);
}

const CLASS_WORDS = {
  nuisance: "a nuisance",
  worry: "a worry",
  disaster: "a disaster",
  days: "days without sun",
  darkHours: "the dark hours that you named",
} as const satisfies Readonly<Record<Brief["autonomy"]["consequence"]["value"], string>>;

function requiredLines(
  { sun, array }: Given,
  months: readonly MonthSum[],
  top: MonthSum | undefined,
): readonly Omit<SumLine, "mark">[] {
  const { source } = arrayNotes.requiredW;
  const ofMonth =
    top === undefined
      ? []
      : [
          {
            what: `Panels for ${monthName(top.month)}, the month that asks for most`,
            sum: monthSumText(top, array.arrayToLoadRatio),
            value: top.requiredW!,
            unit: "W",
            source,
          },
        ];
  if (top !== undefined && array.requiredW <= top.requiredW! * (1 + 1e-9)) return ofMonth;
  const wantedWh = sum(months.map(({ dailyWh, month }) => dailyWh * MEAN_DAY_BY_MONTH[month]!.days));
  const arrivesH = sum(
    months.map(
      ({ month, arrivesFrac }) =>
        sun.poaDailyKWhPerM2ByMonth[month]! * arrivesFrac * MEAN_DAY_BY_MONTH[month]!.days,
    ),
  );
  return [
    ...ofMonth,
    {
      what: "Panels that carry the whole year, the dark months with it: the year's energy over the year's sun hours, losses taken off",
      sum: `${withUnit(wantedWh, "Wh")} x ${handFigure(array.arrayToLoadRatio)} / ${withUnit(arrivesH, "h")}`,
      value: array.requiredW,
      unit: "W",
      source: `${source}; the sum over the year: our own rule`,
    },
  ];
}

/** A month's sum as it is worked. */
export const monthSumText = (
  { dailyWh, sunHours, arrivesFrac }: MonthSum,
  arrayToLoadRatio: number,
): string =>
  `${withUnit(dailyWh, "Wh")} x ${handFigure(arrayToLoadRatio)} / (${withUnit(sunHours, "h")} x ${handFigure(arrivesFrac)})`;
