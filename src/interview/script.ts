/**
 * The third face: answers from a file, looked up by question id and sent through the same update as typed lines are.
 * Nothing is asked twice: what the file lacks is listed and its stand-in counts, as for a question not yet answered.
 */

import type { Answer, Interview, State, Units, Walked } from "./conversation.ts";
import { nearestOf } from "./nearest.ts";
import { readCommand } from "./read/index.ts";
import { begin, update, walkNow } from "./session.ts";
import { instanceId } from "./walk.ts";

export interface ScriptRun {
  readonly state: State;
  /** Ids in the order in which the questions came up, missing and refused ones too. */
  readonly asked: readonly string[];
  /** Questions that the file does not answer. */
  readonly missing: readonly { readonly id: string; readonly ask: string }[];
  /** Entries that were not taken, each with a sentence. */
  readonly refused: readonly { readonly id: string; readonly text: string }[];
  /** Entries for questions that the other answers do not call for. */
  readonly unused: readonly string[];
}

/**
 * Answers every question that a file of answers can answer.
 *
 * @param typedById what would be typed, or an answer as it was kept, by full question id
 */
export function runScript<D>(
  interview: Interview<D>,
  about: { readonly name: string; readonly currency: string; readonly units?: Units },
  typedById: Readonly<Record<string, string | Answer>>,
): ScriptRun {
  // Nobody listens: what each answer means need not be worked out after each.
  const quiet: Interview<null> = {
    ...interview,
    tellings: [],
    designOf: () => null,
    findingsOf: () => [],
    optionNotes: () => ({}),
    charts: () => [],
    details: () => [],
    outlook: () => ({ lines: [], chart: null }),
  };
  const asked: string[] = [];
  const refusals = new Map<string, string>();
  const bringsSun = hasOwnSun(quiet, typedById);
  let state = begin(about);
  for (;;) {
    const next = walkNow(quiet, state).find((each) => each.answer === null && !asked.includes(each.id));
    if (next === undefined) break;
    asked.push(next.id);
    const given = entryOf(typedById, next.id);
    if (given === null) continue;
    const at: State = { ...state, cursor: next.id, returnTo: null, mode: { kind: "asking" } };
    const sent = answerBy(quiet, at, next, { entry: given, bringsSun });
    if (sent.refusal === null) state = sent.state;
    else refusals.set(next.id, sent.refusal);
  }
  // The run ends where a conversation over the same answers would stand.
  state = update(quiet, { ...state, cursor: null }, { type: "start" })[0];

  const walked = walkNow(quiet, state);
  const called = new Set(walked.map((each) => each.id));
  const known = new Set(knownIds(interview));
  const unknown = Object.keys(typedById).filter((id) => !known.has(id));
  return {
    state,
    asked,
    missing: walked
      .filter((each) => each.answer === null && !refusals.has(each.id))
      .map((each) => ({ id: each.id, ask: each.question.ask })),
    refused: [
      ...[...refusals].map(([id, text]) => ({ id, text })),
      ...unknown.map((id) => ({ id, text: unknownText(id, [...known]) })),
    ],
    unused: Object.keys(typedById).filter((id) => known.has(id) && !called.has(id)),
  };
}

/** null where the file has nothing, or an empty line, for a question. */
function entryOf(typedById: Readonly<Record<string, string | Answer>>, id: string): string | Answer | null {
  const entry = Object.hasOwn(typedById, id) ? typedById[id]! : null;
  return typeof entry === "string" && entry.trim() === "" ? null : entry;
}

type Sent =
  | { readonly refusal: null; readonly state: State }
  | { readonly refusal: string; readonly state: null };

/** One entry sent as the answer to the question at the cursor. */
function answerBy(
  quiet: Interview<null>,
  state: State,
  question: Walked,
  given: { readonly entry: string | Answer; readonly bringsSun: boolean },
): Sent {
  const { id } = question;
  const { entry } = given;
  if (typeof entry !== "string") {
    const [after] = update(quiet, state, { type: "record", answer: entry });
    if (Object.hasOwn(after.answers, id)) return { refusal: null, state: after };
    return { refusal: "This answer does not fit its question. Write it as it would be typed.", state: null };
  }
  const text = asAnswer(entry, question);
  const isCommand: Sent = {
    refusal: `"${entry.trim()}" is a command, not an answer. Put it in quotation marks to answer with it.`,
    state: null,
  };
  if (text === null) return isCommand;
  let [after, effects] = update(quiet, state, { type: "line", text });
  // Whoever writes a file has had the time to look: an unusual figure is meant. A place without sun is so only with figures.
  if (after.mode.kind === "confirming" && question.question.kind === "place" && !given.bringsSun)
    return { refusal: `${after.mode.says} A file that keeps it must bring sun figures too.`, state: null };
  if (after.mode.kind === "confirming")
    [after, effects] = update(quiet, after, { type: "line", text: "yes" });
  if (after.mode.kind === "choosingPlace") return { refusal: placesText(after.mode), state: null };
  if (Object.hasOwn(after.answers, id)) return { refusal: null, state: after };
  const said = effects.map((effect) =>
    effect.type === "say" && effect.said.kind === "refusal" ? effect.said.text : "",
  );
  return said.join("") === "" ? isCommand : { refusal: said.join(""), state: null };
}

/** Whether sun figures of the builder's own are in the file. */
function hasOwnSun(
  { topics, readSun }: Interview<null>,
  typedById: Readonly<Record<string, string | Answer>>,
): boolean {
  const steps = topics.flatMap((topic) => topic.steps);
  return steps.some((step) => {
    const entry = step.step === "ask" && step.question.kind === "sun" ? entryOf(typedById, step.id) : null;
    if (entry === null) return false;
    if (typeof entry !== "string") return entry.value.kind === "sun" && entry.value.figures !== null;
    const reading = readSun(entry, null, false, "metric");
    return reading.kind !== "figures" || reading.figures !== null;
  });
}

/** The line to send: an option's id or words are never taken for a command; null where a command stands alone. */
function asAnswer(text: string, { question }: Walked): string | null {
  const words = text.trim().toLowerCase();
  const isOption =
    question.kind === "choice" &&
    question.options.some((option: { id: string; label: string; aliases?: readonly string[] }) =>
      [option.id, option.label, ...(option.aliases ?? [])].some((name) => name.toLowerCase() === words),
    );
  if (isOption) return `'${text.trim()}'`;
  const command = readCommand(text);
  return command === null || command.command === "unsure" ? text : null;
}

function placesText(mode: Extract<State["mode"], { kind: "choosingPlace" }>): string {
  const shown = mode.matches.slice(0, 5).map(({ label }) => label);
  const more = mode.matches.length > shown.length ? `; and ${mode.matches.length - shown.length} more` : "";
  return `"${mode.typed}" can be ${shown.join("; ")}${more}. Write the one that is meant, or its latitude and longitude.`;
}

/** Every id that a file may use. */
function knownIds<D>(interview: Interview<D>): readonly string[] {
  return interview.topics.flatMap(({ steps }) =>
    steps.flatMap((step) =>
      step.step === "ask"
        ? [step.id]
        : Array.from({ length: step.atMost }, (_, index) =>
            step.block.map((part) => instanceId(step.id, index + 1, part)),
          ).flat(),
    ),
  );
}

function unknownText(id: string, known: readonly string[]): string {
  const nearest = nearestOf(id, known);
  const shown = id.length > 60 ? `${id.slice(0, 57)}...` : id;
  return nearest === null
    ? `There is no question "${shown}".`
    : `There is no question "${shown}". The nearest is "${nearest}".`;
}
