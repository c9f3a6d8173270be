import { checkedTerrain, type ProfilePoint, type TerrainPath } from "./bullington.ts";

/** A smooth surface laid through the ground: its heights above sea level at the two ends. */
export type SmoothSurface = { readonly nearM: number; readonly farM: number };

/**
 * The straight surface that fits a profile best by least squares, weighted by the stretches between its points.
 *
 * @param profile  distances strictly rising from 0, at least two points
 * @returns heights at both ends, m above sea level
 * @throws RangeFault outside the ranges of TerrainPath
 * @source Recommendation ITU-R P.452 annex 1 attachment 2 (P.526 clause 4.5.3), v1 and v2, from memory
 */
export function smoothSurface(profile: readonly ProfilePoint[]): SmoothSurface {
  let area = 0;
  let moment = 0;
  for (let i = 1; i < profile.length; i++) {
    const before = profile[i - 1]!;
    const at = profile[i]!;
    const gapM = at.distanceFromNearM - before.distanceFromNearM;
    area += gapM * (at.groundM + before.groundM);
    moment +=
      gapM *
      (at.groundM * (2 * at.distanceFromNearM + before.distanceFromNearM) +
        before.groundM * (at.distanceFromNearM + 2 * before.distanceFromNearM));
  }
  const lengthM = profile.at(-1)!.distanceFromNearM - profile[0]!.distanceFromNearM;
  return {
    nearM: (2 * area * lengthM - moment) / lengthM ** 2,
    farM: (moment - area * lengthM) / lengthM ** 2,
  };
}

/**
 * Antenna heights above the smooth surface, as diffraction over a smooth earth needs them: the surface is pushed down by
 * what stands above the line between the antennas, and never lies above the real ground at either end.
 *
 * @param path     see TerrainPath
 * @param surface  fitted by {@link smoothSurface} when absent
 * @returns m, never less than the masts
 * @throws RangeFault outside the ranges of TerrainPath
 * @source Recommendation ITU-R P.452 annex 1 attachment 2 (P.526 clause 4.5.3), heights for the diffraction model, from
 *         memory
 */
export function effectiveHeights(path: TerrainPath & { readonly surface?: SmoothSurface }): {
  readonly nearM: number;
  readonly farM: number;
} {
  const { profile, nearM, farM, totalKm } = checkedTerrain(path);
  const surface = path.surface ?? smoothSurface(profile);
  let aboveLineM = 0;
  let nearSlope = 0;
  let farSlope = 0;
  for (const point of profile.slice(1, -1)) {
    const km = point.distanceFromNearM / 1000;
    const aboveM = point.groundM - (nearM * (totalKm - km) + farM * km) / totalKm;
    aboveLineM = Math.max(aboveLineM, aboveM);
    nearSlope = Math.max(nearSlope, aboveM / km);
    farSlope = Math.max(farSlope, aboveM / (totalKm - km));
  }
  const nearShare = aboveLineM > 0 ? nearSlope / (nearSlope + farSlope) : 0;
  const nearSurfaceM = surface.nearM - aboveLineM * nearShare;
  const farSurfaceM = surface.farM - aboveLineM * (1 - nearShare);
  return {
    nearM: nearM - Math.min(nearSurfaceM, profile[0]!.groundM),
    farM: farM - Math.min(farSurfaceM, profile.at(-1)!.groundM),
  };
}
