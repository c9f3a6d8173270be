import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fresnelRadiusM, pathClearance, pathSection } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const path = {
  distanceM: 5000,
  nearHeightM: 5,
  farHeightM: 15,
  frequencyMHz: 5800,
  k: 4 / 3,
  obstacles: [],
};

describe("a path cut open", () => {
  /** How: worked by hand: line 10 m, bulge 0.368 m, first Fresnel radius 8.038 m in the middle. */
  it("has line, ground and zone in the middle", () => {
    const { samples, lowestM, highestM } = pathSection({ ...path, columns: 101 });
    const middle = samples[50]!;
    near(middle.distanceM, 2500, { within: 1e-9 });
    near(middle.lineM, 10, { within: 1e-9 });
    near(middle.groundM, 0.368, { within: 0.0006 });
    near(middle.lower06M, 10 - 0.6 * 8.038, { within: 0.0006 });
    near(middle.lower10M, 10 - 8.038, { within: 0.0006 });
    near(middle.upper10M, 10 + 8.038, { within: 0.0006 });
    expect(lowestM).toBeLessThanOrEqual(0);
    expect(highestM).toBeGreaterThan(18);
  });

  it("begins and ends at the antennas, where the zone has no width", () => {
    const { samples } = pathSection({ ...path, columns: 7 });
    expect(samples).toHaveLength(7);
    expect(samples[0]).toMatchObject({ distanceM: 0, lineM: 5, firstZoneM: 0, bulgeM: 0 });
    expect(samples[6]).toMatchObject({ distanceM: 5000, lineM: 15, firstZoneM: 0, bulgeM: 0 });
  });

  it("follows the ground", () => {
    const profile = [
      { distanceFromNearM: 0, groundM: 0 },
      { distanceFromNearM: 2500, groundM: 6 },
      { distanceFromNearM: 5000, groundM: 2 },
    ];
    const { samples } = pathSection({ ...path, profile, columns: 5 });
    near(samples[1]!.groundM - samples[1]!.bulgeM, 3, { within: 1e-9 });
    near(samples[3]!.groundM - samples[3]!.bulgeM, 4, { within: 1e-9 });
  });

  it("says of each obstacle how far it rises, as the clearance does", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 4999, noNaN: true }),
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        (distanceFromNearM, topM, depthM) => {
          const obstacles = [{ distanceFromNearM, topM, depthM, kind: "trees" as const }];
          const { worst } = pathClearance({ ...path, obstacles, clearanceFrac: 0.6 });
          // a face within half a metre of an antenna is moved there by one of the two and not by the other
          fc.pre(distanceFromNearM - depthM / 2 > 1 && distanceFromNearM + depthM / 2 < 4999);
          const [standing] = pathSection({ ...path, obstacles, columns: 11 }).obstacles;
          const frac = worst!.clearanceFrac;
          expect(standing!.rises).toBe(
            frac < 0 ? "above the line" : frac < 0.6 ? "into the Fresnel zone" : "clear",
          );
          near(standing!.toM - standing!.fromM, depthM, { within: 1e-6 });
        },
      ),
    );
  });

  it("draws the zone that the formulas compute", () => {
    for (const sample of pathSection({ ...path, columns: 21 }).samples.slice(1, -1)) {
      const at = { fromNearM: sample.distanceM, fromFarM: 5000 - sample.distanceM, frequencyMHz: 5800 };
      near(sample.firstZoneM, fresnelRadiusM(at), { within: 1e-9 });
    }
  });
});
