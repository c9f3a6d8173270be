import { graphemesOf } from "../plain/index.ts";
import type { Key } from "./keys.ts";

/** The line being typed: what stands before and after the cursor, and the lines typed before it. */
export interface Typing {
  readonly before: string;
  readonly after: string;
  /** Earlier lines, newest last; at most `keptLines`. */
  readonly earlier: readonly string[];
  /** Which earlier line is shown, counted from the newest; 0 is the line being typed. */
  readonly shown: number;
  /** What was being typed when the first earlier line was called up. */
  readonly draft: string;
}

const keptLines = 100;

export const emptyTyping: Typing = { before: "", after: "", earlier: [], shown: 0, draft: "" };

const lineOf = (typing: Typing): string => typing.before + typing.after;

function withoutLast(text: string): string {
  return graphemesOf(text).slice(0, -1).join("");
}
function first(text: string): string {
  return graphemesOf(text)[0] ?? "";
}
/** Length of the blanks and the word that end a text. */
function lastWordLength(text: string): number {
  return /\S*\s*$/.exec(text)![0].length;
}

function recalled(typing: Typing, shown: number): Typing {
  if (shown < 0 || shown > typing.earlier.length) return typing;
  const draft = typing.shown === 0 ? lineOf(typing) : typing.draft;
  const before = shown === 0 ? draft : typing.earlier[typing.earlier.length - shown]!;
  return { ...typing, before, after: "", shown, draft };
}

/** The line after a key that edits it. A key that edits nothing leaves it as it is. */
export function edited(typing: Typing, key: Key): Typing {
  const { before, after } = typing;
  switch (key.name) {
    case "text":
      return { ...typing, before: before + key.text };
    case "tab":
      return { ...typing, before: `${before} ` };
    case "backspace":
      return { ...typing, before: withoutLast(before) };
    case "delete":
      return { ...typing, after: after.slice(first(after).length) };
    case "left": {
      const kept = withoutLast(before);
      return { ...typing, before: kept, after: before.slice(kept.length) + after };
    }
    case "right": {
      const passed = first(after);
      return { ...typing, before: before + passed, after: after.slice(passed.length) };
    }
    case "wordLeft": {
      const kept = before.slice(0, before.length - lastWordLength(before));
      return { ...typing, before: kept, after: before.slice(kept.length) + after };
    }
    case "wordRight": {
      const passed = /^\s*\S*/.exec(after)![0];
      return { ...typing, before: before + passed, after: after.slice(passed.length) };
    }
    case "home":
      return { ...typing, before: "", after: before + after };
    case "end":
      return { ...typing, before: before + after, after: "" };
    case "cutBefore":
      return { ...typing, before: "" };
    case "cutAfter":
      return { ...typing, after: "" };
    case "cutWord":
      return { ...typing, before: before.slice(0, before.length - lastWordLength(before)) };
    case "escape":
      return { ...typing, before: "", after: "", shown: 0 };
    case "up":
      return recalled(typing, typing.shown + 1);
    case "down":
      return recalled(typing, typing.shown - 1);
    default:
      return typing;
  }
}

/** The line with a suggestion in its place. */
export function completed(typing: Typing, suggestion: string): Typing {
  return { ...typing, before: suggestion, after: "" };
}

/** The line handed in, and the empty one that follows it. */
export function submitted(typing: Typing): readonly [string, Typing] {
  const line = lineOf(typing);
  const isWorthKeeping = line.trim() !== "" && line !== typing.earlier.at(-1);
  const earlier = isWorthKeeping ? [...typing.earlier, line].slice(-keptLines) : typing.earlier;
  return [line, { ...emptyTyping, earlier }];
}
