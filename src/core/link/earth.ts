import { within } from "../numerics/index.ts";

/** Mean radius of the Earth used by the ITU-R P series, m. */
export const EARTH_RADIUS_M = 6_371_000;

/**
 * Effective-earth-radius factor to use when nothing better is known: the median of a temperate climate.
 *
 * @source Recommendation ITU-R P.530 clearance rules and P.834 (from memory)
 */
export const MEDIAN_K = 4 / 3;

/**
 * Effective-earth-radius factor for a refractivity that falls steadily with height.
 *
 * @param lapseNPerKm  fall of refractivity per km, -1000 to 156 (positive: it falls, rays bend down)
 * @returns ratio; 4/3 at about 39 N-units/km
 * @throws RangeFault outside the range above (at 157 a ray follows the Earth and k has no bound)
 * @source Recommendation ITU-R P.452, effective Earth radius, k = 157/(157 - dN)
 */
export function effectiveEarthRatio(lapseNPerKm: number): number {
  return 157 / (157 - within("lapseNPerKm", lapseNPerKm, -1000, 156));
}

/**
 * Height by which the Earth's curve rises into a straight radio path at one point of it.
 *
 * @param fromNearM  distance of the point from one end, 0 to 1 000 000
 * @param fromFarM   distance of the point from the other end, 0 to 1 000 000
 * @param k          effective-earth-radius factor, 0.3 to 100
 * @returns m
 * @accuracy parabola in place of the circle; below 1 mm at 50 km
 * @throws RangeFault outside the ranges above
 * @source common practice, d1 d2 / (2 k R); Recommendation ITU-R P.530 uses the same form with 8500 km
 * @example earthBulgeM({ fromNearM: 5000, fromFarM: 5000, k: 4 / 3 })  // 1.47
 */
export function earthBulgeM(point: {
  readonly fromNearM: number;
  readonly fromFarM: number;
  readonly k: number;
}): number {
  const fromNearM = within("fromNearM", point.fromNearM, 0, 1_000_000);
  const fromFarM = within("fromFarM", point.fromFarM, 0, 1_000_000);
  return (fromNearM * fromFarM) / (2 * within("k", point.k, 0.3, 100) * EARTH_RADIUS_M);
}

/**
 * Farthest distance at which two antennas above a smooth Earth see each other.
 *
 * @param nearHeightM  above the smooth surface, 0 to 10 000
 * @param farHeightM   above the smooth surface, 0 to 10 000
 * @param k            effective-earth-radius factor, 0.3 to 100
 * @returns m. Seeing is not clearing: the first Fresnel zone is half blocked at this distance
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.526 clause 1 and P.834 (from memory): sqrt(2 k R h1) + sqrt(2 k R h2)
 * @example radioHorizonM({ nearHeightM: 10, farHeightM: 0, k: 4 / 3 })  // 13 035
 */
export function radioHorizonM(path: {
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly k: number;
}): number {
  const twiceRadiusM = 2 * within("k", path.k, 0.3, 100) * EARTH_RADIUS_M;
  return (
    Math.sqrt(twiceRadiusM * within("nearHeightM", path.nearHeightM, 0, 10_000)) +
    Math.sqrt(twiceRadiusM * within("farHeightM", path.farHeightM, 0, 10_000))
  );
}

/**
 * Angle above the horizontal at which the near antenna must point to look at the far one.
 *
 * @param distanceM    1 to 1 000 000
 * @param nearHeightM  antenna above a common datum, -500 to 10 000
 * @param farHeightM   antenna above the same datum, -500 to 10 000
 * @param k            effective-earth-radius factor, 0.3 to 100
 * @returns degrees, positive upwards
 * @throws RangeFault outside the ranges above
 * @source worked from the geometry of the curved Earth: rise over run, less half the angle at the Earth's centre
 * @example aimTiltDeg({ distanceM: 1000, nearHeightM: 3, farHeightM: 20, k: 4 / 3 })  // 0.97
 */
export function aimTiltDeg(path: {
  readonly distanceM: number;
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly k: number;
}): number {
  const distanceM = within("distanceM", path.distanceM, 1, 1_000_000);
  const riseM =
    within("farHeightM", path.farHeightM, -500, 10_000) -
    within("nearHeightM", path.nearHeightM, -500, 10_000);
  const fallM = distanceM ** 2 / (2 * within("k", path.k, 0.3, 100) * EARTH_RADIUS_M);
  return (Math.atan2(riseM - fallM, distanceM) * 180) / Math.PI;
}
