import type { Effect, Event, Said, State, View } from "../interview/index.ts";

/** What a face is handed: the engine closed over its flow, and the hands that carry out its effects. */
export interface Dialogue {
  readonly update: (state: State, event: Event) => readonly [State, readonly Effect[]];
  readonly view: (state: State) => View;
  /** Carries out one effect other than saying; what it has to say about it is shown at once. */
  readonly carryOut: (effect: Exclude<Effect, { readonly type: "say" }>, state: State) => readonly Said[];
}

export type LeaveCode = 0 | 3 | 130;

export interface Turn {
  readonly state: State;
  readonly said: readonly Said[];
  /** The code to leave with; null while the conversation goes on. */
  readonly left: LeaveCode | null;
}

/** One event put to the engine and everything that followed from it, in the engine's order. */
export function turn(dialogue: Dialogue, state: State, event: Event): Turn {
  const [next, effects] = dialogue.update(state, event);
  const said: Said[] = [];
  let left: LeaveCode | null = null;
  for (const effect of effects) {
    if (effect.type === "say") {
      said.push(effect.said);
      continue;
    }
    said.push(...dialogue.carryOut(effect, next));
    if (effect.type === "leave") left = effect.code;
  }
  return { state: next, said, left };
}
