/** Where a conversation begins, and what its state stands for. */

import type { Finding } from "../design/finding.ts";
import type { Answers, Interview, State, Units, Walked } from "./conversation.ts";
import { firstUnanswered, walk, walkAll } from "./walk.ts";

/** A conversation before its first event; with answers, one that is taken up again. */
export function begin(about: {
  readonly name: string;
  readonly currency: string;
  /** Metric where nothing is said. */
  readonly units?: Units;
  readonly answers?: Answers;
}): State {
  return {
    name: about.name,
    currency: about.currency,
    units: about.units ?? "metric",
    answers: about.answers ?? {},
    cursor: null,
    returnTo: null,
    mode: { kind: "asking" },
    opened: [],
    closed: [],
    drawn: {},
    past: [],
  };
}

/** The questions that a state's answers call for. */
export function walkNow<D>(
  interview: Interview<D>,
  state: Pick<State, "answers" | "units">,
): readonly Walked[] {
  return walk(interview.topics, state.answers, interview.siteFacts, state.units);
}

/** The design as a state's answers have it. */
export function designNow<D>(interview: Interview<D>, state: State): D {
  const { name, currency, answers, units } = state;
  return interview.designOf(walkAll(interview.topics, answers, interview.siteFacts, units), {
    name,
    currency,
    units,
  });
}

/** What still forbids buying. */
export function stopsNow<D>(interview: Interview<D>, state: State): readonly Finding[] {
  return interview.findingsOf(designNow(interview, state)).filter(({ severity }) => severity === "stop");
}

/** The question at the cursor; where it is no longer called for, or before the first event, the first unanswered one. */
export function cursorNow(walked: readonly Walked[], cursor: string | null): Walked | null {
  return walked.find((each) => each.id === cursor) ?? firstUnanswered(walked);
}
