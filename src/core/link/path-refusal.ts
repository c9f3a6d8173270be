import { sayingIn, type UnitSystem } from "../units/index.ts";

export type PathRefusal =
  | "empty"
  | "one-place"
  | "too-long"
  | "no-pair"
  | "thousands-comma"
  | "mixed-units"
  | "not-a-length"
  | "too-few"
  | "negative-distance"
  | "not-from-zero"
  | "out-of-order"
  | "beyond-end"
  | "short"
  | "absurd-height"
  | "negation"
  | "loose-number"
  | "no-thing"
  | "two-things"
  | "no-height"
  | "no-distance"
  | "no-role"
  | "count"
  | "below-ground"
  | "at-an-end";

export interface PathRefused {
  readonly kind: "refused";
  readonly why: PathRefusal;
  /** One sentence for the builder. */
  readonly reason: string;
}

export function pathRefused(why: PathRefusal, reason: string): PathRefused {
  return { kind: "refused", why, reason };
}

/** As said to the builder: metres to a tenth at most, or feet. */
export function saidM(metres: number, units: UnitSystem): string {
  return sayingIn(units)(Math.round(metres * 10) / 10, "m away", 1);
}

/** A path too short or too long to speak of. */
export function lengthRefused(distanceM: number, units: UnitSystem): PathRefused | null {
  if (distanceM < 10) {
    return pathRefused("one-place", "The two ends stand in one place: there is no path between them.");
  }
  if (distanceM > 200_000) {
    return pathRefused("too-long", `${saidM(distanceM, units)} is farther than any post's radio reaches.`);
  }
  return null;
}
