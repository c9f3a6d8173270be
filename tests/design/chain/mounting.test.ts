import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import type { Mounting } from "../../../src/design/design.ts";
import { designOf } from "../../../src/design/index.ts";
import { near } from "../../helpers/near.ts";
import { at, changed, given, sites, syntheticWorld, typicalBrief } from "../fixtures.ts";

const mounting = (brief: Brief): Mounting => designOf(brief, syntheticWorld).mounting;
const stand = (changes: Partial<Brief["mounting"]>, brief = typicalBrief) =>
  mounting(changed({ mounting: changes }, brief));

describe("heights, worked by hand", () => {
  // 2 x 120 W = 1.2 m2, side 1.095 m: middle at 2.55 m, upper edge at 3.10 m
  const post = mounting(typicalBrief);
  it("lower edge of the panels at 2 m; the mast reaches their upper edge", () => {
    near(post.panelHeightM, 2.55, { within: 0.005 });
    near(post.mastHeightM, 3.1, { within: 0.005 });
    expect(post.panelMount).toBe("mast");
  });
  it("a camera at 5 m makes a mast of 5 m", () => {
    near(stand({ cameraHeightM: given(5) }).mastHeightM, 5, { within: 1e-9 });
  });
  it("tube = mast + footing; 10 ft more than that must be free of lines", () => {
    near(post.tubeLengthM, post.mastHeightM + post.footing!.depthM, { within: 1e-9 });
    near(post.keepClearM, post.tubeLengthM + 3.048, { within: 1e-9 });
  });
});

describe("wind, worked by hand", () => {
  it("45 m/s at 3 m in open country: 0.613 x 0.849 x 0.85 x 45 x 45 = 896 Pa", () => {
    near(mounting(typicalBrief).velocityPressurePa, 895.7, { within: 1.5 });
  });
  it("on 1.2 m2 of panel: 0.6 x 896 x 0.85 x 1.8 x 1.2 = 987 N", () => {
    near(mounting(typicalBrief).panelForceN, 986.7, { within: 2 });
  });
  it("the gust itself pushes with 896 x 0.85 x 1.8 x 1.2 = 1645 N: the 0.6 is for allowable stress (ASCE 7-16, 2.4.1)", () => {
    const { panelGustForceN, gustForceN, totalForceN } = mounting(typicalBrief);
    near(panelGustForceN, 1644.5, { within: 3.5 });
    near(gustForceN, totalForceN / 0.6, { within: 1e-6 });
  });
  it("the moment lies between that of the panels alone and twice it", () => {
    const { groundMomentNm, totalForceN } = mounting(typicalBrief);
    expect(groundMomentNm).toBeGreaterThan(986.7 * 2.55);
    expect(groundMomentNm).toBeLessThan(2 * 986.7 * 2.55);
    expect(totalForceN).toBeGreaterThan(986.7);
  });
});

describe("where it stands", () => {
  it("a pole, wall or roof gets neither tube nor footing", () => {
    for (const support of ["existingPole", "wall", "roof"] as const) {
      const { tube, footing, tubeLengthM, mastHeightM } = stand({ support: given(support) });
      expect({ tube, footing }).toEqual({ tube: null, footing: null });
      expect(tubeLengthM).toBe(mastHeightM);
    }
  });
  it("a pole that stands already is as high as it is, whatever else is answered", () => {
    const old = { support: given("existingPole" as const), poleHeightM: given(5) };
    for (const cameraHeightM of [2, 3, 4.5]) {
      const post = stand({ ...old, cameraHeightM: given(cameraHeightM) });
      expect(post.mastHeightM).toBe(5);
      near(post.keepClearM, 5 + 3.048, { within: 1e-9 });
    }
  });
  it("a pole far higher than what hangs on it is no fault: a camera at 1 m, the panels on a frame", () => {
    // 450 W stand in for the array: 2.25 m2 are too much for a pole; without a bank the box hangs at 1.2 m
    const low = at(
      null,
      changed({
        mounting: { support: given("existingPole"), poleHeightM: given(3), cameraHeightM: given(1) },
        link: { carrier: given("none") },
        power: { largestPanelW: given(450) },
      }),
    );
    expect(mounting(low)).toMatchObject({ mastHeightM: 3, neededHeightM: 1, panelMount: "ground frame" });
  });
  it("a barn in the line lifts the radio to the pole's top and no further", () => {
    const hidden = changed({
      link: { sight: given("buildings"), between: given("barn 10 m high half way") },
      mounting: { support: given("existingPole"), poleHeightM: given(4.2) },
    });
    expect(mounting(hidden).radioHeightM).toBe(4.2);
    const { says } = designOf(hidden, syntheticWorld).findings.find(({ id }) => id === "link.blocked")!;
    expect(says).toContain("radio at 4.2 m (the top of the pole)");
  });
  it("pipe by the inch in the United States, metric tube elsewhere", () => {
    expect(mounting(typicalBrief).tube!.name).toMatch(/in schedule 40/);
    expect(mounting(at(sites.north40)).tube!.name).toMatch(/x .* mm/);
  });
  it("a heavy bank stands on the ground, a light one hangs", () => {
    const light = changed(
      { autonomy: { consequence: given("nuisance") }, power: { chemistry: given("lifepo4") } },
      at(sites.south5),
    );
    expect(mounting(typicalBrief).box.stands).toBe("ground");
    expect(mounting(light).box.stands).toBe("mast");
  });
  it("without a place the panel has no direction, and the largest panel stands in for the array", () => {
    const { tiltDeg, azimuthDeg, panelForceN } = mounting(at(null));
    expect({ tiltDeg, azimuthDeg }).toEqual({ tiltDeg: null, azimuthDeg: null });
    // 200 W = 1 m2
    near(panelForceN, 986.7 / 1.2, { within: 2 });
  });
});

describe("box and lifts, worked by hand", () => {
  it("800 Ah of lead at 12 V are 9.6 kWh: 25 + 2 x 10 x 9.6 = 217 litres; 28 x 0.05 x 12 x 8 x 400 / 1000 = 53.8 cm2", () => {
    const { box } = mounting(typicalBrief);
    near(box.volumeL, 217, { within: 0.1 });
    near(box.openingCm2, 53.76, { within: 0.01 });
  });
  it("lithium gives off no gas", () => {
    expect(mounting(at(sites.south5)).box.openingCm2).toBe(0);
  });
  it("a 25 kg bag is for two, by 23 x 25/30 x 0.835 x 0.884 x 0.95 = 13.4 kg; 30 kg of battery wants a hand truck", () => {
    const lifts = mounting(typicalBrief).lifts;
    const bag = lifts.find(({ what }) => what.startsWith("bag"))!;
    const block = lifts.find(({ what }) => what.startsWith("battery"))!;
    expect([bag.people, bag.needsHoist]).toEqual([2, false]);
    expect([block.people, block.needsHoist]).toEqual([2, true]);
  });
});

describe("laws", () => {
  it("more wind or a higher camera never a slimmer tube, a shallower hole for the same width, or less force", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 55, noNaN: true }),
        fc.double({ min: 2, max: 5, noNaN: true }),
        (gustMPerS, cameraHeightM) => {
          const base = stand({ gustMPerS: given(gustMPerS), cameraHeightM: given(cameraHeightM) });
          const windier = stand({ gustMPerS: given(gustMPerS + 5), cameraHeightM: given(cameraHeightM) });
          const higher = stand({ gustMPerS: given(gustMPerS), cameraHeightM: given(cameraHeightM + 1) });
          for (const other of [windier, higher]) {
            expect(other.tube!.outsideMm).toBeGreaterThanOrEqual(base.tube!.outsideMm);
            expect(other.groundMomentNm).toBeGreaterThan(base.groundMomentNm);
            if (other.footing!.diameterM === base.footing!.diameterM) {
              expect(other.footing!.depthM).toBeGreaterThanOrEqual(base.footing!.depthM);
            }
          }
        },
      ),
      { numRuns: 25 },
    );
  });
  it("the hole reaches below the frost", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2, noNaN: true }), (frostDepthM) => {
        const { footing } = stand({ frostDepthM: given(frostDepthM) });
        expect(footing!.depthM).toBeGreaterThan(frostDepthM);
      }),
      { numRuns: 25 },
    );
  });
});
