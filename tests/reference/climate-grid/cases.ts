import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ClimateGrids } from "../../../src/core/climate/grids.ts";

export type LayerName = keyof ClimateGrids;

/** One node of one layer and what the source has there: a value for each plane, or sixteen of one month's days. */
export interface SourceNode {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly values: readonly number[];
}

export interface SourcePoint {
  /** the month of the values of dailyShareSqrt, 0 to 11 */
  readonly dailySharesOfMonth: number;
  readonly nodes: Readonly<Record<LayerName, SourceNode>>;
}

/**
 * Forty random land nodes and eight of the sea, read from the sources before any packing by make/verify.py: with
 * gsee-climate-data 1.0.0 (irradiation, which is then corrected by make/bias.py or, for six of them, estimated by
 * make/islands.py: these two are ours, not an outside value) and itur 0.4.0 (all else). Versions and seed stand in the file.
 */
export const { points, sea, stepByLayer, versions } = JSON.parse(
  readFileSync(join(import.meta.dirname, "vectors.json"), "utf8"),
) as {
  readonly points: readonly SourcePoint[];
  readonly sea: readonly { readonly latitudeDeg: number; readonly longitudeDeg: number }[];
  /** the stated quantisation; rounding may cost half of it */
  readonly stepByLayer: Readonly<Record<LayerName, number>>;
  readonly versions: Readonly<Record<string, string>>;
};
