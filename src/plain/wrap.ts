import stringWidth from "string-width";
import { graphemesOf, wrapped } from "../report/index.ts";

export { graphemesOf };

/** Columns that a text takes on a terminal: two for a wide sign, none for a combining one. */
export function columnsOf(text: string): number {
  return stringWidth(text);
}

/** The longest beginning of a text that fits, ending with `mark` where something had to go. */
export function cutText(text: string, columns: number, mark = "…"): string {
  if (columnsOf(text) <= columns) return text;
  const room = columns - columnsOf(mark);
  if (room < 0) return "";
  let kept = "";
  let width = 0;
  for (const sign of graphemesOf(text)) {
    width += columnsOf(sign);
    if (width > room) break;
    kept += sign;
  }
  return kept + mark;
}

/** A text in lines no wider than `columns` of a terminal. */
export function wrapText(text: string, columns: number): readonly string[] {
  return wrapped(text, columns, columnsOf);
}
