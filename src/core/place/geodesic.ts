import geodesic from "geographiclib-geodesic";
import { within } from "../numerics/index.ts";

export interface BearingAndDistance {
  readonly distanceM: number;
  /** at the first point, clockwise from true north, 0 to under 360; 0 when both points are the same */
  readonly bearingDeg: number;
}

/**
 * Shortest way between two points on the WGS 84 ellipsoid, at sea level.
 *
 * @param fromLatitudeDeg, toLatitudeDeg    -90 to 90
 * @param fromLongitudeDeg, toLongitudeDeg  -180 to 180
 * @accuracy about 10 nm (the library's own statement); the coordinates decide
 * @throws RangeFault outside the ranges above
 * @source Karney, Algorithms for geodesics, J. Geodesy 87 (2013) 43-55; geographiclib-geodesic 2.2.0
 */
export function bearingAndDistance(ends: {
  readonly fromLatitudeDeg: number;
  readonly fromLongitudeDeg: number;
  readonly toLatitudeDeg: number;
  readonly toLongitudeDeg: number;
}): BearingAndDistance {
  const { s12, azi1 } = geodesic.Geodesic.WGS84.Inverse(
    within("fromLatitudeDeg", ends.fromLatitudeDeg, -90, 90),
    within("fromLongitudeDeg", ends.fromLongitudeDeg, -180, 180),
    within("toLatitudeDeg", ends.toLatitudeDeg, -90, 90),
    within("toLongitudeDeg", ends.toLongitudeDeg, -180, 180),
  );
  const distanceM = s12 ?? Number.NaN;
  const turned = distanceM === 0 ? 0 : ((azi1 ?? Number.NaN) + 360) % 360;
  return { distanceM, bearingDeg: turned };
}
