/**
 * The vocabulary in which flows are written: question kinds, rules that declare what they read, topics, tellings.
 * Types and a builder chain that returns data; what is done with them is walk.ts and session.ts.
 *
 * A rule names the earlier answers it reads and is handed only those, so that order, staleness and "what may this
 * question depend on" can be checked without running anything.
 */

import type { HorizonProfile } from "../core/sun/index.ts";
import type { Dimension } from "../core/units/index.ts";
import type { OwnGround, OwnSun, Site, TopicId } from "../design/brief.ts";
import { questionIn } from "./both-units.ts";

/**
 * What every question must say, whatever its kind. Wording rules are tested over the data in tests/flows. A figure that is
 * round in metric units is written for both systems: "barn [7 m|25 ft] high" (both-units.ts).
 */
interface Wording {
  /** Short name for the review list: "Distance". */
  readonly label: string;
  /** The question itself: one fact, one question mark, in words the builder uses. */
  readonly ask: string;
  /** One line: where to find it, with an example. */
  readonly hint: string;
  /** What the answer changes. */
  readonly why: string;
  /** How to find out in a few minutes. */
  readonly how: string;
  /** The telling that this question is about: said in short where an answer changes nothing. */
  readonly shows?: string;
}

/** The stand-in for "unsure": used and marked as assumed, with the reason said aloud. */
interface StandIn<T> {
  readonly use: T;
  readonly because: string;
}

export interface QuantityQuestion extends Wording {
  readonly kind: "quantity";
  readonly dimension: Dimension;
  /** Symbol of the unit shown; a bare number means this unit, and the stored value is in it. */
  readonly unit: string;
  /** A second unit to name in the prompt for those who think in it. */
  readonly alsoUnit?: string;
  /** Outside this the answer is refused. */
  readonly possible: { readonly min: number; readonly max: number };
  /** Outside this the builder is asked whether they are sure. */
  readonly usual: { readonly min: number; readonly max: number };
  readonly isWhole?: boolean;
  /** A length from the post that coordinates of its other end answer too: they give the bearing with it. */
  readonly alsoSpot?: boolean;
  /** Which end of a range the design is computed with: the cautious one. */
  readonly lean: "low" | "high" | "best";
  readonly unsure: StandIn<number>;
}

export interface Option<Id extends string> {
  readonly id: Id;
  readonly label: string;
  readonly aliases?: readonly string[];
  /** Other words for it, with commas: whoever says one of them in a sentence means this option. */
  readonly also?: string;
}

export interface ChoiceQuestion<Id extends string = string> extends Wording {
  readonly kind: "choice";
  readonly options: readonly Option<Id>[];
  readonly unsure: StandIn<Id>;
}

export interface PlaceQuestion extends Wording {
  readonly kind: "place";
  /** No place can stand in for another: unsure leaves it open and says what cannot be worked. */
  readonly unsure: StandIn<null>;
}

/** A stretch of clock time, minutes after midnight. */
export interface ClockRange {
  readonly fromMin: number;
  readonly toMin: number;
}

export interface ClockQuestion extends Wording {
  readonly kind: "clock";
  readonly unsure: StandIn<ClockRange>;
}

/** What hides the sky round the panel: one height all round, words, or pairs of azimuth and elevation. */
export interface HorizonQuestion extends Wording {
  readonly kind: "horizon";
  /** Of the panel above the ground: what is said in height and distance is seen from there. */
  readonly eyeHeightM: number;
  /** Of the highest thing, degrees. */
  readonly possible: { readonly min: number; readonly max: number };
  readonly usual: { readonly min: number; readonly max: number };
  readonly unsure: StandIn<HorizonProfile>;
}

/** The builder's own sun figures, typed or from a file; null: none. */
export interface SunQuestion extends Wording {
  readonly kind: "sun";
  readonly unsure: StandIn<null>;
}

/** What stands along a line, in the builder's own words; read anew wherever the line's length is known. */
export interface ObstaclesQuestion extends Wording {
  readonly kind: "obstacles";
  /** Id of the question before it that holds the length of the line. */
  readonly along: string;
  readonly unsure: StandIn<string>;
}

/** The ground under a line: level, or a profile typed, pasted or from a file; null: level. */
export interface GroundQuestion extends Wording {
  readonly kind: "ground";
  readonly along: string;
  /** Symbol of the unit of its bare numbers, and of the other one. */
  readonly unit: string;
  readonly alsoUnit: string;
  readonly unsure: StandIn<null>;
}

// biome-ignore lint/suspicious/noExplicitAny: the union must accept choices over any set of option ids
export type AnyChoice = ChoiceQuestion<any>;
export type Question =
  | QuantityQuestion
  | AnyChoice
  | PlaceQuestion
  | ClockQuestion
  | HorizonQuestion
  | SunQuestion
  | ObstaclesQuestion
  | GroundQuestion;

/** What a rule or the brief sees of an answer: the cautious end of a quantity, an option id, a site, a clock range. */
export type ValueOf<Q> = Q extends QuantityQuestion
  ? number
  : Q extends ChoiceQuestion<infer Id>
    ? Id
    : Q extends PlaceQuestion
      ? Site | null
      : Q extends ClockQuestion
        ? ClockRange
        : Q extends HorizonQuestion
          ? HorizonProfile
          : Q extends SunQuestion
            ? OwnSun | null
            : Q extends ObstaclesQuestion
              ? string
              : Q extends GroundQuestion
                ? OwnGround | null
                : never;

export type AnyValue = number | string | Site | null | ClockRange | HorizonProfile | OwnSun | OwnGround;

/** One instance of a repeated block as later rules see it: {name: value}. */
export type RecordValue = Readonly<Record<string, AnyValue>>;

/** What rules may know of the place beyond the answers themselves: worked from the place answer alone. */
export interface SiteFacts {
  readonly coldestMonthC: number;
  readonly designColdC: number;
  readonly designHotC: number;
  /** Mean horizontal irradiation by the map, kWh/m2 a day, January first. */
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly absLatitudeDeg: number;
}

/** A pure function of named earlier answers (and of the site's facts, null where the place is unknown). */
export interface Rule<T> {
  readonly reads: readonly string[];
  readonly work: (site: SiteFacts | null, ...values: readonly never[]) => T;
}

type Values<K, Keys extends readonly (keyof K)[]> = { readonly [I in keyof Keys]: K[Keys[I]] };

export interface Given<K> {
  /** A rule over earlier answers. */
  <const Keys extends readonly (keyof K & string)[], T>(
    reads: Keys,
    work: (...values: Values<K, Keys>) => T,
  ): Rule<T>;
  /** A rule that also looks at the site. */
  site<const Keys extends readonly (keyof K & string)[], T>(
    reads: Keys,
    work: (site: SiteFacts | null, ...values: Values<K, Keys>) => T,
  ): Rule<T>;
}

/** Computed stand-in: replaces the fixed one, with its own reason. */
export interface Suggestion<T> {
  readonly use: T;
  readonly because: string;
}

export interface Rules<T> {
  /** Asked only when true; always, when absent. */
  readonly when?: Rule<boolean>;
  readonly suggest?: Rule<Suggestion<T>>;
}

export interface AskStep {
  readonly step: "ask";
  /** Full id, "topic.name"; inside a block "each.name". Never reused or renamed without a migration. */
  readonly id: string;
  readonly question: Question;
  /** The same for those who think in feet and pounds. */
  readonly inFeet: Question;
  readonly rules: Rules<AnyValue>;
}

/**
 * A short block asked again and again. Its first question is a choice; the option "none" ends the repetition.
 * Instances are numbered from 1 and get the ids "topic.block.1.name".
 */
export interface RepeatStep {
  readonly step: "repeat";
  readonly id: string;
  readonly atMost: number;
  readonly rules: { readonly when?: Rule<boolean> };
  readonly block: readonly AskStep[];
}

export type Step = AskStep | RepeatStep;

export interface Topic<Id extends TopicId = TopicId, K = unknown> {
  readonly id: Id;
  readonly version: number;
  readonly title: string;
  /** One line said when the topic opens. */
  readonly opening: string;
  readonly steps: readonly Step[];
  /** Never present at run time: carries the types of the answers known after this topic. */
  readonly known?: K;
}

// biome-ignore lint/complexity/noBannedTypes: the neutral element of an intersection of records
type Nothing = {};

/** Every answer known once a topic has been asked: its own and those it was opened after. */
export type KnownAfter<T> = T extends Topic<TopicId, infer K> ? K : never;

type Fresh<Id extends string, N extends string, K> = `${Id}.${N}` extends keyof K ? never : N;

export interface BlockBuilder<K, Each> {
  ask<N extends string, Q extends Question>(
    name: Fresh<"each", N, K>,
    question: Q,
    rules?: (given: Given<K>) => Rules<NoInfer<ValueOf<Q>>>,
  ): BlockBuilder<K & { readonly [P in `each.${N}`]: ValueOf<Q> }, Each & { readonly [P in N]: ValueOf<Q> }>;
  readonly steps: readonly AskStep[];
  /** Never present at run time. */
  readonly each?: Each;
}

export interface TopicBuilder<Id extends TopicId, K> {
  ask<N extends string, Q extends Question>(
    name: Fresh<Id, N, K>,
    question: Q,
    rules?: (given: Given<K>) => Rules<NoInfer<ValueOf<Q>>>,
  ): TopicBuilder<Id, K & { readonly [P in `${Id}.${N}`]: ValueOf<Q> }>;
  repeat<N extends string, Each>(
    name: Fresh<Id, N, K>,
    about: { readonly atMost: number; readonly when?: (given: Given<K>) => Rule<boolean> },
    block: (start: BlockBuilder<K, Nothing>) => { readonly steps: readonly AskStep[]; readonly each?: Each },
  ): TopicBuilder<Id, K & { readonly [P in `${Id}.${N}`]: readonly Each[] }>;
  end(): Topic<Id, K>;
}

const makeRule =
  (usesSite: boolean) =>
  (reads: readonly string[], work: (...args: readonly unknown[]) => unknown): Rule<unknown> => ({
    reads,
    work: usesSite ? work : (_site, ...values) => work(...values),
  });
// One implementation serves every K: the types above are what keeps the keys and values of a flow apart.
const given = Object.assign(makeRule(false), { site: makeRule(true) }) as unknown as Given<never>;

function askStep(id: string, question: Question, rules?: (g: Given<never>) => Rules<never>): AskStep {
  return {
    step: "ask",
    id,
    question: questionIn("metric", question),
    inFeet: questionIn("us", question),
    rules: (rules?.(given) ?? {}) as Rules<AnyValue>,
  };
}

function blockBuilder(steps: readonly AskStep[]): BlockBuilder<never, never> {
  const builder = {
    steps,
    ask: (name: string, question: Question, rules?: (g: Given<never>) => Rules<never>) =>
      blockBuilder([...steps, askStep(`each.${name}`, question, rules)]),
  };
  return builder as unknown as BlockBuilder<never, never>;
}

/**
 * Opens a topic. `after` lists the topics asked before it: their answers may be read by its rules.
 */
export function topic<Id extends TopicId, const Before extends readonly Topic[] = []>(
  about: { readonly id: Id; readonly version: number; readonly title: string; readonly opening: string },
  _after?: Before,
): TopicBuilder<Id, KnownAfterAll<Before>> {
  const build = (steps: readonly Step[]): TopicBuilder<Id, KnownAfterAll<Before>> => {
    const builder = {
      ask: (name: string, question: Question, rules?: (g: Given<never>) => Rules<never>) =>
        build([...steps, askStep(`${about.id}.${name}`, question, rules)]),
      repeat: (
        name: string,
        repeatAbout: { readonly atMost: number; readonly when?: (g: Given<never>) => Rule<boolean> },
        block: (start: BlockBuilder<never, never>) => { readonly steps: readonly AskStep[] },
      ) => {
        const when = repeatAbout.when?.(given);
        const step: RepeatStep = {
          step: "repeat",
          id: `${about.id}.${name}`,
          atMost: repeatAbout.atMost,
          rules: when ? { when } : {},
          block: block(blockBuilder([])).steps,
        };
        return build([...steps, step]);
      },
      end: () => ({ ...about, steps }),
    };
    return builder as unknown as TopicBuilder<Id, KnownAfterAll<Before>>;
  };
  return build([]);
}

/** Every answer known after all the topics of a list. */
export type KnownAfterAll<Ts extends readonly Topic[]> = Ts extends readonly [
  infer First,
  ...infer Rest extends readonly Topic[],
]
  ? KnownAfter<First> & KnownAfterAll<Rest>
  : Nothing;

export const quantity = (question: Omit<QuantityQuestion, "kind">): QuantityQuestion => ({
  kind: "quantity",
  ...question,
});
export const choice = <const Id extends string>(
  question: Omit<ChoiceQuestion<Id>, "kind" | "unsure"> & { readonly unsure: StandIn<NoInfer<Id>> },
): ChoiceQuestion<Id> => ({
  kind: "choice",
  ...question,
});
export const place = (question: Omit<PlaceQuestion, "kind">): PlaceQuestion => ({
  kind: "place",
  ...question,
});
export const horizon = (question: Omit<HorizonQuestion, "kind">): HorizonQuestion => ({
  kind: "horizon",
  ...question,
});
export const sun = (question: Omit<SunQuestion, "kind">): SunQuestion => ({ kind: "sun", ...question });
export const obstacles = (question: Omit<ObstaclesQuestion, "kind">): ObstaclesQuestion => ({
  kind: "obstacles",
  ...question,
});
export const ground = (question: Omit<GroundQuestion, "kind">): GroundQuestion => ({
  kind: "ground",
  ...question,
});
export const clock = (question: Omit<ClockQuestion, "kind">): ClockQuestion => ({
  kind: "clock",
  ...question,
});

/**
 * One thing worth telling after an answer. It is told when its figure appears or moves by more than `step`; at most
 * three are told after one answer, in the order of the list.
 */
export interface Telling<D> {
  readonly id: string;
  /** The figure watched; null while it cannot be worked yet. */
  readonly figure: (design: D) => number | string | null;
  /** Smallest change of a number worth telling, in its own unit. */
  readonly step?: number;
  /** One plain sentence with the number in it; `before` is null the first time. */
  readonly say: (design: D, before: number | string | null) => string;
  /** The short form for the list of what a changed answer changed: "Battery", "200 Ah at 12 V". */
  readonly label: string;
  readonly short: (design: D) => string;
}
