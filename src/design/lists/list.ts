import type { Caution, Warning } from "./cautions.ts";

/** One thing to do. Where it can hurt somebody, the cautions are read before it is done. */
export interface Step {
  /** Stable inside its list. */
  readonly id: string;
  readonly cautions: readonly Caution[];
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

/** A step as it is written down: its cautions still know their short form. */
export type Draft = Omit<Step, "cautions"> & { readonly cautions: readonly Warning[] };
/** What stands where a step may not apply: `condition && step(...)`. */
export type MaybeStep = Draft | false | null | undefined;

/** A step; what is left out is empty. */
export const step = (id: string, does: string, told: Partial<Omit<Draft, "id" | "does">> = {}): Draft => ({
  id,
  does,
  cautions: told.cautions ?? [],
  why: told.why ?? "",
  expects: told.expects ?? "",
});

/**
 * The steps that apply. A caution is given in full the first time and in few words after that: the same long paragraph
 * before every step would no longer be read.
 */
export function applicable(steps: readonly MaybeStep[]): readonly Step[] {
  const given = new Set<string>();
  return steps
    .filter((one): one is Draft => Boolean(one))
    .map((one) => ({
      ...one,
      cautions: one.cautions.map(({ hazard, says, again }): Caution => {
        const isKnown = given.has(says);
        given.add(says);
        return { hazard, says: isKnown ? again : says };
      }),
    }));
}
