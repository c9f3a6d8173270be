import type { ProfilePoint } from "./bullington.ts";
import { type Path, type PointClearance, pathClearance } from "./clearance.ts";
import { deltaBullingtonLoss } from "./delta-bullington.ts";
import { epsteinPetersonLossDb } from "./edges.ts";
import { freeSpaceLossDb } from "./free-space.ts";
import { gasLossDb } from "./gas.ts";
import { type DiffractionMethod, type ObstacleLoss, obstacleLoss, separateEdges } from "./obstacle-loss.ts";
import { groundAtM, profileObstacles } from "./terrain.ts";

/** A path with the ground under it, where that is known. */
export type SurveyedPath = Path & {
  /** From 0 to distanceM in the datum of the antennas, at least three points. */
  readonly profile?: readonly ProfilePoint[];
};

export type PathLoss = ObstacleLoss & {
  readonly freeSpaceDb: number;
  readonly gasDb: number;
  /** What a smooth curved earth asks beyond Bullington's construction; in diffractionDb already. */
  readonly sphericalExtraDb: number;
  /** Free space, gases and all that stands in the way; rain is left to availability. */
  readonly totalDb: number;
  /** One sentence: which construction was taken and why. */
  readonly reason: string;
  /** The same edges by Epstein and Peterson, where several stand apart: how far the methods disagree. */
  readonly secondOpinionDb: number | undefined;
  /** How well lossDb can be known, dB either way. Judgement. */
  readonly toleranceDb: number;
  /** The obstacle that governs, by its index in path.obstacles; undefined where it is the ground or nothing. */
  readonly governing: (PointClearance & { readonly isGround: boolean }) | undefined;
};

const REASONS: Readonly<Record<DiffractionMethod, string>> = {
  none: "Nothing comes nearer to the line than 0.55 of the first Fresnel radius, so nothing is charged.",
  "single-edge": "One obstacle reaches the Fresnel zone, so it is charged as a single knife edge.",
  "double-edge":
    "Two obstacles stand apart, so the higher is charged whole and the other as seen from it, less what that counts twice.",
  deygout:
    "Several obstacles stand apart, so the main one is charged whole and the others as seen from it, which errs on the safe side.",
  bullington:
    "The ground itself reaches the Fresnel zone, so the whole profile is charged as irregular ground by Bullington's edge.",
};

/**
 * Loss of a whole path in clear air, and by which construction its obstacles were charged.
 *
 * @param path  as for pathClearance; with a profile the ground counts too, and what stands on it adds to it
 * @returns see {@link PathLoss}
 * @accuracy as obstacleLoss: 1 dB for one clean edge, several dB for more, 10 dB either way through trees
 * @throws RangeFault outside the ranges of pathClearance, and for a frequency outside 1000 to 350 000 MHz
 * @source Recommendations ITU-R P.525, P.526 clauses 4.1, 4.3, 4.5, P.676; the choice among them is judgement
 */
export function pathLoss(path: SurveyedPath): PathLoss {
  const ground = path.profile ? profileObstacles(path.profile) : [];
  const whole: Path = { ...path, obstacles: [...path.obstacles, ...ground] };
  const blocked = obstacleLoss(whole);
  const sphericalExtraDb =
    blocked.method === "bullington" && path.profile && path.profile.length > 2 && path.distanceM >= 100
      ? smoothEarthExtraDb({ path, profile: path.profile })
      : 0;
  const separate = separateEdges({ path: whole, throughIndices: blocked.throughIndices });
  const hasSeveral = blocked.method === "double-edge" || blocked.method === "deygout";
  const secondOpinionDb = hasSeveral
    ? epsteinPetersonLossDb({ points: separate, frequencyMHz: path.frequencyMHz })
    : undefined;
  const { worst } = pathClearance({ ...whole, clearanceFrac: 0.6 });
  const freeSpaceDb = freeSpaceLossDb(path);
  const gasDb = gasLossDb(path);
  return {
    ...blocked,
    lossDb: blocked.lossDb + sphericalExtraDb,
    diffractionDb: blocked.diffractionDb + sphericalExtraDb,
    freeSpaceDb,
    gasDb,
    sphericalExtraDb,
    totalDb: freeSpaceDb + gasDb + blocked.lossDb + sphericalExtraDb,
    reason: reasonOf(blocked),
    secondOpinionDb,
    toleranceDb: toleranceOf(blocked, secondOpinionDb),
    governing: worst && {
      ...worst,
      isGround: whole.obstacles[worst.index]!.kind === "ground",
    },
  };
}

/** Of the constructions, dB either way; several edges also by how far two methods disagree. Judgement, no source. */
const CONSTRUCTION_DB: Readonly<Record<DiffractionMethod, number>> = {
  none: 0,
  "single-edge": 1,
  "double-edge": 3,
  deygout: 3,
  bullington: 3,
};

/** Models of vegetation disagree by as much, and wet leaves change it by as much. */
const TREES_DB = 10;

function toleranceOf(
  { method, diffractionDb, throughIndices }: ObstacleLoss,
  secondDb: number | undefined,
): number {
  const apartDb = secondDb === undefined ? 0 : Math.abs(secondDb - diffractionDb);
  return Math.hypot(Math.max(CONSTRUCTION_DB[method], apartDb), throughIndices.length > 0 ? TREES_DB : 0);
}

function reasonOf({ method, throughIndices }: ObstacleLoss): string {
  if (throughIndices.length === 0) return REASONS[method];
  const through = "The trees are charged as leaf to pass through, which costs less than bending over them.";
  return method === "none" ? through : `${through} ${REASONS[method]}`;
}

function smoothEarthExtraDb(over: {
  readonly path: Path;
  readonly profile: readonly ProfilePoint[];
}): number {
  const { path, profile } = over;
  // masts shorter than a hand's breadth would stand below the method's range
  const mastM = (heightM: number, distanceFromNearM: number) =>
    Math.min(3000, Math.max(0.1, heightM - groundAtM({ profile, distanceFromNearM })));
  const { smoothDb, sphericalDb } = deltaBullingtonLoss({
    profile,
    nearMastM: mastM(path.nearHeightM, 0),
    farMastM: mastM(path.farHeightM, profile.at(-1)!.distanceFromNearM),
    frequencyMHz: path.frequencyMHz,
    k: path.k,
  });
  return Math.max(0, sphericalDb - smoothDb);
}
