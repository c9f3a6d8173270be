import { within } from "../numerics/index.ts";
import { knifeEdgeLossDb, knifeEdgeV } from "./knife-edge.ts";

/** A point of a profile: an edge between two terminals, or a terminal. Heights above a common flat datum. */
export type EdgePoint = { readonly distanceFromNearM: number; readonly topM: number };

export type EdgePath = {
  /** Terminals first and last, edges between them, distances strictly rising; the Earth's bulge already in topM. */
  readonly points: readonly EdgePoint[];
  /** 30 to 300 000. */
  readonly frequencyMHz: number;
};

/**
 * Diffraction loss over several edges by Deygout's construction: the edge with the largest v over the whole path is the
 * main one; then each side of it, with the main edge as terminal, in turn.
 *
 * @returns dB
 * @accuracy overstates by several dB when edges stand close together or when there are many
 * @throws RangeFault when there are fewer than two points or distances do not rise
 * @source Deygout, IEEE Transactions on Antennas and Propagation 1966 (from memory); NTIA Technical Report 25-580
 */
export function deygoutLossDb(path: EdgePath): number {
  const points = checkedPoints(path);
  return deygoutOver({ points, frequencyMHz: path.frequencyMHz });
}

function deygoutOver({ points, frequencyMHz }: EdgePath): number {
  if (points.length < 3) return 0;
  const near = points[0]!;
  const far = points.at(-1)!;
  let mainV = Number.NEGATIVE_INFINITY;
  let mainIndex = 1;
  for (let i = 1; i < points.length - 1; i++) {
    const v = edgeV({ near, edge: points[i]!, far, frequencyMHz });
    if (v > mainV) {
      mainV = v;
      mainIndex = i;
    }
  }
  const loss = knifeEdgeLossDb(mainV);
  if (loss === 0) return 0;
  return (
    loss +
    deygoutOver({ points: points.slice(0, mainIndex + 1), frequencyMHz }) +
    deygoutOver({ points: points.slice(mainIndex), frequencyMHz })
  );
}

/**
 * Diffraction loss over several edges by Epstein and Peterson: each edge seen from its two neighbours, summed. Every
 * edge listed counts, not only those that a stretched string would touch.
 *
 * @returns dB
 * @accuracy understates when edges stand close together: see {@link doubleEdgeCorrectionDb}
 * @throws RangeFault when there are fewer than two points or distances do not rise
 * @source Epstein and Peterson 1953 (from memory); NTIA Technical Report 25-580 for taking all edges
 */
export function epsteinPetersonLossDb(path: EdgePath): number {
  const points = checkedPoints(path);
  let loss = 0;
  for (let i = 1; i < points.length - 1; i++) {
    loss += knifeEdgeLossDb(
      edgeV({
        near: points[i - 1]!,
        edge: points[i]!,
        far: points[i + 1]!,
        frequencyMHz: path.frequencyMHz,
      }),
    );
  }
  return loss;
}

/**
 * What Epstein and Peterson's sum lacks for two similar edges, each worth more than about 15 dB.
 *
 * @param nearGapM     near terminal to the first edge, 1 to 400 000
 * @param betweenM     first edge to the second, 1 to 400 000
 * @param farGapM      second edge to the far terminal, 1 to 400 000
 * @returns dB to add
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.526 clause 4.3, Lc (from memory)
 */
export function doubleEdgeCorrectionDb(gaps: {
  readonly nearGapM: number;
  readonly betweenM: number;
  readonly farGapM: number;
}): number {
  const { a, b, c } = checkedGaps(gaps);
  return 10 * Math.log10(((a + b) * (b + c)) / (b * (a + b + c)));
}

/**
 * What the sum over two edges charges too much when one of them is dominant.
 *
 * @param nearGapM      near terminal to the dominant edge, 1 to 400 000
 * @param betweenM      dominant edge to the other, 1 to 400 000
 * @param farGapM       other edge to the far terminal, 1 to 400 000
 * @param dominantTopM  the dominant edge above the line between the terminals, 0.001 to 30 000
 * @param otherTopM     the other edge above the same line, 0 to 30 000, with the smaller v
 * @param frequencyMHz  30 to 300 000
 * @returns dB to subtract
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.526 clause 4.3, Tc (from memory)
 */
export function dominantEdgeCorrectionDb(edges: {
  readonly nearGapM: number;
  readonly betweenM: number;
  readonly farGapM: number;
  readonly dominantTopM: number;
  readonly otherTopM: number;
  readonly frequencyMHz: number;
}): number {
  const { a, b, c } = checkedGaps(edges);
  const { frequencyMHz } = edges;
  const p = knifeEdgeV({
    aboveLineM: within("dominantTopM", edges.dominantTopM, 0.001, 30_000),
    fromNearM: a,
    fromFarM: b + c,
    frequencyMHz,
  });
  const q = knifeEdgeV({
    aboveLineM: within("otherTopM", edges.otherTopM, 0, 30_000),
    fromNearM: a + b,
    fromFarM: c,
    frequencyMHz,
  });
  const alpha = Math.atan(Math.sqrt((b * (a + b + c)) / (a * c)));
  return (12 - 20 * Math.log10(2 / (1 - alpha / Math.PI))) * (q / p) ** (2 * p);
}

/** v of one point seen from two others, on a flat datum. */
export function edgeV(view: {
  readonly near: EdgePoint;
  readonly edge: EdgePoint;
  readonly far: EdgePoint;
  readonly frequencyMHz: number;
}): number {
  const { near, edge, far } = view;
  const fromNearM = edge.distanceFromNearM - near.distanceFromNearM;
  const fromFarM = far.distanceFromNearM - edge.distanceFromNearM;
  const lineM = (near.topM * fromFarM + far.topM * fromNearM) / (fromNearM + fromFarM);
  return knifeEdgeV({
    aboveLineM: edge.topM - lineM,
    fromNearM,
    fromFarM,
    frequencyMHz: view.frequencyMHz,
  });
}

function checkedGaps(gaps: {
  readonly nearGapM: number;
  readonly betweenM: number;
  readonly farGapM: number;
}) {
  return {
    a: within("nearGapM", gaps.nearGapM, 1, 400_000),
    b: within("betweenM", gaps.betweenM, 1, 400_000),
    c: within("farGapM", gaps.farGapM, 1, 400_000),
  };
}

function checkedPoints(path: EdgePath): readonly EdgePoint[] {
  within("points.length", path.points.length, 2, 10_000);
  path.points.forEach((point, i) => {
    if (i > 0) {
      const gapM = point.distanceFromNearM - path.points[i - 1]!.distanceFromNearM;
      within(`points[${i}].distanceFromNearM less the one before`, gapM, 0.01, 1_000_000);
    }
  });
  return path.points;
}
