import { clamp, within } from "../numerics/index.ts";
import { type Path, pathClearance } from "./clearance.ts";
import { MEDIAN_K } from "./earth.ts";

/** So much of the first Fresnel radius clear at so much bending of the ray. */
export type ClearanceRule = {
  /** Effective-earth-radius factor, 0.3 to 100. */
  readonly k: number;
  /** 0 to 3. */
  readonly clearanceFrac: number;
  /** What the rule is called, in words. */
  readonly name: string;
};

/** 0.6 of the first Fresnel radius at the median k: diffraction costs nothing. ITU-R P.526 clause 2.1. */
export const PRACTICAL_RULE: ClearanceRule = {
  k: MEDIAN_K,
  clearanceFrac: 0.6,
  name: "0.6 of the first Fresnel radius at the median k",
};

/**
 * The effective-earth-radius factor that is exceeded during 99.9 % of the worst month.
 *
 * @param distanceM  1 to 1 000 000
 * @returns ratio, 0.6 up to 20 km and 0.9 from 100 km on
 * @accuracy the figure itself was not read; below 10 km the Earth bulges so little that it hardly matters
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.530 figure 2, two points from memory joined over the logarithm of distance
 */
export function minimumEarthRatio(distanceM: number): number {
  const km = within("distanceM", distanceM, 1, 1_000_000) / 1000;
  return 0.6 + (0.3 * Math.log(clamp(km, 20, 100) / 20)) / Math.log(5);
}

/**
 * What ITU-R P.530 asks of a path without diversity: both rules hold, the higher antennas decide.
 *
 * @param path.distanceM    1 to 1 000 000
 * @param path.climate      tropical asks more beyond 30 km
 * @param path.obstruction  `extended` where it lies along the path, such as a plain or a wood
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.530 clause 2.2.2.1, from memory, partly confirmed by comments in open code
 */
export function clearanceRules(path: {
  readonly distanceM: number;
  readonly climate: "temperate" | "tropical";
  readonly obstruction: "isolated" | "extended";
}): readonly ClearanceRule[] {
  const k = minimumEarthRatio(path.distanceM);
  const isLongInTropics = path.climate === "tropical" && path.distanceM > 30_000;
  const clearanceFrac = isLongInTropics ? 0.6 : path.obstruction === "extended" ? 0.3 : 0;
  return [
    { k: MEDIAN_K, clearanceFrac: 1, name: "the whole first Fresnel radius at the median k" },
    { k, clearanceFrac, name: `${clearanceFrac} of the first Fresnel radius at the least k` },
  ];
}

export type HeightChoice = {
  readonly nearHeightM: number;
  readonly farHeightM: number;
  /** In the unit of the costs per metre, for what is raised above the present heights. */
  readonly cost: number;
  /** Which obstacles hold the line up, by index in path.obstacles: none to two. */
  readonly governingIndices: readonly number[];
};

export type LowestHeights = {
  readonly isClearAlready: boolean;
  /** The cheapest pair of all; undefined where no pair within the greatest heights clears. */
  readonly cheapest: HeightChoice | undefined;
  readonly nearAlone: HeightChoice | undefined;
  readonly farAlone: HeightChoice | undefined;
  /** Which end the cheapest pair raises. */
  readonly raises: "nothing" | "near" | "far" | "both" | undefined;
  /** The obstacle that lacks most under the present heights, and by which rule; undefined when nothing lacks. */
  readonly governing:
    | { readonly index: number; readonly missingM: number; readonly rule: ClearanceRule }
    | undefined;
};

/** A spot that the line between the antennas must stay above; `index` -1 for an antenna's present height. */
type Need = { readonly share: number; readonly heightM: number; readonly index: number };

/**
 * The lowest pair of antennas that satisfies every rule, by what a metre costs at each end.
 *
 * The line must run above every spot that a rule asks for, so it lies on the upper hull of these spots; the cheapest line
 * is the edge of that hull over the share of the path at which the two costs balance.
 *
 * @param want.path            with the present heights, the lowest that are considered
 * @param want.rules           one or more
 * @param want.nearCostPerM    above 0, to 1 000 000
 * @param want.farCostPerM     above 0, to 1 000 000
 * @param want.nearHighestM    greatest height at the near end, in the datum of the path; none when absent
 * @param want.farHighestM     the same at the far end
 * @throws RangeFault outside the ranges above and of pathClearance
 * @source worked by hand from the geometry of pathClearance; ITU-R P.530 clause 2.2.2 for the rules
 */
export function lowestHeights(want: {
  readonly path: Path;
  readonly rules: readonly ClearanceRule[];
  readonly nearCostPerM: number;
  readonly farCostPerM: number;
  readonly nearHighestM?: number;
  readonly farHighestM?: number;
}): LowestHeights {
  const { path } = want;
  const nearCost = within("nearCostPerM", want.nearCostPerM, 1e-6, 1e6);
  const farCost = within("farCostPerM", want.farCostPerM, 1e-6, 1e6);
  within("rules.length", want.rules.length, 1, 100);
  const nearHighestM = want.nearHighestM ?? Number.POSITIVE_INFINITY;
  const farHighestM = want.farHighestM ?? Number.POSITIVE_INFINITY;
  const { needs, governing } = needsOf(path, want.rules);
  const ends: readonly Need[] = [
    { share: 0, heightM: path.nearHeightM, index: -1 },
    { share: 1, heightM: path.farHeightM, index: -1 },
  ];

  const choice = (nearM: number, farM: number): HeightChoice | undefined => {
    // a hair above the limit is rounding, not height
    if (nearM > nearHighestM + 1e-9 || farM > farHighestM + 1e-9) return undefined;
    const onLine = needs.filter(
      (need) => Math.abs(need.heightM - (nearM + (farM - nearM) * need.share)) < 1e-6,
    );
    return {
      nearHeightM: nearM,
      farHeightM: farM,
      cost: nearCost * (nearM - path.nearHeightM) + farCost * (farM - path.farHeightM),
      governingIndices: [...new Set(onLine.map((need) => need.index))],
    };
  };
  const farFor = (nearM: number) =>
    Math.max(path.farHeightM, ...needs.map((n) => (n.heightM - nearM * (1 - n.share)) / n.share));
  const nearFor = (farM: number) =>
    Math.max(path.nearHeightM, ...needs.map((n) => (n.heightM - farM * n.share) / (1 - n.share)));

  const { nearM, farM } = hullLine([...ends, ...needs], farCost / (nearCost + farCost));
  const cheapestLine =
    choice(nearM, farM) ??
    (nearM > nearHighestM
      ? choice(nearHighestM, farFor(nearHighestM))
      : choice(nearFor(farHighestM), farHighestM));
  const isAllowed = nearHighestM >= path.nearHeightM && farHighestM >= path.farHeightM;
  const cheapest = isAllowed ? cheapestLine : undefined;
  return {
    isClearAlready: governing === undefined,
    cheapest,
    nearAlone: choice(nearFor(path.farHeightM), path.farHeightM),
    farAlone: choice(path.nearHeightM, farFor(path.nearHeightM)),
    raises: cheapest && raisedEnd(path, cheapest),
    governing,
  };
}

function raisedEnd(path: Path, { nearHeightM, farHeightM }: HeightChoice) {
  const near = nearHeightM > path.nearHeightM + 1e-9;
  const far = farHeightM > path.farHeightM + 1e-9;
  if (near && far) return "both";
  return near ? "near" : far ? "far" : "nothing";
}

function needsOf(path: Path, rules: readonly ClearanceRule[]) {
  const needs: Need[] = [];
  let governing: LowestHeights["governing"];
  for (const rule of rules) {
    // each obstacle by itself: the worst spot of a deep one depends on the line, so both faces are asked for
    const single = path.obstacles.flatMap((obstacle, index) => {
      const { depthM, ...edge } = obstacle;
      const half = (depthM ?? 0) / 2;
      const spots = half > 0 ? [-half, 0, half] : [0];
      return spots.map((off) => ({
        index,
        edge: {
          ...edge,
          distanceFromNearM: clamp(obstacle.distanceFromNearM + off, 0, path.distanceM),
        },
      }));
    });
    const { points } = pathClearance({
      ...path,
      k: rule.k,
      clearanceFrac: rule.clearanceFrac,
      obstacles: single.map(({ edge }) => edge),
    });
    points.forEach((point, i) => {
      const share = point.fromNearM / path.distanceM;
      const lineM = path.nearHeightM + (path.farHeightM - path.nearHeightM) * share;
      const index = single[i]!.index;
      needs.push({ share, heightM: lineM + point.missingM, index });
      if (point.missingM > Math.max(1e-9, governing?.missingM ?? 0)) {
        governing = { index, missingM: point.missingM, rule };
      }
    });
  }
  return { needs, governing };
}

/** Heights at both ends of the straight line that rests on the upper hull of the needs over one share of the path. */
function hullLine(needs: readonly Need[], share: number): { readonly nearM: number; readonly farM: number } {
  const hull: Need[] = [];
  for (const need of needs.toSorted((a, b) => a.share - b.share || b.heightM - a.heightM)) {
    if (hull.at(-1)?.share === need.share) continue;
    while (hull.length > 1 && !isAbove(hull.at(-1)!, hull.at(-2)!, need)) hull.pop();
    hull.push(need);
  }
  const right = Math.max(
    1,
    hull.findIndex((need) => need.share >= share),
  );
  const a = hull[right - 1]!;
  const b = hull[right]!;
  const slope = (b.heightM - a.heightM) / (b.share - a.share);
  return { nearM: a.heightM - slope * a.share, farM: a.heightM + slope * (1 - a.share) };
}

function isAbove(middle: Need, left: Need, right: Need): boolean {
  const share = (middle.share - left.share) / (right.share - left.share);
  return middle.heightM > left.heightM + share * (right.heightM - left.heightM);
}
