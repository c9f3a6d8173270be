/** The tables of the document: months, wires, what to buy, how each figure was worked. */
import { formatNumber, type Saying, sayingIn, type UnitSystem } from "../core/units/index.ts";
import {
  assumedFactWords,
  conductorText,
  type Design,
  notesOf,
  type PairOutcome,
  type Part,
} from "../design/index.ts";
import { chargeDrawing } from "./charts.ts";
import type { Block, Document } from "./document.ts";
import { monthShort, sentence } from "./words.ts";

const tenths = { places: 1, keepsZeros: true } as const;
const rough = (value: number): string => formatNumber({ value, digits: 2 });
const figure = (value: number): string => formatNumber({ value, digits: 3 });
/** To the tenth: finer drops cannot be measured. */
const smallPercent = (frac: number): string => (frac < 0.0005 ? "under 0.1" : (100 * frac).toFixed(1));

export function monthBlocks({ brief, climate, sun, loads, array, reliability }: Design): Document {
  if (climate === null || sun === null) return [];
  const said = sayingIn(brief.units);
  return [
    { kind: "heading", level: 2, text: "Month by month" },
    {
      kind: "table",
      columns: [
        "Month",
        "Level ground kWh/m2 a day",
        "On the panels kWh/m2 a day",
        "Shade takes %",
        `Mean temperature ${said.symbol("°C")}`,
        "Asked Wh a day",
        "Supply over demand",
        ...(reliability === null ? [] : ["Median charge %", "Lowest charge %", "Dark hours"]),
      ],
      align: ["left", ...Array.from({ length: reliability === null ? 6 : 9 }, () => "right" as const)],
      rows: monthShort.map((month, i) => {
        const ratio = array?.supplyRatioByMonth[i];
        return [
          month,
          rough(climate.ghiDailyKWhPerM2ByMonth[i]!),
          rough(sun.poaDailyKWhPerM2ByMonth[i]!),
          String(Math.round(100 * sun.shadeFracByMonth[i]!)),
          said.bare(Math.round(climate.meanTempCByMonth[i]!), "°C"),
          figure(loads.dailyWhByMonth[i]!),
          ratio == null ? "rests" : rough(ratio),
          ...(reliability === null
            ? []
            : [
                String(Math.round(100 * reliability.yearly.medianSocFracByMonth[i]!)),
                String(Math.round(100 * reliability.yearly.lowestSocFracByMonth[i]!)),
                reliability.yearly.darkHoursByMonth[i]!.toFixed(1),
              ]),
        ];
      }),
    },
    {
      kind: "paragraph",
      text: `The sun of one month is known to about ${rough(climate.ghiUncertaintyFrac * 100)} %. Sun: ${sentence(climate.sunSource)} Other data: ${sentence(climate.dataSource)}`,
    },
  ];
}

/** The handbook's size and the pairs that reach what was asked, side by side. */
export function reliabilityBlocks({ brief, reliability, money }: Design): Document {
  if (reliability === null) return [];
  const said = sayingIn(brief.units);
  const { handbook, pairs, chosen, yearly, chosenMethod } = reliability;
  const isBuilt = (pair: PairOutcome, method: "handbook" | "simulation"): boolean =>
    method === chosenMethod && pair.installedW === chosen.installedW && pair.bankAh === chosen.bankAh;
  const row = (pair: PairOutcome, by: string, method: "handbook" | "simulation"): readonly string[] => [
    `${by}${isBuilt(pair, method) ? ", built" : ""}`,
    `${figure(pair.installedW)} (${pair.panels} x ${figure(pair.panelW)})`,
    `${figure(pair.bankAh)} (${pair.blocks} blocks)`,
    said.bare(pair.bankKg, "kg", { digits: 2 }),
    said.bare(pair.areaM2, "m2", { digits: 2 }),
    `${rough(pair.lowCost)} to ${rough(pair.highCost)}`,
    String(Math.round(pair.darkHours)),
  ];
  const shed =
    yearly.tiers.length > 1
      ? ` Dark by group: ${yearly.tiers.map(({ devices, darkHours, lossOfLoadFrac }) => `${devices} ${Math.round(darkHours)} hours (${rough(100 * lossOfLoadFrac)} % of the energy they ask for)`).join("; ")}.`
      : "";
  const duller =
    reliability.carefulSunRatio > 0.995
      ? ""
      : ` and a sun ${rough(100 * (1 - reliability.carefulSunRatio))} % duller`;
  const refill =
    yearly.refillDays === null
      ? ""
      : ` Once the first loads are back on after a dark spell, it takes about ${rough(yearly.refillDays)} days until the battery is nearly full again.`;
  return [
    { kind: "heading", level: 2, text: "Panels against battery" },
    {
      kind: "table",
      columns: [
        "Sized by",
        "Panels W",
        "Battery Ah",
        `Battery ${said.symbol("kg")}`,
        `Panel area ${said.symbol("m2")}`,
        `Price ${money.currency}`,
        "Dark hours a year",
      ],
      align: ["left", "right", "right", "right", "right", "right", "right"],
      rows: [
        row(handbook, "handbook", "handbook"),
        ...pairs.map((pair) => row(pair, "weather years", "simulation")),
      ],
    },
    {
      kind: "paragraph",
      text: `Prices are of panels, what carries them and the blocks alone. Dark hours are those of the careful case: ${rough(100 * (reliability.carefulRatio - 1))} % more demand than answered${duller}, the battery at the end of its life.${shed}${refill} Of what the panels could give, ${Math.round(100 * yearly.wastedFrac)} % finds the battery full. The battery is turned over ${rough(yearly.fullCyclesPerYear)} times a year and lasts about ${rough(yearly.batteryYears)} years, ${yearly.batteryYearsReason} (within a factor of two).`,
    },
    chargeDrawing(reliability),
  ];
}

export function wiringBlocks({ brief, wiring, array, battery }: Design): Document {
  if (wiring === null) return [];
  const said = sayingIn(brief.units);
  const others = [
    ...(wiring.stringFuseA === null || array === null
      ? []
      : [`In each of the ${array.inParallel} strings of panels: ${figure(wiring.stringFuseA)} A (gPV).`]),
    ...(wiring.blockFuseA === null || battery === null
      ? []
      : [`At each of the ${battery.inParallel} strings of blocks: ${figure(wiring.blockFuseA)} A.`]),
    `At the battery a ${wiring.mainFuseKind}: a dead short there draws up to about ${rough(wiring.shortCircuitA)} A.`,
  ];
  return [
    { kind: "heading", level: 2, text: "Wires and fuses" },
    {
      kind: "table",
      columns: [
        "Run",
        `One way ${said.symbol("m")}`,
        "Current A",
        "Conductor",
        "Drop %",
        "Fuse",
        "Where it sits and why",
      ],
      align: ["left", "right", "right", "left", "right", "left", "left"],
      rows: wiring.runs.map((run) => [
        `${run.name}${run.isEnough ? "" : " (no conductor of the table is enough)"}`,
        said.bare(run.lengthM, "m", tenths),
        rough(run.currentA),
        conductorText(said, run),
        smallPercent(run.dropFrac),
        run.fuseA === null ? "none" : `${figure(run.fuseA)} A`,
        run.fuseReason,
      ]),
    },
    { kind: "paragraph", text: others.join(" ") },
    ...poeBlocks(wiring.poeRuns, said),
  ];
}

function poeBlocks(runs: NonNullable<Design["wiring"]>["poeRuns"], said: Saying): Document {
  if (runs.length === 0) return [];
  return [
    {
      kind: "table",
      columns: [
        "Data cable to",
        `Length ${said.symbol("m")}`,
        "PoE class",
        "Device W",
        "At the device V",
        "Lost W",
      ],
      align: ["left", "right", "right", "right", "right", "right"],
      rows: runs.map((run) => [
        run.device,
        said.bare(run.lengthM, "m", tenths),
        run.poeClass === 0 ? "none is enough" : String(run.poeClass),
        rough(run.deviceW),
        run.deviceV === 0 ? "none" : run.deviceV.toFixed(1),
        rough(run.lossW),
      ]),
    },
  ];
}

/** Pieces, or a length or an area that is never cut short. */
function quantityText({ quantity, unit }: Part, said: Saying): string {
  const text = `${figure(quantity)}${unit === "" ? "" : ` ${unit}`}`;
  if (unit === "m") return said.either(text, said(quantity, "m", { safe: "up" }));
  return unit === "m2" ? said.either(text, said(quantity, "m2", { places: 1, safe: "up" })) : text;
}

export function partsBlocks({ brief, parts, money }: Design): Document {
  const assumed = assumedFactWords(brief);
  const stood =
    assumed.length === 0
      ? "Nothing that can be measured was assumed."
      : `Nobody has measured or looked yet, and stand-ins are used for: ${assumed.join("; ")}. A line marked "confirm" takes one of them directly: find it out before you order that line.`;
  const said = sayingIn(brief.units);
  const rows = parts.lines.map((part) => [
    part.name,
    quantityText(part, said),
    part.specification.join("; "),
    part.isOwned ? "" : `${rough(part.lowPrice)} to ${rough(part.highPrice)}`,
    part.isOwned ? "owned" : part.restsOnAssumed ? "confirm" : "",
  ]);
  const table: Block = {
    kind: "table",
    columns: ["Part", "How many", "At least", `Price ${money.currency}`, "Mark"],
    align: ["left", "right", "left", "right", "left"],
    rows,
  };
  return [
    { kind: "heading", level: 2, text: "What to buy" },
    {
      kind: "paragraph",
      text: `Generic parts with the least specification to buy by. Check every line against the data sheet before you order. ${stood}`,
    },
    table,
  ];
}

export function noteBlocks(units: UnitSystem): Document {
  return [
    { kind: "heading", level: 2, text: "How each figure was worked" },
    ...(units === "metric"
      ? []
      : [
          {
            kind: "paragraph",
            text: "The sums are worked in metric units and stand here as they are worked; everywhere else their results are told in yours.",
          } as const,
        ]),
    {
      kind: "table",
      columns: ["Figure", "What it is", "How", "Source"],
      align: ["left", "left", "left", "left"],
      rows: Object.entries(notesOf()).map(([path, note]) => [path, note.what, note.formula, note.source]),
    },
  ];
}
