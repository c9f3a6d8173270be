/**
 * The command line. Reads argv, environment and terminal, once; everything below is handed what it needs. Commands,
 * faces and data are loaded only when they are used.
 */
import { foldersFrom, openBriefs, openSettings } from "../store/index.ts";
import { type CommandName, readCommandLine } from "./command-line.ts";
import { type Context, exitCodes, type Lifeline } from "./context.ts";
import { surroundingsFrom } from "./surroundings.ts";

const commands: Readonly<
  Record<CommandName, () => Promise<{ run(context: Context): Promise<number> | number }>>
> = {
  interview: () => import("./interview.ts"),
  new: () => import("./new.ts"),
  resume: () => import("./resume.ts"),
  list: () => import("./list.ts"),
  show: () => import("./show.ts"),
  remove: () => import("./remove.ts"),
  size: () => import("./size.ts"),
  checklist: () => import("./checklist.ts"),
  outlook: () => import("./outlook.ts"),
  schema: () => import("./schema.ts"),
  about: () => import("./about.ts"),
  help: () => import("./help.ts"),
  version: () => import("./version.ts"),
};

const lifeline: Lifeline = { save: null, comeBack: "" };
const interrupt = new AbortController();
const isDebugging = (process.env.MASTWRIGHT_DEBUG ?? "") !== "";

function goDown(error: unknown): never {
  let isSaved = lifeline.save !== null;
  try {
    lifeline.save?.();
  } catch {
    isSaved = false;
  }
  if (process.stdout.isTTY) process.stdout.write("\x1b[?2004l\x1b[?25h");
  if (process.stdin.isTTY) process.stdin.setRawMode(false);
  const saved = isSaved ? ` Your answers are saved. Come back with: ${lifeline.comeBack}` : "";
  process.stderr.write(`\nSomething went wrong on our side.${saved}\n`);
  if (isDebugging) process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
  process.exit(exitCodes.ourBug);
}

/** Saves and goes, as one does who is told to. */
function onTerminated(code: number): () => void {
  return () => {
    try {
      lifeline.save?.();
    } finally {
      process.exit(code);
    }
  };
}

async function main(): Promise<void> {
  const line = readCommandLine(process.argv.slice(2));
  if (line.kind === "wrong") {
    const page = line.command === null ? "help" : `help ${line.command}`;
    process.stderr.write(`${line.says}\nSee: mastwright ${page}\n`);
    process.exitCode = exitCodes.unusable;
    return;
  }
  const folders = foldersFrom(process.env);
  const context: Context = {
    args: line.args,
    options: line.options,
    surroundings: surroundingsFrom({
      env: process.env,
      options: line.options,
      platform: process.platform,
      isInputTerminal: process.stdin.isTTY === true,
      isOutputTerminal: process.stdout.isTTY === true,
      columns: process.stdout.columns,
      systemLocale: Intl.DateTimeFormat().resolvedOptions().locale,
    }),
    briefs: openBriefs(folders.data),
    settings: openSettings(folders.settings),
    lifeline,
    interrupted: interrupt.signal,
    out: (text) => void process.stdout.write(text),
    talk: (text) => void process.stderr.write(text),
    nowUtc: () => new Date().toISOString(),
  };
  const { run } = await commands[line.name]();
  process.exitCode = await run(context);
}

process.on("uncaughtException", goDown);
process.on("SIGTERM", onTerminated(exitCodes.terminated));
process.on("SIGHUP", onTerminated(129));
process.on("SIGINT", () => {
  // Whoever holds a brief leaves in its own way; anything else stops at once.
  if (lifeline.save === null || interrupt.signal.aborted) process.exit(exitCodes.interrupted);
  interrupt.abort();
});
for (const stream of [process.stdout, process.stderr]) {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    // The reader has gone, as in `mastwright show hill-gate | head`.
    if (error.code === "EPIPE") process.exit(process.exitCode ?? exitCodes.done);
    throw error;
  });
}
main().catch(goDown);
