/**
 * The live part of the screen: the question waiting, and the line being typed. Invariants: it is at least four rows lower
 * than the screen; the typed line is always in it; no row is wider than the screen. Pure.
 */
import type { View } from "../interview/index.ts";
import { asciiText, columnsOf, cutText, graphemesOf, type Tone } from "../plain/index.ts";
import {
  hasMargin,
  lineRows,
  marginColumns,
  marginPieces,
  type Row,
  ruleRow,
  type Sheet,
  textColumns,
} from "./page.ts";
import type { Typing } from "./typing.ts";

export interface Live {
  readonly rows: readonly Row[];
  /** Where the cursor stands, counted from the first row and column of these rows. */
  readonly cursor: { readonly x: number; readonly y: number };
  /** The first option shown, as far as it could be scrolled. */
  readonly optionsTop: number;
}

/** What a long prompt leaves for the line being typed, where the screen is not very narrow. */
const leastTyped = 18;
/** A label is not cut below this for the sake of what stands behind it. */
const leastOfLabel = 4;

/** Texts as this sheet can show them. */
interface Speller {
  readonly spell: (text: string) => string;
  readonly cut: (text: string, columns: number) => string;
  /** A text as rows beside the margin; none where it is empty. */
  readonly set: (margin: string, text: string, tone: Tone) => readonly Row[];
}

function spellerFor(sheet: Sheet): Speller {
  const spell = (text: string): string => (sheet.isAscii ? asciiText(text) : text);
  return {
    spell,
    cut: (text, columns) => cutText(spell(text), columns, spell("…")),
    set: (margin, text, tone) =>
      text === "" ? [] : lineRows(sheet, { margin, text, tone }, 0, textColumns(sheet)),
  };
}

/** A label cut so that what stands in brackets at its end stays: a unit, or the coordinates that tell namesakes apart. */
function cutLabel({ spell, cut }: Speller, text: string, columns: number): string {
  const label = spell(text);
  if (columnsOf(label) <= columns) return label;
  const end = / \([^()]*\)$/.exec(label)?.[0] ?? "";
  const room = columns - columnsOf(end);
  return room < leastOfLabel
    ? cut(label, columns)
    : cut(label.slice(0, label.length - end.length), room) + end;
}

interface Parts {
  /** The empty row that keeps the question apart from what was said. */
  gap: number;
  position: number;
  ask: number;
  hint: number;
  options: number;
  keeps: number;
  footer: number;
}

/** How many rows of each part are shown, so that all of them and the typed line stay within `most`. */
function fittingParts(wanted: Parts, most: number): Parts {
  const parts = { ...wanted };
  let excess = Object.values(parts).reduce((sum, rows) => sum + rows, 1) - most;
  const give = (part: keyof Parts, least: number): void => {
    const given = Math.max(0, Math.min(excess, parts[part] - least));
    parts[part] -= given;
    excess -= given;
  };
  // A list that nearly fits is worth more whole than the empty row and the position above it.
  if (excess <= parts.gap + parts.position) {
    give("gap", 0);
    give("position", 0);
  }
  give("options", Math.min(wanted.options, 6));
  give("footer", 1);
  // Half a hint would end in the middle of a sentence.
  if (excess > 0) {
    excess -= parts.hint;
    parts.hint = 0;
  }
  give("position", 0);
  give("gap", 0);
  give("keeps", 0);
  give("options", Math.min(wanted.options, 2));
  give("footer", 0);
  give("ask", 1);
  give("options", 0);
  const take = (part: keyof Parts): void => {
    const taken = Math.max(0, Math.min(-excess, wanted[part] - parts[part]));
    parts[part] += taken;
    excess += taken;
  };
  // Where the hint gave more than was needed.
  take("options");
  take("footer");
  return parts;
}

/** As many options as fit, from the one scrolled to, and in words which those are where some are left out. */
function optionRows(
  { cut, set }: Speller,
  options: readonly Row[],
  fit: { readonly rows: number; readonly top: number; readonly columns: number },
): { readonly rows: readonly Row[]; readonly top: number } {
  if (fit.rows >= options.length) return { rows: options, top: 0 };
  const shown = Math.max(0, fit.rows - 1);
  const top = Math.max(0, Math.min(fit.top, options.length - shown));
  if (fit.rows === 0) return { rows: [], top };
  const which = `${top + 1} to ${top + shown} of ${options.length}: Page Up, Page Down`;
  return {
    rows: [...options.slice(top, top + shown), ...set("", cut(which, fit.columns), "quiet")],
    top,
  };
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

/** Names under the line being typed, each in one row; the sign word is the key that takes the first. */
function suggestedRows(sheet: Sheet, { cut, set }: Speller, suggested: readonly string[]): readonly Row[] {
  const sign = "Tab";
  const room = textColumns(sheet) - (hasMargin(sheet) ? 0 : columnsOf(`${sign}: `));
  return suggested.flatMap((name, index) => set(index === 0 ? sign : "", cut(name, room), "quiet"));
}

/** The live part with a question, what is being typed, and names that this may become. */
export function liveRows(
  sheet: Sheet,
  view: View,
  typing: Typing,
  optionsTop: number,
  suggested: readonly string[] = [],
): Live {
  const room = textColumns(sheet);
  const speller = spellerFor(sheet);
  const { spell, cut, set } = speller;

  const promptRoom = Math.max(Math.floor(room / 2), room - leastTyped);
  const prompt = `${cutLabel(speller, view.prompt, promptRoom)}: `;
  const typed = typedWindow(typing, room - columnsOf(prompt));
  // What Enter keeps is not cut down to nothing: where it does not fit beside the prompt it has a row of its own.
  const beside = view.keeps === null ? "" : `  (Enter alone keeps ${spell(view.keeps)})`;
  const isBeside = columnsOf(beside) < room - columnsOf(prompt);
  const keeps =
    view.keeps === null || isBeside ? [] : set("", `Enter alone keeps ${view.keeps}`, "quiet").slice(0, 2);

  const position = set("", view.position, "quiet");
  const ask = set("", view.ask, "strong");
  const hint = set("", view.hint, "quiet");
  const options = view.options.flatMap(({ number, label }) =>
    set(String(number), cutLabel(speller, label, room), "plain"),
  );
  // What stands in the line already needs no suggesting.
  const isTyped = suggested[0] === (typing.before + typing.after).trim();
  const names = suggestedRows(sheet, speller, isTyped ? [] : suggested);
  const footer = set("", view.commands, "quiet");
  const parts: Parts = {
    gap: 1,
    position: position.length,
    ask: ask.length,
    hint: hint.length,
    options: options.length,
    keeps: keeps.length,
    footer: footer.length,
  };
  // Ink ends the live part with one empty row of its own.
  const most = Math.max(2, sheet.rows - 4);
  const fit = fittingParts(parts, most);
  const list = optionRows(speller, options, { rows: fit.options, top: optionsTop, columns: room });

  const above = [
    ...(fit.gap > 0 ? [ruleRow(sheet)] : []),
    ...position.slice(0, fit.position),
    ...ask.slice(0, fit.ask),
    ...hint.slice(0, fit.hint),
    ...list.rows,
    ...keeps.slice(0, fit.keeps),
  ];
  const margin = hasMargin(sheet) ? marginPieces(sheet, "Answer") : [];
  const inputRow: Row = [
    ...margin,
    { text: prompt, tone: "plain" },
    typed.text === "" && isBeside ? { text: beside, tone: "quiet" } : { text: typed.text, tone: "strong" },
  ];
  const commands =
    fit.footer === footer.length ? footer : set("", cut(view.commands, room), "quiet").slice(0, fit.footer);
  const x = (hasMargin(sheet) ? marginColumns + 3 : 0) + columnsOf(prompt) + typed.cursorColumn;
  // Names take only what all else leaves.
  const free = most - above.length - 1 - commands.length;
  return {
    rows: [...above, inputRow, ...names.slice(0, Math.max(0, free)), ...commands],
    cursor: { x, y: above.length },
    optionsTop: list.top,
  };
}
