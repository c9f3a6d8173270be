import { describe, expect, it } from "vitest";
import { treeLossDb } from "../../../src/core/link/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

/** Source: Weissberger's model as printed in an open encyclopedia. How: worked from the printed equations. */
describe("trees in the path, 2, 5, 10, 14, 20, 50, 100, 400 m deep", () => {
  it.each([
    [2400, [1.15, 2.89, 5.77, 8.08, 9.93, 17.01, 25.58, 57.79]],
    [5800, [1.48, 3.71, 7.41, 10.38, 12.75, 21.86, 32.86, 74.25]],
    [24_000, [2.22, 5.55, 11.1, 15.54, 19.09, 32.72, 49.18, 111.13]],
    [60_000, [2.88, 7.2, 14.39, 20.15, 24.77, 42.45, 63.8, 144.16]],
  ])("%d MHz", (frequencyMHz, row) => {
    [2, 5, 10, 14, 20, 50, 100, 400].forEach((depthM, i) => {
      near(treeLossDb({ frequencyMHz, depthM }), row[i]!, { within: 0.0051 });
    });
  });

  it("the two branches meet at 14 m to within 0.5 %", () => {
    const short = treeLossDb({ frequencyMHz: 5800, depthM: 14 });
    const long = treeLossDb({ frequencyMHz: 5800, depthM: 14.000001 });
    near(long, 1.33 * 5.8 ** 0.284 * 14 ** 0.588, { within: 1e-5 });
    nearRatio(long, short, { withinFrac: 0.005 });
    expect(long).not.toBe(short);
  });
});
