import { describe, expect, it } from "vitest";
import { deltaBullingtonLoss, effectiveHeights, sphericalEarthLossDb } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";
import { PATHS } from "./cases.ts";

/**
 * Source: ITU-R study group 3, "Validation examples for the delta Bullington diffraction prediction method", as carried
 * in two independent open test suites. How: printed values of the smooth part, the spherical part and the total.
 *
 * The full profile, which sets the heights of the smooth surface, is not at hand. What is known of it: samples every
 * 50 m, the points that govern the real ground (see cases.ts), and that every printed value must follow from ONE height
 * of the surface at each end. For path 1 the near one is found from the first printed smooth value, 634.85 m, the far one
 * lies above the real ground, so that the mast alone counts there; all other fourteen printed values are then a check.
 */
const K = 8500 / 6371;
const PATH_1_SURFACE = { nearM: 634.85, farM: 400 };
const PATH_1 = [
  {
    nearMastM: 30,
    farMastM: 30,
    frequencyMHz: 1000,
    smoothDb: 13.74840484,
    sphericalDb: 15.3485837,
    totalDb: 34.44302652,
  },
  {
    nearMastM: 50,
    farMastM: 10,
    frequencyMHz: 2500,
    smoothDb: 18.5970601,
    sphericalDb: 23.6973069,
    totalDb: 42.32928281,
  },
  {
    nearMastM: 20,
    farMastM: 20,
    frequencyMHz: 600,
    smoothDb: 15.79373777,
    sphericalDb: 20.91384864,
    totalDb: 36.34606901,
  },
  {
    nearMastM: 40,
    farMastM: 50,
    frequencyMHz: 200,
    smoothDb: 11.50981857,
    sphericalDb: 14.32933641,
    totalDb: 27.69744396,
  },
  {
    nearMastM: 70,
    farMastM: 5,
    frequencyMHz: 150,
    smoothDb: 14.93033347,
    sphericalDb: 33.13883693,
    totalDb: 42.99074274,
  },
];

/** The governing points at their places, the rest of the 50 m samples so low that they govern nothing. */
function sampled(name: string) {
  const known = PATHS.find((path) => path.name === name)!.profile;
  const endM = known.at(-1)!.distanceFromNearM;
  const samples = Array.from({ length: Math.floor(endM / 50) + 1 }, (_, i) => i * 50);
  return [...samples, endM].map((distanceFromNearM) => ({
    distanceFromNearM,
    groundM: known.find((point) => point.distanceFromNearM === distanceFromNearM)?.groundM ?? -400,
  }));
}

describe("ITU validation of the delta-Bullington method, path 1", () => {
  const profile = sampled("path 1");

  it("has the 1663 samples of the document's profile", () => {
    expect(profile).toHaveLength(1663);
    expect(sampled("path 3")).toHaveLength(349);
  });

  it.each(PATH_1)("masts $nearMastM m and $farMastM m, $frequencyMHz MHz", (row) => {
    const { nearMastM, farMastM, frequencyMHz } = row;
    const path = { profile, nearMastM, farMastM, frequencyMHz, k: K };
    const found = deltaBullingtonLoss({ ...path, smoothSurface: PATH_1_SURFACE });
    near(found.smoothDb, row.smoothDb, { within: 0.008 });
    near(found.sphericalDb, row.sphericalDb, { within: 0.008 });
    // the document itself allows 0.1
    near(found.lossDb, row.totalDb, { within: 0.008 });
  });

  it("the far antenna counts its mast alone", () => {
    const path = { profile, nearMastM: 30, farMastM: 30, frequencyMHz: 1000, k: K };
    near(effectiveHeights({ ...path, surface: PATH_1_SURFACE }).farM, 30, { within: 1e-9 });
  });
});

/**
 * Path 3: surface found from the two printed values of the fifth row; that the smooth part of the other four is zero, so
 * that total and Bullington agree, is then the check.
 */
describe("ITU validation of the delta-Bullington method, path 3", () => {
  const profile = sampled("path 3");
  const smoothSurface = { nearM: 618.2, farM: 577.75 };
  const rows = PATHS.find((path) => path.name === "path 3")!.rows;

  it.each(rows.slice(0, 4))("masts $nearMastM m and $farMastM m: nothing to add", (row) => {
    const { nearMastM, farMastM, frequencyMHz } = row;
    const path = { profile, nearMastM, farMastM, frequencyMHz, k: K };
    const found = deltaBullingtonLoss({ ...path, smoothSurface });
    expect(found.sphericalDb).toBe(0);
    near(found.lossDb, row.lossDb, { within: 0.0035 });
  });

  it("masts 70 m and 5 m: 20.73949248 dB of which 10.63765222 spherical and 6.17409081 smooth", () => {
    const path = { profile, nearMastM: 70, farMastM: 5, frequencyMHz: 150, k: K };
    const found = deltaBullingtonLoss({ ...path, smoothSurface });
    near(found.smoothDb, 6.17409081, { within: 0.02 });
    near(found.sphericalDb, 10.63765222, { within: 0.02 });
    near(found.lossDb, 20.73949248, { within: 0.02 });
  });
});

/** How: P.526 clause 3.2 by its own limits, worked by hand. */
describe("a smooth earth", () => {
  const path = { frequencyMHz: 5800, k: 4 / 3 };

  it("is free where the antennas stand high and near", () => {
    expect(sphericalEarthLossDb({ ...path, distanceM: 5000, nearHeightM: 10, farHeightM: 10 })).toBe(0);
  });

  it("has no step at the horizon, where the two halves of the method meet", () => {
    const horizonM = Math.sqrt(2 * 6_371_000 * (4 / 3)) * 2 * Math.sqrt(30);
    const at = (distanceM: number) =>
      sphericalEarthLossDb({ ...path, distanceM, nearHeightM: 30, farHeightM: 30 });
    near(at(horizonM - 0.5), at(horizonM + 0.5), { within: 0.01 });
    // one edge that just touches the line costs 6.03: a whole earth that does must cost more
    expect(at(horizonM)).toBeGreaterThan(6.03);
  });
});
