/** The radio path cut open along its line: ground, line, room round it, and what stands in between. */

import { type PathSection, pathSection, type SectionSample } from "../core/link/index.ts";
import type { Saying } from "../core/units/index.ts";
import type { Link, LinkClearance, LinkPath, RadioPath } from "../design/index.ts";
import type { Chart } from "./chart.ts";
import type { Block } from "./document.ts";

const rows = 11;
const columns = 38;
const labelColumns = 7;
/** Of the height drawn, left free below the lowest ground. */
const footFrac = 0.08;

/** null where there is no radio path. */
export function linkChart(link: Link | null, said: Saying): Chart | null {
  if (link?.path == null || link.clearance === null || link.radio === null) return null;
  return {
    title: "The radio path, from the side",
    words: sectionWords(link.clearance, link.radio, said),
    lines: sectionLines(link.path, said),
  };
}

function sectionWords(
  clearance: LinkClearance,
  { nearHeightM, farHeightM }: RadioPath,
  said: Saying,
): string {
  const { clearanceM, clearanceFrac, governing } = clearance;
  const wantedM = clearanceFrac === 0 ? 0 : (0.6 * clearanceM) / clearanceFrac;
  const length = (valueM: number) => said(valueM, "m", 1);
  const passes = clearanceM < 0 ? `${length(-clearanceM)} below the top of` : `${length(clearanceM)} above`;
  return `The line from ${length(nearHeightM)} at the post to ${length(farHeightM)} at the other end passes ${passes} ${governing}; ${length(wantedM)} of room ${clearanceM >= wantedM ? "are enough" : "are wanted"} there.`;
}

const sectionOf = ({ section, distanceM }: LinkPath, samples: number): PathSection =>
  pathSection({
    distanceM,
    nearHeightM: section.nearAntennaM,
    farHeightM: section.farAntennaM,
    frequencyMHz: section.frequencyMHz,
    k: section.earthRadiusRatio,
    obstacles: section.obstacles,
    profile: section.profile,
    columns: samples,
  });

interface Frame {
  readonly lowM: number;
  readonly highM: number;
}

function frameOf({ samples, obstacles }: PathSection): Frame {
  const grounds = samples.map(({ groundM }) => groundM);
  const tops = [...samples.map(({ lineM }) => lineM), ...obstacles.map(({ topM }) => topM)];
  const lowestM = Math.min(...grounds);
  const highM = Math.max(...grounds, ...tops);
  return { lowM: lowestM - footFrac * Math.max(1, highM - lowestM), highM: Math.max(highM, lowestM + 1) };
}

/** From the top down: the line over everything, what stands over the ground, the edge of the room where nothing else is. */
function sectionLines(path: LinkPath, said: Saying): readonly string[] {
  const cut = sectionOf(path, columns);
  const { lowM, highM } = frameOf(cut);
  const stepM = (highM - lowM) / rows;
  const rowOf = (heightM: number) => Math.min(rows - 1, Math.floor((heightM - lowM) / stepM));
  const cell = (sample: SectionSample, column: number, row: number): string => {
    const groundFilled = (sample.groundM - lowM) / stepM - row;
    const isEnd = column === 0 || column === columns - 1;
    if (rowOf(sample.lineM) === row) return "─";
    if (groundFilled >= 0.75) return "█";
    if (isEnd && rowOf(sample.lineM) > row) return "│";
    if (standsAt(cut, path.distanceM, column) > lowM + (row + 0.5) * stepM) return "▒";
    if (groundFilled >= 0.25) return "▄";
    return !isEnd && rowOf(sample.lower06M) === row ? "░" : " ";
  };
  const postGroundM = path.section.profile[0]!.groundM;
  const drawn = Array.from({ length: rows }, (_, fromTop) => {
    const row = rows - 1 - fromTop;
    const label =
      row === rows - 1 || row === 0
        ? said((row === 0 ? lowM + footFrac * (highM - lowM) : highM) - postGroundM, "m")
        : "";
    const cells = cut.samples.map((sample, column) => cell(sample, column, row));
    return `${`${label} `.padStart(labelColumns).slice(0, labelColumns)}│${cells.join("")}`.trimEnd();
  });
  const end = said(path.distanceM, "m away");
  const middle = said(path.distanceM / 2, "m away");
  const axis = `${"post".padEnd(Math.floor((columns - middle.length) / 2))}${middle}`;
  return [
    ...drawn,
    `${" ".repeat(labelColumns)}${axis}${end.padStart(columns + 1 - axis.length)}`,
    `${" ".repeat(labelColumns)}─ line ░ its room ▒ between █ ground`,
  ];
}

/** Top of what stands in a column; below everything where nothing does. */
function standsAt({ obstacles }: PathSection, distanceM: number, column: number): number {
  const widthM = distanceM / (columns - 1);
  const [fromM, toM] = [(column - 0.5) * widthM, (column + 0.5) * widthM];
  return Math.max(
    Number.NEGATIVE_INFINITY,
    ...obstacles.filter((one) => one.toM >= fromM && one.fromM < toM).map(({ topM }) => topM),
  );
}

/** The same for a document: signs for text, a drawing for the page. */
export function linkDrawing(link: Link, said: Saying): Block | null {
  const chart = linkChart(link, said);
  if (chart === null || link.path === null) return null;
  const { title, words, lines } = chart;
  return {
    kind: "drawing",
    linesAt: (atMost) => (lines.every((line) => line.length <= atMost) ? lines : []),
    svg: sectionSvg(link.path, title, said),
    caption: `${title}. ${words} Heights are drawn larger than distances, and the earth's curve is in the ground.`,
  };
}

const widthPx = 640;
const heightPx = 220;
const leftPx = 50;
const topPx = 12;
const svgSamples = 161;

function sectionSvg(path: LinkPath, title: string, said: Saying): string {
  const cut = sectionOf(path, svgSamples);
  const { lowM, highM } = frameOf(cut);
  const x = (distanceM: number): string => (leftPx + (widthPx * distanceM) / path.distanceM).toFixed(1);
  const y = (heightM: number): string =>
    (topPx + heightPx * (1 - (Math.max(lowM, heightM) - lowM) / (highM - lowM))).toFixed(1);
  const along = (height: (sample: SectionSample) => number): string =>
    cut.samples.map((sample) => `${x(sample.distanceM)},${y(height(sample))}`).join(" ");
  const bottom = (topPx + heightPx).toFixed(1);
  const right = leftPx + widthPx;
  const things = cut.obstacles.map(({ fromM, toM, footM, topM, kind }) => {
    const leftEdge = Number(x(fromM));
    const width = Math.max(4, Number(x(toM)) - leftEdge);
    const height = Math.max(1, Number(y(footM)) - Number(y(topM)));
    return `<rect x="${leftEdge}" y="${y(topM)}" width="${width.toFixed(1)}" height="${height.toFixed(1)}" fill="${kind === "trees" ? "#4a6b57" : "#8a8078"}"/>`;
  });
  const postGroundM = path.section.profile[0]!.groundM;
  const mast = (end: "near" | "far"): string => {
    const at = end === "near" ? leftPx : right;
    const sample = cut.samples.at(end === "near" ? 0 : -1)!;
    return `<line x1="${at}" y1="${y(sample.groundM)}" x2="${at}" y2="${y(sample.lineM)}" stroke="#333" stroke-width="3"/>`;
  };
  const text = (atX: number, atY: number, words: string, anchor: string): string =>
    `<text x="${atX}" y="${atY}" text-anchor="${anchor}" font-size="11">${words}</text>`;
  const below = topPx + heightPx + 15;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${right + 40} ${below + 8}" width="${right + 40}" role="img" aria-label="${title}">`,
    `<polygon points="${leftPx},${bottom} ${along(({ groundM }) => groundM)} ${right},${bottom}" fill="#d8cbb8" stroke="#654"/>`,
    ...things,
    `<polyline points="${along(({ lower06M }) => lower06M)}" fill="none" stroke="#b60" stroke-dasharray="4 3"/>`,
    `<line x1="${leftPx}" y1="${y(cut.samples[0]!.lineM)}" x2="${right}" y2="${y(cut.samples.at(-1)!.lineM)}" stroke="#06c" stroke-width="1.5"/>`,
    mast("near"),
    mast("far"),
    text(leftPx - 6, Number(y(highM)) + 8, said(highM - postGroundM, "m"), "end"),
    text(leftPx - 6, Number(y(postGroundM)), said(0, "m"), "end"),
    text(leftPx, below, "post", "start"),
    text(leftPx + widthPx / 2, below, said(path.distanceM / 2, "m away"), "middle"),
    text(right, below, said(path.distanceM, "m away"), "end"),
    "</svg>",
  ].join("");
}
