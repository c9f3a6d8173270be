export { asciiText } from "./ascii.ts";
export { type Lines, openLines } from "./lines.ts";
export { type PlainRun, runPlain } from "./run-plain.ts";
export { type SaidLine, saidInWords, saidToLines, type Tone } from "./said.ts";
export { type Dialogue, type LeaveCode, type Turn, turn } from "./turn.ts";
export { columnsOf, cutText, graphemesOf, wrapText } from "./wrap.ts";
