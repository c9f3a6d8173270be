import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  concrete,
  EMBEDMENT_CAP_M,
  embedment,
  embedmentAtPressureM,
  type FootingLoad,
  ruleOfThumbDepthM,
  soilStrength,
} from "../../../src/core/mast/index.ts";
import { near } from "../../helpers/near.ts";

const anyFooting: fc.Arbitrary<FootingLoad> = fc.record({
  forceN: fc.double({ min: 0, max: 5000, noNaN: true }),
  resultantHeightM: fc.double({ min: 0, max: 10, noNaN: true }),
  diameterM: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
  lateralKPaPerM: fc.double({ min: 10, max: 150, noNaN: true }),
  frostDepthM: fc.double({ min: 0, max: 1.8, noNaN: true }),
  looseTopM: fc.double({ min: 0, max: 0.4, noNaN: true }),
});

/** Bisection stops within 0.1 mm. */
const SLACK_M = 2e-4;

describe("embedment", () => {
  it("solves the rule: one more pass at its own depth gives the depth again", () => {
    fc.assert(
      fc.property(anyFooting, (footing) => {
        const found = embedment(footing);
        if (found.soundDepthM < 0.02) return;
        const again = embedmentAtPressureM({
          forceN: footing.forceN,
          heightM: footing.resultantHeightM + found.uncountedTopM,
          diameterM: footing.diameterM,
          lateralKPa: found.lateralKPa,
        });
        near(found.soundDepthM, again, { within: SLACK_M * 2 });
        expect(found.kind).toBe(found.soundDepthM <= EMBEDMENT_CAP_M ? "depth" : "redesign");
      }),
    );
  });

  it("stronger soil, a wider footing, less force or a shorter lever never asks for more; frost never for less", () => {
    fc.assert(
      fc.property(anyFooting, fc.double({ min: 1, max: 2, noNaN: true }), (footing, by) => {
        const here = embedment(footing).depthM;
        for (const easier of [
          { ...footing, lateralKPaPerM: footing.lateralKPaPerM * by },
          { ...footing, diameterM: footing.diameterM * by },
          { ...footing, forceN: footing.forceN / by },
          { ...footing, resultantHeightM: footing.resultantHeightM / by },
          { ...footing, acceptsShift: true },
        ]) {
          expect(embedment(easier).depthM).toBeLessThanOrEqual(here + SLACK_M);
        }
        expect(
          embedment({ ...footing, frostDepthM: Math.min(3, footing.frostDepthM * by) }).depthM,
        ).toBeGreaterThanOrEqual(here - SLACK_M);
      }),
    );
  });

  it("frost or loose soil on top is dug through and lengthens the lever; the deeper of the two counts", () => {
    const post = { forceN: 500, resultantHeightM: 3, diameterM: 0.3, lateralKPaPerM: 23.6 };
    const bare = embedment({ ...post, frostDepthM: 0, looseTopM: 0 });
    const frozen = embedment({ ...post, frostDepthM: 0.6, looseTopM: 0.3 });
    expect(frozen.uncountedTopM).toBe(0.6);
    expect(frozen.depthM).toBeGreaterThan(bare.depthM + 0.6);
    near(
      frozen.soundDepthM,
      embedment({ ...post, resultantHeightM: 3.6, frostDepthM: 0, looseTopM: 0 }).soundDepthM,
      { within: SLACK_M },
    );
  });

  it("no wind, no depth but the frost", () => {
    const found = embedment({
      forceN: 0,
      resultantHeightM: 0,
      diameterM: 0.3,
      lateralKPaPerM: 15,
      frostDepthM: 0.8,
      looseTopM: 0,
    });
    near(found.depthM, 0.8, { within: 0.011 });
  });

  it("refuses a soil without strength", () => {
    const footing = { forceN: 1, resultantHeightM: 1, diameterM: 0.3, frostDepthM: 0, looseTopM: 0 };
    expect(() => embedment({ ...footing, lateralKPaPerM: 0 })).toThrow(/lateralKPaPerM is 0/);
  });
});

describe("soils", () => {
  it("weaken from bedrock to clay", () => {
    const rates = (["bedrock", "rock", "gravel", "sand", "clay"] as const).map(
      (soil) => soilStrength(soil).lateralKPaPerM,
    );
    expect([...rates].sort((a, b) => b - a)).toEqual(rates);
  });
});

describe("ruleOfThumbDepthM", () => {
  it("4.5 m of post: a tenth and two feet, 1.06 m", () =>
    near(ruleOfThumbDepthM(4.5), 1.06, { within: 0.001 }));
});

describe("concrete", () => {
  it("bags hold what the hole takes, waste included, and not one bag too many", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        fc.constantFrom("80 lb" as const, "20 kg" as const, "25 kg" as const),
        (diameterM, depthM, bag) => {
          const { bags, volumeM3, dryMassKg, bagMassKg } = concrete({
            diameterM,
            depthM,
            postOuterMm: 60,
            bag,
          });
          const yieldM3 = bag === "80 lb" ? 0.6 * 0.3048 ** 3 : bagMassKg / 2136;
          expect(bags * yieldM3).toBeGreaterThanOrEqual(1.1 * volumeM3 * (1 - 1e-9));
          expect((bags - 1) * yieldM3).toBeLessThan(1.1 * volumeM3);
          near(dryMassKg, bags * bagMassKg, { within: 1e-9 });
        },
      ),
    );
  });
  it("refuses a post wider than its hole", () =>
    expect(() => concrete({ diameterM: 0.2, depthM: 1, postOuterMm: 210, bag: "25 kg" })).toThrow(
      /postOuterMm is 210/,
    ));
});
