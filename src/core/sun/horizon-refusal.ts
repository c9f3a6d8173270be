export type HorizonRefusal =
  | "empty"
  | "negation"
  | "loose-number"
  | "no-direction"
  | "either-way"
  | "no-height"
  | "no-distance"
  | "no-role"
  | "too-high"
  | "pair-out-of-range"
  | "lone-pair";

export interface HorizonRefused {
  readonly kind: "refused";
  readonly why: HorizonRefusal;
  /** One sentence for the builder. */
  readonly reason: string;
}

export function refused(why: HorizonRefusal, reason: string): HorizonRefused {
  return { kind: "refused", why, reason };
}

/** As said to the builder: to a tenth at most. */
export function saidNumber(value: number): string {
  return String(Math.round(value * 10) / 10);
}
