/** The handbook's sums as tables: what an inspector follows with a pocket calculator. */
import { sayingIn } from "../core/units/index.ts";
import {
  type Design,
  GOVERNING_WORDS,
  governingAh,
  type HandbookSums,
  handbookSums,
  handFigure,
  type SumLine,
  withUnit,
} from "../design/index.ts";
import type { Block, Document } from "./document.ts";
import { monthShort } from "./words.ts";

const heading = (level: 2 | 3, text: string): Block => ({ kind: "heading", level, text });
const paragraph = (text: string): Block => ({ kind: "paragraph", text });

const sumTable = (lines: readonly SumLine[]): Block => ({
  kind: "table",
  columns: ["Line", "What it is", "Sum", "Result", "Source"],
  align: ["left", "left", "left", "right", "left"],
  rows: lines.map(({ mark, what, sum, value, unit, source }) => [
    mark,
    what,
    sum === "" ? "given" : sum,
    withUnit(value, unit),
    source,
  ]),
});

/** The standards work in degrees Celsius, and a sum is followed in the units it was worked in. */
const CELSIUS_WORDS =
  " Temperatures stand here in degrees Celsius (°C), as the standards work them: times 1.8 and 32 more, they are °F.";

/** The sums of both handbooks, and what is built beside them. */
export function handbookBlocks(design: Design): Document {
  const sums = handbookSums(design);
  if (sums === null) return [];
  return [
    heading(2, "The handbook's sums, to check by hand"),
    paragraph(
      `Every line is worked from the lines before it. The figures are rounded to four digits, so a sum done again from them agrees to about a thousandth. W, Wh, V, A and Ah are watts, watt-hours, volts, amperes and ampere-hours.${sayingIn(design.brief.units).either("", CELSIUS_WORDS)}`,
    ),
    heading(3, "What the loads take"),
    sumTable(sums.loads),
    heading(3, "The battery, by IEEE 1013"),
    sumTable(sums.battery),
    ...batteryEnd(design),
    heading(3, "The panels, by IEEE 1562"),
    sumTable(sums.array),
    monthTable(sums, design),
    ...arrayEnd(design),
    ...secondBlocks(sums, design),
  ];
}

function batteryEnd({ battery }: Design): Document {
  if (battery === null) return [];
  const { governing, requiredAh, sizedBy, inSeries, inParallel, blockAh, bankAh, bankV, wantedAh } = battery;
  const governs = `Of the three capacities ${GOVERNING_WORDS[governing]} governs, with ${withUnit(governingAh(battery), "Ah")}.`;
  const bank = `${inParallel} ${inParallel === 1 ? "string" : "strings"} of ${inSeries} with ${withUnit(blockAh, "Ah")} each, ${withUnit(bankAh, "Ah")} at ${bankV} V`;
  return [
    paragraph(
      sizedBy === "handbook"
        ? `${governs} Built for these ${withUnit(requiredAh, "Ah")}, in whole blocks: ${bank}.`
        : `${governs} What is built follows the weather years and not this sum: they ask for ${withUnit(wantedAh, "Ah")}, in whole blocks ${bank}.`,
    ),
  ];
}

function monthTable({ months }: HandbookSums, { array }: Design): Block {
  const isBridged = (array?.darkMonths.length ?? 0) > 0;
  return {
    kind: "table",
    columns: [
      "Month",
      "Asked Wh a day",
      isBridged ? "Sun hours counted" : "Sun hours",
      "Cells °C",
      "Heat leaves",
      "Arrives",
      "Panels W",
    ],
    align: ["left", "right", "right", "right", "right", "right", "right"],
    rows: months.map(({ month, dailyWh, sunHours, cellTempC, heatKeepsFrac, arrivesFrac, requiredW }) => [
      monthShort[month]!,
      handFigure(dailyWh),
      handFigure(sunHours),
      handFigure(cellTempC),
      handFigure(heatKeepsFrac),
      handFigure(arrivesFrac),
      requiredW !== null ? handFigure(requiredW) : dailyWh > 0 ? "left to the battery" : "rests",
    ]),
  };
}

function arrayEnd({ array }: Design): Document {
  if (array === null) return [];
  const { requiredW, sizedBy, wantedW, panels, panelW, installedW, arrayToLoadRatio } = array;
  const rule = `In each month the panels are asked Wh x ${handFigure(arrayToLoadRatio)} / (sun hours x what arrives); an hour of sun is 1 kWh/m2 on the panel.`;
  const built = `${panels} x ${withUnit(panelW, "W")}, ${withUnit(installedW, "W")}`;
  return [
    paragraph(
      sizedBy === "handbook"
        ? `${rule} Built for these ${withUnit(requiredW, "W")}, in whole panels: ${built}.`
        : `${rule} What is built follows the weather years and not this sum: they ask for ${withUnit(wantedW, "W")}, in whole panels ${built}.`,
    ),
  ];
}

function secondBlocks({ secondOpinion }: HandbookSums, { battery, array }: Design): Document {
  const title = heading(3, "A second opinion, by the Sandia worksheets");
  if (secondOpinion === null || battery === null || array === null)
    return [
      title,
      paragraph("None: those worksheets know no battery that carries a post through months without sun."),
    ];
  const { lines, requiredAh, panelsW } = secondOpinion;
  return [
    title,
    sumTable(lines),
    paragraph(
      `They ask for ${withUnit(requiredAh, "Ah")} where IEEE 1013 asks for ${withUnit(battery.requiredAh, "Ah")}, and for ${withUnit(panelsW, "W")} in whole panels where IEEE 1562 asks for ${withUnit(array.requiredW, "W")}. They take what the battery loses as a load, know neither its age nor a margin nor an array-to-load ratio, and count panels in amperes. Nothing is built by them.`,
    ),
  ];
}
