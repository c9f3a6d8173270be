import { describe, expect, it } from "vitest";
import { ambientFactor, ampacityA, columnAmpacityA, conductors } from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

// NEC table 310.15(B)(1), base 30 degrees C; read in IRC table E3705.2, which copies it. Columns 60, 75, 90.
const AMBIENT = [
  [10, 1.29, 1.2, 1.15],
  [15, 1.22, 1.15, 1.12],
  [20, 1.15, 1.11, 1.08],
  [25, 1.08, 1.05, 1.04],
  [30, 1.0, 1.0, 1.0],
  [35, 0.91, 0.94, 0.96],
  [40, 0.82, 0.88, 0.91],
  [45, 0.71, 0.82, 0.87],
  [50, 0.58, 0.75, 0.82],
  [55, 0.41, 0.67, 0.76],
  [60, null, 0.58, 0.71],
  [65, null, 0.47, 0.65],
  [70, null, 0.33, 0.58],
  [75, null, null, 0.5],
  [80, null, null, 0.41],
  [85, null, null, 0.29],
] as const;

describe("NEC 310.15(B)(1): ambient correction", () => {
  const cells = AMBIENT.flatMap(([topC, ...factors]) =>
    factors.flatMap((factor, i) =>
      factor === null ? [] : [{ topC, insulationTempC: [60, 75, 90][i]!, factor }],
    ),
  );
  it("has 39 printed cells", () => expect(cells).toHaveLength(39));
  it.each(cells)("$insulationTempC degree wire up to $topC degrees", ({ topC, insulationTempC, factor }) => {
    for (const ambientTempC of topC === 10 ? [-30, 0, 10] : [topC - 4, topC - 2, topC]) {
      near(ambientFactor({ insulationTempC, ambientTempC }), factor, { within: 0.005 });
    }
  });
  it("where the table has no cell nothing is left", () => {
    expect(ambientFactor({ insulationTempC: 60, ambientTempC: 60 })).toBe(0);
    expect(ambientFactor({ insulationTempC: 90, ambientTempC: 90 })).toBe(0);
  });
});

// IEC 60364-5-52 table B.52.14 for 70 degree insulation, from memory.
describe("IEC 60364-5-52 B.52.14: ambient correction", () => {
  it.each([
    [35, 0.94],
    [40, 0.87],
    [45, 0.79],
    [50, 0.71],
    [55, 0.61],
    [60, 0.5],
  ] as const)("70 degree wire at %d degrees", (ambientTempC, factor) =>
    near(ambientFactor({ insulationTempC: 70, ambientTempC }), factor, { within: 0.005 }),
  );
});

// NEC (2020/2023) table 310.16: 14 to 2 AWG read in two copies that agree.
const PRINTED = [
  ["14 AWG", 15, 20, 25],
  ["12 AWG", 20, 25, 30],
  ["10 AWG", 30, 35, 40],
  ["8 AWG", 40, 50, 55],
  ["6 AWG", 55, 65, 75],
  ["4 AWG", 70, 85, 95],
  ["3 AWG", 85, 100, 115],
  ["2 AWG", 95, 115, 130],
] as const;

describe("NEC 310.16", () => {
  it.each(PRINTED)("%s", (name, at60A, at75A, at90A) => {
    const conductor = conductors("awg").find((c) => c.name === name)!;
    expect([60, 75, 90].map((tempC) => columnAmpacityA({ conductor, tempC }))).toEqual([at60A, at75A, at90A]);
  });

  // 90 degree wire at 46 to 50 degrees C, terminals out of the way: worked by hand from the two tables (40 x 0.82).
  it.each([
    ["10 AWG", 32.8],
    ["12 AWG", 24.6],
  ] as const)("%s derated", (name, expectedA) => {
    const conductor = conductors("awg").find((c) => c.name === name)!;
    const carriesA = ampacityA({
      conductor,
      insulationTempC: 90,
      terminalTempC: 90,
      ambientTempC: 48,
      loadedConductors: 3,
    });
    // The printed factor is rounded to two decimals.
    near(carriesA, expectedA, { within: 0.2 });
  });

  it("110.14(C): the terminal's column is a ceiling (from memory)", () => {
    const conductor = conductors("awg").find((c) => c.name === "10 AWG")!;
    const at = { conductor, insulationTempC: 90, ambientTempC: 30, loadedConductors: 3 };
    expect(ampacityA({ ...at, terminalTempC: 60 })).toBe(30);
    expect(ampacityA({ ...at, terminalTempC: 75 })).toBe(35);
  });
});
