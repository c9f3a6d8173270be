import { readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import type { Layer } from "../../../src/core/climate/grids.ts";
import { openClimate } from "../../../src/core/climate/index.ts";
import { near } from "../../helpers/near.ts";
import { type LayerName, points, sea, stepByLayer, versions } from "./cases.ts";

const root = join(import.meta.dirname, "../../..");
const grids = openClimate(
  brotliDecompressSync(readFileSync(join(root, "src/core/climate/data/climate.bin"))),
);
const layers = Object.keys(grids) as LayerName[];

/** The cell of a node, which must lie on the grid and not beside it. */
function cellAt(layer: Layer, node: { readonly latitudeDeg: number; readonly longitudeDeg: number }): number {
  const row = (node.latitudeDeg - layer.southDeg) / layer.stepDeg;
  const column = (node.longitudeDeg - layer.westDeg) / layer.stepDeg;
  near(row, Math.round(row), { within: 1e-6 });
  near(column, Math.round(column), { within: 1e-6 });
  expect(row).toBeLessThan(layer.rows);
  expect(column).toBeLessThan(layer.columns);
  return Math.round(row) * layer.columns + Math.round(column);
}

function valueIn(layer: Layer, plane: number, cell: number): number {
  const stored = layer.stored[plane * layer.rows * layer.columns + cell]!;
  return stored === layer.missing ? Number.NaN : stored * layer.scale + layer.offset;
}

describe("the embedded grids against the packages they were made from", () => {
  it("are compared at forty land nodes, six of them estimated, in every layer", () => {
    expect(points.length).toBe(40);
    expect(points.filter(({ nodes }) => nodes.estimated.values[0] === 1).length).toBe(6);
    for (const { nodes } of points) expect(Object.keys(nodes).sort()).toEqual([...layers].sort());
    expect(versions).toMatchObject({ "gsee-climate-data": "1.0.0", itur: "0.4.0" });
  });

  it.each(layers)("%s agrees with its source within half of its stated step", (name) => {
    const layer = grids[name];
    for (const { nodes, dailySharesOfMonth } of points) {
      const node = nodes[name];
      const firstPlane = name === "dailyShareSqrt" ? dailySharesOfMonth * node.values.length : 0;
      if (name !== "dailyShareSqrt") expect(node.values.length).toBe(layer.planes);
      else expect(node.values.length).toBe(layer.planes / 12);
      const cell = cellAt(layer, node);
      node.values.forEach((value, index) => {
        // The vectors have seven digits: that much comes on top of half a step.
        const within = stepByLayer[name] / 2 + 1e-6 * Math.max(1, Math.abs(value));
        near(valueIn(layer, firstPlane + index, cell), value, { within });
      });
    }
  });

  it("have sea where the elevation map has no land and no place is inhabited", () => {
    expect(sea.length).toBe(8);
    for (const spot of sea) expect(valueIn(grids.land, 0, cellAt(grids.land, spot))).toBe(0);
  });
});
