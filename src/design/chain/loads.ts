import { sum } from "../../core/numerics/index.ts";
import type { Brief, Origin } from "../brief.ts";
import type { Climate, LoadLine, Loads, Sun } from "../design.ts";
import { batteryBoxLossWPerK } from "../practice/battery-box.ts";
import {
  airOf,
  batteryWByMonthAndHour,
  type Daylight,
  drawnWh,
  drawsOf,
  lengthH,
  runningOf,
  standInBoxLossWPerK,
  UNKNOWN_DAYLIGHT,
} from "./demand.ts";

export { loadsNotes } from "./loads-notes.ts";

/**
 * What the devices draw, through switch and converters, at the battery.
 *
 * @param sun      for the length of the days and the design month; null stands for twelve-hour days
 * @param climate  for what runs by a thermostat; null lets that run all the time
 * @param bankWh   rated, for the heater that keeps the bank warm; null stands for a bank of some days
 */
export function loadsStage(
  brief: Brief,
  sun: Sun | null,
  climate: Climate | null = null,
  bankWh: number | null = null,
): Loads {
  const boxLossWPerK = bankWh === null ? null : batteryBoxLossWPerK(bankWh);
  const daylight: Daylight = { ...(sun ?? UNKNOWN_DAYLIGHT), air: airOf(climate), boxLossWPerK };
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
      hoursPerDay: running.onFrac * (lengthH(running.lightSpans) + lengthH(running.darkSpans)),
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
    batteryBoxLossWPerK:
      brief.power.batteryHeaterW.value > 0 ? (boxLossWPerK ?? standInBoxLossWPerK(brief)) : null,
    longestNightH: 24 - Math.min(...daylight.daylightHByMonth),
    nightShareFrac: darkWh / designDailyWh,
  };
}

const WEAKEST_FIRST: readonly Origin[] = ["assumed", "estimate", "datasheet", "measured"];

/** Of two origins the one that is trusted less. */
export function weakerOrigin(a: Origin, b: Origin): Origin {
  return WEAKEST_FIRST.indexOf(a) < WEAKEST_FIRST.indexOf(b) ? a : b;
}
