import { formatNumber } from "../core/units/index.ts";
import { type Design, type List, listsOf, notesOf } from "../design/index.ts";
import type { Block, Document } from "./document.ts";
import { postLines, postSvg } from "./post-drawing.ts";
import { monthShort } from "./words.ts";

/** One answer as it is listed: what was asked, what was said, where it came from. */
export interface AnswerRow {
  readonly topic: string;
  readonly label: string;
  readonly answer: string;
  readonly origin: string;
}

const n = (value: number, digits = 3) => formatNumber({ value, digits });
const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: "heading", level, text });
const paragraph = (text: string): Block => ({ kind: "paragraph", text });

function findingBlocks(design: Design): Document {
  if (design.findings.length === 0)
    return [paragraph("Nothing stands in the way of this design as it has been described.")];
  return design.findings.map((finding) => ({
    kind: "warning",
    severity: finding.severity,
    text: finding.change === "" ? finding.says : `${finding.says} ${finding.change}`,
  }));
}

function figureBlock(design: Design): Block {
  const { sun, loads, battery, array, link, mounting, money } = design;
  const rows: [string, string][] = [
    [
      "Energy",
      `${n(loads.designDailyWh)} Wh a day in the month that decides, ${n(loads.nightShareFrac * 100, 2)} % of it in the dark`,
    ],
  ];
  if (sun !== null)
    rows.push([
      "Panel stands",
      `${n(sun.tiltDeg)} degrees from flat, facing true ${sun.facing} (azimuth ${n(sun.azimuthDeg)})`,
    ]);
  if (array !== null)
    rows.push(
      [
        "Panels",
        `${array.panels} x ${n(array.panelW)} W = ${n(array.installedW)} W (needed: ${n(array.requiredW)} W). ${array.layoutReason}`,
      ],
      [
        "Controller",
        `${array.controller.toUpperCase()}, at least ${n(array.controllerA)} A and ${n(array.controllerMaxInputV)} V from the panels`,
      ],
    );
  if (battery !== null)
    rows.push(
      [
        "Battery",
        `${n(battery.bankAh)} Ah at ${battery.bankV} V (needed: ${n(battery.requiredAh)} Ah), ${battery.inSeries} in series x ${battery.inParallel} in parallel, ${n(battery.bankKg)} kg. ${battery.layoutReason}`,
      ],
      ["Battery kind", battery.chemistryReason],
      ["Autonomy", `${n(battery.autonomyDays, 2)} days without sun. ${battery.autonomyReason}`],
    );
  if (link?.radio != null)
    rows.push([
      "Link",
      `${n(link.radio.distanceM)} m by radio, ${n(link.radio.availableMbps)} Mbit/s to use, ${n(link.needMbps)} needed, ${n(link.radio.fadeMarginDb, 2)} dB to spare`,
    ]);
  else if (link !== null)
    rows.push([
      "Link",
      `by ${link.carrier === "cable" ? "network cable" : "mobile network"}, ${n(link.needMbps)} Mbit/s needed`,
    ]);
  rows.push([
    "Wind",
    `${n(mounting.totalForceN)} N in a gust of ${n(mounting.gustMPerS)} m/s; ${n(mounting.groundMomentNm)} Nm at the ground`,
  ]);
  if (mounting.tube !== null)
    rows.push([
      "Mast",
      `${mounting.tube.name}, ${n(mounting.mastHeightM)} m above ground, ${n(mounting.tubeLengthM)} m in all`,
    ]);
  if (mounting.footing !== null)
    rows.push([
      "Footing",
      `${n(mounting.footing.depthM)} m deep, ${n(mounting.footing.diameterM)} m across, ${mounting.footing.bags25Kg} bags of 25 kg`,
    ]);
  for (const lift of mounting.lifts)
    rows.push([
      `Lift: ${lift.what}`,
      `${n(lift.weightKg)} kg, ${lift.people === 1 ? "one person" : `${lift.people} people`}`,
    ]);
  rows.push([
    "Cost of parts",
    `about ${n(money.lowTotal, 2)} to ${n(money.highTotal, 2)} ${money.currency}, ${n(money.contingencyFrac * 100)} % for odds and ends included (typical prices, from memory)`,
  ]);
  return { kind: "facts", rows };
}

function monthBlock({ climate, sun, loads, array }: Design): Document {
  if (climate === null || sun === null) return [];
  return [
    heading(2, "Month by month"),
    {
      kind: "table",
      columns: [
        "Month",
        "Level ground kWh/m2 a day",
        "On the panel kWh/m2 a day",
        "Mean temperature C",
        "Asked Wh a day",
        "Supply over demand",
      ],
      align: ["left", "right", "right", "right", "right", "right"],
      rows: monthShort.map((month, i) => {
        const ratio = array?.supplyRatioByMonth[i];
        return [
          month,
          n(climate.ghiDailyKWhPerM2ByMonth[i]!),
          n(sun.poaDailyKWhPerM2ByMonth[i]!),
          n(climate.meanTempCByMonth[i]!, 2),
          n(loads.dailyWhByMonth[i]!),
          ratio == null ? "rests" : n(ratio, 2),
        ];
      }),
    },
    paragraph(
      `The sun figures are sure to about ${n(climate.ghiUncertaintyFrac * 100, 2)} %. Source: ${climate.dataSource}`,
    ),
  ];
}

function wiringBlock({ wiring }: Design): Document {
  if (wiring === null) return [];
  return [
    heading(2, "Wires and fuses"),
    {
      kind: "table",
      columns: ["Run", "Length m", "Current A", "Conductor", "Drop %", "Fuse"],
      align: ["left", "right", "right", "left", "right", "left"],
      rows: wiring.runs.map((run) => [
        `${run.from} to ${run.to}`,
        n(run.lengthM, 2),
        n(run.currentA, 2),
        `${n(run.areaMm2)} mm2 (${run.awg})`,
        n(run.dropFrac * 100, 2),
        run.fuseA === null ? run.fuseReason : `${n(run.fuseA)} A`,
      ]),
    },
  ];
}

function partsBlock({ parts, money }: Design): Document {
  return [
    heading(2, "What to buy"),
    paragraph(
      'Generic parts with the least specification to buy by. Check every line against the data sheet before you order; a line marked "confirm" rests on something that was assumed.',
    ),
    {
      kind: "table",
      columns: ["Part", "How many", "At least", `Price ${money.currency}`, ""],
      align: ["left", "right", "left", "right", "left"],
      rows: parts.lines.map((part) => [
        part.name,
        `${n(part.quantity)}${part.unit === "" ? "" : ` ${part.unit}`}`,
        part.specification.join("; "),
        part.isOwned ? "" : `${n(part.lowPrice, 2)} to ${n(part.highPrice, 2)}`,
        part.isOwned ? "owned" : part.restsOnAssumed ? "confirm" : "",
      ]),
    },
  ];
}

const listBlocks = (list: List): Document => [
  heading(2, list.title),
  ...(list.intro === "" ? [] : [paragraph(list.intro)]),
  { kind: "steps", isOrdered: list.isOrdered, steps: list.steps },
];

function noteBlocks(): Document {
  return [
    heading(2, "How each figure was worked"),
    {
      kind: "table",
      columns: ["Figure", "What it is", "How", "Source"],
      align: ["left", "left", "left", "left"],
      rows: Object.entries(notesOf()).map(([path, note]) => [path, note.what, note.formula, note.source]),
    },
  ];
}

/** The whole design for whoever builds, checks and looks after it. */
export function designDocument(
  design: Design,
  about: {
    readonly answers: readonly AnswerRow[];
    readonly attributions: readonly string[];
    readonly withNotes: boolean;
  },
): Document {
  const site = design.brief.place.site.value;
  const open = design.brief.openTopics;
  return [
    heading(1, `Camera post: ${design.name}`),
    paragraph(
      site === null
        ? "No place has been named yet, so nothing that needs the sun could be worked."
        : `Place: ${site.label}.`,
    ),
    ...(open.length === 0
      ? []
      : [
          paragraph(
            `Not finished: questions are open in ${open.join(", ")}. What rests on them is provisional.`,
          ),
        ]),
    heading(2, "Read this first"),
    ...findingBlocks(design),
    heading(2, "The post in figures"),
    figureBlock(design),
    {
      kind: "drawing",
      lines: postLines(design, { width: 60, glyphs: "ascii" }),
      svg: postSvg(design),
      caption: "The post seen from the front, to scale.",
    },
    ...monthBlock(design),
    ...wiringBlock(design),
    ...partsBlock(design),
    ...listsOf(design).flatMap(listBlocks),
    heading(2, "What was answered"),
    {
      kind: "table",
      columns: ["Topic", "Question", "Answer", "From"],
      align: ["left", "left", "left", "left"],
      rows: about.answers.map((row) => [row.topic, row.label, row.answer, row.origin]),
    },
    ...(about.withNotes ? noteBlocks() : []),
    heading(2, "Small print"),
    paragraph(
      "This is a calculation from what was answered, not a promise. It does not replace local codes, the makers' instructions or licensed practice. Rules on radio, building, electricity and recording differ by country, state and city: ask a local source.",
    ),
    ...about.attributions.map(paragraph),
  ];
}
