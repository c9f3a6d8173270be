import { within } from "../numerics/index.ts";
import { wavelengthM } from "./free-space.ts";

/**
 * Radius of a Fresnel zone at one point of a path.
 *
 * @param fromNearM     distance of the point from one end, 0 to 1 000 000
 * @param fromFarM      distance of the point from the other end, 0 to 1 000 000; not both 0
 * @param frequencyMHz  30 to 300 000
 * @param zone          1 for the first zone (the default), up to 100
 * @returns m
 * @accuracy 0.1 % where both distances exceed a hundred radii; the printed constants 550 and 17.3 are rounded and
 *           give up to 0.6 % more
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.526 clause 2.1, Rn = sqrt(n lambda d1 d2 / (d1 + d2))
 * @example fresnelRadiusM({ fromNearM: 2500, fromFarM: 2500, frequencyMHz: 5800 })  // 8.04
 */
export function fresnelRadiusM(point: {
  readonly fromNearM: number;
  readonly fromFarM: number;
  readonly frequencyMHz: number;
  readonly zone?: number;
}): number {
  const fromNearM = within("fromNearM", point.fromNearM, 0, 1_000_000);
  const fromFarM = within("fromFarM", point.fromFarM, 0, 1_000_000);
  const pathM = within("fromNearM + fromFarM", fromNearM + fromFarM, 1e-3, 2_000_000);
  const zone = within("zone", point.zone ?? 1, 1, 100);
  return Math.sqrt((zone * wavelengthM(point.frequencyMHz) * fromNearM * fromFarM) / pathM);
}
