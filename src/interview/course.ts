/** Where the conversation goes: starting, moving the cursor, opening and closing topics. */

import { chartsAfter, inkOf } from "./charted.ts";
import type { Interview, Said, State, Walked } from "./conversation.ts";
import { topicSummary } from "./shown.ts";
import { stopsNow } from "./state.ts";
import { asking, type Now, refuse, type Step, say, type Then, theEnd } from "./turn.ts";
import { firstUnanswered, labelOf, nextQuestion, previousQuestion, topicsOpen } from "./walk.ts";

/** Taking the conversation up, for the first time or again: where things stand, and the opening of the topic at hand. */
export function started<D>(now: Now<D>): Step {
  const { walked, cursor, interview } = now;
  const open = topicsOpen(walked);
  const ids = interview.topics.map(({ id }) => id);
  const closed = ids.filter((id) => !open.includes(id) && walked.some((each) => each.topic.id === id));
  const opened = cursor === null ? ids : ids.slice(0, ids.indexOf(cursor.topic.id));
  const state: State = { ...now.state, mode: asking, returnTo: null, opened, closed };
  const [after, opening] = openedAt(interview, state, cursor);
  const count = walked.filter((each) => each.answer !== null).length;
  if (count === 0) return [after, opening];
  const lines = [resumedLine(count, walked, cursor)];
  return [after, [say({ kind: "aside", title: "Where you are", lines }), ...opening]];
}

function resumedLine(count: number, walked: readonly Walked[], cursor: Walked | null): string {
  if (cursor === null) return `All ${count} questions are answered.`;
  const have = count === 1 ? "1 question is answered" : `${count} questions are answered`;
  return `${have}, about ${walked.length - count} to go. Next: ${cursor.topic.title}, ${labelOf(cursor)}.`;
}

/** The opening of the topic that the cursor has come to, once; at the end what still forbids buying, each time. */
function openedAt<D>(interview: Interview<D>, state: State, cursor: Walked | null): Step {
  if (cursor === null) {
    const stops = stopsNow(interview, state);
    const lines = stops.map(({ says, change }) => `${says} ${change}`.trim());
    return [state, stops.length === 0 ? [] : [say({ kind: "aside", title: "Do not buy yet", lines })]];
  }
  if (state.opened.includes(cursor.topic.id)) return [state, []];
  const { id, title, opening } = cursor.topic;
  const number = interview.topics.findIndex((topic) => topic.id === id) + 1;
  const said: Said = { kind: "topicOpened", title, opening, number, of: interview.topics.length };
  return [{ ...state, opened: [...state.opened, id] }, [say(said)]];
}

/** To the question before, across topics and out of the end; out of a question about an answer, to its own question. */
export function back<D>(now: Now<D>): Step {
  const { state, walked } = now;
  if (state.mode.kind !== "asking") return [{ ...state, mode: asking }, []];
  const previous = previousQuestion(walked, state.cursor);
  if (previous === null) return refuse(now, "This is the first question: there is nothing before it.");
  return moveTo(now, state, previous, state.returnTo);
}

/** To an answer that is to be corrected; its answer leads back to where the builder was. */
export function change<D>(now: Now<D>, id: string): Step {
  const { state, walked } = now;
  const target = walked.find((each) => each.id === id)!;
  return moveTo(now, state, target, state.returnTo ?? state.cursor ?? theEnd);
}

/** The cursor at a question (null: at the end), with the opening of its topic where that has not been said. */
export function moveTo<D>(now: Now<D>, state: State, target: Walked | null, returnTo: string | null): Step {
  const cursor = target?.id ?? null;
  const isBack = returnTo === (cursor ?? theEnd);
  return openedAt(
    now.interview,
    { ...state, cursor, mode: asking, returnTo: isBack ? null : returnTo },
    target,
  );
}

/**
 * On from a question just answered or kept: topics that are now complete are closed, what the answer moved is drawn, the next
 * topic is opened.
 */
export function moved<D>(now: Now<D>, then: Then<D>, from: Walked): Step {
  const { state, walked } = then;
  const { target, returnTo } = nextStop(state.returnTo, walked, from);
  const open = topicsOpen(walked);
  const complete = [...new Set(walked.map((each) => each.topic.id))].filter((id) => !open.includes(id));
  const closing = complete.filter((id) => !state.closed.includes(id));
  const closed = [...state.closed, ...closing];
  const charts = chartsAfter(now, then, { from, closing });
  const drawn = { ...state.drawn, ...Object.fromEntries(charts.map((chart) => [chart.title, inkOf(chart)])) };
  const [after, opening] = moveTo(now, { ...state, closed, drawn }, target, returnTo);
  const summaries = closing.map((id) => say(topicSummary(walked, id)));
  return [after, [...summaries, ...charts.map((chart) => say({ kind: "chart", chart })), ...opening]];
}

/**
 * Where the conversation goes from a question just answered or kept.
 *
 * After a change: to the follow-ups that it opened, then back to where the builder was. Walking on from an earlier
 * answer: the next question in order, whose answer Enter keeps. Otherwise: the first question without an answer.
 */
function nextStop(
  returnTo: string | null,
  walked: readonly Walked[],
  from: Walked,
): { readonly target: Walked | null; readonly returnTo: string | null } {
  const open = firstUnanswered(walked);
  if (returnTo !== null) {
    const end = returnTo === theEnd ? walked.length : walked.findIndex((each) => each.id === returnTo);
    // The question to return to may no longer be called for.
    if (end < 0) return { target: open, returnTo: null };
    if (open !== null && walked.indexOf(open) < end) return { target: open, returnTo };
    return { target: walked[end] ?? null, returnTo: null };
  }
  if (from.answer === null) return { target: open, returnTo: null };
  return { target: nextQuestion(walked, from.id) ?? open, returnTo: null };
}
