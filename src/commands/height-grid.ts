/** Heights of the ground at the corners of a net of latitudes and longitudes, and what lies between the corners. */
import type { Spot } from "./spot.ts";

/** Where a net lies: rows from north to south, columns from west to east. */
export interface Net {
  readonly rows: number;
  readonly columns: number;
  /** of the first row */
  readonly northDeg: number;
  /** of the first column */
  readonly westDeg: number;
  readonly latitudeStepDeg: number;
  readonly longitudeStepDeg: number;
}

/** Part of a net. */
export interface Window {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly rows: number;
  readonly columns: number;
}

/** What a reader of files makes of one: in each spot a height in metres, null where the file has none. */
export type HeightsRead =
  | { readonly kind: "heights"; readonly net: Net; readonly heightsM: readonly (number | null)[] }
  /** One plain sentence. */
  | { readonly kind: "refused"; readonly says: string };

/** No ground is lower (the Dead Sea lies at -430) or higher: whatever is beyond stands for "not known". */
const isHeight = (heightM: number): boolean => heightM >= -500 && heightM <= 9000;

/** The outer halves of the outermost cells belong to the net: files of areas end there. */
const overhang = 0.5;
/** Coordinates in a file are rounded. */
const slack = 1e-6;

const rowOf = (net: Net, spot: Spot): number => (net.northDeg - spot.latitudeDeg) / net.latitudeStepDeg;
const columnOf = (net: Net, spot: Spot): number => (spot.longitudeDeg - net.westDeg) / net.longitudeStepDeg;

/** null where a net has all the spots; otherwise a sentence on what it has. */
export function notCovered(name: string, net: Net, spots: readonly Spot[]): string | null {
  const isIn = (place: number, count: number) =>
    place >= -overhang - slack && place <= count - 1 + overhang + slack;
  if (spots.every((spot) => isIn(rowOf(net, spot), net.rows) && isIn(columnOf(net, spot), net.columns)))
    return null;
  const south = net.northDeg - (net.rows - 1) * net.latitudeStepDeg;
  const east = net.westDeg + (net.columns - 1) * net.longitudeStepDeg;
  const span = (from: number, to: number) => `${from.toFixed(3)} to ${to.toFixed(3)}`;
  return `${name} covers latitude ${span(south, net.northDeg)} and longitude ${span(net.westDeg, east)}: the path leaves it, and only one file is read.`;
}

/** The smallest part of a net that is needed for some spots inside it. */
export function windowFor(net: Net, spots: readonly Spot[]): Window {
  const range = (places: readonly number[], count: number) => {
    const first = Math.max(0, Math.min(count - 1, Math.floor(Math.min(...places))));
    return {
      first,
      count: Math.max(first, Math.min(count - 1, Math.floor(Math.max(...places)) + 1)) - first + 1,
    };
  };
  const rows = range(
    spots.map((spot) => rowOf(net, spot)),
    net.rows,
  );
  const columns = range(
    spots.map((spot) => columnOf(net, spot)),
    net.columns,
  );
  return { firstRow: rows.first, firstColumn: columns.first, rows: rows.count, columns: columns.count };
}

/**
 * Height at a spot inside a net, straight between the four corners around it; null as soon as one that counts is unknown.
 *
 * @param heightAt  by row and column of the net, rows from the north
 */
export function heightAtSpot(
  net: Net,
  spot: Spot,
  heightAt: (row: number, column: number) => number,
): number | null {
  const [top, rowFrac] = cornerAndRest(rowOf(net, spot), net.rows);
  const [left, columnFrac] = cornerAndRest(columnOf(net, spot), net.columns);
  let totalM = 0;
  for (const [down, rowWeight] of [
    [0, 1 - rowFrac],
    [1, rowFrac],
  ] as const)
    for (const [right, columnWeight] of [
      [0, 1 - columnFrac],
      [1, columnFrac],
    ] as const) {
      const weight = rowWeight * columnWeight;
      // A corner without weight may lie outside, or be unknown.
      if (weight === 0) continue;
      const heightM = heightAt(top + down, left + right);
      if (!isHeight(heightM)) return null;
      totalM += weight * heightM;
    }
  return totalM;
}

/** Beyond the outermost corners, in the overhang, the outermost counts. A rounding error is no distance. */
function cornerAndRest(place: number, count: number): readonly [corner: number, restFrac: number] {
  const inside = Math.max(0, Math.min(count - 1, place));
  const nearest = Math.round(inside);
  if (Math.abs(inside - nearest) < slack) return [nearest, 0];
  const corner = Math.floor(inside);
  return [corner, inside - corner];
}
