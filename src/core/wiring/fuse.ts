import { within } from "../numerics/index.ts";
import { FUSE_ROWS } from "./tables.ts";

/**
 * Kinds of overcurrent device: small plug-in blade fuse, bolt-down strip fuse, fast current-limiting class T fuse, gPV
 * cartridge made for photovoltaic strings, and direct-current circuit breaker.
 */
export type FuseFamily = "blade" | "strip" | "class-t" | "gpv" | "breaker";

/** What a family of devices can do; the part's own marking always wins. */
export interface FuseKind {
  readonly family: FuseFamily;
  /** Standard ratings, rising. */
  readonly ratingsA: readonly number[];
  /** Highest direct voltage that parts of this kind commonly bear. */
  readonly maxDcV: number;
  /** Fault current that parts of this kind commonly break safely at that voltage. */
  readonly interruptingA: number;
}

/**
 * Ratings and common limits of a kind of overcurrent device.
 *
 * @source ratings: NEC 240.6(A); ISO 8820-3, IEC 60269-6 from memory. Voltage and interrupting ratings: typical, from
 *   memory (breaker: the smallest main breaker of a small boat bank in ABYC E-11)
 */
export function fuseKind(family: FuseFamily): FuseKind {
  return { family, ...FUSE_ROWS[family] };
}

/** A standard rating between what the load needs and what the wire bears; or none, with both limits. */
export type FusePick =
  | { readonly kind: "picked"; readonly ratingA: number; readonly minA: number; readonly maxA: number }
  | { readonly kind: "none-fits"; readonly minA: number; readonly maxA: number };

/**
 * Smallest standard fuse that carries a continuous current without tiring and still protects its wire.
 *
 * @param continuousCurrentA  0 to 5000
 * @param ampacityA           of the wire as installed, or the 240.4(D) limit if lower; 0 to 6000
 * @param factor              margin that spares the fuse, 1 to 2; default 1.25
 * @returns the rating in A; "none-fits" means: a thicker wire, or another family
 * @throws RangeFault outside the ranges above
 * @source NEC 210.20(A), 215.3 and 690.9(B) for 1.25; the next size up that 240.4(B) would allow is not used
 */
export function pickFuse({
  continuousCurrentA,
  ampacityA,
  family,
  factor = 1.25,
}: {
  readonly continuousCurrentA: number;
  readonly ampacityA: number;
  readonly family: FuseFamily;
  readonly factor?: number;
}): FusePick {
  within("continuousCurrentA", continuousCurrentA, 0, 5000);
  within("ampacityA", ampacityA, 0, 6000);
  within("factor", factor, 1, 2);
  const minA = factor * continuousCurrentA;
  return fuseBetween({ minA, maxA: ampacityA, family });
}

/** Smallest standard rating with minA <= rating <= maxA. */
export function fuseBetween({
  minA,
  maxA,
  family,
}: {
  readonly minA: number;
  readonly maxA: number;
  readonly family: FuseFamily;
}): FusePick {
  // 12 A x 1.25 must find 15 A even where the product carries a last-digit error.
  const ratingA = FUSE_ROWS[family].ratingsA.find((rating) => rating >= minA * (1 - 1e-9));
  return ratingA !== undefined && ratingA <= maxA * (1 + 1e-9)
    ? { kind: "picked", ratingA, minA, maxA }
    : { kind: "none-fits", minA, maxA };
}
