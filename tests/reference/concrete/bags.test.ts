import { describe, expect, it } from "vitest";
import { concrete } from "../../../src/core/mast/index.ts";
import { near } from "../../helpers/near.ts";

const M3_PER_YD3 = 0.764555;

// A trade page: 45, 60 and 90 bags of 80, 60 and 40 lb make a cubic yard.
describe("bags in a cubic yard", () => {
  it.each([
    ["80 lb", 45],
    ["60 lb", 60],
    ["40 lb", 90],
  ] as const)("%s: %d", (bag, bags) => {
    // A round hole of 1 m and a hair less than a cubic yard, so that rounding up cannot add one.
    const depthM = (0.9999 * M3_PER_YD3) / (Math.PI / 4);
    expect(concrete({ diameterM: 1, depthM, postOuterMm: 0, bag, wasteFrac: 0 }).bags).toBe(bags);
  });
});

// Worked from a dry mix of 2136 kg/m3, a figure that two pages print: 107 and 85 bags per m3 (one more when rounded up).
describe("bags in a cubic metre", () => {
  it.each([
    ["20 kg", 106.8],
    ["25 kg", 85.4],
  ] as const)("%s", (bag, perM3) => {
    const { bags } = concrete({ diameterM: 1, depthM: 1 / (Math.PI / 4), postOuterMm: 0, bag, wasteFrac: 0 });
    expect(bags).toBe(Math.ceil(perM3));
  });
});

// Worked by hand: hole of 12 in by 4 ft, post of 2-3/8 in, 3.02 ft3, so 5.03 bags of 80 lb.
describe("a post hole", () => {
  it("takes 3.02 ft3, so six bags with and without waste", () => {
    const hole = { diameterM: 0.3048, depthM: 1.2192, postOuterMm: 60.325, bag: "80 lb" } as const;
    const found = concrete(hole);
    near(found.volumeM3 / 0.3048 ** 3, 3.02, { within: 0.005 });
    expect(found.bags).toBe(6);
    expect(concrete({ ...hole, wasteFrac: 0 }).bags).toBe(6);
  });
});
