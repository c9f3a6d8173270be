/**
 * Why a typed text was not taken, as data: a code and the numbers behind it. The wording is in refusal-text.ts and
 * nowhere else. Texts in `typed` are as typed, shortened and without control characters.
 */
import type { Dimension } from "../../core/units/index.ts";

export type Refusal =
  | { readonly code: "empty" }
  | { readonly code: "not-a-number"; readonly typed: string }
  | {
      readonly code: "unknown-unit";
      readonly typed: string;
      /** Symbols of the units that would do, the shown one first. */
      readonly known: readonly string[];
    }
  | {
      readonly code: "wrong-kind";
      readonly typed: string;
      readonly typedDimension: Dimension;
      readonly wantedDimension: Dimension;
      /** Something that would do, in the shown unit. */
      readonly example: string;
    }
  | OutOfRange<"too-small">
  | OutOfRange<"too-large">
  | {
      readonly code: "ambiguous-comma";
      readonly typed: string;
      readonly asThousands: number;
      readonly asDecimal: number;
    }
  | { readonly code: "not-an-option"; readonly typed: string; readonly options: readonly string[] }
  /** Options are named, but only to deny them or under a condition. */
  | { readonly code: "no-option-said"; readonly typed: string; readonly options: readonly string[] }
  /** A question about the options. */
  | { readonly code: "asked-back"; readonly typed: string; readonly options: readonly string[] }
  | { readonly code: "several-options"; readonly typed: string; readonly matches: readonly string[] }
  | { readonly code: "not-a-time"; readonly typed: string }
  /** Both readings as they would be typed without doubt: "9:00 to 17:00". */
  | { readonly code: "ambiguous-time"; readonly typed: string; readonly readings: readonly string[] }
  | { readonly code: "not-a-place"; readonly typed: string }
  | { readonly code: "not-a-count"; readonly typed: string; readonly got: number };

interface OutOfRange<Code extends string> {
  readonly code: Code;
  /** As understood, in the unit typed: "2000 ft". */
  readonly typed: string;
  /** These three in `unit`, the shown one. */
  readonly min: number;
  readonly max: number;
  readonly got: number;
  readonly unit: string;
  /** A value inside the range that a slip of the finger would explain, in `unit`. */
  readonly didYouMean?: number;
  /** How that value would be typed, where it is not simply in `unit`: "100 F". */
  readonly didYouMeanTyped?: string;
}

export interface Refused {
  readonly ok: false;
  readonly refusal: Refusal;
}

export const refused = (refusal: Refusal): Refused => ({ ok: false, refusal });
