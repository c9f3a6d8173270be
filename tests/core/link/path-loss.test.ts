import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  deltaBullingtonLoss,
  freeSpaceLossDb,
  gasLossDb,
  knifeEdgeLossDb,
  knifeEdgeV,
  type Obstacle,
  type ProfilePoint,
  pathClearance,
  pathLoss,
  type SurveyedPath,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const level = {
  distanceM: 5000,
  nearHeightM: 20,
  farHeightM: 20,
  frequencyMHz: 5800,
  k: 100,
  obstacles: [],
} satisfies SurveyedPath;

const ridge = (distanceFromNearM: number, topM: number): Obstacle => ({
  distanceFromNearM,
  topM,
  kind: "ridge",
});

describe("which construction is taken, and why", () => {
  it("nothing in the way: free space and air alone", () => {
    const found = pathLoss(level);
    expect(found.method).toBe("none");
    near(found.totalDb, freeSpaceLossDb(level) + gasLossDb(level), { within: 1e-9 });
    expect(found.governing).toBeUndefined();
    expect(found.secondOpinionDb).toBeUndefined();
    expect(found.toleranceDb).toBe(0);
  });

  /** How: J(v) of Recommendation ITU-R P.526 clause 4.1 for the one edge. */
  it("one edge: J(v), and it is the one that governs", () => {
    const found = pathLoss({ ...level, obstacles: [ridge(2000, 22)] });
    const v = knifeEdgeV({ aboveLineM: 2, fromNearM: 2000, fromFarM: 3000, frequencyMHz: 5800 });
    expect(found.method).toBe("single-edge");
    // k = 100 leaves 5 mm of bulge
    near(found.diffractionDb, knifeEdgeLossDb(v), { within: 0.02 });
    expect(found.governing).toMatchObject({ index: 0, isGround: false });
    expect(found.reason).toContain("single knife edge");
  });

  it("two apart: with Epstein and Peterson's sum as second opinion", () => {
    const found = pathLoss({ ...level, obstacles: [ridge(1500, 30), ridge(3500, 26)] });
    expect(found.method).toBe("double-edge");
    expect(found.secondOpinionDb).toBeGreaterThan(20);
    expect(found.toleranceDb).toBeGreaterThanOrEqual(Math.abs(found.secondOpinionDb! - found.diffractionDb));
    expect(found.governing?.index).toBe(0);
  });

  it("three apart: Deygout", () => {
    const found = pathLoss({ ...level, obstacles: [ridge(1000, 25), ridge(2500, 30), ridge(4000, 26)] });
    expect(found.method).toBe("deygout");
    expect(found.reason).toContain("safe side");
  });

  it("a profile that reaches into the zone: Bullington over all of it, at least what the ground alone asks", () => {
    const profile = [0, 1000, 2000, 3000, 4000, 5000].map((distanceFromNearM, i) => ({
      distanceFromNearM,
      groundM: [5, 12, 18, 17, 9, 5][i]!,
    }));
    const bare = pathLoss({ ...level, profile });
    expect(bare.method).toBe("bullington");
    expect(bare.governing?.isGround).toBe(true);
    const withBarn = pathLoss({ ...level, profile, obstacles: [ridge(2500, 27)] });
    expect(withBarn.diffractionDb).toBeGreaterThan(bare.diffractionDb);
  });

  it("a long plain costs what delta-Bullington asks, more than Bullington's edge alone", () => {
    const profile = Array.from({ length: 61 }, (_, i) => ({ distanceFromNearM: i * 500, groundM: 100 }));
    const path = { distanceM: 30_000, frequencyMHz: 1000, k: 4 / 3 };
    const found = pathLoss({ ...path, nearHeightM: 108, farHeightM: 108, obstacles: [], profile });
    const delta = deltaBullingtonLoss({ ...path, profile, nearMastM: 8, farMastM: 8 });
    expect(found.sphericalExtraDb).toBeGreaterThan(1);
    near(found.diffractionDb, delta.lossDb, { within: 1e-9 });
    near(found.sphericalExtraDb, delta.sphericalDb - delta.smoothDb, { within: 1e-9 });
  });

  it("a profile that stays away changes nothing", () => {
    const profile = [0, 2500, 5000].map((distanceFromNearM) => ({ distanceFromNearM, groundM: -20 }));
    near(pathLoss({ ...level, profile }).totalDb, pathLoss(level).totalDb, { within: 1e-9 });
  });

  it("trees passed through are said to be", () => {
    const trees: Obstacle = { distanceFromNearM: 2500, topM: 40, kind: "trees", depthM: 3 };
    const found = pathLoss({ ...level, obstacles: [trees] });
    expect(found.throughIndices).toEqual([0]);
    expect(found.toleranceDb).toBe(10);
    expect(found.reason).toContain("trees");
  });
});

const grounds = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 3, maxLength: 25 });
const heights = fc.double({ min: 1, max: 60, noNaN: true });
const frequency = fc.double({ min: 1000, max: 60_000, noNaN: true });
const edges = fc.array(fc.tuple(fc.double({ min: 0.02, max: 0.98, noNaN: true }), heights), { maxLength: 5 });

describe("laws", () => {
  const profileOf = (list: readonly number[], distanceM: number): readonly ProfilePoint[] =>
    list.map((groundM, i) => ({ distanceFromNearM: (i * distanceM) / (list.length - 1), groundM }));

  it("over ground, the way back loses the same, and the profile reversed changes nothing", () => {
    fc.assert(
      fc.property(grounds, heights, heights, frequency, (list, a, b, frequencyMHz) => {
        const distanceM = 4000;
        const path = { distanceM, frequencyMHz, k: 4 / 3, obstacles: [] };
        const there = pathLoss({
          ...path,
          nearHeightM: list[0]! + a,
          farHeightM: list.at(-1)! + b,
          profile: profileOf(list, distanceM),
        });
        const back = pathLoss({
          ...path,
          nearHeightM: list.at(-1)! + b,
          farHeightM: list[0]! + a,
          profile: profileOf(list.toReversed(), distanceM),
        });
        near(back.totalDb, there.totalDb, { within: 1e-5 });
      }),
    );
  });

  it("over separate edges, the way back loses the same", () => {
    fc.assert(
      fc.property(edges, heights, heights, frequency, (list, nearHeightM, farHeightM, frequencyMHz) => {
        const distanceM = 4000;
        const path = { distanceM, frequencyMHz, k: 4 / 3 };
        // two edges of one place or exactly one height: either may be taken as the main one
        fc.pre(new Set(list.map(([, top]) => top)).size === list.length);
        fc.pre(new Set(list.map(([share]) => share)).size === list.length);
        const at = (share: number, topM: number) => ridge(share * distanceM, topM);
        const there = pathLoss({
          ...path,
          nearHeightM,
          farHeightM,
          obstacles: list.map(([share, top]) => at(share, top)),
        });
        const back = pathLoss({
          ...path,
          nearHeightM: farHeightM,
          farHeightM: nearHeightM,
          obstacles: list.map(([share, top]) => at(1 - share, top)),
        });
        near(back.lossDb, there.lossDb, { within: 1e-5 });
      }),
    );
  });

  it("is lossless when every v is below -0.78, which is 0.55 of the first Fresnel radius", () => {
    fc.assert(
      fc.property(edges, heights, heights, frequency, (list, nearHeightM, farHeightM, frequencyMHz) => {
        const path = {
          distanceM: 4000,
          nearHeightM,
          farHeightM,
          frequencyMHz,
          k: 4 / 3,
          obstacles: list.map(([share, top]) => ridge(share * 4000, top)),
        };
        const { worst } = pathClearance({ ...path, clearanceFrac: 0.6 });
        const { lossDb } = pathLoss(path);
        if (worst === undefined || worst.clearanceFrac > 0.5516) expect(lossDb).toBe(0);
        else if (worst.clearanceFrac < 0.55) expect(lossDb).toBeGreaterThan(0);
      }),
    );
  });

  it("an antenna raised never lowers the clearance", () => {
    fc.assert(
      fc.property(edges, heights, heights, heights, (list, nearHeightM, farHeightM, raiseM) => {
        const path = {
          distanceM: 4000,
          nearHeightM,
          farHeightM,
          frequencyMHz: 5800,
          k: 4 / 3,
          obstacles: list.map(([share, top]) => ridge(share * 4000, top)),
        };
        const before = pathClearance({ ...path, clearanceFrac: 0.6 }).points;
        for (const raised of [
          { ...path, nearHeightM: nearHeightM + raiseM },
          { ...path, farHeightM: farHeightM + raiseM },
        ]) {
          pathClearance({ ...raised, clearanceFrac: 0.6 }).points.forEach((point, i) => {
            expect(point.clearanceM).toBeGreaterThanOrEqual(before[i]!.clearanceM);
          });
        }
      }),
    );
  });
});
