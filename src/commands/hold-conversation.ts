import {
  asciiText,
  type Dialogue,
  type LeaveCode,
  type Lines,
  openLines,
  runPlain,
  wrapText,
} from "../plain/index.ts";
import type { BriefFile } from "../store/index.ts";
import { comeBackLine } from "./comeback.ts";
import { type Context, exitCodes } from "./context.ts";
import { freshBrief, idOfName, nameRefusal } from "./fresh-brief.ts";
import { lastPlace } from "./last-place.ts";
import { openProgram } from "./open-program.ts";
import type { Program, Said, State } from "./program.ts";
import { savedNames } from "./saved-names.ts";
import { prepareDrawing } from "./surroundings.ts";
import type { Decided } from "./which-brief.ts";
import { writeLists } from "./write-lists.ts";

type Begun =
  | {
      readonly kind: "begun";
      readonly id: string;
      readonly file: BriefFile;
      readonly says: readonly string[];
    }
  | { readonly kind: "unusable"; readonly says: string };

function resumed(context: Context, name: string): Begun {
  const { briefs } = context;
  const id = idOfName(name);
  const loaded = id === null ? { kind: "missing" as const } : briefs.load(id);
  switch (loaded.kind) {
    case "brief":
      return { kind: "begun", id: id!, file: loaded.file, says: [] };
    case "missing":
      return { kind: "unusable", says: `There is no saved brief called ${name}. ${savedNames(briefs)}` };
    case "newer":
      return {
        kind: "unusable",
        says: `${name} was saved by a later Mastwright (its version ${loaded.version}). Open it with that one.`,
      };
    case "damaged": {
      const kept = loaded.keptAs === null ? "It was left where it is." : `It was kept as ${loaded.keptAs}.`;
      return { kind: "unusable", says: `${name} could not be read: ${loaded.says}. ${kept}` };
    }
  }
}

function begun(context: Context, decided: Decided, program: Program): Begun {
  if (decided.kind === "resume") return resumed(context, decided.id);
  const refusal = nameRefusal(context.briefs, decided.name);
  if (refusal !== null) return { kind: "unusable", says: refusal };
  const file = freshBrief({
    name: decided.name,
    currency: decided.currency,
    units: decided.units,
    startedUtc: context.nowUtc(),
    topicVersions: program.topicVersions,
  });
  return { kind: "begun", id: idOfName(decided.name)!, file, says: [] };
}

/** Holds one brief's conversation from its first line to its last; returns the exit code. */
export async function holdConversation(
  context: Context,
  decided: Decided,
  linesSoFar: Lines | null,
): Promise<number> {
  const { briefs, surroundings, lifeline } = context;
  const exceptId = idOfName(decided.kind === "resume" ? decided.id : decided.name);
  const program = openProgram({ lastPlace: () => lastPlace(briefs, { exceptId }) });
  const start = begun(context, decided, program);
  if (start.kind === "unusable") {
    context.talk(`${start.says}\n`);
    return exitCodes.unusable;
  }
  const { id, file } = start;
  const lock = briefs.lock(id);
  if (lock.kind === "taken") {
    const where = lock.byPid === null ? "" : ` (process ${lock.byPid})`;
    context.talk(`${id} is open in another window${where}. Close it there first.\n`);
    return exitCodes.unusable;
  }

  const { state, refused, untouched } = program.open(file);
  let latest = state;
  let isInMemory = false;
  const save = (): readonly Said[] => {
    const trouble = briefs.save(id, {
      ...file,
      savedUtc: context.nowUtc(),
      topicVersions: { ...program.topicVersions },
      answers: { ...untouched, ...latest.answers },
    });
    isInMemory = trouble !== null;
    return trouble ? [{ kind: "aside", title: "Not saved", lines: [trouble] }] : [];
  };
  const dialogue: Dialogue = {
    update: (from, event) => program.update(from, event),
    view: (of) => program.view(of),
    carryOut: (effect, now) => {
      latest = now;
      if (effect.type === "save") return save();
      if (effect.type === "lists") return [writeLists(program, latest, id)];
      return [];
    },
  };

  const comeBack = comeBackLine(id, {
    isFromNpm: surroundings.isFromNpm,
    isPlain: context.options.plain === true,
  });
  lifeline.save = () => void save();
  lifeline.comeBack = comeBack;
  try {
    // Who begins has just been told that everything is saved.
    const isSaved = decided.kind === "new" ? "" : "Saved as you go. ";
    const greeting = [`Mastwright: ${file.name}.`, `${isSaved}Come back with: ${comeBack}`]
      .flatMap((line) => (surroundings.isTerminal ? wrapText(line, surroundings.columns - 1) : [line]))
      .map((line) => `${line}\n`)
      .join("");
    context.out(surroundings.isAscii ? asciiText(greeting) : greeting);
    for (const { id: question, says } of refused) context.talk(`Not understood: ${question}: ${says}\n`);
    const code = await conversed(context, dialogue, state, program, linesSoFar);
    // Only now: an error on the way here still finds the lifeline.
    lifeline.save = null;
    if (!isInMemory) context.out(`Saved. Come back with: ${comeBack}\n`);
    return code;
  } finally {
    if (lock.kind === "held") lock.release();
  }
}

async function conversed(
  context: Context,
  dialogue: Dialogue,
  state: State,
  program: Program,
  linesSoFar: Lines | null,
): Promise<LeaveCode> {
  const { surroundings, interrupted } = context;
  if (surroundings.face === "chat") {
    prepareDrawing(process.env, surroundings.isColourless);
    // From here on keys belong to the conversation: what is typed while the screen is loaded must not be echoed.
    process.stdin.setRawMode(true);
    const { runChat } = await import("../screen/index.ts");
    const { code } = await runChat({
      dialogue,
      state,
      stdin: process.stdin,
      stdout: process.stdout,
      isAscii: surroundings.isAscii,
      drawPost: (of, columns) => program.drawPost(of, { columns, isAscii: surroundings.isAscii }),
      suggestedPlaces: (text, atMost) => program.suggestedPlaces(text, atMost),
      interrupted,
    });
    return code;
  }
  const lines = linesSoFar ?? openLines(process.stdin);
  try {
    const { code } = await runPlain({
      dialogue,
      state,
      lines,
      output: process.stdout,
      isEchoing: !surroundings.isTerminal,
      isAscii: surroundings.isAscii,
      columns: surroundings.isTerminal ? surroundings.columns - 1 : null,
      interrupted,
    });
    return code;
  } finally {
    lines.close();
  }
}
