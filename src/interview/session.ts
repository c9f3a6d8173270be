/**
 * The conversation: update(interview, state, event) -> [state, effects]. The one brain of all faces.
 *
 * Invariants
 *  1. Answers change only in accept.ts, one question's at a time; a save effect follows each time.
 *  2. After an event the cursor is a question of the walk; it is null only when every question has an answer.
 *  3. The mode is "confirming" only at a quantity, a horizon or a place, "consenting" only at sun figures,
 *     "choosingPlace" only at a place; every move of the cursor makes it "asking" again.
 *  4. A line that is refused, or that only asks something, changes nothing at all.
 *  5. `returnTo` is null, "finished", or a question other than the one at the cursor.
 *  6. `past` holds at most fifty sets of answers, each one answer away from its successor.
 *  7. `opened` and `closed` grow; only undo takes a topic out of `closed`.
 *  8. No line, however odd, throws; there is no clock and no chance in here.
 *
 * Transitions, and the function that makes each
 *   start                                 -> asking, at the first unanswered question     started (course.ts)
 *   asking        --answer-->                asking, at the next question                 taken (accept.ts), moved
 *   asking        --not sure-->              asking, at the next question                 unsure (accept.ts), moved
 *   asking        --Enter, answer kept-->    asking, at the next question                 kept (accept.ts), moved
 *   asking        --unusual answer-->        confirming                                   answered
 *   asking        --place of many names-->   choosingPlace                                answered
 *   confirming    --yes, another answer-->   asking, at the next question                 confirmed
 *   confirming    --no-->                    asking, same question                        confirmed
 *   asking        --needs consent-->         consenting                                   answered
 *   consenting    --yes-->                   asking, at the next question                 consented
 *   consenting    --no-->                    asking, same question                        consented
 *   choosingPlace --number, new place-->     asking, at the next question                 placeChosen
 *   asking        --back-->                  asking, one question back                    back (course.ts)
 *   the others    --back-->                  asking, same question                        back (course.ts)
 *   any           --change N-->              asking, at N; its answer leads back          change (course.ts)
 *   any           --undo-->                  asking, the last answer taken back           undone (accept.ts)
 *   any           --why how more help review lists outlook, a refused line-->  the same   commanded, refuse
 *   any           --save, end, interrupt-->  the same, saved and left                     left
 */

import { readCoordinates } from "../core/place/index.ts";
import { kept, recorded, taken, undone, unsure } from "./accept.ts";
import { type Readers, readAnswer, wayTo } from "./answer.ts";
import { designLines } from "./consequence.ts";
import type { Effect, Event, Interview, Line, Mode, State, Walked } from "./conversation.ts";
import { back, change, started } from "./course.ts";
import { type Command, forcedText, isForLists, readChoice, readCommand, readOutlook } from "./read/index.ts";
import { reviewRows } from "./shown.ts";
import { targetOf } from "./target.ts";
import { asking, type Now, nowOf, refuse, type Step, save, say } from "./turn.ts";
import { isSame } from "./value.ts";
import { firstUnanswered } from "./walk.ts";
import { confirmHintFor, endHint, helpLines, outlookLines } from "./words.ts";

export { begin, designNow, walkNow } from "./state.ts";
export { view } from "./view.ts";

/** What an event makes of the state, and what is to be done about it, in order. */
export function update<D>(interview: Interview<D>, state: State, event: Event): Step {
  const now = nowOf(interview, state);
  switch (event.type) {
    case "start":
      return started(now);
    case "line":
      return line(now, event.text);
    case "record":
      return recorded(now, event.answer);
    case "end":
      return left(now, firstUnanswered(now.walked) === null ? 0 : 3);
    case "interrupt":
      return left(now, 130);
  }
}

function left<D>(now: Now<D>, code: 0 | 3 | 130): Step {
  return [now.state, [save, { type: "leave", code }]];
}

function line<D>(now: Now<D>, text: string): Step {
  const { cursor, state } = now;
  if (isForLists(text)) return [state, [{ type: "lists" }]];
  const command = isNamedOption(text, now) ? null : readCommand(text);
  if (command !== null) return commanded(now, command);
  if (cursor === null) return refuse(now, endHint);
  switch (state.mode.kind) {
    case "asking":
      return answered(now, cursor, text);
    case "confirming":
      return confirmed(now, cursor, state.mode, text);
    case "consenting":
      return consented(now, cursor, state.mode, text);
    case "choosingPlace":
      return placeChosen(now, cursor, state.mode, text);
  }
}

/** An option's own words are an answer, even where they are also a command ("It may pause" against "pause"). */
function isNamedOption<D>(text: string, { cursor, state }: Now<D>): boolean {
  if (cursor?.question.kind !== "choice" || state.mode.kind !== "asking") return false;
  const words = text.trim().toLowerCase();
  return cursor.question.options.some((option: { label: string; aliases?: readonly string[] }) =>
    [option.label, ...(option.aliases ?? [])].some((name) => name.toLowerCase() === words),
  );
}

function commanded<D>(now: Now<D>, command: Command): Step {
  const { state, walked, cursor } = now;
  const told = (title: string, lines: readonly string[]): Step => [
    state,
    [say({ kind: "aside", title, lines })],
  ];
  switch (command.command) {
    case "why":
      return cursor === null ? refuse(now, endHint) : told("Why we ask", [cursor.question.why]);
    case "how":
      return cursor === null ? refuse(now, endHint) : told("How to find out", [cursor.question.how]);
    case "help":
      return told("What you can type", helpLines(cursor?.question ?? null, now.state.units));
    case "more":
      return [state, more(now)];
    case "review":
      return [state, [say({ kind: "review", rows: reviewRows(walked) })]];
    case "unsure":
      return cursor === null ? refuse(now, endHint) : unsure(now, cursor);
    case "save":
      return left(now, 0);
    case "back":
      return back(now);
    case "undo":
      return undone(now);
    case "outlook":
      return lookedAhead(now, command.asks);
    case "change": {
      const target = targetOf(command.target, walked);
      return "says" in target ? refuse(now, target.says) : change(now, target.id);
    }
  }
}

/** The design so far, what its topic has to add, and its charts whether or not they have been seen. */
function more<D>({ interview, cursor, design }: Now<D>): readonly Effect[] {
  const topicId = cursor?.topic.id ?? null;
  const soFar = { title: "The design so far", lines: designLines(interview, design()) };
  return [
    ...[soFar, ...interview.details(topicId, design())].map((told) => say({ kind: "aside", ...told })),
    ...interview.charts(topicId, design()).map((chart) => say({ kind: "chart", chart })),
  ];
}

function lookedAhead<D>(now: Now<D>, asks: string): Step {
  const { interview, state } = now;
  const aside = (lines: readonly string[]) => say({ kind: "aside", title: "Outlook", lines });
  if (asks === "") return [state, [aside(outlookLines)]];
  const heard = readOutlook(asks);
  if (heard.kind === "refused") return refuse(now, heard.says);
  const { lines, chart } = interview.outlook(heard, now.design());
  return [state, [aside(lines), ...(chart === null ? [] : [say({ kind: "chart", chart })])]];
}

function answered<D>(now: Now<D>, cursor: Walked, text: string): Step {
  if (text.trim() === "" && cursor.answer !== null) return kept(now, cursor, cursor.answer);
  const reading = readAnswer(text, cursor, readersOf(now));
  switch (reading.kind) {
    case "refused":
      return refuse(now, reading.text);
    case "asked":
      return commanded(now, { command: reading.command });
    case "consent":
      return [{ ...now.state, mode: { kind: "consenting", typed: text, says: reading.says } }, []];
    case "unusual":
      return [
        { ...now.state, mode: { kind: "confirming", pending: reading.answer, says: reading.says } },
        [],
      ];
    case "places": {
      const typed = forcedText(text).trim();
      return [{ ...now.state, mode: { kind: "choosingPlace", typed, matches: reading.matches } }, []];
    }
    case "taken":
      return taken(now, cursor, reading.answer, reading.adds);
  }
}

function readersOf<D>({ interview, walked, state }: Now<D>, isAgreed = false): Readers {
  const { readPlace, readSun, readGround } = interview;
  const where = walked.find(({ question }) => question.kind === "place");
  const site = where?.own.value.kind === "place" ? where.own.value.site : null;
  const isSiteExact =
    site !== null && readCoordinates(forcedText(where?.answer?.typed ?? "")).kind === "coordinates";
  const lineOf = (id: string): Line => {
    const length = walked.find((each) => each.id === id)?.own;
    const far = (length?.value.kind === "quantity" ? length.value.spot : undefined) ?? null;
    const near = isSiteExact ? site : null;
    // The place may have been changed since.
    const lengthM = near !== null && far !== null ? wayTo(near, far).distanceM : Number(length?.rule);
    return { lengthM, units: state.units, near, far };
  };
  return {
    readPlace,
    readSun,
    readGround,
    site,
    isSiteExact,
    lineOf,
    isAgreed,
    currency: state.currency,
    units: state.units,
  };
}

/** What leaves this machine does so after a yes, and is not asked for again. */
function consented<D>(
  now: Now<D>,
  cursor: Walked,
  mode: Extract<Mode, { kind: "consenting" }>,
  text: string,
): Step {
  const heard = readChoice(text, yesOrNo);
  if (!heard.ok) return refuse(now, "Type yes or no.");
  const asked: Now<D> = { ...now, state: { ...now.state, mode: asking } };
  if (heard.id === "no") return [asked.state, []];
  const reading = readAnswer(mode.typed, cursor, readersOf(now, true));
  if (reading.kind === "taken") return taken(asked, cursor, reading.answer, reading.adds);
  return refuse(asked, reading.kind === "refused" ? reading.text : "That could not be read.");
}

function confirmed<D>(
  now: Now<D>,
  cursor: Walked,
  mode: Extract<Mode, { kind: "confirming" }>,
  text: string,
): Step {
  const heard = readChoice(text, yesOrNo);
  const isPlace = cursor.question.kind === "place";
  const hasFigures = /\d/.test(text);
  // Elsewhere figures come first: there "1" is no yes. A place may be called anything, even Yes.
  if (!(isPlace && heard.ok && !hasFigures)) {
    const reading = readAnswer(text, cursor, readersOf(now));
    // The same again is a yes.
    if (reading.kind === "unusual" && isSame(reading.answer.value, mode.pending.value))
      return taken(now, cursor, reading.answer, null);
    if (reading.kind !== "refused") return answered(now, cursor, text);
    if (hasFigures || (isPlace && text.trim() !== "")) return refuse(now, reading.text);
  }
  if (!heard.ok) return refuse(now, confirmHintFor(cursor.question));
  if (heard.id === "yes") return taken(now, cursor, mode.pending, null);
  return [{ ...now.state, mode: asking }, []];
}

const yesOrNo = [
  { id: "yes", label: "Yes", aliases: ["keep", "keep it"] },
  { id: "no", label: "No" },
];

function placeChosen<D>(
  now: Now<D>,
  cursor: Walked,
  mode: Extract<Mode, { kind: "choosingPlace" }>,
  text: string,
): Step {
  const { typed, matches } = mode;
  const numbers = `Type a number from 1 to ${matches.length}, or another place.`;
  const heard = readChoice(
    text,
    matches.map(({ label }, index) => ({ id: String(index + 1), label })),
  );
  if (heard.ok) {
    const { site } = matches[Number(heard.id) - 1]!;
    return taken(now, cursor, { typed, value: { kind: "place", site }, origin: "estimate" }, null);
  }
  if (text.trim() === "" || /^\s*\d+\s*$/.test(text)) return refuse(now, numbers);
  return answered(now, cursor, text);
}
