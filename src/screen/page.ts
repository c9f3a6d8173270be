/**
 * How the page is set: like a field book, sign words and numbers stand right-aligned in a margin, then a rule, then the
 * text. Pure: sayings and views in, rows of styled pieces out, each row no wider than the screen.
 */
import type { Said, View } from "../interview/index.ts";
import {
  asciiText,
  columnsOf,
  cutText,
  graphemesOf,
  type SaidLine,
  saidInWords,
  type Tone,
  wrapText,
} from "../plain/index.ts";
import type { Typing } from "./typing.ts";

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

const marginColumns = 10;
/** Below this there is no room for a margin: sign words stand in the line. */
const narrowColumns = 44;
/** A longer line is hard to read, however wide the screen. */
const longestText = 76;
/** From here on a drawing has room beside a summary. */
const drawingColumns = 90;

const hasMargin = (sheet: Sheet): boolean => sheet.columns >= narrowColumns;

function textColumns(sheet: Sheet): number {
  // One column is left free: a terminal may wrap when its last one is written.
  const room = sheet.columns - 1 - (hasMargin(sheet) ? marginColumns + 3 : 0);
  return Math.max(8, Math.min(longestText, room));
}

function marginPieces(sheet: Sheet, margin: string): readonly Piece[] {
  const sign = cutText(margin, marginColumns);
  const blanks = " ".repeat(marginColumns - columnsOf(sign));
  return [
    { text: `${blanks}${sign}`, tone: "quiet" },
    { text: sheet.isAscii ? " | " : " │ ", tone: "quiet" },
  ];
}

const ruleRow = (sheet: Sheet): Row =>
  hasMargin(sheet) ? marginPieces(sheet, "") : [{ text: " ", tone: "quiet" }];

/** A warning's sign word is set as strongly as its text. */
const isLoud = (tone: Tone): boolean => tone === "note" || tone === "caution" || tone === "stop";

function lineRows(sheet: Sheet, line: SaidLine, labelColumns: number, room: number): readonly Row[] {
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
  const drawing = lines.flatMap((line) => wrapText(sheet.isAscii ? asciiText(line) : line, room));
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

/** A saying as rows, with a drawing beside it where one is given. */
export function saidRows(sheet: Sheet, said: Said, drawing: readonly string[] | null = null): readonly Row[] {
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

export interface Live {
  readonly rows: readonly Row[];
  /** Where the cursor stands, counted from the first row and column of these rows. */
  readonly cursor: { readonly x: number; readonly y: number };
  /** The first option shown, as far as it could be scrolled. */
  readonly optionsTop: number;
}

/** What fits of a line around the cursor, when the whole is too long. */
function typedWindow(typing: Typing, room: number): { readonly text: string; readonly cursorColumn: number } {
  const whole = typing.before + typing.after;
  if (columnsOf(whole) < room) return { text: whole, cursorColumn: columnsOf(typing.before) };
  let before = "";
  let width = 0;
  const reach = Math.max(1, Math.floor(room * 0.75));
  for (const sign of [...graphemesOf(typing.before)].reverse()) {
    if (width + columnsOf(sign) > reach) break;
    before = sign + before;
    width += columnsOf(sign);
  }
  return { text: before + cutText(typing.after, room - 1 - width, ""), cursorColumn: width };
}

/** How far the options are scrolled: the first one shown, kept within the list. */
function scrolledTo(top: number, about: { readonly options: number; readonly shown: number }): number {
  return Math.max(0, Math.min(top, about.options - about.shown));
}

interface Parts {
  /** The empty row that keeps the question apart from what was said. */
  gap: number;
  position: number;
  ask: number;
  hint: number;
  options: number;
  footer: number;
}

/** How many rows of each part are shown, so that all of them and the typed line stay within `most`. */
function fittingParts(wanted: Parts, most: number): Parts {
  const parts = { ...wanted };
  let excess = parts.gap + parts.position + parts.ask + parts.hint + parts.options + parts.footer + 1 - most;
  const give = (part: keyof Parts, least: number): void => {
    const given = Math.max(0, Math.min(excess, parts[part] - least));
    parts[part] -= given;
    excess -= given;
  };
  give("options", Math.min(wanted.options, 6));
  give("footer", 0);
  give("hint", 0);
  give("position", 0);
  give("gap", 0);
  give("options", Math.min(wanted.options, 2));
  give("ask", 1);
  give("options", 0);
  return parts;
}

/** The live part of the screen: the question waiting, with what is being typed. At most four rows less than the screen. */
export function liveRows(sheet: Sheet, view: View, typing: Typing, optionsTop: number): Live {
  const room = textColumns(sheet);
  const said = (margin: string, text: string, tone: Tone): readonly Row[] =>
    text === "" ? [] : lineRows(sheet, { margin, text, tone }, 0, room);

  const position = said("", view.position, "quiet");
  const ask = said("", view.ask, "strong");
  const hint = said("", view.hint, "quiet");
  const options = view.options.flatMap(({ number, label }) =>
    said(String(number), cutText(label, room), "plain"),
  );
  const footer = said("", view.commands, "quiet").slice(0, sheet.rows >= 20 ? 2 : 1);

  // Ink ends the live part with one empty row of its own.
  const most = Math.max(2, sheet.rows - 4);
  const fit = fittingParts(
    {
      gap: 1,
      position: position.length,
      ask: ask.length,
      hint: hint.length,
      options: options.length,
      footer: footer.length,
    },
    most,
  );
  const isCut = fit.options < options.length;
  const shown = isCut ? Math.max(0, fit.options - 1) : options.length;
  const top = scrolledTo(optionsTop, { options: options.length, shown });
  const optionRows = options.slice(top, top + shown);
  if (isCut && fit.options > 0) {
    const upTo = top + shown;
    optionRows.push(
      ...said("", `${top + 1} to ${upTo} of ${options.length}: Page Up, Page Down`, "quiet").slice(0, 1),
    );
  }

  const isWide = hasMargin(sheet);
  const spelled = sheet.isAscii ? asciiText(view.prompt) : view.prompt;
  const prompt = `${cutText(spelled, Math.floor(room / 2))}: `;
  const typed = typedWindow(typing, room - columnsOf(prompt));
  const keeps =
    typed.text === "" && view.keeps !== null
      ? cutText(
          `  (Enter alone keeps ${sheet.isAscii ? asciiText(view.keeps) : view.keeps})`,
          room - columnsOf(prompt) - 1,
        )
      : "";
  const inputRow: Row = [
    ...(isWide ? marginPieces(sheet, "Answer") : []),
    { text: prompt, tone: "plain" },
    keeps === "" ? { text: typed.text, tone: "strong" } : { text: keeps, tone: "quiet" },
  ];

  const above = [
    ...(fit.gap > 0 ? [ruleRow(sheet)] : []),
    ...position.slice(0, fit.position),
    ...ask.slice(0, fit.ask),
    ...hint.slice(0, fit.hint),
    ...optionRows,
  ];
  const x = (isWide ? marginColumns + 3 : 0) + columnsOf(prompt) + typed.cursorColumn;
  return {
    rows: [...above, inputRow, ...footer.slice(0, fit.footer)],
    cursor: { x, y: above.length },
    optionsTop: top,
  };
}
