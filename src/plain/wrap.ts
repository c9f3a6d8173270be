import stringWidth from "string-width";

const graphemes = new Intl.Segmenter(undefined, { granularity: "grapheme" });

/** The text cut into what a person sees as single signs. */
export function graphemesOf(text: string): readonly string[] {
  return Array.from(graphemes.segment(text), (part) => part.segment);
}

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

/** A text in lines no wider than `columns`, broken between words, and inside a word only where it alone is too wide. */
export function wrapText(text: string, columns: number): readonly string[] {
  const room = Math.max(1, columns);
  const lines: string[] = [];
  for (const paragraph of text.split("\n")) {
    let line = "";
    let width = 0;
    for (const word of paragraph.split(" ")) {
      const wordWidth = columnsOf(word);
      if (line !== "" && width + 1 + wordWidth <= room) {
        line += ` ${word}`;
        width += 1 + wordWidth;
        continue;
      }
      if (line !== "") lines.push(line);
      line = "";
      width = 0;
      for (const sign of wordWidth <= room ? [word] : graphemesOf(word)) {
        const signWidth = columnsOf(sign);
        if (line !== "" && width + signWidth > room) {
          lines.push(line);
          line = "";
          width = 0;
        }
        line += sign;
        width += signWidth;
      }
    }
    lines.push(line);
  }
  return lines;
}
