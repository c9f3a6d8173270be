/** Where a conversation begins, and what its state stands for. */

import type { Answers, Interview, State, Walked } from "./conversation.ts";
import { firstUnanswered, walk } from "./walk.ts";

/** A conversation before its first event; with answers, one that is taken up again. */
export function begin(about: {
  readonly name: string;
  readonly currency: string;
  readonly answers?: Answers;
}): State {
  return {
    name: about.name,
    currency: about.currency,
    answers: about.answers ?? {},
    cursor: null,
    returnTo: null,
    mode: { kind: "asking" },
    opened: [],
    closed: [],
    past: [],
  };
}

/** The questions that these answers call for. */
export function walkNow<D>(interview: Interview<D>, answers: Answers): readonly Walked[] {
  return walk(interview.topics, answers, interview.siteFacts);
}

/** The design as these questions and answers have it. */
export function designNow<D>(interview: Interview<D>, state: State, walked?: readonly Walked[]): D {
  const { name, currency } = state;
  return interview.designOf(walked ?? walkNow(interview, state.answers), { name, currency });
}

/** The question at the cursor; where it is no longer called for, or before the first event, the first unanswered one. */
export function cursorNow(walked: readonly Walked[], cursor: string | null): Walked | null {
  return walked.find((each) => each.id === cursor) ?? firstUnanswered(walked);
}
