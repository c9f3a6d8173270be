import { within } from "../numerics/index.ts";
import { earthBulgeM } from "./earth.ts";
import { fresnelRadiusM } from "./fresnel.ts";

/**
 * Something that stands in or near a path.
 *
 * - `ground`: one sample of the ground's profile; many of them describe a slope or a plain
 * - `ridge`, `building`: one clean edge
 * - `trees`: an edge that a wave can also pass through, weakened
 */
export type ObstacleKind = "ground" | "ridge" | "building" | "trees";

export type Obstacle = {
  /** Along the path, to the middle of the obstacle. */
  readonly distanceFromNearM: number;
  /** Its top above the same datum as the antennas; growth and swaying to be added by the caller. */
  readonly topM: number;
  readonly kind: ObstacleKind;
  /** Extent along the path; 0 when absent. For trees: the metres of leaf and branch that the path meets. */
  readonly depthM?: number;
};

export type Path = {
  /** 10 to 200 000. */
  readonly distanceM: number;
  /** Near antenna above a common datum, -500 to 10 000. */
  readonly nearHeightM: number;
  /** Far antenna above the same datum, -500 to 10 000. */
  readonly farHeightM: number;
  /** 30 to 300 000. */
  readonly frequencyMHz: number;
  /** Effective-earth-radius factor, 0.3 to 100. */
  readonly k: number;
  readonly obstacles: readonly Obstacle[];
};

export type PointClearance = {
  /** Which obstacle of the path. */
  readonly index: number;
  /** Where on it: its middle or one of its two faces. */
  readonly fromNearM: number;
  /** Line between the antennas, less the obstacle's top and the Earth's bulge; negative when blocked. */
  readonly clearanceM: number;
  readonly firstZoneM: number;
  /** The same clearance in first Fresnel radii. */
  readonly clearanceFrac: number;
  /** What is missing to the wanted clearance; negative when there is height to spare. */
  readonly missingM: number;
};

export type ClearingHeights = {
  /** Lowest near antenna that clears with the far one left as it is, never below its present height. */
  readonly nearAloneM: number;
  /** Lowest far antenna that clears with the near one left as it is, never below its present height. */
  readonly farAloneM: number;
  /** Raise of both antennas by the same amount that clears; 0 when nothing is needed. */
  readonly bothRaiseM: number;
};

export type PathClearance = {
  /** One for each obstacle, in the order given: its worst spot. */
  readonly points: readonly PointClearance[];
  /** The smallest clearance in Fresnel radii; undefined when nothing was named as standing in the way. */
  readonly worst: PointClearance | undefined;
  readonly isClear: boolean;
  readonly heightsThatClear: ClearingHeights;
};

/**
 * Shares of the first Fresnel radius to keep clear: `practical` where diffraction loss reaches nothing, as ITU-R P.526 has
 * it (0.6 of the RADIUS, not the zone of n = 0.6); `standard` what ITU-R P.530 asks over the highest obstacle at the
 * median k (from memory, partly confirmed).
 */
export const CLEARANCE_FRAC = { practical: 0.6, standard: 1 } as const;

/** Nearer to an antenna than this an obstacle counts as this far away: the Fresnel zone has no width at the antenna. */
const CLOSEST_M = 0.5;

/**
 * How far a radio path clears what stands in its way, and the lowest antennas that would clear it.
 *
 * @param path           see {@link Path}; obstacles lie between the ends (distanceFromNearM 0 to distanceM)
 * @param clearanceFrac  wanted clearance in first Fresnel radii, 0 to 3: 0.6 gives practically free space, 1.0 is what
 *                       ITU-R P.530 asks at the median k
 * @returns clearances per obstacle, the worst, and the heights that clear
 * @accuracy as good as the heights: a map, a drone or an eye is the error, not this sum
 * @throws RangeFault outside the ranges above
 * @source line height against obstacle + d1 d2/(2 k R) + c F1: Recommendation ITU-R P.530 clause 2.2.2 (clearance
 *         rules, from memory) with the zone of P.526 clause 2.1
 */
export function pathClearance(path: Path & { readonly clearanceFrac: number }): PathClearance {
  const wantedFrac = within("clearanceFrac", path.clearanceFrac, 0, 3);
  const { distanceM, nearHeightM, farHeightM } = checkedPath(path);
  const spots = path.obstacles.flatMap((obstacle, index) =>
    spotsOf(obstacle, distanceM).map((fromNearM) => ({ obstacle, index, fromNearM })),
  );
  const clearances = spots.map(({ obstacle, index, fromNearM }): PointClearance => {
    const fromFarM = distanceM - fromNearM;
    const lineM = nearHeightM + ((farHeightM - nearHeightM) * fromNearM) / distanceM;
    const firstZoneM = fresnelRadiusM({ fromNearM, fromFarM, frequencyMHz: path.frequencyMHz });
    const topM = within("topM", obstacle.topM, -500, 10_000);
    const clearanceM = lineM - topM - earthBulgeM({ fromNearM, fromFarM, k: path.k });
    return {
      index,
      fromNearM,
      clearanceM,
      firstZoneM,
      clearanceFrac: clearanceM / firstZoneM,
      missingM: wantedFrac * firstZoneM - clearanceM,
    };
  });
  const points = path.obstacles.map((_, index) => worstOf(clearances.filter((c) => c.index === index))!);
  return {
    points,
    worst: worstOf(points),
    isClear: clearances.every((c) => c.missingM <= 0),
    heightsThatClear: clearingHeights({ distanceM, nearHeightM, farHeightM, clearances }),
  };
}

/**
 * Samples of the ground between the two ends where nothing is known of it but the ends: a straight slope.
 *
 * @param distanceM    10 to 200 000
 * @param nearGroundM  ground at the near end above the datum, -500 to 9000
 * @param farGroundM   ground at the far end above the datum, -500 to 9000
 * @returns obstacles of kind `ground` at every twentieth of the path; the bulge of the Earth is left to the path
 * @throws RangeFault outside the ranges above
 * @source a stated assumption, no source; a hill between the ends must be named by who knows the place
 */
export function straightGround(ends: {
  readonly distanceM: number;
  readonly nearGroundM: number;
  readonly farGroundM: number;
}): readonly Obstacle[] {
  const distanceM = within("distanceM", ends.distanceM, 10, 200_000);
  const nearM = within("nearGroundM", ends.nearGroundM, -500, 9000);
  const farM = within("farGroundM", ends.farGroundM, -500, 9000);
  return Array.from({ length: 19 }, (_, i) => {
    const along = (i + 1) / 20;
    return {
      distanceFromNearM: along * distanceM,
      topM: nearM + along * (farM - nearM),
      kind: "ground" as const,
    };
  });
}

function checkedPath(path: Path) {
  return {
    distanceM: within("distanceM", path.distanceM, 10, 200_000),
    nearHeightM: within("nearHeightM", path.nearHeightM, -500, 10_000),
    farHeightM: within("farHeightM", path.farHeightM, -500, 10_000),
  };
}

/** The middle and, of a deep obstacle, both faces: on a path that is not level a face can be the worst spot. */
function spotsOf(obstacle: Obstacle, distanceM: number): readonly number[] {
  const middleM = within("distanceFromNearM", obstacle.distanceFromNearM, 0, distanceM);
  const halfM = within("depthM", obstacle.depthM ?? 0, 0, 200_000) / 2;
  const spots = halfM > 0 ? [middleM - halfM, middleM, middleM + halfM] : [middleM];
  return spots.map((spot) => Math.min(Math.max(spot, CLOSEST_M), distanceM - CLOSEST_M));
}

function worstOf(clearances: readonly PointClearance[]): PointClearance | undefined {
  return clearances.reduce<PointClearance | undefined>(
    (worst, c) => (worst && worst.clearanceFrac <= c.clearanceFrac ? worst : c),
    undefined,
  );
}

function clearingHeights(ends: {
  readonly distanceM: number;
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly clearances: readonly PointClearance[];
}): ClearingHeights {
  let nearRaiseM = 0;
  let farRaiseM = 0;
  let bothRaiseM = 0;
  for (const { fromNearM, missingM } of ends.clearances) {
    // a metre at one end lifts the line by its share of the path; the heights do not change the Fresnel radius
    const farShare = fromNearM / ends.distanceM;
    bothRaiseM = Math.max(bothRaiseM, missingM);
    nearRaiseM = Math.max(nearRaiseM, missingM / (1 - farShare));
    farRaiseM = Math.max(farRaiseM, missingM / farShare);
  }
  return {
    nearAloneM: ends.nearHeightM + nearRaiseM,
    farAloneM: ends.farHeightM + farRaiseM,
    bothRaiseM,
  };
}
