/** Answers taken, kept and taken back: the only place where the answers of a state change. */

import { refusalSentence } from "./answer.ts";
import { consequences } from "./consequence.ts";
import type { Answer, Said, Walked } from "./conversation.ts";
import { moved, moveTo } from "./course.ts";
import { answerText, heardBeside, keptText, standInText } from "./shown.ts";
import { cursorNow, designNow, walkNow } from "./state.ts";
import { type Now, once, refuse, type Step, save, say, type Then } from "./turn.ts";
import { valueFor } from "./units.ts";
import { fits, isSame } from "./value.ts";
import { labelOf, topicsOpen } from "./walk.ts";
import { endHint } from "./words.ts";

/** How many answers can be taken back, one after the other. */
const undosAtMost = 50;

/**
 * An answer accepted: said, weighed in the design, saved; then on to the next question.
 *
 * @param adds one more sentence on what is made of this answer
 */
export function taken<D>(now: Now<D>, cursor: Walked, answer: Answer, adds: string | null): Step {
  const { interview, state } = now;
  const { question } = cursor;
  const said: Said[] = [
    { kind: "answered", ask: question.ask, typed: answer.typed, heard: heardBeside(question, answer) },
  ];
  if (adds !== null) said.push({ kind: "meaning", text: adds });
  if (cursor.answer !== null && isSame(cursor.answer, answer)) {
    const [after, effects] = moved(now, { state, walked: now.walked, design: now.design }, cursor);
    return [after, [...said.map(say), ...effects, save]];
  }
  const answers = { ...state.answers, [cursor.id]: answer };
  const past = [...state.past, state.answers].slice(-undosAtMost);
  const walked = walkNow(interview, { ...state, answers });
  const then: Then<D> = {
    state: { ...state, answers, past },
    walked,
    design: once(() => designNow(interview, { ...state, answers })),
  };
  said.push(...difference(now, then, { isRevised: cursor.answer !== null, shows: question.shows }));
  const [after, effects] = moved(now, then, cursor);
  return [after, [...said.map(say), ...effects, save]];
}

/** What the design gains or loses where these answers take the place of those at hand. */
function difference<D>(
  now: Now<D>,
  then: Pick<Then<D>, "walked" | "design">,
  about: { readonly isRevised: boolean; readonly shows?: string | undefined },
): readonly Said[] {
  return consequences(
    now.interview,
    { design: now.design(), walked: now.walked },
    { design: then.design(), walked: then.walked },
    about,
  );
}

/** The answer that stands, kept by Enter. */
export function kept<D>(now: Now<D>, cursor: Walked, answer: Answer): Step {
  const { question } = cursor;
  const typed = keptText(cursor)!;
  const heard = heardBeside(question, { ...answer, typed });
  const [state, effects] = moved(now, now, cursor);
  return [state, [say({ kind: "answered", ask: question.ask, typed, heard }), ...effects]];
}

/** The stand-in taken and marked as assumed. */
export function unsure<D>(now: Now<D>, cursor: Walked): Step {
  const { question, standIn } = cursor;
  const { value, because } = standIn;
  const text = standInText(question, value);
  const used = `I use ${question.kind === "choice" ? `"${text}"` : text} until you know: ${because}`;
  // No place can stand in for another: there is only the reason to give.
  const says = value.kind === "place" ? because.slice(0, 1).toUpperCase() + because.slice(1) : used;
  const adds = `That is fine. ${says}${says.endsWith(".") ? "" : "."}`;
  return taken(now, cursor, { typed: "unsure", value, origin: "assumed" }, adds);
}

/** An answer as it was kept once; refused where it does not fit the question. */
export function recorded<D>(now: Now<D>, answer: Answer): Step {
  const { cursor } = now;
  if (cursor === null) return refuse(now, endHint);
  if (answer.origin === "assumed")
    return taken(now, cursor, { ...answer, value: cursor.standIn.value }, null);
  const value = valueFor(cursor.question, answer.value);
  if (!fits(cursor.question, value)) return refuse(now, refusalSentence({ code: "empty" }, cursor));
  return taken(now, cursor, { ...answer, value }, null);
}

/** The last answer taken back; the cursor goes to its question where that is open again, and else stays. */
export function undone<D>(now: Now<D>): Step {
  const { interview, state } = now;
  const answers = state.past.at(-1);
  if (answers === undefined) return refuse(now, "There is no answer to take back.");
  // One answer parts two neighbours in the past; the others are the very same objects.
  const id = Object.keys(state.answers).find((key) => state.answers[key] !== answers[key]);
  const walked = walkNow(interview, { ...state, answers });
  const target = walked.find((each) => each.id === id);
  const cursor = target?.answer === null ? target : cursorNow(walked, state.cursor);
  const open: readonly string[] = topicsOpen(walked);
  const closed = state.closed.filter((topic) => !open.includes(topic));
  const past = state.past.slice(0, -1);
  const [after, opening] = moveTo(now, { ...state, answers, past, closed }, cursor, state.returnTo);
  const said: Said[] = [
    { kind: "meaning", text: undoneText(target) },
    ...difference(
      now,
      { walked, design: () => designNow(interview, { ...state, answers }) },
      { isRevised: true },
    ),
  ];
  return [after, [...said.map(say), ...opening, save]];
}

function undoneText(target: Walked | undefined): string {
  // Its question is no longer called for.
  if (target === undefined) return "Taken back: the last answer.";
  const now = target.answer === null ? "not answered" : `again ${answerText(target)}`;
  return `Taken back: ${labelOf(target)} is ${now}.`;
}
