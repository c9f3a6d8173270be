import { within } from "../numerics/index.ts";
import type { ProfilePoint } from "./bullington.ts";
import type { Obstacle, Path } from "./clearance.ts";
import { earthBulgeM } from "./earth.ts";
import { fresnelRadiusM } from "./fresnel.ts";
import { groundAtM } from "./terrain.ts";

/** Everything along a path at one distance. Heights in the datum of the path. */
export type SectionSample = {
  readonly distanceM: number;
  /** Ground raised by the Earth's bulge, so that the line of sight can be drawn straight. */
  readonly groundM: number;
  readonly bulgeM: number;
  readonly lineM: number;
  readonly firstZoneM: number;
  /** Line less 0.6 of the first Fresnel radius: below it nothing should rise. */
  readonly lower06M: number;
  /** Line less, and plus, the whole radius. */
  readonly lower10M: number;
  readonly upper10M: number;
};

export type SectionObstacle = {
  /** Which obstacle of the path. */
  readonly index: number;
  readonly kind: Obstacle["kind"];
  readonly fromM: number;
  readonly toM: number;
  /** Ground under it and its top, both with the Earth's bulge at its middle. */
  readonly footM: number;
  readonly topM: number;
  readonly rises: "clear" | "into the Fresnel zone" | "above the line";
};

export type PathSection = {
  readonly samples: readonly SectionSample[];
  readonly obstacles: readonly SectionObstacle[];
  /** Lowest and highest of all that is drawn. */
  readonly lowestM: number;
  readonly highestM: number;
};

/**
 * A path cut open along its line, ready to be drawn.
 *
 * @param cut          path, and the ground under it from 0 to distanceM; level at 0 when absent
 * @param cut.columns  samples along the path, both ends included, 2 to 10 000
 * @throws RangeFault outside the ranges above and of Path
 * @source earthBulgeM and fresnelRadiusM; 0.6 of the RADIUS, Recommendation ITU-R P.526 clause 2.1
 */
export function pathSection(
  cut: Path & { readonly profile?: readonly ProfilePoint[]; readonly columns: number },
): PathSection {
  const columns = Math.round(within("columns", cut.columns, 2, 10_000));
  const distanceM = within("distanceM", cut.distanceM, 10, 200_000);
  within("nearHeightM", cut.nearHeightM, -500, 10_000);
  within("farHeightM", cut.farHeightM, -500, 10_000);
  const samples = Array.from({ length: columns }, (_, i) =>
    sampleAt(cut, Math.min(distanceM, (i / (columns - 1)) * distanceM)),
  );
  const obstacles = cut.obstacles.flatMap((obstacle, index) =>
    obstacle.kind === "ground" ? [] : [standing(cut, obstacle, index)],
  );
  const heights = [
    ...samples.flatMap((sample) => [sample.groundM, sample.lower10M, sample.upper10M]),
    ...obstacles.flatMap((obstacle) => [obstacle.topM, obstacle.footM]),
  ];
  return {
    samples,
    obstacles,
    lowestM: heights.reduce((a, b) => Math.min(a, b)),
    highestM: heights.reduce((a, b) => Math.max(a, b)),
  };
}

type Cut = Path & { readonly profile?: readonly ProfilePoint[] };

function sampleAt(cut: Cut, fromNearM: number): SectionSample {
  const fromFarM = cut.distanceM - fromNearM;
  const bulgeM = earthBulgeM({ fromNearM, fromFarM, k: cut.k });
  const lineM = cut.nearHeightM + ((cut.farHeightM - cut.nearHeightM) * fromNearM) / cut.distanceM;
  const firstZoneM = fresnelRadiusM({ fromNearM, fromFarM, frequencyMHz: cut.frequencyMHz });
  const groundM = cut.profile ? groundAtM({ profile: cut.profile, distanceFromNearM: fromNearM }) : 0;
  return {
    distanceM: fromNearM,
    groundM: groundM + bulgeM,
    bulgeM,
    lineM,
    firstZoneM,
    lower06M: lineM - 0.6 * firstZoneM,
    lower10M: lineM - firstZoneM,
    upper10M: lineM + firstZoneM,
  };
}

function standing(cut: Cut, obstacle: Obstacle, index: number): SectionObstacle {
  const middleM = within("distanceFromNearM", obstacle.distanceFromNearM, 0, cut.distanceM);
  const halfM = within("depthM", obstacle.depthM ?? 0, 0, 200_000) / 2;
  const fromM = Math.max(0, middleM - halfM);
  const toM = Math.min(cut.distanceM, middleM + halfM);
  const middle = sampleAt(cut, middleM);
  const topM = within("topM", obstacle.topM, -500, 10_000) + middle.bulgeM;
  const faces = [fromM, middleM, toM].map((at) => sampleAt(cut, at));
  const isAbove = (edge: (sample: SectionSample) => number) =>
    faces.some((face) => obstacle.topM + face.bulgeM > edge(face));
  return {
    index,
    kind: obstacle.kind,
    fromM,
    toM,
    footM: Math.min(middle.groundM, topM),
    topM,
    rises: isAbove((at) => at.lineM)
      ? "above the line"
      : isAbove((at) => at.lower06M)
        ? "into the Fresnel zone"
        : "clear",
  };
}
