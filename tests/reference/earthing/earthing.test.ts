import { describe, expect, it } from "vitest";
import { groundingGauge, lightningFlashesPerYear, rodOhm } from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

// IEEE 142 (Dwight): regression values worked from the formula, not evidence; a grounding firm's page gives the same
// expression. Rod of 8 ft by 5/8 in.
describe("one driven rod", () => {
  it.each([
    [30, 12.0],
    [100, 39.9],
    [300, 119.7],
    [1000, 399],
  ] as const)("%d ohm m", (soilOhmM, ohm) =>
    near(rodOhm({ soilOhmM, lengthM: 2.4384, diameterMm: 15.875 }), ohm, { within: ohm > 200 ? 0.5 : 0.06 }),
  );
});

// IEC 62305-2: regression values worked from the formula (6 m mast, 4 flashes per km2 and year); location factors as
// one page prints them.
describe("direct lightning", () => {
  it("isolated mast: 0.0041 a year; on a hilltop twice that; among taller things a quarter", () => {
    const at = { heightM: 6, flashesPerKm2Year: 4 };
    near(lightningFlashesPerYear({ ...at, location: "isolated" }), 0.0041, { within: 0.00005 });
    near(lightningFlashesPerYear({ ...at, location: "hilltop" }), 0.0081, { within: 0.00005 });
    near(lightningFlashesPerYear({ ...at, location: "among-taller" }), 0.00102, { within: 0.00001 });
  });
});

describe("NEC table 250.122, copper, as two pages print it", () => {
  it.each([
    [15, 14],
    [20, 12],
    [25, 10],
    [60, 10],
    [70, 8],
    [100, 8],
    [110, 6],
    [200, 6],
  ] as const)("%d A: %d AWG", (fuseA, gauge) => expect(groundingGauge(fuseA)).toBe(gauge));
});
