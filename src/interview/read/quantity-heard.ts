import type { Dimension } from "../../core/units/index.ts";
import type { Doubt } from "./doubt-words.ts";
import type { OriginWord } from "./origin-words.ts";

/** What a quantity is asked for: the reader knows no more of the question. */
export interface QuantitySpec {
  readonly dimension: Dimension;
  /** Symbol of the unit shown: a bare number means this unit, and everything comes out in it. */
  readonly unit: string;
  /** In the unit shown. */
  readonly possible: { readonly min: number; readonly max: number };
  /** Only whole numbers will do. */
  readonly isWhole?: boolean;
}

/** Low, best and high are in the unit shown. */
export interface QuantityHeard {
  readonly ok: true;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  /** Symbol of the unit typed; the one shown, for a bare number. */
  readonly typedUnit: string;
  /** True where no doubt was typed. */
  readonly isExact: boolean;
  readonly doubt: "none" | Doubt | "range";
  readonly originWord?: OriginWord;
  /** "30 ft = 9.1 m". */
  readonly heard: string;
}
