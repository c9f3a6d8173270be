import { within } from "../numerics/index.ts";
import { type FuseFamily, fuseBetween } from "./fuse.ts";

/** Sun can be brighter than the standard test by this much for hours: clear air, cloud edges, snow. NEC 690.8(A). */
const IRRADIANCE_FACTOR = 1.25;
/** Continuous-current margin of conductors and fuses. NEC 690.8(B), 690.9(B). */
const CONTINUOUS_FACTOR = 1.25;

/** Currents for sizing what carries a photovoltaic array. */
export interface PvCircuitCurrents {
  /** 1.25 Isc of all parallel strings: the continuous current to give to pickConductor. */
  readonly maxCurrentA: number;
  /** 1.5625 Isc: least ampacity before correction and least fuse. */
  readonly minFuseA: number;
}

/**
 * Design currents of a photovoltaic source or output circuit.
 *
 * @param iscA              short-circuit current of one string at standard test conditions, 0 to 100
 * @param stringsInParallel 1 to 100
 * @returns A
 * @throws RangeFault outside the ranges above
 * @source NEC 690.8(A), 690.8(B), 690.9(B)
 */
export function pvCircuitCurrents({
  iscA,
  stringsInParallel,
}: {
  readonly iscA: number;
  readonly stringsInParallel: number;
}): PvCircuitCurrents {
  within("iscA", iscA, 0, 100);
  within("stringsInParallel", stringsInParallel, 1, 100);
  const maxCurrentA = IRRADIANCE_FACTOR * iscA * stringsInParallel;
  return { maxCurrentA, minFuseA: CONTINUOUS_FACTOR * maxCurrentA };
}

/** Which rule asks for a fuse in each string. */
export type StringFuseReason = "nec-backfeed" | "iec-backfeed" | "conductor-backfeed" | "battery-backfeed";

export type StringFuse =
  | { readonly kind: "not-needed"; readonly backfeedA: number }
  | {
      readonly kind: "fuse" | "none-fits";
      readonly reasons: readonly StringFuseReason[];
      /** What the other strings can push into a faulted one. */
      readonly backfeedA: number;
      readonly minA: number;
      readonly maxA: number;
      /** Null where no standard rating lies between minA and maxA. */
      readonly ratingA: number | null;
    };

/**
 * Whether each of several equal parallel strings needs its own fuse, and which: the American and the international
 * rule side by side, the stricter one counts.
 *
 * @param iscA                  of one string, 0.1 to 100
 * @param stringsInParallel     1 to 100
 * @param maxSeriesFuseA        "maximum series fuse" on the module's label, 1 to 100
 * @param conductorAmpacityA    of the string's own wire as installed, 1 to 1000
 * @param batteryCanBackfeed    true where the controller can pass battery current back and no device on its battery
 *   side protects the array's wiring
 * @returns the least standard rating that neither tires nor exceeds module or wire
 * @throws RangeFault outside the ranges above
 * @source NEC 690.9(A) and (B): needed if (n-1) x 1.25 Isc exceeds the label or the wire; rating at least 1.5625 Isc
 * @source IEC 62548:2016 clause 6.5, from memory: needed if (n-1) Isc exceeds the label; 1.5 Isc < rating < 2.4 Isc
 */
export function stringFuse({
  iscA,
  stringsInParallel,
  maxSeriesFuseA,
  conductorAmpacityA,
  batteryCanBackfeed,
  family = "gpv",
}: {
  readonly iscA: number;
  readonly stringsInParallel: number;
  readonly maxSeriesFuseA: number;
  readonly conductorAmpacityA: number;
  readonly batteryCanBackfeed: boolean;
  readonly family?: FuseFamily;
}): StringFuse {
  within("iscA", iscA, 0.1, 100);
  within("stringsInParallel", stringsInParallel, 1, 100);
  within("maxSeriesFuseA", maxSeriesFuseA, 1, 100);
  within("conductorAmpacityA", conductorAmpacityA, 1, 1000);
  const othersIscA = (stringsInParallel - 1) * iscA;
  const backfeedA = IRRADIANCE_FACTOR * othersIscA;
  const reasons: StringFuseReason[] = [];
  if (backfeedA > maxSeriesFuseA) reasons.push("nec-backfeed");
  if (othersIscA > maxSeriesFuseA) reasons.push("iec-backfeed");
  if (backfeedA > conductorAmpacityA) reasons.push("conductor-backfeed");
  if (batteryCanBackfeed) reasons.push("battery-backfeed");
  if (reasons.length === 0) return { kind: "not-needed", backfeedA };
  const minA = CONTINUOUS_FACTOR * IRRADIANCE_FACTOR * iscA;
  const maxA = Math.min(2.4 * iscA, maxSeriesFuseA, conductorAmpacityA);
  const pick = fuseBetween({ minA, maxA, family });
  const ratingA = pick.kind === "picked" ? pick.ratingA : null;
  return { kind: ratingA === null ? "none-fits" : "fuse", reasons, backfeedA, minA, maxA, ratingA };
}
