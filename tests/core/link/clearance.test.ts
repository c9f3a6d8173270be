import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Obstacle, type Path, pathClearance, straightGround } from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const flat: Path = {
  distanceM: 5000,
  nearHeightM: 5,
  farHeightM: 5,
  frequencyMHz: 5800,
  k: 4 / 3,
  obstacles: [{ distanceFromNearM: 2500, topM: 0, kind: "ground" }],
};

describe("clearance over flat ground, worked by hand from the formulas of ITU-R P.526 and P.530", () => {
  it("asks 5.19 m above the ground for 0.6 of the first zone in the middle of 5 km", () => {
    // bulge 0.368 + 0.6 x 8.038
    const { heightsThatClear, isClear } = pathClearance({
      ...flat,
      nearHeightM: 0,
      farHeightM: 0,
      clearanceFrac: 0.6,
    });
    expect(isClear).toBe(false);
    near(heightsThatClear.bothRaiseM, 5.19, { within: 0.005 });
    // a metre at one end lifts the middle by half
    near(heightsThatClear.nearAloneM, 10.38, { within: 0.01 });
    near(heightsThatClear.farAloneM, 10.38, { within: 0.01 });
  });

  it("asks 8.41 m for the whole first zone", () => {
    const { heightsThatClear } = pathClearance({ ...flat, nearHeightM: 0, farHeightM: 0, clearanceFrac: 1 });
    near(heightsThatClear.bothRaiseM, 8.41, { within: 0.005 });
  });

  it("says how much of the zone is clear", () => {
    const { worst } = pathClearance({ ...flat, clearanceFrac: 0.6 });
    near(worst!.clearanceM, 5 - 0.368, { within: 0.001 });
    near(worst!.firstZoneM, 8.038, { within: 0.001 });
    near(worst!.clearanceFrac, 0.576, { within: 0.001 });
  });

  it("does not take 60 % of the zone's radius for the zone of n = 0.6", () => {
    const { worst } = pathClearance({ ...flat, nearHeightM: 6.3, farHeightM: 6.3, clearanceFrac: 0.6 });
    // 0.775 F1 + bulge = 6.6 m would be asked by the mistake
    expect(worst!.missingM).toBeLessThan(0);
  });
});

describe("what stands in the way", () => {
  it("nothing named: clear, nothing to raise, no worst point", () => {
    const found = pathClearance({ ...flat, obstacles: [], clearanceFrac: 1 });
    expect(found).toEqual({
      points: [],
      worst: undefined,
      isClear: true,
      heightsThatClear: { nearAloneM: 5, farAloneM: 5, bothRaiseM: 0 },
    });
  });

  it("names the obstacle that is worst in zones, not in metres", () => {
    const { worst } = pathClearance({
      ...flat,
      nearHeightM: 20,
      farHeightM: 20,
      obstacles: [
        { distanceFromNearM: 20, topM: 18.5, kind: "building" },
        { distanceFromNearM: 2500, topM: 16, kind: "trees" },
      ],
      clearanceFrac: 0.6,
    });
    expect(worst!.index).toBe(1);
  });

  it("a deep obstacle on a falling path is worst at its far face", () => {
    const { worst } = pathClearance({
      ...flat,
      nearHeightM: 40,
      farHeightM: 2,
      obstacles: [{ distanceFromNearM: 2500, topM: 15, kind: "trees", depthM: 400 }],
      clearanceFrac: 0.6,
    });
    expect(worst!.fromNearM).toBe(2700);
  });

  it("an obstacle at the very antenna is taken half a metre away, where the zone has a width", () => {
    const obstacles = [{ distanceFromNearM: 0, topM: 4, kind: "building" as const }];
    const { worst } = pathClearance({ ...flat, obstacles, clearanceFrac: 0.6 });
    expect(worst!.fromNearM).toBe(0.5);
    near(worst!.clearanceM, 1, { within: 0.001 });
  });

  it("a straight slope is sampled between the ends", () => {
    const ground = straightGround({ distanceM: 1000, nearGroundM: 100, farGroundM: 120 });
    expect(ground).toHaveLength(19);
    expect(ground[9]).toEqual({ distanceFromNearM: 500, topM: 110, kind: "ground" });
  });

  it("refuses an obstacle beyond the far end", () => {
    const beyond: Obstacle = { distanceFromNearM: 5001, topM: 0, kind: "ridge" };
    expect(() => pathClearance({ ...flat, obstacles: [beyond], clearanceFrac: 0.6 })).toThrow(
      "distanceFromNearM",
    );
  });
});

const paths = fc
  .record({
    distanceM: fc.double({ min: 50, max: 50_000, noNaN: true }),
    nearHeightM: fc.double({ min: 0, max: 60, noNaN: true }),
    farHeightM: fc.double({ min: 0, max: 60, noNaN: true }),
    frequencyMHz: fc.constantFrom(900, 2400, 5800, 24_125, 60_480),
    k: fc.constantFrom(0.6, 1, 4 / 3),
    shares: fc.array(
      fc.record({
        along: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        topM: fc.double({ min: 0, max: 50, noNaN: true }),
        depthM: fc.double({ min: 0, max: 30, noNaN: true }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
  })
  .map(
    ({ shares, ...path }): Path => ({
      ...path,
      obstacles: shares.map(({ along, topM, depthM }) => ({
        distanceFromNearM: along * path.distanceM,
        topM,
        depthM,
        kind: "trees" as const,
      })),
    }),
  );

describe("laws", () => {
  it("raising an antenna never lowers the clearance", () => {
    fc.assert(
      fc.property(
        paths,
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.boolean(),
        (path, raiseM, isNear) => {
          const raised = isNear
            ? { ...path, nearHeightM: path.nearHeightM + raiseM }
            : { ...path, farHeightM: path.farHeightM + raiseM };
          const before = pathClearance({ ...path, clearanceFrac: 0.6 });
          const after = pathClearance({ ...raised, clearanceFrac: 0.6 });
          expect(after.worst!.clearanceFrac).toBeGreaterThanOrEqual(before.worst!.clearanceFrac - 1e-9);
        },
      ),
    );
  });

  it("reversing the path changes nothing", () => {
    fc.assert(
      fc.property(paths, (path) => {
        const there = pathClearance({ ...path, clearanceFrac: 0.6 });
        const back = pathClearance({ ...reversed(path), clearanceFrac: 0.6 });
        near(back.worst!.clearanceM, there.worst!.clearanceM, { within: 1e-6 });
        near(back.heightsThatClear.bothRaiseM, there.heightsThatClear.bothRaiseM, { within: 1e-6 });
        near(back.heightsThatClear.farAloneM, there.heightsThatClear.nearAloneM, { within: 1e-4 });
        expect(back.isClear).toBe(there.isClear);
      }),
    );
  });

  it("the heights that clear do clear, and a hand lower does not", () => {
    fc.assert(
      fc.property(paths, (path) => {
        const { heightsThatClear: heights, isClear } = pathClearance({ ...path, clearanceFrac: 0.6 });
        const missingWith = (change: Partial<Path>) =>
          Math.max(
            ...pathClearance({ ...path, ...change, clearanceFrac: 0.6 }).points.map(
              (point) => point.missingM,
            ),
          );
        fc.pre(heights.nearAloneM < 9000 && heights.farAloneM < 9000);
        near(Math.max(0, missingWith({ nearHeightM: heights.nearAloneM })), 0, { within: 0.05 });
        near(Math.max(0, missingWith({ farHeightM: heights.farAloneM })), 0, { within: 0.05 });
        const both = {
          nearHeightM: path.nearHeightM + heights.bothRaiseM,
          farHeightM: path.farHeightM + heights.bothRaiseM,
        };
        near(Math.max(0, missingWith(both)), 0, { within: 1e-6 });
        if (!isClear) {
          expect(
            missingWith({ nearHeightM: both.nearHeightM - 0.1, farHeightM: both.farHeightM - 0.1 }),
          ).toBeGreaterThan(0);
        }
      }),
    );
  });
});

function reversed(path: Path): Path {
  return {
    ...path,
    nearHeightM: path.farHeightM,
    farHeightM: path.nearHeightM,
    obstacles: path.obstacles.map((obstacle) => ({
      ...obstacle,
      distanceFromNearM: path.distanceM - obstacle.distanceFromNearM,
    })),
  };
}
