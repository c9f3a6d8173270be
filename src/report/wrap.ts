const graphemes = new Intl.Segmenter(undefined, { granularity: "grapheme" });

/** The text cut into what a person sees as single signs. */
export function graphemesOf(text: string): readonly string[] {
  return Array.from(graphemes.segment(text), (part) => part.segment);
}

/** How many columns a text takes. A page of signs that are all as wide counts them; a terminal knows wide ones. */
export type ColumnsOf = (text: string) => number;

/** One sign, one column. Plain ASCII, which is nearly all of it, is counted without the slow segmenter. */
export const signsOf: ColumnsOf = (text) =>
  /^[\x20-\x7e]*$/.test(text) ? text.length : graphemesOf(text).length;

/**
 * A text in lines no wider than `columns`, broken between words, and inside a word only where it alone is too wide.
 *
 * @param columns  1 or more
 */
export function wrapped(text: string, columns: number, columnsOf: ColumnsOf): readonly string[] {
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
