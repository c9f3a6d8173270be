import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type MastLoad,
  measuredTube,
  pickTube,
  type TubeFamily,
  type TubePick,
  tubeFit,
  tubes,
} from "../../../src/core/mast/index.ts";

const FAMILIES: readonly TubeFamily[] = ["schedule-40", "schedule-80", "metric"];

const anyLoad: fc.Arbitrary<MastLoad & { readonly family: TubeFamily }> = fc
  .record({
    family: fc.constantFrom(...FAMILIES),
    heightM: fc.double({ min: 1, max: 8, noNaN: true }),
    panelM2: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
    panelAt: fc.double({ min: 0.3, max: 1, noNaN: true }),
    windMPerS: fc.double({ min: 30, max: 70, noNaN: true }),
    exposure: fc.constantFrom("B" as const, "C" as const, "D" as const),
    headMassKg: fc.double({ min: 0, max: 40, noNaN: true }),
  })
  .map(({ panelM2, panelAt, ...load }) => ({
    ...load,
    parts: [
      { name: "panel", areaM2: panelM2, forceCoefficient: 1.8, heightM: panelAt * load.heightM },
      { name: "box", areaM2: 0.2, forceCoefficient: 1.3, heightM: load.heightM * 0.3 },
    ],
  }));

const outerMm = (pick: TubePick): number =>
  pick.kind === "picked" ? pick.tube.outerMm : Number.POSITIVE_INFINITY;

describe("pickTube", () => {
  it("picks a tube that serves, and the next slenderer one does not", () => {
    fc.assert(
      fc.property(anyLoad, (load) => {
        const pick = pickTube(load);
        if (pick.kind === "none-fits") {
          expect(pick.stoutest.failsOn).not.toEqual([]);
          return;
        }
        expect(pick.stressUseFrac).toBeLessThanOrEqual(1);
        expect(pick.deflectionUseFrac).toBeLessThanOrEqual(1);
        expect(pick.frequencyHz).toBeGreaterThanOrEqual(1);
        const listed = tubes(load.family);
        const slenderer = listed[listed.indexOf(pick.tube) - 1];
        if (slenderer) expect(tubeFit({ ...load, tube: slenderer }).failsOn).toEqual(pick.decidedBy);
        else expect(pick.decidedBy).toEqual([]);
      }),
    );
  });

  it("more wind, a bigger panel or a heavier head never picks a slenderer tube or a smaller moment", () => {
    fc.assert(
      fc.property(anyLoad, fc.double({ min: 1, max: 1.4, noNaN: true }), (load, by) => {
        const here = pickTube(load);
        for (const harder of [
          { ...load, windMPerS: load.windMPerS * by },
          { ...load, parts: load.parts.map((part) => ({ ...part, areaM2: part.areaM2 * by })) },
          { ...load, headMassKg: load.headMassKg * by },
        ]) {
          expect(outerMm(pickTube(harder))).toBeGreaterThanOrEqual(outerMm(here));
          const tube = tubes(load.family)[4]!;
          expect(tubeFit({ ...harder, tube }).wind.momentNm).toBeGreaterThanOrEqual(
            tubeFit({ ...load, tube }).wind.momentNm,
          );
        }
      }),
    );
  });

  it("counts the wind on the mast itself", () => {
    const bare = tubeFit({
      heightM: 4,
      windMPerS: 50,
      exposure: "C",
      parts: [],
      headMassKg: 0,
      tube: tubes("metric")[3]!,
    });
    expect(bare.wind.parts.map(({ name }) => name)).toEqual(["mast"]);
    // Worked by hand: 0.6 x 0.613 x 0.849 x 0.95 x 2500 x 0.85 x 1.2 x 4 x 0.0603 = 182.4 N at 2 m.
    expect(bare.wind.forceN).toBeGreaterThan(181.5);
    expect(bare.wind.forceN).toBeLessThan(183.5);
    expect(bare.wind.resultantHeightM).toBeCloseTo(2, 9);
  });

  it("says so where no tube of the family serves", () => {
    const pick = pickTube({
      family: "metric",
      heightM: 20,
      windMPerS: 70,
      exposure: "D",
      headMassKg: 100,
      parts: [{ name: "panel", areaM2: 6, forceCoefficient: 1.8, heightM: 20 }],
    });
    if (pick.kind !== "none-fits") throw new Error("something fitted");
    expect(pick.stoutest.stressUseFrac).toBeGreaterThan(1);
    expect(pick.stoutest.tube).toBe(tubes("metric").at(-1));
  });

  it("refuses a part above the top, by its name", () =>
    expect(() =>
      pickTube({
        family: "metric",
        heightM: 3,
        windMPerS: 45,
        exposure: "C",
        headMassKg: 5,
        parts: [{ name: "camera", areaM2: 0.02, forceCoefficient: 1.3, heightM: 3.2 }],
      }),
    ).toThrow(/heightM of camera is 3.2/));
});

describe("tubes", () => {
  it.each(FAMILIES)("%s: stouter and stouter", (family) => {
    const all = tubes(family);
    expect(all).toHaveLength(10);
    for (let i = 1; i < all.length; i++) expect(all[i]!.outerMm).toBeGreaterThan(all[i - 1]!.outerMm);
    for (const tube of all) expect(tube.designWallMm).toBeLessThanOrEqual(tube.wallMm);
  });
  it("a measured tube is trusted with 30 ksi unless its steel is known", () => {
    expect(measuredTube({ outerMm: 60, wallMm: 2 }).yieldMPa).toBe(207);
    expect(() => measuredTube({ outerMm: 60, wallMm: 31 })).toThrow(/wallMm is 31/);
  });
});
