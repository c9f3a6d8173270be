import { describe, expect, it } from "vitest";
import { openClimate } from "../../../src/core/climate/index.ts";
import { climateBytes, grids } from "./grids.ts";

describe("openClimate", () => {
  it("gives every layer the size that its rows, columns and planes say", () => {
    for (const [name, layer] of Object.entries(grids)) {
      expect(layer.stored.length, name).toBe(layer.planes * layer.rows * layer.columns);
    }
    expect(grids.monthlyTempC.planes).toBe(12);
    expect(grids.dailyShareSqrt.planes).toBe(12 * 16);
  });

  it("reads bytes that lie at any place of a larger buffer", () => {
    const larger = new Uint8Array(climateBytes.length + 3);
    larger.set(climateBytes, 3);
    const again = openClimate(larger.subarray(3));
    expect(again.clearness.stored).toEqual(grids.clearness.stored);
  });

  it("decodes differences as it should: a layer made by hand", () => {
    // Two planes of two rows of two: [5, 7, 4, 4] and [6, 7, 9, 3], worked by hand from the rule in make/pack.py.
    const zigzag = [10, 4, 1, 0, 2, 1, 8, 11];
    const header = {
      layers: Object.keys(grids).map((name) => ({
        name,
        planes: 2,
        rows: 2,
        columns: 2,
        south: 0,
        west: 0,
        step: 1,
        scale: 1,
        offset: 0,
        encoding: "u16delta",
        at: 0,
        bytes: 16,
      })),
    };
    const text = new TextEncoder().encode(JSON.stringify(header));
    const bytes = new Uint8Array([
      ...new TextEncoder().encode("MWCLIM1\n"),
      text.length & 255,
      text.length >> 8,
      0,
      0,
      ...text,
      ...zigzag,
      ...new Array<number>(8).fill(0),
    ]);
    expect([...openClimate(bytes).land.stored]).toEqual([5, 7, 4, 4, 6, 7, 9, 3]);
  });

  it("says what is wrong with bytes that are no such file", () => {
    expect(() => openClimate(new Uint8Array(100))).toThrow(/do not begin/);
    expect(() => openClimate(climateBytes.subarray(0, climateBytes.length - 10))).toThrow(/end inside/);
  });
});
