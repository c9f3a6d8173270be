/** One thing to do. Where it can hurt somebody, the cautions are read before it is done. */
export interface Step {
  /** Stable inside its list. */
  readonly id: string;
  readonly cautions: readonly string[];
  /** What to do, in the imperative. */
  readonly does: string;
  /** Why it is done, or why it comes at this point. */
  readonly why: string;
  /** What should be seen when it is right, with tolerance; empty where nothing is measured. */
  readonly expects: string;
}

export type ListId = "permissions" | "tools" | "installation" | "settings" | "commissioning" | "upkeep";

export interface List {
  readonly id: ListId;
  readonly title: string;
  readonly intro: string;
  /** Done in order, or in any order. */
  readonly isOrdered: boolean;
  readonly steps: readonly Step[];
}

type Told = Partial<Omit<Step, "id" | "does">>;

/** A step; what is left out is empty. */
export const step = (id: string, does: string, told: Told = {}): Step => ({
  id,
  does,
  cautions: told.cautions ?? [],
  why: told.why ?? "",
  expects: told.expects ?? "",
});

/** Keeps the steps that apply: a list is written with `condition && step(...)`. */
export const applicable = (steps: readonly (Step | false | null | undefined)[]): readonly Step[] =>
  steps.filter((one): one is Step => Boolean(one));
