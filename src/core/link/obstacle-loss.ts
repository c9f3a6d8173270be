import { equivalentEdgeLoss } from "./bullington.ts";
import { type Obstacle, type Path, pathClearance } from "./clearance.ts";
import { earthBulgeM } from "./earth.ts";
import { deygoutLossDb, dominantEdgeCorrectionDb, type EdgePoint, edgeV } from "./edges.ts";
import { knifeEdgeLossDb, LOSSLESS_V } from "./knife-edge.ts";
import { treeLossDb } from "./vegetation.ts";

/**
 * Which construction the diffraction part used.
 *
 * - `none`: everything clears the path far enough
 * - `single-edge`: one obstacle, ITU-R P.526 clause 4.1
 * - `double-edge`: two, Deygout with the correction of clause 4.3 where both stand above the line
 * - `deygout`: three or more
 * - `bullington`: the ground itself reaches into the path, clause 4.5.1
 */
export type DiffractionMethod = "none" | "single-edge" | "double-edge" | "deygout" | "bullington";

export type ObstacleLoss = {
  /** Diffraction and vegetation together. */
  readonly lossDb: number;
  readonly diffractionDb: number;
  readonly vegetationDb: number;
  readonly method: DiffractionMethod;
  /** Indices of the trees the wave is taken to pass through; over all others it bends. */
  readonly throughIndices: readonly number[];
};

/** Obstacles closer together than this share of the path count as one: judgement, else Deygout charges them twice. */
const MERGE_SHARE = 0.01;

/** What an obstacle costs: where its worst spot stands, and what passing through costs if one can. */
type Spot = {
  readonly index: number;
  readonly obstacle: Obstacle;
  /** Its worst spot with the Earth's bulge in its height. */
  readonly point: EdgePoint;
  readonly v: number;
  readonly throughDb: number | undefined;
};

/**
 * Loss by what stands in or near a path, beyond free space.
 *
 * Trees are charged either as an edge over which the wave bends or as metres of leaf through which it passes, whichever
 * is less: never more than bending over them would cost. Passing through needs the trees' depthM.
 *
 * @param path  as for pathClearance
 * @returns see {@link ObstacleLoss}
 * @accuracy one clean edge: about 1 dB on a real ridge, more on a rounded one; several edges: several dB, on the safe
 *           side; trees: 10 dB either way
 * @throws RangeFault outside the ranges of pathClearance
 * @source Recommendation ITU-R P.526 clauses 4.1, 4.3, 4.5.1; Deygout 1966; Weissberger 1982; the choice among them and
 *         the merging of neighbours are judgement
 */
export function obstacleLoss(path: Path): ObstacleLoss {
  const spots = spotsOf(path);
  const trees = spots.filter((spot) => spot.throughDb !== undefined);
  const cheaper = trees.filter((spot) => spot.throughDb! < knifeEdgeLossDb(spot.v));
  const ways = [[], cheaper, trees].map((through) => lossWith({ path, spots, through }));
  return ways.reduce((best, way) => (way.lossDb < best.lossDb ? way : best));
}

/** The edges that stand apart from each other, along the path between its two ends; ground and what is passed through left out. */
export function separateEdges(over: {
  readonly path: Path;
  readonly throughIndices: readonly number[];
}): readonly EdgePoint[] {
  const { path, throughIndices } = over;
  const { near, far } = endPoints(path);
  const spots = spotsOf(path).filter(
    (spot) => spot.obstacle.kind !== "ground" && !throughIndices.includes(spot.index),
  );
  return [near, ...mergedEdges({ path, spots }).map((spot) => spot.point), far];
}

function spotsOf(path: Path): readonly Spot[] {
  const ends = endPoints(path);
  return pathClearance({ ...path, clearanceFrac: 0 }).points.map(({ index, fromNearM }) => {
    const obstacle = path.obstacles[index]!;
    const fromFarM = path.distanceM - fromNearM;
    const point = {
      distanceFromNearM: fromNearM,
      topM: obstacle.topM + earthBulgeM({ fromNearM, fromFarM, k: path.k }),
    };
    return {
      index,
      obstacle,
      point,
      v: edgeV({ ...ends, edge: point, frequencyMHz: path.frequencyMHz }),
      throughDb: throughDb({ obstacle, frequencyMHz: path.frequencyMHz }),
    };
  });
}

function throughDb(meeting: {
  readonly obstacle: Obstacle;
  readonly frequencyMHz: number;
}): number | undefined {
  const { obstacle, frequencyMHz } = meeting;
  if (obstacle.kind !== "trees" || obstacle.depthM === undefined) return undefined;
  if (frequencyMHz < 230 || frequencyMHz > 95_000 || obstacle.depthM > 400) return undefined;
  return treeLossDb({ frequencyMHz, depthM: obstacle.depthM });
}

function lossWith(way: {
  readonly path: Path;
  readonly spots: readonly Spot[];
  readonly through: readonly Spot[];
}): ObstacleLoss {
  const throughIndices = way.through.map((spot) => spot.index);
  const vegetationDb = way.through.reduce((total, spot) => total + spot.throughDb!, 0);
  const opaque = way.spots.filter((spot) => !throughIndices.includes(spot.index));
  const { diffractionDb, method } = diffraction({ path: way.path, spots: opaque });
  return { lossDb: diffractionDb + vegetationDb, diffractionDb, vegetationDb, method, throughIndices };
}

function diffraction(over: { readonly path: Path; readonly spots: readonly Spot[] }): {
  readonly diffractionDb: number;
  readonly method: DiffractionMethod;
} {
  const { path, spots } = over;
  const { frequencyMHz } = path;
  if (!spots.some((spot) => spot.v > LOSSLESS_V)) return { diffractionDb: 0, method: "none" };
  if (spots.some((spot) => spot.obstacle.kind === "ground" && spot.v > LOSSLESS_V)) {
    const inner = spots.map(({ point, obstacle }) => ({
      distanceFromNearM: point.distanceFromNearM,
      groundM: obstacle.topM,
    }));
    const { lossDb } = equivalentEdgeLoss({
      nearM: path.nearHeightM,
      farM: path.farHeightM,
      totalKm: path.distanceM / 1000,
      inner,
      frequencyMHz,
      k: path.k,
    });
    return { diffractionDb: lossDb, method: "bullington" };
  }
  const edges = mergedEdges({ path, spots: spots.filter((spot) => spot.obstacle.kind !== "ground") });
  const { near, far } = endPoints(path);
  const summed = deygoutLossDb({ points: [near, ...edges.map((edge) => edge.point), far], frequencyMHz });
  if (edges.length === 1) return { diffractionDb: summed, method: "single-edge" };
  if (edges.length > 2) return { diffractionDb: summed, method: "deygout" };
  const tooMuch = doubleChargeDb({ path, first: edges[0]!, second: edges[1]! });
  const least = knifeEdgeLossDb(Math.max(edges[0]!.v, edges[1]!.v));
  return { diffractionDb: Math.max(least, summed - tooMuch), method: "double-edge" };
}

/** Along the path; of neighbours too close together only the one that costs most. */
function mergedEdges(over: { readonly path: Path; readonly spots: readonly Spot[] }): readonly Spot[] {
  const closestM = Math.max(0.02, MERGE_SHARE * over.path.distanceM);
  const kept: Spot[] = [];
  for (const spot of over.spots.toSorted((a, b) => b.v - a.v)) {
    const isApart = kept.every(
      (other) => Math.abs(other.point.distanceFromNearM - spot.point.distanceFromNearM) >= closestM,
    );
    if (isApart) kept.push(spot);
  }
  return kept.sort((a, b) => a.point.distanceFromNearM - b.point.distanceFromNearM);
}

/** The correction of P.526 clause 4.3 for a dominant edge; 0 where one of the two lies below the line. */
function doubleChargeDb(pair: { readonly path: Path; readonly first: Spot; readonly second: Spot }): number {
  const { path, first, second } = pair;
  if (first.v <= 0 || second.v <= 0) return 0;
  const firstLeads = first.v >= second.v;
  const [main, other] = firstLeads ? [first, second] : [second, first];
  const mainM = main.point.distanceFromNearM;
  const otherM = other.point.distanceFromNearM;
  const lineAt = (fromNearM: number) =>
    path.nearHeightM + ((path.farHeightM - path.nearHeightM) * fromNearM) / path.distanceM;
  return dominantEdgeCorrectionDb({
    nearGapM: Math.max(1, firstLeads ? mainM : path.distanceM - mainM),
    betweenM: Math.max(1, Math.abs(otherM - mainM)),
    farGapM: Math.max(1, firstLeads ? path.distanceM - otherM : otherM),
    dominantTopM: Math.max(0.001, main.point.topM - lineAt(mainM)),
    otherTopM: other.point.topM - lineAt(otherM),
    frequencyMHz: path.frequencyMHz,
  });
}

function endPoints(path: Path): { readonly near: EdgePoint; readonly far: EdgePoint } {
  return {
    near: { distanceFromNearM: 0, topM: path.nearHeightM },
    far: { distanceFromNearM: path.distanceM, topM: path.farHeightM },
  };
}
