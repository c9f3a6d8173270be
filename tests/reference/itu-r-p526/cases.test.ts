import { describe, expect, it } from "vitest";
import {
  dominantEdgeCorrectionDb,
  doubleEdgeCorrectionDb,
  earthBulgeM,
  effectiveEarthRatio,
  fresnelRadiusM,
  knifeEdgeLossDb,
  knifeEdgeV,
  MEDIAN_K,
  radioHorizonM,
} from "../../../src/core/link/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

/**
 * Source: Recommendation ITU-R P.526 clause 4.1. Approximate column: worked from equation 31. Exact column: independent
 * re-derivation, -20 log10(sqrt((1-C-S)^2 + (C-S)^2)/2) with the Fresnel integrals of SciPy.
 */
const KNIFE_EDGES: readonly (readonly [v: number, approximateDb: number, exactDb: number])[] = [
  [-0.5, 1.959, 1.859],
  [-0.4, 2.72, 2.636],
  [-0.2, 4.332, 4.294],
  [0, 6.033, 6.021],
  [0.2, 7.767, 7.748],
  [0.4, 9.468, 9.426],
  [0.6, 11.08, 11.017],
  [0.8, 12.569, 12.499],
  [1.0, 13.926, 13.864],
  [1.2, 15.155, 15.112],
  [1.5, 16.784, 16.777],
  [2.0, 19.043, 19.091],
  [2.4, 20.539, 20.618],
  [3.0, 22.416, 22.522],
  [4.0, 24.881, 25.003],
  [5.0, 26.814, 26.936],
  [10, 32.855, 32.954],
  [22.45, 39.91, 39.978],
];

describe("one knife edge", () => {
  it.each(KNIFE_EDGES)("v = %d", (v, approximateDb, exactDb) => {
    near(knifeEdgeLossDb(v), approximateDb, { within: 0.0006 });
    near(knifeEdgeLossDb(v), exactDb, { within: 0.15 });
  });

  it("costs nothing from v = -0.78 down, without a step there", () => {
    expect(knifeEdgeLossDb(-0.78)).toBe(0);
    expect(knifeEdgeLossDb(-5)).toBe(0);
    near(knifeEdgeLossDb(-0.7799), 0, { within: 0.01 });
  });

  /** Source: an open test suite that checks against NTIA Technical Report 25-580. How: printed values. */
  it.each([
    [0, 6.03],
    [1, 13.93],
    [2.4, 20.54],
  ])("v = %d is %d dB in an open test suite", (v, lossDb) => {
    near(knifeEdgeLossDb(v), lossDb, { within: 0.005 });
  });

  /** How: worked from the formula; 5.8 GHz, 2 km and 3 km from the edge, F1 = 7.875 m. */
  it.each([
    [-2, 3.04],
    [0, 6.03],
    [2, 9.13],
    [5, 13.25],
    [10, 18.18],
  ])("an edge %d m above the line costs %d dB", (aboveLineM, lossDb) => {
    const v = knifeEdgeV({ aboveLineM, fromNearM: 2000, fromFarM: 3000, frequencyMHz: 5800 });
    near(knifeEdgeLossDb(v), lossDb, { within: 0.005 });
  });
});

/** Source: Recommendation ITU-R P.526 clause 2.1. How: worked from the exact form with the speed of light. */
describe("first Fresnel radius in the middle of a path, 1, 2, 5, 10, 20 km", () => {
  it.each([
    [2400, [5.588, 7.903, 12.496, 17.672, 24.991]],
    [5800, [3.595, 5.084, 8.038, 11.368, 16.076]],
    [24_125, [1.763, 2.493, 3.941, 5.574, 7.882]],
    [60_480, [1.113, 1.574, 2.489, 3.52, 4.978]],
  ])("%d MHz", (frequencyMHz, radii) => {
    [1, 2, 5, 10, 20].forEach((km, i) => {
      const half = km * 500;
      near(fresnelRadiusM({ fromNearM: half, fromFarM: half, frequencyMHz }), radii[i]!, { within: 0.0006 });
    });
  });

  it("agrees with the printed forms 550 and 17.3 to their own rounding", () => {
    const exact = fresnelRadiusM({ fromNearM: 1200, fromFarM: 3800, frequencyMHz: 5800 });
    nearRatio(exact, 550 * Math.sqrt((1.2 * 3.8) / (5 * 5800)), { withinFrac: 0.006 });
    nearRatio(exact, 17.3 * Math.sqrt((1.2 * 3.8) / (5.8 * 5)), { withinFrac: 0.006 });
  });

  it("the n-th zone is sqrt(n) times the first", () => {
    const at = { fromNearM: 1000, fromFarM: 1000, frequencyMHz: 5800 };
    nearRatio(fresnelRadiusM({ ...at, zone: 4 }), 2 * fresnelRadiusM(at), { withinFrac: 1e-12 });
  });
});

/** How: worked by hand from d1 d2/(2 k R) with R = 6371 km. */
describe("the Earth's curve", () => {
  it.each([
    [2, 0.059, 0.078, 0.118],
    [5, 0.368, 0.491, 0.736],
    [10, 1.472, 1.962, 2.943],
    [20, 5.886, 7.848, 11.772],
    [30, 13.24, 17.66, 26.49],
  ])("rises in the middle of %d km by %d m (k = 4/3), %d m (1), %d m (2/3)", (km, median, straight, low) => {
    const half = { fromNearM: km * 500, fromFarM: km * 500 };
    const within = km === 30 ? 0.006 : 0.0006;
    near(earthBulgeM({ ...half, k: 4 / 3 }), median, { within });
    near(earthBulgeM({ ...half, k: 1 }), straight, { within });
    near(earthBulgeM({ ...half, k: 2 / 3 }), low, { within });
  });

  /** How: worked with the effective radius of 8500 km that the ITU's general methods take for k = 4/3 (8495 km). */
  it.each([
    [3, 7.14],
    [6, 10.1],
    [10, 13.04],
    [15, 15.97],
    [30, 22.58],
  ])("an antenna %d m up sees the ground for %d km", (nearHeightM, km) => {
    near(radioHorizonM({ nearHeightM, farHeightM: 0, k: 8500 / 6371 }) / 1000, km, { within: 0.0051 });
  });

  it("agrees with the printed 4.12 (sqrt h1 + sqrt h2)", () => {
    const km = radioHorizonM({ nearHeightM: 20, farHeightM: 5, k: 4 / 3 }) / 1000;
    near(km, 4.12 * (Math.sqrt(20) + Math.sqrt(5)), { within: 0.02 });
  });

  it("the median k makes an Earth of 8500 km, as the ITU's general methods round it", () => {
    near(6371 * MEDIAN_K, 8500, { within: 6 });
  });

  /** Source: ITU example carried in an open test of P.452: dN = 53 gives 9617.759615 km. How: printed value. */
  it("a lapse of 53 N-units/km makes an Earth of 9617.759615 km", () => {
    near(6371 * effectiveEarthRatio(53), 9617.759615, { within: 5e-7 });
  });
});

/** Source: Recommendation ITU-R P.526 clause 4.3, formulas from memory. How: worked from them for the NTIA case 23. */
describe("two edges", () => {
  const gaps = { nearGapM: 1600, betweenM: 2400, farGapM: 1600 };

  it("similar edges: Lc of NTIA's case 23 is 0.757 dB", () => {
    near(doubleEdgeCorrectionDb(gaps), 0.757, { within: 0.0006 });
  });

  it("one dominant: Tc of the same case is 0.0006 dB", () => {
    const wavelengthM = 0.2;
    const tc = dominantEdgeCorrectionDb({
      ...gaps,
      dominantTopM: 240,
      otherTopM: 200,
      frequencyMHz: 299.792458 / wavelengthM,
    });
    near(tc, 0.0006, { within: 0.00006 });
  });
});
