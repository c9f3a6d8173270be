import { within } from "../numerics/index.ts";
import { fresnelRadiusM } from "./fresnel.ts";

/** Below this v a knife edge costs nothing (Recommendation ITU-R P.526 clause 4.1, equation 31). */
export const LOSSLESS_V = -0.78;

/**
 * The dimensionless height of a knife edge, v of ITU-R P.526.
 *
 * @param aboveLineM    how far the edge stands ABOVE the straight line between the antennas, -30 000 to 30 000;
 *                      negative when the line clears it (P.530 counts the other way round)
 * @param fromNearM     distance of the edge from one end, 0.01 to 1 000 000
 * @param fromFarM      distance of the edge from the other end, 0.01 to 1 000 000
 * @param frequencyMHz  30 to 300 000
 * @returns ratio: sqrt(2) times the height in first Fresnel radii
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.526 clause 4.1
 */
export function knifeEdgeV(edge: {
  readonly aboveLineM: number;
  readonly fromNearM: number;
  readonly fromFarM: number;
  readonly frequencyMHz: number;
}): number {
  const radiusM = fresnelRadiusM({
    fromNearM: within("fromNearM", edge.fromNearM, 0.01, 1_000_000),
    fromFarM: within("fromFarM", edge.fromFarM, 0.01, 1_000_000),
    frequencyMHz: edge.frequencyMHz,
  });
  return (Math.SQRT2 * within("aboveLineM", edge.aboveLineM, -30_000, 30_000)) / radiusM;
}

/**
 * Diffraction loss over one knife edge, J(v).
 *
 * @param v  dimensionless height of the edge, -1e9 to 1e9
 * @returns dB; 0 for v of -0.78 and below, 6.03 where the edge just touches the line
 * @accuracy within 0.15 dB of the exact Fresnel integrals for v >= -0.7
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.526 clause 4.1, equation 31
 * @example knifeEdgeLossDb(1)  // 13.93
 */
export function knifeEdgeLossDb(v: number): number {
  if (within("v", v, -1e9, 1e9) <= LOSSLESS_V) return 0;
  return 6.9 + 20 * Math.log10(Math.hypot(v - 0.1, 1) + v - 0.1);
}

/**
 * Diffraction loss over average terrain by the straight-line rule of ITU-R P.530.
 *
 * @param clearanceFrac  clearance in first Fresnel radii, POSITIVE when the path clears the obstacle, -10 to -0.25
 * @returns dB
 * @accuracy meant for losses above about 15 dB
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.530 clause 2.2.1, Ad = 10 - 20 h/F1
 */
export function averageTerrainLossDb(clearanceFrac: number): number {
  return 10 - 20 * within("clearanceFrac", clearanceFrac, -10, -0.25);
}
