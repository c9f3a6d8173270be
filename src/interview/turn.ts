/** One turn of the conversation: what is at hand when an event arrives, and what comes of it. */

import type { Effect, Interview, Mode, Said, State, Walked } from "./conversation.ts";
import { cursorNow, designNow, walkNow } from "./state.ts";

/** The state after an event, and what is to be done about it, in order. */
export type Step = readonly [State, readonly Effect[]];

export interface Now<D> {
  readonly interview: Interview<D>;
  readonly state: State;
  readonly walked: readonly Walked[];
  /** The question that the state's cursor is at; null when every question has an answer. */
  readonly cursor: Walked | null;
  /** The design as the state has it, worked out when first asked for. */
  readonly design: () => D;
}

/** Where an answer leaves the conversation, before the cursor moves on. */
export type Then<D> = Pick<Now<D>, "state" | "walked" | "design">;

/** Long work is done once, and not at all where nobody asks for it. */
export function once<T>(work: () => T): () => T {
  let done: { readonly result: T } | null = null;
  return () => {
    done ??= { result: work() };
    return done.result;
  };
}

/** What is at hand; a question that is no longer called for takes its own mode with it. */
export function nowOf<D>(interview: Interview<D>, state: State): Now<D> {
  const walked = walkNow(interview, state);
  const cursor = cursorNow(walked, state.cursor);
  const id = cursor?.id ?? null;
  const mode = id === state.cursor ? state.mode : asking;
  return {
    interview,
    state: { ...state, cursor: id, mode },
    walked,
    cursor,
    design: once(() => designNow(interview, state)),
  };
}

export const asking: Mode = { kind: "asking" };
/** `returnTo` where a change was asked for when every question was answered. */
export const theEnd = "finished";

export const say = (said: Said): Effect => ({ type: "say", said });
export const save: Effect = { type: "save" };

/** Nothing changes but that one sentence is said. */
export const refuse = <D>(now: Now<D>, text: string): Step => [now.state, [say({ kind: "refusal", text })]];
