/** What is shown now, waiting for one line. Worked from the state alone; the faces draw it and decide nothing. */

import type { Interview, State, View, Walked } from "./conversation.ts";
import { keptText } from "./shown.ts";
import { designNow, stopsNow } from "./state.ts";
import { nowOf } from "./turn.ts";
import { labelOf } from "./walk.ts";
import { always, alwaysAtTheEnd, confirmHintFor, endAsk, endHint } from "./words.ts";

/** What is shown in this state. */
export function view<D>(interview: Interview<D>, state: State): View {
  const { walked, cursor, state: current } = nowOf(interview, state);
  if (cursor === null) return endView(stopsNow(interview, current).length);
  const { mode } = current;
  const now = { isFinished: false, position: positionOf(walked, cursor) };
  switch (mode.kind) {
    case "confirming":
      return {
        ...now,
        ask: mode.says,
        hint: confirmHintFor(cursor.question),
        options: [],
        prompt: "Yes or no",
        keeps: null,
        suggests: null,
        commands: always,
      };
    case "consenting":
      return {
        ...now,
        ask: mode.says,
        hint: "Yes sends it; no goes back to the question.",
        options: [],
        prompt: "Yes or no",
        keeps: null,
        suggests: null,
        commands: always,
      };
    case "choosingPlace":
      return {
        ...now,
        ask: `Which of these is meant by "${mode.typed}"?`,
        hint: "Type its number, or another place.",
        options: mode.matches.map(({ label }, index) => ({ number: index + 1, label })),
        prompt: `${labelOf(cursor)}, number`,
        keeps: null,
        suggests: "places",
        commands: always,
      };
    case "asking":
      return {
        ...now,
        ask: cursor.question.ask,
        hint: [cursor.question.hint, meaningOf(interview, current, cursor)].join(" ").trim(),
        options: optionsOf(cursor),
        prompt: promptOf(cursor),
        keeps: keptText(cursor),
        suggests: cursor.question.kind === "place" ? "places" : null,
        commands: always,
      };
  }
}

const endView = (stops: number): View => ({
  isFinished: true,
  position: "",
  ask: endAsk(stops),
  hint: endHint,
  options: [],
  prompt: "Next",
  keeps: null,
  suggests: null,
  commands: alwaysAtTheEnd,
});

/** "Power, question 3 of about 9": about, where an answer in the topic may still add or drop a question. */
function positionOf(walked: readonly Walked[], cursor: Walked): string {
  const own = walked.filter((each) => each.topic.id === cursor.topic.id);
  const canChange = cursor.topic.steps.some(
    (step) => step.step === "repeat" || step.rules.when !== undefined,
  );
  const number = own.findIndex((each) => each.id === cursor.id) + 1;
  return `${cursor.topic.title}, question ${number} of ${canChange ? "about " : ""}${own.length}`;
}

function optionsOf({ question }: Walked): View["options"] {
  if (question.kind !== "choice") return [];
  return question.options.map(({ label }: { label: string }, index: number) => ({
    number: index + 1,
    label,
  }));
}

/** "Here 1 is 200 W with 150 Ah, 2 and 3 are 300 W with 200 Ah.": what the options come to; empty for most questions. */
function meaningOf<D>(interview: Interview<D>, state: State, { id, question }: Walked): string {
  if (question.kind !== "choice") return "";
  const notes = interview.optionNotes(id, () => designNow(interview, state));
  const numbersByNote = new Map<string, number[]>();
  question.options.forEach((option: { id: string }, index: number) => {
    const note = notes[option.id];
    if (note !== undefined) numbersByNote.set(note, [...(numbersByNote.get(note) ?? []), index + 1]);
  });
  const said = [...numbersByNote].map(
    ([note, numbers]) => `${inWords(numbers)} ${numbers.length > 1 ? "are" : "is"} ${note}`,
  );
  return said.length === 0 ? "" : `Here ${said.join(", ")}.`;
}

const inWords = (numbers: readonly number[]): string =>
  numbers.length === 1 ? `${numbers[0]}` : `${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`;

/** "Distance (m or ft)", "Dirt". */
function promptOf(walked: Walked): string {
  const { question } = walked;
  if (question.kind !== "quantity" || question.unit === "") return labelOf(walked);
  const units = question.alsoUnit === undefined ? question.unit : `${question.unit} or ${question.alsoUnit}`;
  return `${labelOf(walked)} (${units})`;
}
