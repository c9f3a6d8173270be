// IEEE 1013 chain. The standard's annex B examples could not be read: the figures below are worked by hand
// from the rules of clauses 6.1 to 6.4 (rules from memory), line by line.
import { describe, expect, it } from "vitest";
import { batteryCapacity, capacityFrac } from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

const bank = {
  dailyAh: 40,
  autonomyDays: 7,
  maxDodFrac: 0.8,
  maxDailyDodFrac: 0.2,
  endOfLifeFrac: 0.8,
  capacityFrac: 0.85,
  designMarginFrac: 0.1,
  largestRunningA: 3.5,
};

describe("worksheet by hand", () => {
  const got = batteryCapacity(bank);
  it("280 Ah unadjusted; 350 by depth, 200 by daily depth, 350 by age: 350 governs, once", () => {
    near(got.unadjustedAh, 280, { within: 1e-9 });
    near(got.dodAdjustedAh, 350, { within: 1e-9 });
    near(got.dailyDodAdjustedAh, 200, { within: 1e-9 });
    near(got.endOfLifeAdjustedAh, 350, { within: 1e-9 });
    near(got.governingAh, 350, { within: 1e-9 });
    expect(got.governedBy).toBe("depth-of-discharge");
  });
  it("x 1.1765 for the cold is 411.76; x 1.10 is 452.9 Ah; 129 h", () => {
    near(got.temperatureFactorRatio, 1.1765, { within: 0.00005 });
    near(got.temperatureAdjustedAh, 411.76, { within: 0.005 });
    near(got.requiredAh, 452.94, { within: 0.005 });
    near(got.functionalHourRateH!, 129.4, { within: 0.05 });
  });
  it("a shallow day governs: 1 day of autonomy, 40 / 0.2 = 200 against 50", () => {
    const shallow = batteryCapacity({ ...bank, autonomyDays: 1 });
    expect(shallow.governedBy).toBe("daily-depth-of-discharge");
    near(shallow.governingAh, 200, { within: 1e-9 });
  });
  it("age governs where the whole depth may be used: 280 / 0.8 = 350 against 280", () => {
    const aged = batteryCapacity({ ...bank, maxDodFrac: 1 });
    expect(aged.governedBy).toBe("end-of-life");
    near(aged.governingAh, 350, { within: 1e-9 });
  });
  it("without a running current there is no hour rate", () => {
    expect(batteryCapacity({ ...bank, largestRunningA: 0 }).functionalHourRateH).toBeNull();
  });
});

describe("IEEE 485 table 1 at fast rates (values from memory), as capacity", () => {
  it.each([
    [-3.9, 1.52],
    [4.4, 1.3],
    [10, 1.19],
    [15.6, 1.11],
    [20, 1.056],
    [25, 1],
  ])("%d deg C: 1 / %d", (tempC, factor) => {
    near(capacityFrac({ chemistry: "lead-vented", tempC, hourRateH: 8 }), 1 / factor, { within: 0.0005 });
  });
  it("0 deg C lies within 0.04 of the army's 0.75 at the 6-h rate (TM 10-6140-200-14, 1-9), on the cautious side", () => {
    const frac = capacityFrac({ chemistry: "lead-vented", tempC: 0, hourRateH: 6 });
    near(frac, 0.75, { within: 0.04 });
    expect(frac).toBeLessThan(0.75);
  });
  it("-17.8 deg C is the army's 0.40", () => {
    near(capacityFrac({ chemistry: "lead-agm", tempC: -17.8, hourRateH: 6 }), 0.4, { within: 0.001 });
  });
});

describe("slow rates (common practice, no source)", () => {
  it("0 deg C at C/100 lies between 0.85 and 0.90", () => {
    const frac = capacityFrac({ chemistry: "lead-agm", tempC: 0, hourRateH: 100 });
    expect(frac).toBeGreaterThanOrEqual(0.85);
    expect(frac).toBeLessThanOrEqual(0.9);
  });
  it("lithium iron phosphate: 0.80 to 0.90 at 0 deg C, 0.60 to 0.70 at -20 (from memory), none below", () => {
    near(capacityFrac({ chemistry: "lifepo4", tempC: 0 }), 0.85, { within: 0.05001 });
    near(capacityFrac({ chemistry: "lifepo4", tempC: -20 }), 0.65, { within: 0.05001 });
    expect(capacityFrac({ chemistry: "lifepo4", tempC: -20.1 })).toBe(0);
  });
});
