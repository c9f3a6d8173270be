/**
 * How the page is set: like a field book, sign words and numbers stand right-aligned in a margin, then a rule, then the
 * text. Pure: sayings in, rows of styled pieces out, each row no wider than the screen.
 */
import type { Chart, Said } from "../interview/index.ts";
import {
  asciiText,
  columnsOf,
  cutText,
  type SaidLine,
  saidInWords,
  type Tone,
  wrapText,
} from "../plain/index.ts";

export interface Piece {
  readonly text: string;
  readonly tone: Tone;
}
export type Row = readonly Piece[];

export interface Sheet {
  readonly columns: number;
  readonly rows: number;
  readonly isAscii: boolean;
}

export const marginColumns = 10;
/** Below this there is no room for a margin: sign words stand in the line. */
const narrowColumns = 44;
/** A longer line is hard to read, however wide the screen. */
const longestText = 76;
/** From here on a drawing has room beside a summary. */
const drawingColumns = 90;

export const hasMargin = (sheet: Sheet): boolean => sheet.columns >= narrowColumns;

export function textColumns(sheet: Sheet): number {
  // One column is left free: a terminal may wrap when its last one is written.
  const room = sheet.columns - 1 - (hasMargin(sheet) ? marginColumns + 3 : 0);
  return Math.max(8, Math.min(longestText, room));
}

export function marginPieces(sheet: Sheet, margin: string): readonly Piece[] {
  const sign = cutText(margin, marginColumns);
  const blanks = " ".repeat(marginColumns - columnsOf(sign));
  return [
    { text: `${blanks}${sign}`, tone: "quiet" },
    { text: sheet.isAscii ? " | " : " │ ", tone: "quiet" },
  ];
}

export const ruleRow = (sheet: Sheet): Row =>
  hasMargin(sheet) ? marginPieces(sheet, "") : [{ text: " ", tone: "quiet" }];

/** A warning's sign word is set as strongly as its text. */
const isLoud = (tone: Tone): boolean => tone === "note" || tone === "caution" || tone === "stop";

export function lineRows(sheet: Sheet, line: SaidLine, labelColumns: number, room: number): readonly Row[] {
  const spell = (text: string): string => (sheet.isAscii ? asciiText(text) : text);
  const isWide = hasMargin(sheet);
  const sign = isWide || line.margin === "" ? "" : `${line.margin}: `;
  const label = line.label === undefined ? "" : spell(line.label);
  const isTabular = labelColumns > 0 && labelColumns <= room / 2;
  const lead = isTabular
    ? `${label}${" ".repeat(labelColumns - columnsOf(label))}  `
    : label === ""
      ? ""
      : `${label}: `;
  const hang = isTabular ? columnsOf(lead) : 0;
  const wrapped = isTabular
    ? wrapText(spell(line.text), room - hang).map(
        (text, index) => (index === 0 ? lead : " ".repeat(hang)) + text,
      )
    : wrapText(spell(`${sign}${lead}${line.text}`), room);
  return wrapped.map((text, index): Row => {
    const piece: Piece = { text, tone: line.tone };
    if (!isWide) return [piece];
    const [margin, rule] = marginPieces(sheet, index === 0 ? spell(line.margin) : "");
    return [isLoud(line.tone) ? { ...margin!, tone: line.tone } : margin!, rule!, piece];
  });
}

const rowColumns = (row: Row): number => row.reduce((columns, piece) => columns + columnsOf(piece.text), 0);

function besideDrawing(
  sheet: Sheet,
  rows: readonly Row[],
  lines: readonly string[],
  leftColumns: number,
): readonly Row[] {
  const room = sheet.columns - 1 - leftColumns - 3;
  // a drawing's blanks are part of it: what is too wide is cut, never set anew
  const drawing = lines.map((line) => cutText(sheet.isAscii ? asciiText(line) : line, room, ""));
  const beside: Row[] = [];
  for (let index = 0; index < Math.max(rows.length, drawing.length); index++) {
    const row = rows[index] ?? ruleRow(sheet);
    const drawn = drawing[index];
    if (drawn === undefined || drawn.trim() === "") {
      beside.push(row);
      continue;
    }
    const gap = " ".repeat(leftColumns - rowColumns(row) + 3);
    beside.push([...row, { text: gap + drawn, tone: "plain" }]);
  }
  return beside;
}

/** Columns a drawing may take beside a summary; 0 where the screen is too narrow for one. */
export function drawingRoom(sheet: Sheet): number {
  if (sheet.columns < drawingColumns) return 0;
  return Math.min(48, Math.floor((sheet.columns - marginColumns - 3) * 0.45));
}

/** A chart as it is, its words below; where the screen is too narrow for it, the words alone. */
function chartRows(sheet: Sheet, chart: Chart): readonly Row[] {
  const room = textColumns(sheet);
  const isDrawn = chart.lines.every((line) => columnsOf(line) <= room);
  const set = (text: string, tone: Tone): readonly Row[] =>
    lineRows(sheet, { margin: "", text, tone }, 0, room);
  const drawn = chart.lines.map((line): Row => {
    const piece: Piece = { text: sheet.isAscii ? asciiText(line) : line, tone: "plain" };
    return hasMargin(sheet) ? [...marginPieces(sheet, ""), piece] : [piece];
  });
  return [
    ruleRow(sheet),
    ...set(chart.title, "strong"),
    ...(isDrawn ? drawn : []),
    ...set(chart.words, "plain"),
  ];
}

/** A saying as rows, with a drawing beside it where one is given. */
export function saidRows(sheet: Sheet, said: Said, drawing: readonly string[] | null = null): readonly Row[] {
  if (said.kind === "chart") return chartRows(sheet, said.chart);
  const lines = saidInWords(said);
  const labelColumns = Math.max(0, ...lines.map((line) => columnsOf(line.label ?? "")));
  const reserved = drawing === null ? 0 : drawingRoom(sheet);
  const room =
    reserved === 0
      ? textColumns(sheet)
      : Math.min(textColumns(sheet), sheet.columns - marginColumns - 7 - reserved);
  const rows = lines.flatMap((line) =>
    lineRows(sheet, line, line.label === undefined ? 0 : labelColumns, room),
  );
  const opens =
    said.kind !== "meaning" && said.kind !== "finding" && said.kind !== "refusal" && said.kind !== "changed";
  const whole = opens ? [ruleRow(sheet), ...rows] : rows;
  if (drawing === null || reserved === 0) return whole;
  return besideDrawing(sheet, whole, drawing, marginColumns + 3 + room);
}
