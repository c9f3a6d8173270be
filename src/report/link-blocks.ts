/** The radio path in the document: drawn, what it takes, what arrives both ways, what else was looked at. */
import { formatNumber, type Saying, sayingIn } from "../core/units/index.ts";
import type { Design, Link, LinkAvailability, LinkBudget, LinkDirection, LinkLoss } from "../design/index.ts";
import type { Block, Document } from "./document.ts";
import { linkDrawing } from "./link-chart.ts";
import { sentence } from "./words.ts";

/** Levels and losses to the tenth: finer ones are not known. */
const tenth = (value: number): string => {
  const text = value.toFixed(1);
  return text === "-0.0" ? "0.0" : text;
};
const tenths = { places: 1, keepsZeros: true } as const;
const rough = (value: number): string => formatNumber({ value, digits: 2 });
const paragraph = (text: string): Block => ({ kind: "paragraph", text });

export function linkBlocks({ brief, link }: Design): Document {
  if (link?.radio == null || link.loss === null || link.budget === null) return [];
  const said = sayingIn(brief.units);
  const drawing = linkDrawing(link, said);
  return [
    { kind: "heading", level: 2, text: "The radio path" },
    ...(drawing === null ? [] : [drawing]),
    paragraph(pathText(link, said)),
    lossTable(link.loss, link.budget),
    paragraph(lossText(link.loss)),
    budgetTable(link.budget),
    paragraph(yearText(link)),
    ...choiceBlocks(link),
  ];
}

function pathText({ path, clearance }: Link, said: Saying): string {
  if (path === null || clearance === null) return "";
  const bearing =
    path.bearingDeg === null || path.backBearingDeg === null
      ? ""
      : ` Bearing ${tenth(path.bearingDeg)}° from true north, back ${tenth(path.backBearingDeg)}°.`;
  const rules = clearance.byRule
    .map(({ name, missingM }) =>
      missingM > 0
        ? `${name}: ${said(missingM, "m", { ...tenths, safe: "up" })} missing`
        : `${name}: kept, ${said(-missingM, "m", { ...tenths, safe: "down" })} to spare`,
    )
    .join("; ");
  return `${sentence(`Distance ${said(path.distanceM, "m away", { digits: 4 })}, ground: ${path.groundSource}`)}${bearing} Nearest to the line: ${clearance.governing}. Room by rule: ${sentence(rules)}`;
}

function lossTable(loss: LinkLoss, { allowanceDb }: LinkBudget): Block {
  const parts: readonly (readonly [string, number])[] = [
    ["Free space", loss.freeSpaceDb],
    ["Air (oxygen, vapour)", loss.gasDb],
    ["Bending over ground and edges", loss.diffractionDb],
    ["Passing through trees in leaf", loss.vegetationDb],
    ["The path", loss.totalDb],
    ["Allowance for aim and ageing", allowanceDb],
    ["More in the hardest rain, 53 minutes a year", loss.rainDb],
  ];
  return {
    kind: "table",
    columns: ["What takes signal", "dB"],
    align: ["left", "right"],
    rows: parts.map(([what, lossDb]) => [what, tenth(lossDb)]),
  };
}

function lossText(loss: LinkLoss): string {
  const second =
    loss.secondOpinionDb === null
      ? ""
      : ` By Epstein and Peterson's construction the same edges take ${tenth(loss.secondOpinionDb)} dB.`;
  const treesDb = loss.betweenGrownDb - loss.betweenWithoutTreesDb;
  const trees =
    loss.betweenTodayDb === 0 && loss.betweenGrownDb === 0
      ? ""
      : ` What stands in between takes ${tenth(loss.betweenTodayDb)} dB today, ${tenth(loss.betweenBareDb)} without leaves, ${tenth(loss.betweenGrownDb)} grown${treesDb < 0.05 ? "" : `; with every tree cut ${tenth(loss.betweenWithoutTreesDb)} dB remain`}.`;
  return `${loss.reason}${loss.toleranceDb > 0 ? ` Known to about ${tenth(loss.toleranceDb)} dB either way.` : ""}${second}${trees}`;
}

function budgetTable({ nearToFar, farToNear, weaker }: LinkBudget): Block {
  const rows: readonly (readonly [string, (one: LinkDirection) => string])[] = [
    ["Transmitter, dBm", (one) => tenth(one.txPowerDbm)],
    ["Its antenna, dBi", (one) => tenth(one.txGainDbi)],
    ["Radiated (EIRP), dBm", (one) => tenth(one.eirpDbm)],
    ["Antenna that hears, dBi", (one) => tenth(one.rxGainDbi)],
    ["Expected on the day, dBm", (one) => `${tenth(one.expectedDbm)} ± ${tenth(one.toleranceDb)}`],
    ["After aim and ageing, dBm", (one) => tenth(one.rxLevelDbm)],
    ["Needed by the end that hears, dBm", (one) => tenth(one.sensitivityDbm)],
    ["Margin, dB", (one) => tenth(one.marginDb)],
    ["Rate", (one) => one.modulation],
    ["To use, Mbit/s", (one) => rough(one.availableMbps)],
  ];
  const isUneven = Math.abs(nearToFar.marginDb - farToNear.marginDb) >= 0.1;
  const head = (one: LinkDirection, name: LinkBudget["weaker"]) =>
    `To ${one.to}${isUneven && name === weaker ? " (decides)" : ""}`;
  return {
    kind: "table",
    columns: ["Both ways", head(nearToFar, "nearToFar"), head(farToNear, "farToNear")],
    align: ["left", "right", "right"],
    rows: rows.map(([what, of]) => [what, of(nearToFar), of(farToNear)]),
  };
}

const SIDE = { computed: "about", "at-most": "at most", "at-least": "at least" } as const;

/** Minutes a year are no more than "under an hour". */
function lostWords({ certainty, lostHPerYear }: LinkAvailability): string {
  if (lostHPerYear < 1 && certainty !== "at-least") return "less than an hour a year";
  return `${SIDE[certainty]} ${rough(lostHPerYear)} hours a year`;
}

function yearText({ radio, availability, sector }: Link): string {
  if (radio?.phyMbps === 0)
    return "As it stands the link does not work: even the slowest rate lacks the margin that is wanted, in clear air already. Hours lost to weather are not counted before the path is cleared or shortened.";
  const year =
    radio?.carriesPicture === false
      ? "As it stands the link does not carry the picture, in clear air already: hours lost to weather are not counted."
      : availability === null
        ? "How long weather takes it away is not worked: the place's rain is not known."
        : `Weather takes the link away ${lostWords(availability)} (${rough(availability.askedHPerYear)} may be dark). Power cuts, radar, leaning masts and broken parts are not in that.`;
  const shared =
    sector === null
      ? ""
      : ` ${sector.posts} posts share the other end and fill ${Math.round(100 * sector.airtimeFrac)} % of its time on the air; ${Math.round(100 * sector.allowedFrac)} % may be filled. The others are taken as like this one, as far away, spread over ${sector.spreadDeg}°.`;
  return `${year}${shared}`;
}

function choiceBlocks({ choices }: Link): Document {
  const suits = (one: boolean | "ask") => (one === "ask" ? "ask" : one ? "yes" : "no");
  return [
    {
      kind: "table",
      columns: ["Looked at", "Would do", "Why"],
      align: ["left", "left", "left"],
      rows: choices.map((choice) => [
        `${sentence(choice.name).slice(0, -1)}${choice.isTaken ? " (taken)" : ""}`,
        suits(choice.suits),
        choice.reason,
      ]),
    },
  ];
}
