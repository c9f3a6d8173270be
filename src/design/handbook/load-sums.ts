/** What each device takes from the battery on a day of the month of greatest demand, as it is worked by hand. */
import { airOf, drawnWh, drawsOf, lengthH, runningOf } from "../chain/demand.ts";
import { loadsNotes } from "../chain/loads-notes.ts";
import { monthName } from "../chain/words.ts";
import type { Climate, Design, Sun } from "../design.ts";
import { WIRE_EFFICIENCY_FRAC } from "../practice/loads.ts";
import { handFigure, numbered, type SumLine } from "./line.ts";

export const greatestMonth = ({ loads }: Pick<Design, "loads">): number =>
  loads.dailyWhByMonth.indexOf(loads.largestDailyWh);

export function loadSums(
  { brief, loads }: Pick<Design, "brief" | "loads">,
  { climate, sun }: { readonly climate: Climate; readonly sun: Sun },
): readonly SumLine[] {
  const month = greatestMonth({ loads });
  const daylight = { ...sun, air: airOf(climate), boxLossWPerK: loads.batteryBoxLossWPerK };
  const lines = drawsOf(brief).map((drawn) => {
    const running = runningOf(drawn, { brief, month, daylight });
    const { lightWh, darkWh } = drawnWh(drawn, running);
    const { dayW, nightW, batteryRatio } = drawn;
    const at = (watts: number, hours: number) => `${handFigure(watts)} W x ${handFigure(hours)} h`;
    const [lightH, darkH] = [lengthH(running.lightSpans), lengthH(running.darkSpans)];
    const hours = dayW === nightW ? at(dayW, lightH + darkH) : `(${at(dayW, lightH)} + ${at(nightW, darkH)})`;
    const share = running.onFrac < 1 ? ` x ${handFigure(running.onFrac)}` : "";
    return {
      what: `${drawn.name}${dayW === nightW ? "" : ", by day and in the dark"}${share === "" ? "" : ", the share of the time that it is on"}${waysWords(batteryRatio)}`,
      sum: `${hours}${share}${waysSum(batteryRatio)}`,
      value: lightWh + darkWh,
      unit: "Wh",
      source: drawn.device === null ? loadsNotes.lines.source : `the watts: ${drawn.device.dayW.origin}`,
    };
  });
  return numbered("L", [
    ...lines,
    {
      what: `All together, on a day of ${monthName(month)}, the month that asks for most`,
      sum: lines.map(({ value }) => handFigure(value)).join(" + "),
      value: loads.largestDailyWh,
      unit: "Wh",
      source: "arithmetic",
    },
  ]);
}

/** Without a loss on the way the ratio is 1; by the wire alone it is the wire's; beyond that there is a converter. */
const converterFrac = (batteryRatio: number): number => 1 / (batteryRatio * WIRE_EFFICIENCY_FRAC);
const isLossless = (batteryRatio: number): boolean => batteryRatio < 1 + 1e-9;
const isWireAlone = (batteryRatio: number): boolean => converterFrac(batteryRatio) > 1 - 1e-9;

function waysWords(batteryRatio: number): string {
  if (isLossless(batteryRatio)) return "";
  return isWireAlone(batteryRatio) ? "; over the wire" : "; over converter and wire";
}

function waysSum(batteryRatio: number): string {
  if (isLossless(batteryRatio)) return "";
  const wire = ` / ${handFigure(WIRE_EFFICIENCY_FRAC)}`;
  return isWireAlone(batteryRatio) ? wire : ` / ${handFigure(converterFrac(batteryRatio))}${wire}`;
}
