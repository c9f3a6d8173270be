import { MONTH_NAMES } from "../core/units/index.ts";
import type { OutlookSaid } from "../interview/conversation.ts";
import { beginsWithCharge, readOutlook } from "../interview/index.ts";
import { asciiText, columnsOf } from "../plain/index.ts";
import { wrapped } from "../report/index.ts";
import { type Context, exitCodes } from "./context.ts";
import { foundBrief } from "./load-brief.ts";
import { lookAhead, type PostClock, postClock } from "./look-ahead.ts";
import { openProgram } from "./open-program.ts";
import { verdictOn } from "./verdict.ts";

const columnsAtMost = 80;

/**
 * The words after the command as the brief's name and the outlook: this begins at the first word that can be read as a charge,
 * or else at the first that begins with a digit, so that "gate 2 60 %, rain" is about gate 2.
 */
export function briefAndOutlook(words: readonly string[]): {
  readonly brief: string;
  readonly outlook: string;
} {
  const rest = (from: number): string => words.slice(from).join(" ");
  const after = words.map((_, i) => i).slice(1);
  const at =
    after.find((i) => beginsWithCharge(rest(i))) ?? after.find((i) => /^\d/.test(words[i]!)) ?? words.length;
  return { brief: words.slice(0, at).join(" "), outlook: rest(at) };
}

/** A month by its number or the beginning of its name, 0 = January; null for anything else. */
function monthOf(text: string): number | null {
  if (/^\d{1,2}$/.test(text)) return Number(text) >= 1 && Number(text) <= 12 ? Number(text) - 1 : null;
  const begins = text.toLowerCase();
  const month = MONTH_NAMES.findIndex((name) => name.toLowerCase().startsWith(begins));
  return begins.length < 3 || month < 0 ? null : month;
}

const hourOf = (text: string): number | null =>
  /^\d{1,2}$/.test(text) && Number(text) <= 23 ? Number(text) : null;

/** When the loads of a post go off and come back, from its charge and the days to come. */
export function run(context: Context): number {
  const { options, out, talk } = context;
  const refuse = (says: string): number => {
    talk(`${says}\n`);
    return exitCodes.unusable;
  };
  const { brief, outlook } = briefAndOutlook(context.args);
  const month = options.month === undefined ? undefined : monthOf(options.month);
  if (month === null) return refuse(`--month takes 1 to 12 or a name; got "${options.month}".`);
  const hourNow = options.hour === undefined ? undefined : hourOf(options.hour);
  if (hourNow === null) return refuse(`--hour takes 0 to 23; got "${options.hour}".`);
  const heard = readOutlook(outlook);
  if (heard.kind === "refused") return refuse(`${heard.says}\nSee: mastwright help outlook`);
  const found = foundBrief(context, brief);
  if (found.kind === "unusable") return refuse(found.says);

  const program = openProgram();
  const opened = program.open(found.file);
  const design = program.designOf(opened.state);
  const { name } = found.file;
  const verdict = verdictOn(name, opened, design.findings);
  // whoever asks for the coming days wants no list of questions
  const missing = opened.missing.length;
  if (missing > 0)
    talk(
      `${name}: ${missing === 1 ? "one question is" : `${missing} questions are`} not answered yet, and stand-ins are used; mastwright size names them.\n`,
    );
  for (const says of verdictOn(name, { ...opened, missing: [] }, design.findings).says) talk(`${says}\n`);
  const byClock = postClock(design, context.nowUtc());
  const clock: PostClock = { month: month ?? byClock.month, hourNow: hourNow ?? byClock.hourNow };
  const { answer, said } = lookAhead(design, heard, clock);
  if (answer.kind === "withheld") {
    if (options.json) out(`${JSON.stringify({ name, ...answer }, null, 2)}\n`);
    else talk(`${name}: ${answer.because}\n`);
    return verdict.code === exitCodes.done ? exitCodes.unusable : verdict.code;
  }
  if (options.json)
    out(`${JSON.stringify({ name, chemistry: design.battery?.chemistry ?? null, ...answer }, null, 2)}\n`);
  else out(pageOf(context, name, said));
  return verdict.code;
}

function pageOf({ surroundings }: Context, name: string, { lines, chart }: OutlookSaid): string {
  const columns = Math.min(columnsAtMost, surroundings.columns);
  const set = (text: string): readonly string[] => wrapped(text, columns, columnsOf);
  // line by line means that it may be read aloud: a drawing is only noise then
  const isDrawn = surroundings.face !== "plain" && chart?.lines.every((line) => columnsOf(line) <= columns);
  const page = [
    ...set(name),
    "",
    ...lines.flatMap(set),
    ...(chart === null
      ? []
      : ["", ...set(`${chart.title}. ${chart.words}`), ...(isDrawn ? ["", ...chart.lines] : [])]),
  ].join("\n");
  return `${surroundings.isAscii ? asciiText(page) : page}\n`;
}
