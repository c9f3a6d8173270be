import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  deltaBullingtonLoss,
  effectiveHeights,
  type ProfilePoint,
  smoothSurface,
  sphericalEarthLossDb,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const height = fc.double({ min: 0.5, max: 200, noNaN: true });
const frequency = fc.double({ min: 100, max: 60_000, noNaN: true });
const distance = fc.double({ min: 500, max: 100_000, noNaN: true });

describe("diffraction over a smooth spherical earth", () => {
  it("is never negative, the same from either end, and grows as an antenna comes down", () => {
    fc.assert(
      fc.property(distance, height, height, frequency, (distanceM, nearHeightM, farHeightM, frequencyMHz) => {
        const path = { distanceM, nearHeightM, farHeightM, frequencyMHz, k: 4 / 3 };
        const lossDb = sphericalEarthLossDb(path);
        expect(lossDb).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(lossDb)).toBe(true);
        const back = sphericalEarthLossDb({ ...path, nearHeightM: farHeightM, farHeightM: nearHeightM });
        near(back, lossDb, { within: 1e-6 + 1e-9 * lossDb });
      }),
    );
  });

  it("stays finite with one antenna on the ground", () => {
    const path = { distanceM: 20_000, nearHeightM: 0, farHeightM: 10, frequencyMHz: 2400, k: 4 / 3 };
    expect(sphericalEarthLossDb(path)).toBeGreaterThan(20);
    expect(() => sphericalEarthLossDb({ ...path, farHeightM: 0 })).toThrow("nearHeightM + farHeightM");
  });

  /**
   * How: independent re-derivation from the equations of P.526 clause 3.2 (as remembered) for 100 MHz, a = 8500 km, 100 km, antennas so low that the height gain is
   * held at 2 + 20 log10 K. Sea, vertical: K_H = 0.036 x 850^(-1/3) x (79^2 + 900^2)^(-1/4) = 1.26437e-04, K = K_H x
   * (80^2 + 900^2)^(1/2) = 0.11424; land, vertical: K_H = 8.29179e-04, K = 0.018247.
   */
  it.each([
    ["sea", 60.35],
    ["land", 93.56],
  ] as const)("near the ground over %s it is %d dB", (surface, lossDb) => {
    const path = { distanceM: 100_000, nearHeightM: 0.01, farHeightM: 0.01, frequencyMHz: 100 } as const;
    near(sphericalEarthLossDb({ ...path, k: 8500 / 6371, polarisation: "vertical", surface }), lossDb, {
      within: 0.01,
    });
  });

  it("salt water carries a vertical wave round the curve better than land does", () => {
    const path = { distanceM: 60_000, nearHeightM: 5, farHeightM: 5, frequencyMHz: 100, k: 4 / 3 } as const;
    const land = sphericalEarthLossDb({ ...path, polarisation: "vertical" });
    expect(sphericalEarthLossDb({ ...path, polarisation: "vertical", surface: "sea" })).toBeLessThan(land);
  });
});

describe("the smooth surface through a profile", () => {
  it("of a straight slope is the slope", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 900, noNaN: true }), { minLength: 1, maxLength: 20 }),
        fc.double({ min: -50, max: 500, noNaN: true }),
        fc.double({ min: -50, max: 500, noNaN: true }),
        (gaps, fromM, toM) => {
          const totalM = gaps.reduce((a, b) => a + b);
          let atM = 0;
          const profile: ProfilePoint[] = [{ distanceFromNearM: 0, groundM: fromM }];
          for (const gap of gaps) {
            atM += gap;
            profile.push({ distanceFromNearM: atM, groundM: fromM + ((toM - fromM) * atM) / totalM });
          }
          const surface = smoothSurface(profile);
          near(surface.nearM, fromM, { within: 1e-6 });
          near(surface.farM, toM, { within: 1e-6 });
        },
      ),
    );
  });

  /** How: least squares of a triangle worked by hand: a peak of h in the middle gives a level line at h/2. */
  it("of a peak in the middle is level at half its height", () => {
    const surface = smoothSurface([
      { distanceFromNearM: 0, groundM: 0 },
      { distanceFromNearM: 500, groundM: 20 },
      { distanceFromNearM: 1000, groundM: 0 },
    ]);
    near(surface.nearM, 10, { within: 1e-9 });
    near(surface.farM, 10, { within: 1e-9 });
  });

  it("never lies above the real ground at an end", () => {
    const profile = [
      { distanceFromNearM: 0, groundM: 0 },
      { distanceFromNearM: 500, groundM: 20 },
      { distanceFromNearM: 1000, groundM: 0 },
    ];
    const found = effectiveHeights({ profile, nearMastM: 4, farMastM: 6, frequencyMHz: 5800, k: 4 / 3 });
    expect(found.nearM).toBeGreaterThanOrEqual(4);
    expect(found.farM).toBeGreaterThanOrEqual(6);
  });
});

describe("delta-Bullington", () => {
  const profileOf = (heights: readonly number[]): readonly ProfilePoint[] =>
    heights.map((groundM, i) => ({ distanceFromNearM: i * 300, groundM }));
  const heights = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 3, maxLength: 30 });

  it("loses as much from the far end as from the near one", () => {
    fc.assert(
      fc.property(heights, height, height, frequency, (grounds, nearMastM, farMastM, frequencyMHz) => {
        const there = deltaBullingtonLoss({
          profile: profileOf(grounds),
          nearMastM,
          farMastM,
          frequencyMHz,
          k: 4 / 3,
        });
        const back = deltaBullingtonLoss({
          profile: profileOf(grounds.toReversed()),
          nearMastM: farMastM,
          farMastM: nearMastM,
          frequencyMHz,
          k: 4 / 3,
        });
        near(back.lossDb, there.lossDb, { within: 1e-6 });
        expect(there.lossDb).toBeGreaterThanOrEqual(there.actual.lossDb);
      }),
    );
  });
});
