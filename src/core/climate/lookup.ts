import type { Layer } from "./grids.ts";

/** One cell and its share in an answer; the shares of a list add up to 1. */
export interface CellShare {
  readonly cell: number;
  readonly share: number;
}

interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Shares of the four nodes round a place: plain bilinear interpolation, as ITU-R P.1144 asks for these maps. */
export function nodesRound(layer: Layer, { latitudeDeg, longitudeDeg }: Spot): CellShare[] {
  const { rows, columns, southDeg, westDeg, stepDeg } = layer;
  const row = Math.min(Math.max((latitudeDeg - southDeg) / stepDeg, 0), rows - 1);
  const column = (longitudeDeg - westDeg) / stepDeg;
  const j = Math.min(Math.floor(row), rows - 2);
  const i = Math.floor(column);
  const up = row - j;
  const right = column - i;
  const west = ((i % columns) + columns) % columns;
  const east = (west + 1) % columns;
  return [
    { cell: j * columns + west, share: (1 - up) * (1 - right) },
    { cell: j * columns + east, share: (1 - up) * right },
    { cell: (j + 1) * columns + west, share: up * (1 - right) },
    { cell: (j + 1) * columns + east, share: up * right },
  ];
}

/** Value of one plane at a place whose shares are known. */
export function blended(layer: Layer, plane: number, shares: readonly CellShare[]): number {
  const first = plane * layer.rows * layer.columns;
  let total = 0;
  for (const { cell, share } of shares) total += share * layer.stored[first + cell]!;
  return total * layer.scale + layer.offset;
}

/** Value of a single-plane layer at a place. */
export function valueAt(layer: Layer, spot: Spot): number {
  return blended(layer, 0, nodesRound(layer, spot));
}

/** Stored number of the cell in which a place lies. */
export function storedAt(layer: Layer, { latitudeDeg, longitudeDeg }: Spot): number {
  const row = Math.round((latitudeDeg - layer.southDeg) / layer.stepDeg);
  const column = Math.round((longitudeDeg - layer.westDeg) / layer.stepDeg);
  if (row < 0 || row >= layer.rows) return layer.missing;
  return layer.stored[row * layer.columns + (((column % layer.columns) + layer.columns) % layer.columns)]!;
}

/**
 * Shares of those cells round a place that have a value: bilinear over the ones present, renormalised; where fewer than
 * a quarter of the bilinear weight is present, the cells within `reachKm` by inverse square of distance.
 *
 * @returns an empty list when no cell within reach has a value
 */
export function cellsRound(layer: Layer, spot: Spot & { readonly reachKm: number }): CellShare[] {
  const present = nodesRound(layer, spot).filter(({ cell }) => layer.stored[cell] !== layer.missing);
  const weight = present.reduce((total, { share }) => total + share, 0);
  if (weight >= 0.25 && spot.latitudeDeg <= northDeg(layer) && spot.latitudeDeg >= layer.southDeg) {
    return present.map(({ cell, share }) => ({ cell, share: share / weight }));
  }
  return cellsWithin(layer, spot);
}

function northDeg(layer: Layer): number {
  return layer.southDeg + (layer.rows - 1) * layer.stepDeg;
}

const KM_PER_DEG = 111.2;

function cellsWithin(
  layer: Layer,
  { latitudeDeg, longitudeDeg, reachKm }: Spot & { readonly reachKm: number },
): CellShare[] {
  const found: CellShare[] = [];
  let total = 0;
  const reachDeg = reachKm / KM_PER_DEG;
  const first = Math.max(0, Math.ceil((latitudeDeg - reachDeg - layer.southDeg) / layer.stepDeg));
  const last = Math.min(
    layer.rows - 1,
    Math.floor((latitudeDeg + reachDeg - layer.southDeg) / layer.stepDeg),
  );
  for (let row = first; row <= last; row++) {
    const rowDeg = layer.southDeg + row * layer.stepDeg;
    const kmPerDegEast = KM_PER_DEG * Math.cos(((latitudeDeg + rowDeg) * Math.PI) / 360);
    for (let column = 0; column < layer.columns; column++) {
      const cell = row * layer.columns + column;
      if (layer.stored[cell] === layer.missing) continue;
      const turned = layer.westDeg + column * layer.stepDeg - longitudeDeg;
      const eastDeg = ((turned + 540) % 360) - 180;
      const distanceKm = Math.hypot((rowDeg - latitudeDeg) * KM_PER_DEG, eastDeg * kmPerDegEast);
      if (distanceKm > reachKm) continue;
      const share = 1 / (distanceKm + 30) ** 2;
      total += share;
      found.push({ cell, share });
    }
  }
  return found.map(({ cell, share }) => ({ cell, share: share / total }));
}
