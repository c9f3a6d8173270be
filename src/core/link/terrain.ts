import { within } from "../numerics/index.ts";
import type { ProfilePoint } from "./bullington.ts";
import type { Obstacle } from "./clearance.ts";

/**
 * Mean height of the ground under a path, weighted by the stretches between its points.
 *
 * @param profile  distances strictly rising, at least two points
 * @returns m, in the datum of the profile
 * @throws RangeFault for fewer points
 * @source trapezoidal rule, worked by hand; the ht of Recommendation ITU-R P.530 clause 2.3.1 (trees left out)
 */
export function meanTerrainM(profile: readonly ProfilePoint[]): number {
  return integralOf(profile, (groundM) => groundM) / lengthOf(profile);
}

/**
 * Standard deviation of the ground's height about its mean along a path.
 *
 * Along the path only: the sa of ITU-R P.530 is that of a square of 110 km, which a profile cannot give.
 *
 * @param profile  distances strictly rising, at least two points
 * @returns m
 * @throws RangeFault for fewer points
 * @source definition; straight lines between the points, integrated exactly
 */
export function terrainRoughnessM(profile: readonly ProfilePoint[]): number {
  const meanM = meanTerrainM(profile);
  let total = 0;
  for (let i = 1; i < profile.length; i++) {
    const gapM = profile[i]!.distanceFromNearM - profile[i - 1]!.distanceFromNearM;
    const a = profile[i - 1]!.groundM - meanM;
    const b = profile[i]!.groundM - meanM;
    total += (gapM * (a * a + a * b + b * b)) / 3;
  }
  return Math.sqrt(total / lengthOf(profile));
}

/**
 * Height of the ground at one place of a path, straight between the points.
 *
 * @param at.distanceFromNearM  0 to the length of the path
 * @returns m
 * @throws RangeFault outside the range above
 * @source definition
 */
export function groundAtM(at: {
  readonly profile: readonly ProfilePoint[];
  readonly distanceFromNearM: number;
}): number {
  const { profile } = at;
  const last = profile.at(-1)!;
  const distanceM = within("distanceFromNearM", at.distanceFromNearM, 0, last.distanceFromNearM);
  let low = 0;
  let high = profile.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (profile[middle]!.distanceFromNearM <= distanceM) low = middle;
    else high = middle;
  }
  const a = profile[low]!;
  const b = profile[high]!;
  if (a === b) return a.groundM;
  const share = (distanceM - a.distanceFromNearM) / (b.distanceFromNearM - a.distanceFromNearM);
  return a.groundM + share * (b.groundM - a.groundM);
}

/**
 * The points of a profile that a drawing, or a line between antennas, cannot do without.
 *
 * @param thin.profile     distances strictly rising, at least two points
 * @param thin.toleranceM  0 to 1000: no point left out lies farther than this above or below the line through what stays
 * @returns first and last always; every other only where needed
 * @throws RangeFault outside the range above
 * @source line simplification by farthest point (Ramer 1972, Douglas and Peucker 1973, from memory), heights only
 */
export function thinnedProfile(thin: {
  readonly profile: readonly ProfilePoint[];
  readonly toleranceM: number;
}): readonly ProfilePoint[] {
  const { profile } = thin;
  lengthOf(profile);
  const toleranceM = within("toleranceM", thin.toleranceM, 0, 1000);
  const keeps = new Set([0, profile.length - 1]);
  // a stack, not recursion: a sawtooth of many thousand points would exhaust the call stack
  const open: (readonly [number, number])[] = [[0, profile.length - 1]];
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const [from, to] = stretch;
    const ends = [profile[from]!, profile[to]!];
    let farthest = -1;
    let farthestM = toleranceM;
    for (let i = from + 1; i < to; i++) {
      const offM = Math.abs(
        profile[i]!.groundM - groundAtM({ profile: ends, distanceFromNearM: clipped(profile[i]!, ends) }),
      );
      if (offM > farthestM) {
        farthest = i;
        farthestM = offM;
      }
    }
    if (farthest < 0) continue;
    keeps.add(farthest);
    open.push([from, farthest], [farthest, to]);
  }
  return profile.filter((_, i) => keeps.has(i));
}

/**
 * The inner points of a profile as obstacles of kind `ground`, for pathClearance and obstacleLoss.
 *
 * @param profile  distances strictly rising, at least two points
 * @throws RangeFault for fewer points
 * @source definition
 */
export function profileObstacles(profile: readonly ProfilePoint[]): readonly Obstacle[] {
  lengthOf(profile);
  return profile.slice(1, -1).map(({ distanceFromNearM, groundM }) => ({
    distanceFromNearM,
    topM: groundM,
    kind: "ground",
  }));
}

function clipped(point: ProfilePoint, ends: readonly ProfilePoint[]): number {
  return Math.min(point.distanceFromNearM, ends[1]!.distanceFromNearM);
}

function lengthOf(profile: readonly ProfilePoint[]): number {
  within("profile.length", profile.length, 2, 100_000);
  return within(
    "path length",
    profile.at(-1)!.distanceFromNearM - profile[0]!.distanceFromNearM,
    0.01,
    1_000_000,
  );
}

function integralOf(profile: readonly ProfilePoint[], of: (groundM: number) => number): number {
  lengthOf(profile);
  let total = 0;
  for (let i = 1; i < profile.length; i++) {
    const gapM = profile[i]!.distanceFromNearM - profile[i - 1]!.distanceFromNearM;
    total += (gapM * (of(profile[i]!.groundM) + of(profile[i - 1]!.groundM))) / 2;
  }
  return total;
}
