/** Plays a brief's typed answers to the plain face of the real program, and keeps every line of the conversation. */
import { readFileSync } from "node:fs";
import { Writable } from "node:stream";
import { fileURLToPath } from "node:url";
import { openProgram } from "../../src/commands/open-program.ts";
import { begin, type State } from "../../src/interview/index.ts";
import { type Dialogue, runPlain, wrapText } from "../../src/plain/index.ts";
import { type BriefFile, readBriefText } from "../../src/store/index.ts";

export const demoPath = (demo: string, file: string): string =>
  fileURLToPath(new URL(`../../transcripts-demo/${demo}/${file}`, import.meta.url));

export function demoBrief(demo: string): BriefFile {
  const reading = readBriefText(readFileSync(demoPath(demo, "brief.json"), "utf8"));
  if (reading.kind !== "brief") throw new Error(`${demo}: ${JSON.stringify(reading)}`);
  return reading.file;
}

/** Lines are broken here, so that the file can be read anywhere. */
const columns = 100;

/**
 * @returns the whole conversation, and the state it ended in
 */
export async function recorded(file: BriefFile): Promise<{ readonly text: string; readonly state: State }> {
  const program = openProgram();
  let state = begin({ name: file.name, currency: file.currency });
  const dialogue: Dialogue = {
    update: (before, event) => {
      const [after, effects] = program.update(before, event);
      state = after;
      return [after, effects];
    },
    view: program.view,
    carryOut: () => [],
  };
  const written: string[] = [];
  const output = new Writable({
    write: (chunk, _encoding, done) => {
      written.push(String(chunk));
      done();
    },
  });
  const asked = new Set<string>();
  const lines = {
    next: async () => {
      const id = state.cursor;
      if (id === null) {
        const isLast = asked.has("more");
        asked.add("more");
        return isLast ? "save" : "more";
      }
      if (state.mode.kind === "confirming") return "yes";
      // An answer that is not taken would be given for ever.
      if (asked.has(id)) throw new Error(`${file.name}: ${id} was asked twice`);
      asked.add(id);
      const answer = file.answers[id];
      if (answer === undefined) throw new Error(`${file.name}: no answer to ${id}`);
      return typeof answer === "string" ? answer : answer.typed;
    },
    close: () => {},
  };
  const interrupted = new AbortController().signal;
  await runPlain({
    dialogue,
    state,
    lines,
    output,
    isEchoing: true,
    isAscii: false,
    columns: null,
    interrupted,
  });
  const text = written
    .join("")
    .split("\n")
    .flatMap((line) => (line === "" ? [""] : wrapText(line, columns)))
    .map((line) => line.trimEnd())
    .join("\n");
  return { text, state };
}
