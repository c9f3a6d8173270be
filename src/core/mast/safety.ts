import { within } from "../numerics/index.ts";
import { M_PER_FT } from "./tables.ts";

/** How something is to be lifted. */
export interface Lifting {
  /** Hands from the ankles, 0 to 0.63; below 0.25 counts as 0.25. */
  readonly horizontalM: number;
  /** Hands above the floor at the start, 0 to 1.75. */
  readonly startHeightM: number;
  /** Up or down, 0 to 1.75; below 0.25 counts as 0.25. */
  readonly travelM: number;
  /** Twist of the trunk, 0 to 135; default 0. */
  readonly twistDeg?: number;
  /** Grip: 1 good handles, 0.95 fair, 0.9 poor; default 0.95. */
  readonly couplingFactor?: number;
  /** 1 for a lift now and then, less when repeated, 0.1 to 1; default 1. */
  readonly frequencyFactor?: number;
}

/**
 * Weight that nearly all healthy adults may lift in this way.
 *
 * @returns kg
 * @accuracy the metric form; the American form of the same equation gives up to 3 % more because its constants are
 *   rounded differently
 * @throws RangeFault outside the ranges of Lifting
 * @source NIOSH 94-110 (revised 9/2021), revised lifting equation, metric
 */
export function recommendedWeightKg({
  horizontalM,
  startHeightM,
  travelM,
  twistDeg = 0,
  couplingFactor = 0.95,
  frequencyFactor = 1,
}: Lifting): number {
  const horizontalCm = 100 * Math.max(0.25, within("horizontalM", horizontalM, 0, 0.63));
  const startCm = 100 * within("startHeightM", startHeightM, 0, 1.75);
  const travelCm = 100 * Math.max(0.25, within("travelM", travelM, 0, 1.75));
  within("twistDeg", twistDeg, 0, 135);
  within("couplingFactor", couplingFactor, 0.9, 1);
  within("frequencyFactor", frequencyFactor, 0.1, 1);
  return (
    23 *
    (25 / horizontalCm) *
    (1 - 0.003 * Math.abs(startCm - 75)) *
    (0.82 + 4.5 / travelCm) *
    (1 - 0.0032 * twistDeg) *
    couplingFactor *
    frequencyFactor
  );
}

/**
 * Weight over what one person should lift: above 1, two people or a hoist; above 3, a hoist.
 *
 * @param weightKg  0 to 500
 * @returns ratio
 * @throws RangeFault outside the ranges above
 * @source NIOSH 94-110; hoist above 3: the same publication, from memory
 */
export function liftingIndex({ weightKg, ...lifting }: Lifting & { readonly weightKg: number }): number {
  return within("weightKg", weightKg, 0, 500) / recommendedWeightKg(lifting);
}

/** Angle of a ladder set one out for four of its length, from the ground. Source: OSHA 1926.1053 (75 1/2 degrees) */
export const LADDER_ANGLE_DEG = (Math.acos(0.25) * 180) / Math.PI;

/**
 * Distance of a ladder's foot from what it leans on.
 *
 * @param workingLengthM  foot to upper support along the ladder, 1 to 15
 * @returns m
 * @throws RangeFault outside the range above
 * @source OSHA 1926.1053(b)(5)(i): a quarter of the working length
 */
export function ladderFootM(workingLengthM: number): number {
  return within("workingLengthM", workingLengthM, 1, 15) / 4;
}

/**
 * Least level distance from a mast's foot to any overhead line, so that it stays clear even if it falls towards it.
 *
 * @param mastLengthM  as it is raised, panel and everything on top included, 0.5 to 60
 * @param lineKv       0 to 1000; default 50, which covers any line up to 50 kV
 * @returns m; for an unknown line ask its owner, and never go by this figure alone
 * @throws RangeFault outside the ranges above
 * @source OSHA 1910.333(c)(3): 10 ft to 50 kV and 4 in more for every 10 kV above; adding the mast's whole length:
 *   common practice, no source
 */
export function overheadLineClearanceM({
  mastLengthM,
  lineKv = 50,
}: {
  readonly mastLengthM: number;
  readonly lineKv?: number;
}): number {
  within("mastLengthM", mastLengthM, 0.5, 60);
  const steps = Math.ceil(Math.max(0, within("lineKv", lineKv, 0, 1000) - 50) / 10);
  return mastLengthM + 10 * M_PER_FT + (steps * 4 * M_PER_FT) / 12;
}
