import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COMMON_FOCAL_LENGTHS_MM, pickLens } from "../../../src/core/view/index.ts";
import { near } from "../../helpers/near.ts";

const scene = {
  sceneWidthM: 10,
  distanceM: 15,
  sensorWidthMm: 5.568,
  widthPx: 1920,
  focalLengthsMm: COMMON_FOCAL_LENGTHS_MM,
  wantedPxPerM: 125,
};

/** How: worked by hand from D w/F. */
describe("the lens for a scene", () => {
  it("10 m wide, 15 m away: 8 mm spans 10.44 m with 183.9 px/m, 12 mm would not span it", () => {
    const pick = pickLens(scene);
    expect(pick.focalLengthMm).toBe(8);
    near(pick.sceneWidthM, 10.44, { within: 0.0005 });
    near(pick.pxPerM, 183.9, { within: 0.05 });
    expect(pick.coversScene).toBe(true);
    expect(pick.meetsDensity).toBe(true);
    expect(pick.choices.map((choice) => choice.focalLengthMm)).toEqual([2.8, 4, 6, 8, 12, 16, 25, 50]);
  });

  it("just spanning the scene is spanning it", () => {
    // 12.5 m x 4.8/6 = 10 m
    const pick = pickLens({ ...scene, distanceM: 12.5, sensorWidthMm: 4.8, focalLengthsMm: [2.8, 6] });
    expect(pick.focalLengthMm).toBe(6);
    expect(pick.coversScene).toBe(true);
  });

  it("says which resolution would reach a density that this one misses", () => {
    const pick = pickLens({ ...scene, wantedPxPerM: 250 });
    expect(pick.meetsDensity).toBe(false);
    // 250 x 10.44 = 2610
    expect(pick.neededWidthPx).toBe(2610);
    expect(pick.soldWidthPx).toBe(2688);
  });

  it("admits when nothing sold would reach it", () => {
    const pick = pickLens({ ...scene, wantedPxPerM: 1000 });
    expect(pick.soldWidthPx).toBeUndefined();
  });

  it("takes the shortest when none spans the scene, and says so", () => {
    const pick = pickLens({ ...scene, sceneWidthM: 60 });
    expect(pick.focalLengthMm).toBe(2.8);
    expect(pick.coversScene).toBe(false);
  });

  it("takes lenses in any order", () => {
    expect(pickLens({ ...scene, focalLengthsMm: [12, 2.8, 8] }).focalLengthMm).toBe(8);
  });

  it("refuses an empty offer", () => {
    expect(() => pickLens({ ...scene, focalLengthsMm: [] })).toThrow("focalLengthsMm");
  });
});

describe("laws", () => {
  it("no lens that spans the scene puts more pixels on it than the one picked", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        fc.double({ min: 2, max: 12, noNaN: true }),
        fc.uniqueArray(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (sceneWidthM, distanceM, sensorWidthMm, focalLengthsMm) => {
          const pick = pickLens({ ...scene, sceneWidthM, distanceM, sensorWidthMm, focalLengthsMm });
          const covering = pick.choices.filter((choice) => choice.coversScene);
          expect(pick.coversScene).toBe(covering.length > 0);
          for (const choice of covering) expect(choice.pxPerM).toBeLessThanOrEqual(pick.pxPerM);
          for (const choice of pick.choices) {
            expect(choice.meetsDensity).toBe(choice.pxPerM >= scene.wantedPxPerM * (1 - 1e-12));
          }
        },
      ),
    );
  });
});
