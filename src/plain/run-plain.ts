import type { Writable } from "node:stream";
import type { Event, State, View } from "../interview/index.ts";
import { asciiText } from "./ascii.ts";
import type { Lines } from "./lines.ts";
import { saidToLines } from "./said.ts";
import { type Dialogue, type LeaveCode, turn } from "./turn.ts";
import { wrapText } from "./wrap.ts";

export interface PlainRun {
  readonly dialogue: Dialogue;
  readonly state: State;
  readonly lines: Lines;
  readonly output: Writable;
  /** Whether what is typed has to be written after the prompt: from a pipe nobody else shows it. */
  readonly isEchoing: boolean;
  readonly isAscii: boolean;
  /** Words are kept whole within so many; null: nobody's terminal cuts them. */
  readonly columns: number | null;
  /** Aborted when somebody interrupts. */
  readonly interrupted: AbortSignal;
}

/** The question as lines to be read aloud, without the prompt. */
export function questionLines(view: View): readonly string[] {
  const lines = [view.position === "" ? view.ask : `${view.position}. ${view.ask}`];
  if (view.hint !== "") lines.push(view.hint);
  for (const option of view.options) lines.push(`${option.number}. ${option.label}`);
  if (view.keeps !== null) lines.push(`Enter alone keeps: ${view.keeps}`);
  return lines;
}

/**
 * The conversation line by line: every line is written once and stays, nothing is redrawn, no escape sequence is sent.
 */
export async function runPlain(run: PlainRun): Promise<{ readonly state: State; readonly code: LeaveCode }> {
  const { dialogue, lines, output } = run;
  const write = (text: string): void => {
    output.write(run.isAscii ? asciiText(text) : text);
  };
  const writeLines = (texts: readonly string[]): void => {
    for (const text of texts)
      for (const line of run.columns === null ? [text] : wrapText(text, run.columns)) write(`${line}\n`);
  };

  let state = run.state;
  let asked = "";
  let hasNamedCommands = false;
  let event: Event = { type: "start" };
  for (;;) {
    const { said, left, state: next } = turn(dialogue, state, event);
    state = next;
    for (const saying of said) writeLines(saidToLines(saying, { isLive: true }));
    if (left !== null) return { state, code: left };

    const view = dialogue.view(state);
    const question = questionLines(view);
    const key = question.join("\n");
    if (key !== asked) {
      writeLines(["", ...question]);
      asked = key;
    } else if (said.length > 0 && said.some((saying) => saying.kind !== "refusal")) {
      writeLines(["", view.ask]);
    }
    if (!hasNamedCommands) writeLines([view.commands]);
    hasNamedCommands = true;

    write(`${view.prompt}: `);
    const line = await lines.next(run.interrupted);
    if (run.isEchoing && line !== null) write(line);
    if (run.isEchoing || line === null) write("\n");
    if (run.interrupted.aborted) event = { type: "interrupt" };
    else event = line === null ? { type: "end" } : { type: "line", text: line };
  }
}
