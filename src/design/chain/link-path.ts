/** The path between post and other end: how far, which way, over which ground, past what. */
import {
  groundAtM,
  MEDIAN_K,
  type Obstacle,
  type ProfilePoint,
  readObstacles,
  type SurveyedPath,
  type UnderstoodPathObstacle,
} from "../../core/link/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import { bearingAndDistance } from "../../core/place/index.ts";
import { type Saying, sayingIn } from "../../core/units/index.ts";
import type { Brief, OwnGround, Spot } from "../brief.ts";
import type { Climate } from "../design.ts";
import { GROUND_POINTS, LONGEST_PATH_M, PROFILE_SLACK_FRAC, TREE_GROWTH_M } from "../practice/link.ts";

/** Everything along a path but its antennas. */
export interface Way {
  /** How its places are told. */
  readonly said: Saying;
  readonly distanceM: number;
  readonly bearingDeg: number | null;
  readonly backBearingDeg: number | null;
  readonly profile: readonly ProfilePoint[];
  readonly groundSource: string;
  readonly named: readonly UnderstoodPathObstacle[];
  readonly unread: string | null;
}

export function wayOf(brief: Brief, climate: Climate | null): Way {
  const { distanceM, bearingDeg, backBearingDeg } = ends(brief);
  const site = brief.place.site.value;
  const levelM = clamp(climate?.elevationM ?? site?.elevationM ?? 0, -500, 9000);
  const own = brief.link.ground.value;
  const fitting = own === null ? null : fittingProfile(own, distanceM);
  const profile = densified(
    fitting ?? [
      { distanceFromNearM: 0, groundM: levelM },
      { distanceFromNearM: distanceM, groundM: levelM },
    ],
  );
  const words = brief.link.between.value;
  const read = words.trim() === "" ? null : readObstacles(words, { distanceM, profile, units: brief.units });
  const said = sayingIn(brief.units);
  const unread = [
    ...(own !== null && fitting === null
      ? [
          `The ground that was given ends ${said(own.profile.at(-1)?.distanceFromNearM ?? 0, "m away")} from the post; the other end is ${said(distanceM, "m away")} away.`,
        ]
      : []),
    ...(read?.kind === "refused" ? [read.reason] : []),
  ].join(" ");
  return {
    said,
    distanceM,
    bearingDeg,
    backBearingDeg,
    profile,
    groundSource: own !== null && fitting !== null ? own.source : "taken as level",
    named: read?.kind === "obstacles" ? read.obstacles : [],
    unread: unread === "" ? null : unread,
  };
}

function ends(brief: Brief): Pick<Way, "distanceM" | "bearingDeg" | "backBearingDeg"> {
  const site = brief.place.site.value;
  const far = brief.link.far.value;
  const said = (distanceM: number) => clamp(distanceM, 10, LONGEST_PATH_M);
  if (site === null || far === null)
    return { distanceM: said(brief.link.distanceM.value), bearingDeg: null, backBearingDeg: null };
  const there = way(site, far);
  return {
    distanceM: said(there.distanceM),
    bearingDeg: there.bearingDeg,
    backBearingDeg: way(far, site).bearingDeg,
  };
}

const way = (from: Spot, to: Spot) =>
  bearingAndDistance({
    fromLatitudeDeg: from.latitudeDeg,
    fromLongitudeDeg: from.longitudeDeg,
    toLatitudeDeg: to.latitudeDeg,
    toLongitudeDeg: to.longitudeDeg,
  });

/** The profile with its end drawn to the far antenna; null where it is of another path, as after a changed distance. */
function fittingProfile({ profile }: OwnGround, distanceM: number): readonly ProfilePoint[] | null {
  const last = profile.at(-1);
  if (profile.length < 2 || last === undefined) return null;
  if (Math.abs(last.distanceFromNearM - distanceM) > PROFILE_SLACK_FRAC * distanceM) return null;
  const inner = profile.slice(0, -1).filter((point) => point.distanceFromNearM < distanceM - 0.01);
  return [...inner, { distanceFromNearM: distanceM, groundM: last.groundM }];
}

/** With points in between, straight from one to the next. */
function densified(profile: readonly ProfilePoint[]): readonly ProfilePoint[] {
  const lengthM = profile.at(-1)!.distanceFromNearM;
  const even = Array.from({ length: GROUND_POINTS - 1 }, (_, i) => ((i + 1) / GROUND_POINTS) * lengthM);
  const added = even
    .filter((at) => profile.every((point) => Math.abs(point.distanceFromNearM - at) > 0.05))
    .map((at) => ({ distanceFromNearM: at, groundM: groundAtM({ profile, distanceFromNearM: at }) }));
  return [...profile, ...added].sort((a, b) => a.distanceFromNearM - b.distanceFromNearM);
}

/**
 * The path with antennas at heights above their own ground.
 *
 * @param about.growthM  what trees are taken higher than they are
 */
export function surveyedPath(
  way: Way,
  about: {
    readonly nearHeightM: number;
    readonly farHeightM: number;
    readonly frequencyMHz: number;
    readonly growthM?: number;
  },
): SurveyedPath {
  const { growthM = TREE_GROWTH_M } = about;
  return {
    distanceM: way.distanceM,
    nearHeightM: groundAtEnd(way, "near") + about.nearHeightM,
    farHeightM: groundAtEnd(way, "far") + about.farHeightM,
    frequencyMHz: about.frequencyMHz,
    k: MEDIAN_K,
    obstacles: way.named.map(({ kind, distanceFromNearM, topM, depthM }) => ({
      kind,
      distanceFromNearM,
      topM: topM + (kind === "trees" ? growthM : 0),
      ...(depthM === undefined ? {} : { depthM }),
    })),
    profile: way.profile,
  };
}

export const groundAtEnd = ({ profile }: Way, end: "near" | "far"): number =>
  profile.at(end === "near" ? 0 : -1)!.groundM;

/** An obstacle or a stretch of ground by its place: "the trees 400 m from the post". */
export function obstacleCalled(way: Way, obstacle: Obstacle, index: number): string {
  const noun = way.named[index]?.noun ?? "ground";
  return `the ${noun} ${way.said(obstacle.distanceFromNearM, "m away")} from the post`;
}
