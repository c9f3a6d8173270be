/** The bank's capacity by the worksheet of IEEE 1013, line by line. */
import { batteryNotes } from "../chain/battery-notes.ts";
import { monthName } from "../chain/words.ts";
import type { Battery, Design } from "../design.ts";
import { END_OF_LIFE_FRAC } from "../practice/battery.ts";
import { handFigure, numbered, type SumLine, withUnit } from "./line.ts";
import { greatestMonth } from "./load-sums.ts";

export const GOVERNING_WORDS = {
  "depth of discharge": "the depth of the dull spell",
  "daily depth": "the depth of an ordinary day",
  "end of life": "the battery's age",
} as const satisfies Readonly<Record<Battery["governing"], string>>;

/** Of the three capacities the largest. */
export const governingAh = ({ forDepthAh, forDailyDepthAh, forEndOfLifeAh }: Battery): number =>
  Math.max(forDepthAh, forDailyDepthAh, forEndOfLifeAh);

const KIND = { agm: "an AGM battery", lifepo4: "lithium iron phosphate" } as const;
const inAh = (value: number): string => withUnit(value, "Ah");

export function batterySums(battery: Battery, { loads }: Pick<Design, "loads">): readonly SumLine[] {
  const largest = governingAh(battery);
  const adjustedAh = largest / battery.capacityAtTemperatureFrac;
  const runningA = Math.max(...loads.batteryWByMonthAndHour.flat()) / battery.bankNominalV;
  const notes = batteryNotes;
  return numbered("B", [
    {
      what: `Energy that the loads take on a day of ${monthName(greatestMonth({ loads }))}`,
      sum: "",
      value: loads.largestDailyWh,
      unit: "Wh",
      source: "the sum of the loads",
    },
    {
      what: "Voltage of the bank",
      sum: "",
      value: battery.bankNominalV,
      unit: "V",
      source: notes.bankNominalV.source,
    },
    {
      what: "Charge that a day takes",
      sum: `${withUnit(loads.largestDailyWh, "Wh")} / ${withUnit(battery.bankNominalV, "V")}`,
      value: battery.dailyAh,
      unit: "Ah",
      source: notes.dailyAh.source,
    },
    {
      what: `Days without sun: ${battery.autonomyReason}`,
      sum: "",
      value: battery.autonomyDays,
      unit: "days",
      source: notes.autonomyDays.source,
    },
    {
      what: "Charge for all these days, unadjusted",
      sum: `${inAh(battery.dailyAh)} x ${handFigure(battery.autonomyDays)}`,
      value: battery.unadjustedAh,
      unit: "Ah",
      source: notes.unadjustedAh.source,
    },
    {
      what: `Permitted depth of the dull spell: ${battery.permittedDodReason}`,
      sum: "",
      value: battery.permittedDodFrac,
      unit: "",
      source: notes.permittedDodFrac.source,
    },
    {
      what: "First capacity: the dull spell stays within that depth",
      sum: `${inAh(battery.unadjustedAh)} / ${handFigure(battery.permittedDodFrac)}`,
      value: battery.forDepthAh,
      unit: "Ah",
      source: notes.forDepthAh.source,
    },
    {
      what: "Permitted depth of an ordinary day",
      sum: "",
      value: battery.permittedDailyDodFrac,
      unit: "",
      source: notes.permittedDailyDodFrac.source,
    },
    {
      what: "Second capacity: an ordinary day stays within that depth",
      sum: `${inAh(battery.dailyAh)} / ${handFigure(battery.permittedDailyDodFrac)}`,
      value: battery.forDailyDepthAh,
      unit: "Ah",
      source: notes.forDailyDepthAh.source,
    },
    {
      what: "Share of its capacity that a battery still has when it is replaced",
      sum: "",
      value: END_OF_LIFE_FRAC,
      unit: "",
      source: "IEEE 1013 and IEEE 1188, from memory",
    },
    {
      what: "Third capacity: the aged bank still carries the dull spell",
      sum: `${inAh(battery.unadjustedAh)} / ${handFigure(END_OF_LIFE_FRAC)}`,
      value: battery.forEndOfLifeAh,
      unit: "Ah",
      source: notes.forEndOfLifeAh.source,
    },
    {
      what: `The largest of the three governs, here ${GOVERNING_WORDS[battery.governing]}; they are not multiplied`,
      sum: `largest of ${inAh(battery.forDepthAh)}, ${inAh(battery.forDailyDepthAh)}, ${inAh(battery.forEndOfLifeAh)}`,
      value: largest,
      unit: "Ah",
      source: notes.governing.source,
    },
    {
      what: `Share of it that ${KIND[battery.chemistry]} gives at ${handFigure(Math.round(battery.temperatureC))} °C`,
      sum: "",
      value: battery.capacityAtTemperatureFrac,
      unit: "",
      source: notes.capacityAtTemperatureFrac.source,
    },
    {
      what: "Adjusted for that temperature",
      sum: `${inAh(largest)} / ${handFigure(battery.capacityAtTemperatureFrac)}`,
      value: adjustedAh,
      unit: "Ah",
      source: "IEEE 1013-2007 clause 6.3",
    },
    {
      what: "Design margin, as a factor",
      sum: "",
      value: 1 + battery.marginFrac,
      unit: "",
      source: notes.marginFrac.source,
    },
    {
      what: "Capacity that the handbook asks for",
      sum: `${inAh(adjustedAh)} x ${handFigure(1 + battery.marginFrac)}`,
      value: battery.requiredAh,
      unit: "Ah",
      source: notes.requiredAh.source,
    },
    ...(runningA > 0
      ? [
          {
            what: "Largest current that lasts an hour",
            sum: `${withUnit(runningA * battery.bankNominalV, "W")} / ${withUnit(battery.bankNominalV, "V")}`,
            value: runningA,
            unit: "A",
            source: "arithmetic",
          },
          {
            what: "Discharge time at which the blocks' capacity is to be read on their sheet, or any longer one",
            sum: `${inAh(battery.requiredAh)} / ${withUnit(runningA, "A")}`,
            value: battery.functionalHourRateH,
            unit: "h",
            source: notes.functionalHourRateH.source,
          },
        ]
      : []),
  ]);
}
