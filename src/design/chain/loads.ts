import { sum } from "../../core/numerics/index.ts";
import type { Brief, Origin } from "../brief.ts";
import type { LoadLine, Loads, Notes, Sun } from "../design.ts";
import {
  batteryWByMonthAndHour,
  type Daylight,
  drawnWh,
  drawsOf,
  lengthH,
  runningOf,
  UNKNOWN_DAYLIGHT,
} from "./demand.ts";

/**
 * What the devices draw, through switch and converters, at the battery.
 *
 * @param sun  for the length of the days and the design month; null stands for twelve-hour days
 */
export function loadsStage(brief: Brief, sun: Sun | null): Loads {
  const daylight: Daylight = sun ?? UNKNOWN_DAYLIGHT;
  const byMonthAndHour = batteryWByMonthAndHour(brief, daylight);
  const dailyWhByMonth = byMonthAndHour.map(sum);
  const largestDailyWh = Math.max(...dailyWhByMonth);
  const month = sun?.designMonth ?? dailyWhByMonth.indexOf(largestDailyWh);

  const draws = drawsOf(brief);
  let darkWh = 0;
  const lines = draws.map((drawn): LoadLine => {
    const running = runningOf(drawn, { brief, month, daylight });
    const energy = drawnWh(drawn, running);
    darkWh += energy.darkWh;
    return {
      name: drawn.name,
      kind: drawn.kind,
      dayW: drawn.dayW,
      nightW: drawn.nightW,
      hoursPerDay: lengthH(running.lightSpans) + lengthH(running.darkSpans),
      dailyWh: energy.lightWh + energy.darkWh,
      origin: drawn.device
        ? weakerOrigin(drawn.device.dayW.origin, drawn.device.nightExtraW.origin)
        : "assumed",
    };
  });
  const designDailyWh = sum(lines.map((line) => line.dailyWh));
  return {
    lines,
    batteryWByMonthAndHour: byMonthAndHour,
    dailyWhByMonth,
    designDailyWh,
    largestDailyWh,
    peakW: sum(draws.map((drawn) => drawn.peakW)),
    longestNightH: 24 - Math.min(...daylight.daylightHByMonth),
    nightShareFrac: darkWh / designDailyWh,
  };
}

const WEAKEST_FIRST: readonly Origin[] = ["assumed", "estimate", "datasheet", "measured"];

/** Of two origins the one that is trusted less. */
export function weakerOrigin(a: Origin, b: Origin): Origin {
  return WEAKEST_FIRST.indexOf(a) < WEAKEST_FIRST.indexOf(b) ? a : b;
}

const DEVICES = ["brief.loads.devices", "brief.hours.runsInMonth", "brief.view.night"] as const;
const OWN_DRAWS =
  "converter and step-up 88 %, switch 3 W, regulator 0.5 W idle, controller 0.5 W: common practice from memory; wire 98 %: Sandia SAND87-7023 worksheet default, from memory";

export const loadsNotes = {
  lines: {
    what: "what each device, and each part that serves them, takes from the battery on a day of the design month",
    formula:
      "(day W x hours in the light + night W x hours in the dark) / (0.88 converter or step-up) / (0.98 wire)",
    inputs: [...DEVICES, "brief.parts.radio", "sun.designMonth", "sun.daylightHByMonth"],
    source: OWN_DRAWS,
  },
  batteryWByMonthAndHour: {
    what: "mean power from the battery in each solar hour of the mean day of each month",
    formula:
      "sum over devices of running share of the hour x power; in months without the camera only the controller draws",
    inputs: [...DEVICES, "sun.daylightHByMonth", "sun.clockMinusSolarH"],
    source: OWN_DRAWS,
  },
  dailyWhByMonth: {
    what: "energy from the battery on the mean day of each month",
    formula: "sum of the 24 hours",
    inputs: ["loads.batteryWByMonthAndHour"],
    source: "arithmetic",
  },
  designDailyWh: {
    what: "energy from the battery on a day of the design month",
    formula: "sum of the lines",
    inputs: ["loads.lines"],
    source: "arithmetic",
  },
  largestDailyWh: {
    what: "energy from the battery on a day of the month that asks for most",
    formula: "largest of the twelve months",
    inputs: ["loads.dailyWhByMonth"],
    source: "IEEE 1013 sizes by the heaviest load of the year (from memory)",
  },
  peakW: {
    what: "power from the battery for a moment, when everything runs and starts at once in the dark",
    formula:
      "sum of night W x peak ratio / efficiencies; ratio 2.2 for a turning camera, 2.4 for a cellular router, else 1.2",
    inputs: ["brief.loads.devices", "brief.view.scenes"],
    source: "peak ratios from memory of usual data sheets",
  },
  longestNightH: {
    what: "length of the longest night, by mean days of months",
    formula: "24 - shortest day",
    inputs: ["sun.daylightHByMonth"],
    source: "arithmetic",
  },
  nightShareFrac: {
    what: "share of the design month's energy that is drawn in the dark",
    formula: "energy drawn between sunset and sunrise / energy of the day",
    inputs: ["loads.lines", "sun.daylightHByMonth"],
    source: "arithmetic",
  },
} satisfies Notes<Loads>;
