import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  knifeEdgeLossDb,
  type Obstacle,
  obstacleLoss,
  type Path,
  straightGround,
  treeLossDb,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const path: Path = {
  distanceM: 5000,
  nearHeightM: 10,
  farHeightM: 10,
  frequencyMHz: 5800,
  k: 4 / 3,
  obstacles: [],
};

/** The bulge that the Earth adds 2 km from one end and 3 km from the other: 2 x 3/16.989 = 0.353 m, worked by hand. */
const BULGE_M = 6 / 16.989;
const ridge = (aboveLineM: number): Obstacle => ({
  distanceFromNearM: 2000,
  topM: 10 + aboveLineM - BULGE_M,
  kind: "ridge",
});

/** How: worked by hand for F1 = 7.875 m from ITU-R P.526 equation 31. */
describe("one ridge 2 km along a path of 5 km at 5.8 GHz", () => {
  it.each([
    [-2, 3.04],
    [0, 6.03],
    [5, 13.25],
    [10, 18.18],
  ])("%d m above the line costs %d dB", (aboveLineM, lossDb) => {
    const found = obstacleLoss({ ...path, obstacles: [ridge(aboveLineM)] });
    expect(found.method).toBe("single-edge");
    near(found.lossDb, lossDb, { within: 0.01 });
  });

  it("well below the line costs nothing", () => {
    expect(obstacleLoss({ ...path, obstacles: [ridge(-6)] })).toMatchObject({ lossDb: 0, method: "none" });
  });
});

describe("which construction is used", () => {
  it("nothing in the way", () => {
    expect(obstacleLoss(path)).toEqual({
      lossDb: 0,
      diffractionDb: 0,
      vegetationDb: 0,
      method: "none",
      throughIndices: [],
    });
  });

  it("two ridges, three ridges, and ground", () => {
    const at = (distanceFromNearM: number): Obstacle => ({ distanceFromNearM, topM: 15, kind: "ridge" });
    expect(obstacleLoss({ ...path, obstacles: [at(1500), at(3500)] }).method).toBe("double-edge");
    expect(obstacleLoss({ ...path, obstacles: [at(1500), at(2500), at(3500)] }).method).toBe("deygout");
    const ground = straightGround({ distanceM: 5000, nearGroundM: 9, farGroundM: 9 });
    expect(obstacleLoss({ ...path, obstacles: ground }).method).toBe("bullington");
  });

  it("ground far below does not turn one ridge into irregular ground", () => {
    const ground = straightGround({ distanceM: 5000, nearGroundM: -10, farGroundM: -10 });
    const found = obstacleLoss({ ...path, obstacles: [...ground, ridge(0)] });
    expect(found.method).toBe("single-edge");
    near(found.lossDb, 6.03, { within: 0.01 });
  });

  it("the same ridge named twice is charged once", () => {
    const once = obstacleLoss({ ...path, obstacles: [ridge(3)] });
    const twice = obstacleLoss({ ...path, obstacles: [ridge(3), { ...ridge(3), distanceFromNearM: 2010 }] });
    near(twice.lossDb, once.lossDb, { within: 0.05 });
  });
});

/**
 * Source: Recommendation ITU-R P.526 clauses 4.1 and 4.3 (the correction from memory). How: independent re-derivation in
 * Python for 2.4 GHz, 8 km, antennas at 40 and 10 m: J 16.609 + 8.635, less Tc 0.388.
 */
describe("two ridges on a falling path", () => {
  const falling: Path = { ...path, distanceM: 8000, nearHeightM: 40, farHeightM: 10, frequencyMHz: 2400 };
  const ridges: readonly Obstacle[] = [
    { distanceFromNearM: 2500, topM: 45, kind: "ridge" },
    { distanceFromNearM: 6000, topM: 25, kind: "ridge" },
  ];

  it("cost 24.857 dB", () => {
    const found = obstacleLoss({ ...falling, obstacles: ridges });
    expect(found.method).toBe("double-edge");
    near(found.lossDb, 24.8567, { within: 0.0001 });
  });

  it("cost the same when the second one leads", () => {
    const back = ridges.map((row) => ({ ...row, distanceFromNearM: 8000 - row.distanceFromNearM }));
    const found = obstacleLoss({ ...falling, nearHeightM: 10, farHeightM: 40, obstacles: back });
    near(found.lossDb, 24.8567, { within: 0.0001 });
  });
});

describe("trees", () => {
  const trees = (aboveLineM: number, depthM: number): Obstacle => ({
    ...ridge(aboveLineM),
    kind: "trees",
    depthM,
  });

  it("a thin hedge right across the path is passed through", () => {
    const found = obstacleLoss({ ...path, obstacles: [trees(10, 2)] });
    expect(found.throughIndices).toEqual([0]);
    near(found.lossDb, treeLossDb({ frequencyMHz: 5800, depthM: 2 }), { within: 1e-9 });
    expect(found.method).toBe("none");
  });

  it("a deep wood just touching the line is bent over", () => {
    const found = obstacleLoss({ ...path, obstacles: [{ ...ridge(0), kind: "trees", depthM: 80 }] });
    expect(found.throughIndices).toEqual([]);
    expect(found.vegetationDb).toBe(0);
    near(found.lossDb, 6.03, { within: 0.02 });
  });

  it("without a depth they count as an edge", () => {
    const { depthM: _, ...noDepth } = trees(10, 2);
    near(obstacleLoss({ ...path, obstacles: [noDepth] }).lossDb, 18.18, { within: 0.01 });
  });

  it("deeper than the model of passing through reaches, they are an edge", () => {
    const found = obstacleLoss({ ...path, obstacles: [trees(0, 401)] });
    expect(found.throughIndices).toEqual([]);
    expect(found.lossDb).toBeGreaterThan(6);
  });

  it("never cost more than bending over them, nor more than passing through", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        fc.constantFrom(900, 2400, 5800, 24_125, 60_480),
        (aboveLineM, depthM, frequencyMHz) => {
          const through = trees(aboveLineM, depthM);
          const found = obstacleLoss({ ...path, frequencyMHz, obstacles: [through] });
          const opaque = obstacleLoss({
            ...path,
            frequencyMHz,
            obstacles: [{ ...through, kind: "building" }],
          });
          expect(found.lossDb).toBeLessThanOrEqual(opaque.lossDb + 1e-9);
          expect(found.lossDb).toBeLessThanOrEqual(treeLossDb({ frequencyMHz, depthM }) + 1e-9);
        },
      ),
    );
  });

  it("among other obstacles, making trees opaque never makes the path better", () => {
    fc.assert(
      fc.property(obstacleLists, (obstacles) => {
        const mixed = obstacleLoss({ ...path, obstacles });
        const opaque = obstacleLoss({
          ...path,
          obstacles: obstacles.map((obstacle) =>
            obstacle.kind === "trees" ? { ...obstacle, kind: "building" as const } : obstacle,
          ),
        });
        expect(mixed.lossDb).toBeLessThanOrEqual(opaque.lossDb + 1e-9);
      }),
    );
  });
});

const obstacleLists = fc.uniqueArray(
  fc.record({
    distanceFromNearM: fc.double({ min: 50, max: 4950, noNaN: true }),
    topM: fc.double({ min: -20, max: 60, noNaN: true }),
    kind: fc.constantFrom("ground" as const, "ridge" as const, "building" as const, "trees" as const),
    depthM: fc.double({ min: 0, max: 60, noNaN: true }),
  }),
  { maxLength: 6, selector: (obstacle) => Math.round(obstacle.distanceFromNearM / 100) },
);

describe("laws", () => {
  it("a finite loss, never a gain, for every mixture", () => {
    fc.assert(
      fc.property(obstacleLists, fc.integer({ min: 30, max: 300_000 }), (obstacles, frequencyMHz) => {
        const found = obstacleLoss({ ...path, frequencyMHz, obstacles });
        expect(Number.isFinite(found.lossDb)).toBe(true);
        expect(found.lossDb).toBeGreaterThanOrEqual(0);
        near(found.lossDb, found.diffractionDb + found.vegetationDb, { within: 1e-9 });
      }),
    );
  });

  it("a finite loss anywhere in the promised ranges", () => {
    const height = fc.double({ min: -500, max: 10_000, noNaN: true });
    const anyPath = fc.record({
      distanceM: fc.double({ min: 10, max: 200_000, noNaN: true }),
      nearHeightM: height,
      farHeightM: height,
      frequencyMHz: fc.double({ min: 30, max: 300_000, noNaN: true }),
      k: fc.double({ min: 0.3, max: 100, noNaN: true }),
      shares: fc.array(
        fc.record({
          along: fc.double({ min: 0, max: 1, noNaN: true }),
          topM: height,
          depthM: fc.double({ min: 0, max: 200_000, noNaN: true }),
          kind: fc.constantFrom("ground" as const, "ridge" as const, "trees" as const),
        }),
        { maxLength: 5 },
      ),
    });
    fc.assert(
      fc.property(anyPath, ({ shares, ...rest }) => {
        const obstacles = shares.map(({ along, ...share }) => ({
          ...share,
          distanceFromNearM: along * rest.distanceM,
        }));
        const found = obstacleLoss({ ...rest, obstacles });
        expect(found.lossDb).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(found.lossDb)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("reversing the path changes nothing", () => {
    fc.assert(
      fc.property(obstacleLists, fc.double({ min: 0, max: 40, noNaN: true }), (obstacles, farHeightM) => {
        const there = obstacleLoss({ ...path, farHeightM, obstacles });
        const back = obstacleLoss({
          ...path,
          nearHeightM: farHeightM,
          farHeightM: path.nearHeightM,
          obstacles: obstacles.map((obstacle) => ({
            ...obstacle,
            distanceFromNearM: path.distanceM - obstacle.distanceFromNearM,
          })),
        });
        near(back.lossDb, there.lossDb, { within: 1e-3 });
        expect(back.method).toBe(there.method);
      }),
    );
  });

  it("an opaque obstacle never costs less than its own edge alone", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 40, noNaN: true }),
        fc.double({ min: -5, max: 40, noNaN: true }),
        (firstM, secondM) => {
          const second: Obstacle = { distanceFromNearM: 3500, topM: 10 + secondM, kind: "building" };
          const both = obstacleLoss({ ...path, obstacles: [ridge(firstM), second] });
          const alone = obstacleLoss({ ...path, obstacles: [ridge(firstM)] });
          expect(both.lossDb).toBeGreaterThanOrEqual(alone.lossDb - 1e-9);
        },
      ),
    );
  });

  it("an edge below v = -0.78 costs nothing, and loss rises with v", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (v, more) => {
          if (v <= -0.78) expect(knifeEdgeLossDb(v)).toBe(0);
          if (v + more <= 1e9) expect(knifeEdgeLossDb(v + more)).toBeGreaterThanOrEqual(knifeEdgeLossDb(v));
        },
      ),
    );
  });
});
