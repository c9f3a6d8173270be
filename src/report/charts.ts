/** What is drawn when a topic closes or an answer moves it: the charge of the battery through the darkest spell, the radio path. */
import { MONTH_NAMES, sayingIn } from "../core/units/index.ts";
import type { DarkSpell, Design, Reliability } from "../design/index.ts";
import type { Chart } from "./chart.ts";
import type { Block } from "./document.ts";
import { linkChart } from "./link-chart.ts";

export type { Chart } from "./chart.ts";

/** Topics whose answers size battery and panels; null stands for the end of all questions. */
const SIZING_TOPICS: readonly (string | null)[] = ["autonomy", "power", null];

/** @returns charts of 46 columns at most, none where there is nothing to draw */
export function chartsOf(topicId: string | null, design: Design): readonly Chart[] {
  if (SIZING_TOPICS.includes(topicId))
    return design.reliability === null ? [] : [chargeChart(design.reliability)];
  const path = topicId === "link" ? linkChart(design.link, sayingIn(design.brief.units)) : null;
  return path === null ? [] : [path];
}

const rows = 8;
/** "100 % │" before it makes 46. */
export const chargeColumnsAtMost = 39;
export const percent = (frac: number): string => `${(100 * frac).toFixed(0)} %`;

/** The loads go off within an hour, and what little draws on goes on: so near is at it. */
const OFF_NEARNESS_FRAC = 0.02;

/** The lowest charge of each day through the darkest spell of all years. */
function chargeChart({ yearly, years, chosen }: Reliability): Chart {
  const { darkSpell } = yearly;
  const days = darkSpell.lowestSocFracByDay;
  const lowest = Math.min(...days);
  const day = days.indexOf(lowest) + 1;
  return {
    title: "Charge through the darkest spell",
    words: `In the darkest spell of ${years} years, from ${MONTH_NAMES[darkSpell.month]!}, the charge falls from ${percent(days[0]!)} to ${percent(lowest)} on day ${day}${fateWords(darkSpell, lowest)}.`,
    lines: chargeLines(darkSpell),
    of: `${chosen.installedW} W, ${chosen.blocks} x ${chosen.blockAh} Ah`,
  };
}

function fateWords({ isOff, offBelowSocFrac }: DarkSpell, lowestSocFrac: number): string {
  const mark = percent(offBelowSocFrac);
  if (!isOff) return `; the loads would go off at about ${mark}`;
  return lowestSocFrac <= offBelowSocFrac + OFF_NEARNESS_FRAC
    ? `, where the loads are off: they go off at about ${mark}`
    : ", where the loads are off since a colder hour";
}

function chargeLines({ lowestSocFracByDay, offBelowSocFrac }: DarkSpell): readonly string[] {
  const days = lowestSocFracByDay.slice(0, chargeColumnsAtMost);
  return chargeColumns({
    socFracs: days,
    offBelowSocFrac,
    isMarked: (i) => i % 7 === 6,
    foot: "one column a day, a mark a week",
  });
}

/** Each column filled up to its charge; the row in which the loads go off is named and of another sign. */
export function chargeColumns(drawing: {
  /** chargeColumnsAtMost of them, or fewer. */
  readonly socFracs: readonly number[];
  readonly offBelowSocFrac: number;
  readonly isMarked: (column: number) => boolean;
  readonly foot: string;
}): readonly string[] {
  const { socFracs, offBelowSocFrac, isMarked, foot } = drawing;
  const offRow = Math.max(0, Math.min(rows - 1, Math.floor(offBelowSocFrac * rows)));
  const drawn = Array.from({ length: rows }, (_, fromTop) => {
    const row = rows - 1 - fromTop;
    const isOff = row === offRow;
    const label = isOff ? "  off" : row === rows - 1 ? "100 %" : row === rows / 2 - 1 ? " 50 %" : "     ";
    const cells = socFracs.map((frac) => {
      const filled = frac * rows - row;
      // the line goes through the columns too, or it would be seen only where it has come true
      if (filled >= 0.75) return isOff ? "▒" : "█";
      return filled >= 0.25 ? "▄" : isOff ? "╌" : " ";
    });
    return `${label} │${cells.join("")}`.trimEnd();
  });
  const marks = socFracs.map((_, i) => (isMarked(i) ? "┴" : "─")).join("");
  return [...drawn, `  0 % └${marks}`, `       ${foot}`];
}

/** The same for a document: signs for text, bars for the page. */
export function chargeDrawing(reliability: Reliability): Block {
  const { title, words, lines } = chargeChart(reliability);
  return {
    kind: "drawing",
    linesAt: (columns) => (lines.every((line) => line.length <= columns) ? lines : []),
    svg: chargeSvg(reliability.yearly.darkSpell, title),
    caption: `${title}. ${words}`,
  };
}

const dayPx = 12;
const heightPx = 160;
const leftPx = 44;

function chargeSvg({ lowestSocFracByDay, offBelowSocFrac }: DarkSpell, title: string): string {
  const y = (frac: number): string => (10 + heightPx * (1 - frac)).toFixed(1);
  const right = leftPx + dayPx * lowestSocFracByDay.length;
  const bars = lowestSocFracByDay.map(
    (frac, day) =>
      `<rect x="${leftPx + dayPx * day + 1}" y="${y(frac)}" width="${dayPx - 2}" height="${(heightPx * frac).toFixed(1)}" fill="#4a6b57"/>`,
  );
  const line = (frac: number, pen: string): string =>
    `<line x1="${leftPx}" y1="${y(frac)}" x2="${right}" y2="${y(frac)}" ${pen}/>`;
  const label = (frac: number): string =>
    `<text x="${leftPx - 6}" y="${Number(y(frac)) + 4}" text-anchor="end" font-size="11">${percent(frac)}</text>`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${right + 10} ${heightPx + 30}" width="${right + 10}" role="img" aria-label="${title}">`,
    ...bars,
    line(0, 'stroke="#333"'),
    // a pale edge, so that the line is seen on the bars as well
    line(offBelowSocFrac, 'stroke="#fff" stroke-width="4"'),
    line(offBelowSocFrac, 'stroke="#a00" stroke-width="2" stroke-dasharray="4 3"'),
    label(0),
    label(1),
    label(offBelowSocFrac),
    "</svg>",
  ].join("");
}
