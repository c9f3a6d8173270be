import { type BullingtonLoss, bullingtonLoss, equivalentEdgeLoss, type TerrainPath } from "./bullington.ts";
import { effectiveHeights, type SmoothSurface } from "./smooth-earth.ts";
import { type EarthSurface, sphericalEarthLossDb } from "./spherical-earth.ts";

export type DeltaBullingtonLoss = {
  readonly lossDb: number;
  /** Bullington's construction over the real ground. */
  readonly actual: BullingtonLoss;
  /** The same over a smooth earth with the effective heights. */
  readonly smoothDb: number;
  /** Exact diffraction over that smooth earth; what it asks more than Bullington's is added. */
  readonly sphericalDb: number;
};

/**
 * Diffraction loss over any ground, from hills to a smooth curved plain: Bullington's construction, corrected by what
 * it misses over a smooth earth.
 *
 * @param path                see TerrainPath; at least 100 m long
 * @param path.smoothSurface  heights of the smooth surface where known; fitted to the profile when absent
 * @param path.polarisation   horizontal when absent
 * @param path.surface        land when absent
 * @throws RangeFault outside the ranges of TerrainPath and SphericalPath
 * @source Recommendation ITU-R P.526 clauses 3.2, 4.5.1 to 4.5.3 = P.452 clauses 4.2.1 to 4.2.3
 */
export function deltaBullingtonLoss(
  path: TerrainPath & {
    readonly smoothSurface?: SmoothSurface;
    readonly polarisation?: "horizontal" | "vertical";
    readonly surface?: EarthSurface;
  },
): DeltaBullingtonLoss {
  const { profile, frequencyMHz, k } = path;
  const actual = bullingtonLoss(path);
  const lengthM = profile.at(-1)!.distanceFromNearM;
  const { nearM, farM } = effectiveHeights({
    profile,
    nearMastM: path.nearMastM,
    farMastM: path.farMastM,
    frequencyMHz,
    k,
    ...(path.smoothSurface ? { surface: path.smoothSurface } : {}),
  });
  const smoothDb = equivalentEdgeLoss({
    nearM,
    farM,
    totalKm: lengthM / 1000,
    inner: profile.slice(1, -1).map(({ distanceFromNearM }) => ({ distanceFromNearM, groundM: 0 })),
    frequencyMHz,
    k,
  }).lossDb;
  const sphericalDb = sphericalEarthLossDb({
    distanceM: lengthM,
    nearHeightM: nearM,
    farHeightM: farM,
    frequencyMHz,
    k,
    ...(path.polarisation ? { polarisation: path.polarisation } : {}),
    ...(path.surface ? { surface: path.surface } : {}),
  });
  return { lossDb: actual.lossDb + Math.max(0, sphericalDb - smoothDb), actual, smoothDb, sphericalDb };
}
