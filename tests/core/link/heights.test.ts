import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type ClearanceRule,
  clearanceRules,
  lowestHeights,
  minimumEarthRatio,
  type Obstacle,
  PRACTICAL_RULE,
  pathClearance,
} from "../../../src/core/link/index.ts";
import { near } from "../../helpers/near.ts";

const path = {
  distanceM: 5000,
  nearHeightM: 3,
  farHeightM: 3,
  frequencyMHz: 5800,
  k: 4 / 3,
};
const hedge: Obstacle = { distanceFromNearM: 2500, topM: 0, kind: "ridge" };
const even = { nearCostPerM: 1, farCostPerM: 1 };

describe("rules of clearance", () => {
  /** How: worked by hand: bulge 0.368 m + c x 8.038 m in the middle of 5 km at 5.8 GHz. */
  it.each([
    [0.6, 5.19],
    [1, 8.41],
  ])("%d of the first Fresnel radius over flat ground asks %d m at 5 km", (clearanceFrac, heightM) => {
    const rules: readonly ClearanceRule[] = [{ ...PRACTICAL_RULE, clearanceFrac }];
    const found = lowestHeights({ path: { ...path, obstacles: [hedge] }, rules, ...even });
    const { nearHeightM, farHeightM } = found.cheapest!;
    near((nearHeightM + farHeightM) / 2, heightM, { within: 0.006 });
    expect(found.governing).toMatchObject({ index: 0, rule: { clearanceFrac } });
  });

  /** Recommendation ITU-R P.530 clause 2.2.2.1, from memory. */
  it("P.530: the whole zone at the median k, and grazing, 0.3 or 0.6 at the least k", () => {
    const rule = (
      climate: "temperate" | "tropical",
      obstruction: "isolated" | "extended",
      distanceM = 5000,
    ) => clearanceRules({ distanceM, climate, obstruction }).map(({ clearanceFrac }) => clearanceFrac);
    expect(rule("temperate", "isolated")).toEqual([1, 0]);
    expect(rule("temperate", "extended")).toEqual([1, 0.3]);
    expect(rule("tropical", "isolated", 40_000)).toEqual([1, 0.6]);
    expect(rule("tropical", "isolated", 20_000)).toEqual([1, 0]);
  });

  it("the least k rises with distance from 0.6 at 20 km to 0.9 at 100 km", () => {
    near(minimumEarthRatio(3000), 0.6, { within: 1e-9 });
    near(minimumEarthRatio(20_000), 0.6, { within: 1e-9 });
    near(minimumEarthRatio(100_000), 0.9, { within: 1e-9 });
    near(minimumEarthRatio(44_721.36), 0.75, { within: 1e-4 });
  });

  it("at a post's distance the whole zone governs; over 60 km the least k does", () => {
    const governs = (distanceM: number) =>
      lowestHeights({
        path: { ...path, distanceM, obstacles: [{ ...hedge, distanceFromNearM: distanceM / 2 }] },
        rules: clearanceRules({ distanceM, climate: "temperate", obstruction: "extended" }),
        ...even,
      }).governing!.rule.clearanceFrac;
    expect(governs(5000)).toBe(1);
    expect(governs(60_000)).toBe(0.3);
  });
});

describe("the cheaper end", () => {
  const near500 = { ...path, obstacles: [{ ...hedge, distanceFromNearM: 500, topM: 8 }] };
  const rules = [PRACTICAL_RULE];

  it("is the one beside the obstacle when a metre costs the same", () => {
    const found = lowestHeights({ path: near500, rules, ...even });
    expect(found.raises).toBe("near");
    expect(found.cheapest!.cost).toBeCloseTo(found.nearAlone!.cost, 9);
    expect(found.farAlone!.cost).toBeGreaterThan(8 * found.nearAlone!.cost);
    expect(found.cheapest!.governingIndices).toEqual([0]);
  });

  it("is the other one when a metre here costs ten times more than there", () => {
    expect(lowestHeights({ path: near500, rules, nearCostPerM: 10, farCostPerM: 1 }).raises).toBe("far");
  });

  it("is both between two obstacles, and both govern", () => {
    const obstacles = [
      { ...hedge, distanceFromNearM: 500, topM: 8 },
      { ...hedge, distanceFromNearM: 4500, topM: 8 },
    ];
    const found = lowestHeights({ path: { ...path, obstacles }, rules, ...even });
    expect(found.raises).toBe("both");
    expect(found.cheapest!.governingIndices).toEqual([0, 1]);
    expect(found.cheapest!.cost).toBeLessThan(found.nearAlone!.cost);
  });

  it("stops at the greatest height and lets the other end do the rest, or says that none clears", () => {
    const capped = lowestHeights({ path: near500, rules, ...even, nearHighestM: 6 });
    near(capped.cheapest!.nearHeightM, 6, { within: 1e-9 });
    expect(capped.raises).toBe("both");
    expect(capped.nearAlone).toBeUndefined();
    expect(
      lowestHeights({ path: near500, rules, ...even, nearHighestM: 6, farHighestM: 8 }).cheapest,
    ).toBeUndefined();
  });

  it("raises nothing where everything clears", () => {
    const found = lowestHeights({
      path: { ...path, nearHeightM: 30, farHeightM: 30, obstacles: [hedge] },
      rules,
      ...even,
    });
    expect(found).toMatchObject({ isClearAlready: true, raises: "nothing", governing: undefined });
    expect(found.cheapest!.cost).toBe(0);
  });
});

describe("laws", () => {
  const obstacles = fc.array(
    fc.record({
      distanceFromNearM: fc.double({ min: 1, max: 4999, noNaN: true }),
      topM: fc.double({ min: -5, max: 40, noNaN: true }),
      kind: fc.constantFrom("ridge" as const, "building" as const, "trees" as const),
      depthM: fc.double({ min: 0, max: 300, noNaN: true }),
    }),
    { maxLength: 8 },
  );
  const cost = fc.double({ min: 0.1, max: 10, noNaN: true });

  it("what it proposes clears by every rule, and no cheaper pair near it does", () => {
    fc.assert(
      fc.property(obstacles, cost, cost, (list, nearCostPerM, farCostPerM) => {
        const rules = [...clearanceRules({ distanceM: 5000, climate: "temperate", obstruction: "extended" })];
        const whole = { ...path, obstacles: list };
        const found = lowestHeights({ path: whole, rules, nearCostPerM, farCostPerM });
        const clears = (nearHeightM: number, farHeightM: number) =>
          rules.every(({ k, clearanceFrac }) =>
            pathClearance({ ...whole, k, nearHeightM, farHeightM, clearanceFrac }).points.every(
              (point) => point.missingM <= 1e-6,
            ),
          );
        for (const choice of [found.cheapest!, found.nearAlone!, found.farAlone!]) {
          if (Math.max(choice.nearHeightM, choice.farHeightM) > 9999) continue;
          expect(clears(choice.nearHeightM, choice.farHeightM)).toBe(true);
          expect(found.cheapest!.cost).toBeLessThanOrEqual(choice.cost + 1e-6);
        }
        // round the proposal: every pair 5 cm cheaper on balance leaves something blocked or sinks below the present height
        const { nearHeightM, farHeightM } = found.cheapest!;
        for (const turnM of [-2, -0.5, 0, 0.5, 2]) {
          const a = nearHeightM + turnM;
          const b = farHeightM - (turnM * nearCostPerM) / farCostPerM - 0.05 / farCostPerM;
          if (a < path.nearHeightM || b < path.farHeightM) continue;
          expect(clears(a, b)).toBe(false);
        }
      }),
    );
  });
});
