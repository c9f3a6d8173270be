import { asciiText } from "../plain/index.ts";
import { type Context, exitCodes } from "./context.ts";
import { foundBrief } from "./load-brief.ts";
import { openProgram } from "./open-program.ts";
import { type SheetFormat, sheetFormats } from "./program.ts";
import { verdictOn } from "./verdict.ts";

/** Longer lines are hard to read, and shorter ones hold nothing. */
const columnsAtMost = 80;
const columnsAtLeast = 20;

const isFormat = (text: string): text is SheetFormat => (sheetFormats as readonly string[]).includes(text);

/** Prints one brief's design with its lists in the format asked for. */
export function printSheet(context: Context, usual: SheetFormat): number {
  const { options, surroundings, out, talk } = context;
  const format = options.to ?? usual;
  if (!isFormat(format)) {
    talk(`--to takes ${sheetFormats.join(", ")}; got "${format}".\n`);
    return exitCodes.unusable;
  }
  const found = foundBrief(context, context.args[0]!);
  if (found.kind === "unusable") {
    talk(`${found.says}\n`);
    return exitCodes.unusable;
  }
  const program = openProgram();
  const opened = program.open(found.file);
  const verdict = verdictOn(found.file.name, opened, program.designOf(opened.state).findings);
  for (const says of verdict.says) talk(`${says}\n`);
  const sheet = program.sheet(opened.state, format, {
    columns: Math.max(columnsAtLeast, Math.min(columnsAtMost, surroundings.columns)),
    isSpoken: surroundings.isPlainAsked,
  });
  out(format === "text" && surroundings.isAscii ? asciiText(sheet) : sheet);
  return verdict.code;
}
