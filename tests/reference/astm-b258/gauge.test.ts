import { describe, expect, it } from "vitest";
import { awgAreaMm2, awgDiameterMm, copperOhmPerKm } from "../../../src/core/wiring/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

// ASTM B258-02: the series is fixed by its two ends; read in a page that quotes the standard.
describe("ASTM B258: the two sizes that define the series", () => {
  it("No. 36 is 0.0050 in exactly", () => near(awgDiameterMm(36), 0.127, { within: 1e-12 }));
  it("No. 4/0 is 0.4600 in exactly", () => near(awgDiameterMm(-3), 11.684, { within: 1e-9 }));
  it("successive sizes differ by 92^(1/39) = 1.1229322", () =>
    near(awgDiameterMm(10) / awgDiameterMm(11), 1.1229322, { within: 5e-8 }));
});

// Solid annealed copper at 20 degrees C. Diameter, area and ohm per km are worked by hand from the defining series and
// 0.017241 ohm mm2/m; 24, 20, 14 and 6 AWG agree with a printed web table (25.67, 10.15, 2.53 and 0.40 ohm per 1000 ft).
const SMALL_GAUGES = [
  // gauge, mm, mm2, ohm/kft
  [24, 0.5106, 0.2047, 25.67],
  [23, 0.5733, 0.2582, 20.36],
  [22, 0.6438, 0.3255, 16.14],
  [20, 0.8118, 0.5176, 10.15],
  [18, 1.0237, 0.823, 6.385],
  [16, 1.2908, 1.309, 4.016],
  [14, 1.6277, 2.081, 2.525],
  [12, 2.0525, 3.309, 1.588],
  [10, 2.5882, 5.261, 0.9989],
  [8, 3.2636, 8.366, 0.6282],
  [6, 4.1154, 13.3, 0.3951],
  [4, 5.1894, 21.15, 0.2485],
  [2, 6.5437, 33.63, 0.1563],
] as const;

describe("ASTM B258 geometry with copper of 100 % conductivity", () => {
  it.each(SMALL_GAUGES)("%d AWG", (gauge, diameterMm, areaMm2, ohmPerKft) => {
    near(awgDiameterMm(gauge), diameterMm, { within: 0.00006 });
    nearRatio(awgAreaMm2(gauge), areaMm2, { withinFrac: 0.0005 });
    nearRatio(copperOhmPerKm({ areaMm2: awgAreaMm2(gauge), conductorTempC: 20 }), ohmPerKft * 3.28084, {
      withinFrac: 0.0005,
    });
  });
  it("reads thirteen sizes", () => expect(SMALL_GAUGES).toHaveLength(13));
});

// The printed web table itself, ohm per km at 20 degrees C, two decimals.
describe("a printed table of wire resistance", () => {
  it.each([
    [24, 84.2],
    [20, 33.29],
    [14, 8.28],
    [6, 1.3],
  ] as const)("%d AWG", (gauge, ohmPerKm) =>
    near(copperOhmPerKm({ areaMm2: awgAreaMm2(gauge), conductorTempC: 20 }), ohmPerKm, { within: 0.02 }),
  );
});
