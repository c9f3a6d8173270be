import { describe, expect, it } from "vitest";
import {
  awgAreaMm2,
  conductorOhmPerKm,
  conductors,
  copperOhmPerKm,
  copperResistanceRatio,
} from "../../../src/core/wiring/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

// NFPA 70 chapter 9 table 8, uncoated copper at 75 degrees C, ohm per 1000 ft. Circular mils and stranded column: read in
// one copy; solid column: the same copy. From 1 AWG up: from memory, here checked only against geometry.
const PRINTED = [
  ["18 AWG", 18, 1620, 7.77, 7.95],
  ["16 AWG", 16, 2580, 4.89, 4.99],
  ["14 AWG", 14, 4110, 3.07, 3.14],
  ["12 AWG", 12, 6530, 1.93, 1.98],
  ["10 AWG", 10, 10380, 1.21, 1.24],
  ["8 AWG", 8, 16510, 0.764, 0.778],
  ["6 AWG", 6, 26240, null, 0.491],
  ["4 AWG", 4, 41740, null, 0.308],
  ["3 AWG", 3, 52620, null, 0.245],
  ["2 AWG", 2, 66360, null, 0.194],
] as const;

const awg = conductors("awg");

describe("NEC chapter 9 table 8", () => {
  it.each(PRINTED)("%s", (name, gauge, circularMils, solidOhmPerKft, strandedOhmPerKft) => {
    const conductor = awg.find((c) => c.name === name)!;
    near(conductorOhmPerKm({ conductor, conductorTempC: 75 }) / 3.28084, strandedOhmPerKft, { within: 1e-9 });
    // One circular mil is pi/4 of a square mil.
    nearRatio(awgAreaMm2(gauge), (circularMils * Math.PI * 0.0254 ** 2) / 4, { withinFrac: 0.003 });
    // An independent way to the same cell: gauge geometry, copper's resistivity and its rise with temperature.
    const geometryOhmPerKft = copperOhmPerKm({ areaMm2: awgAreaMm2(gauge), conductorTempC: 75 }) / 3.28084;
    if (solidOhmPerKft !== null) nearRatio(geometryOhmPerKft, solidOhmPerKft, { withinFrac: 0.004 });
    nearRatio(1.02 * geometryOhmPerKft, strandedOhmPerKft, { withinFrac: 0.006 });
  });

  it("rows from memory (1 to 4/0 AWG) agree with 1.02 times solid geometry within 1 %", () => {
    const large = awg.filter(({ areaMm2 }) => areaMm2 > 40);
    expect(large).toHaveLength(5);
    for (const conductor of large) {
      const geometry = 1.02 * copperOhmPerKm({ areaMm2: conductor.areaMm2, conductorTempC: 75 });
      nearRatio(conductorOhmPerKm({ conductor, conductorTempC: 75 }), geometry, { withinFrac: 0.01 });
    }
  });

  it("tinned strands are 2 to 7 % worse (coated column: 14 AWG 3.26, 2 AWG 0.201 read; others from memory)", () => {
    for (const { ohmPerKm20, tinnedOhmPerKm20 } of awg) {
      expect(tinnedOhmPerKm20 / ohmPerKm20).toBeGreaterThan(1.02);
      expect(tinnedOhmPerKm20 / ohmPerKm20).toBeLessThan(1.07);
    }
    const fourteen = awg.find((c) => c.name === "14 AWG")!;
    near(conductorOhmPerKm({ conductor: fourteen, conductorTempC: 75, tinned: true }) / 3.28084, 3.26, {
      within: 1e-9,
    });
  });

  it("the table's footnote R2 = R1 (1 + 0.00323 (T2 - 75)) is the same law", () => {
    for (const tempC of [-20, 20, 60, 90]) {
      nearRatio(copperResistanceRatio(tempC) / copperResistanceRatio(75), 1 + 0.00323 * (tempC - 75), {
        withinFrac: 0.0005,
      });
    }
  });
});
