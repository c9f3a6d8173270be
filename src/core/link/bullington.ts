import { within } from "../numerics/index.ts";
import { EARTH_RADIUS_M } from "./earth.ts";
import { wavelengthM } from "./free-space.ts";
import { knifeEdgeLossDb } from "./knife-edge.ts";

export type ProfilePoint = {
  readonly distanceFromNearM: number;
  /** Ground, with what stands on it, above sea level. */
  readonly groundM: number;
};

export type TerrainPath = {
  /** Ground from the near end (distance 0) to the far end, distances strictly rising, at least three points. */
  readonly profile: readonly ProfilePoint[];
  /** Near antenna above its ground, 0.1 to 3000. */
  readonly nearMastM: number;
  /** Far antenna above its ground, 0.1 to 3000. */
  readonly farMastM: number;
  /** 30 to 300 000. */
  readonly frequencyMHz: number;
  /** Effective-earth-radius factor, 0.3 to 100. */
  readonly k: number;
};

export type BullingtonLoss = {
  readonly lossDb: number;
  /** v of the equivalent edge, or of the worst point where the ends see each other. */
  readonly v: number;
  /** Loss of that one edge alone, before the correction for irregular ground. */
  readonly edgeLossDb: number;
  readonly isLineOfSight: boolean;
};

/**
 * Diffraction loss over irregular ground: the whole profile is replaced by the one edge where the two horizon lines
 * meet, then corrected. At grazing it charges 12.4 dB, more than one clean edge: meant for ground, not for a single wall.
 *
 * @param path  see {@link TerrainPath}
 * @throws RangeFault outside the ranges there
 * @source Recommendation ITU-R P.526 clause 4.5.1 = P.452 clause 4.2.1, Bullington part
 */
export function bullingtonLoss(path: TerrainPath): BullingtonLoss {
  const { profile, nearM, farM, totalKm } = checkedTerrain(path);
  return equivalentEdgeLoss({
    nearM,
    farM,
    totalKm,
    inner: profile.slice(1, -1),
    frequencyMHz: path.frequencyMHz,
    k: path.k,
  });
}

/** Bullington's construction over points between two antennas whose heights stand in the same datum. */
export function equivalentEdgeLoss(path: {
  readonly nearM: number;
  readonly farM: number;
  readonly totalKm: number;
  readonly inner: readonly ProfilePoint[];
  readonly frequencyMHz: number;
  readonly k: number;
}): BullingtonLoss {
  const { nearM, farM, totalKm } = path;
  const waveM = wavelengthM(path.frequencyMHz);
  const curve = 500_000 / (EARTH_RADIUS_M * path.k);
  const inner = path.inner.map((point) => {
    const km = point.distanceFromNearM / 1000;
    return { km, liftedM: point.groundM + curve * km * (totalKm - km) };
  });
  const vAt = (point: { readonly km: number; readonly liftedM: number }) =>
    (point.liftedM - (nearM * (totalKm - point.km) + farM * point.km) / totalKm) *
    Math.sqrt((0.002 * totalKm) / (waveM * point.km * (totalKm - point.km)));
  const nearSlope = maxOf(inner.map(({ km, liftedM }) => (liftedM - nearM) / km));
  const farSlope = maxOf(inner.map(({ km, liftedM }) => (liftedM - farM) / (totalKm - km)));
  const isLineOfSight = nearSlope < (farM - nearM) / totalKm;
  let v = maxOf(inner.map(vAt));
  // on a path that just grazes the two slopes cancel, the lines coincide, and v is that of the point touched
  if (!isLineOfSight && nearSlope + farSlope > 1e-9) {
    const meetKm = (farM - nearM + farSlope * totalKm) / (nearSlope + farSlope);
    v = vAt({ km: meetKm, liftedM: nearM + nearSlope * meetKm });
  }
  const edgeLossDb = knifeEdgeLossDb(v);
  const lossDb = edgeLossDb + (1 - Math.exp(-edgeLossDb / 6)) * (10 + 0.02 * totalKm);
  return { lossDb, v, edgeLossDb, isLineOfSight };
}

/** A loop, for a spread call fails on profiles of many thousand points. */
function maxOf(values: readonly number[]): number {
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) if (value > max) max = value;
  return max;
}

/** Range checks shared by the terrain methods; antenna heights above sea level. */
export function checkedTerrain(path: TerrainPath) {
  const { profile } = path;
  within("profile.length", profile.length, 3, 100_000);
  within("profile[0].distanceFromNearM", profile[0]!.distanceFromNearM, 0, 0);
  profile.forEach((point, i) => {
    within("groundM", point.groundM, -500, 9000);
    if (i > 0) {
      const gapM = point.distanceFromNearM - profile[i - 1]!.distanceFromNearM;
      within(`profile[${i}].distanceFromNearM less the one before`, gapM, 0.01, 1_000_000);
    }
  });
  within("k", path.k, 0.3, 100);
  const totalKm = within("path length in km", profile.at(-1)!.distanceFromNearM / 1000, 0.01, 1000);
  return {
    profile,
    totalKm,
    nearM: profile[0]!.groundM + within("nearMastM", path.nearMastM, 0.1, 3000),
    farM: profile.at(-1)!.groundM + within("farMastM", path.farMastM, 0.1, 3000),
  };
}
