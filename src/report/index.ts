/** A design as text in several formats. Returns text, writes nothing. */
export { chartsOf } from "./charts.ts";
export { partsCsv } from "./csv.ts";
export { type AnswerRow, designDocument } from "./design-document.ts";
export { designJson } from "./design-json.ts";
export type { Block, Document } from "./document.ts";
export { html } from "./html.ts";
export { markdown } from "./markdown.ts";
export { outlookWords } from "./outlook-lines.ts";
export { plainText } from "./plain-text.ts";
export { postLines } from "./post-drawing.ts";
export { type ColumnsOf, graphemesOf, wrapped } from "./wrap.ts";
