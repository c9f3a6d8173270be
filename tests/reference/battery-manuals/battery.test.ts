// Printed tables of US Army manuals, and voltages from memory with one printed check (battery note: -3 mV/K
// per cell moves a float of 2.30 V at 25 deg C to 2.33 V at 15 and 2.27 V at 35).
import { describe, expect, it } from "vitest";
import {
  chargeCurrentBoundsA,
  chargeSettings,
  FREEZING_MARGIN_K,
  frostSafeDodFrac,
} from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

describe("freezing, TM 5-3820-256-24-4 table 2", () => {
  it.each([
    [100, -59.5],
    [75, -37.2],
    [50, -26.1],
    [25, -15.0],
    [0, -9.4],
  ])("%d %% charged freezes at %d deg C: that depth is safe 5 K above", (chargedPercent, freezesAtC) => {
    const coldestTempC = freezesAtC + FREEZING_MARGIN_K;
    near(frostSafeDodFrac(coldestTempC), 1 - chargedPercent / 100, { within: 1e-9 });
  });
  it("no depth is safe below the table, any depth is in the mild", () => {
    expect(frostSafeDodFrac(-58)).toBe(0);
    expect(frostSafeDodFrac(0)).toBe(1);
  });
  it("is never deeper than the table for a full gravity of 1.280 allows (TM 10-6140-200-14 table 1-1)", () => {
    for (const [chargedPercent, freezesAtC] of [
      [75, -52.2],
      [50, -35],
      [25, -17.2],
    ] as const) {
      expect(frostSafeDodFrac(freezesAtC)).toBeLessThanOrEqual(1 - chargedPercent / 100);
    }
  });
});

describe("charge voltages", () => {
  it("12 V sealed: absorption 14.4 V at 25 deg C, 15.24 V at -10, 14.04 V at 40 (arithmetic at -24 mV/K)", () => {
    const at = (tempC: number): number =>
      chargeSettings({ chemistry: "lead-agm", nominalV: 12, tempC }).absorptionV;
    near(at(25), 14.4, { within: 0.001 });
    near(at(-10), 15.24, { within: 0.001 });
    near(at(40), 14.04, { within: 0.001 });
  });
  it("every lead-acid setting at 25 deg C lies in the usual range per cell (from memory)", () => {
    const ranges = {
      "lead-vented": {
        absorption: [2.4, 2.47],
        float: [2.23, 2.3],
        equalise: [2.5, 2.6],
        perK: [-0.005, -0.003],
      },
      "lead-agm": { absorption: [2.35, 2.45], float: [2.23, 2.3], equalise: null, perK: [-0.005, -0.003] },
      "lead-gel": { absorption: [2.35, 2.4], float: [2.23, 2.3], equalise: null, perK: [-0.005, -0.003] },
    } as const;
    const lies = (value: number, [least, most]: readonly [number, number]): void => {
      expect(value).toBeGreaterThanOrEqual(least - 1e-9);
      expect(value).toBeLessThanOrEqual(most + 1e-9);
    };
    for (const chemistry of ["lead-vented", "lead-agm", "lead-gel"] as const) {
      const got = chargeSettings({ chemistry, nominalV: 24, tempC: 25 });
      const range = ranges[chemistry];
      expect(got.cellsInSeries).toBe(12);
      lies(got.absorptionV / 12, range.absorption);
      lies(got.floatV! / 12, range.float);
      lies(got.compensationVPerK / 12, range.perK);
      lies(got.lowVoltageDisconnectV / 12, [1.9, 1.95]);
      if (range.equalise) lies(got.equaliseV! / 12, range.equalise);
      else expect(got.equaliseV).toBeNull();
    }
  });
  it("lithium iron phosphate: no compensation, no charge below 0 deg C (common practice), 4 cells for 12 V", () => {
    const cold = chargeSettings({ chemistry: "lifepo4", nominalV: 12.8, tempC: -1 });
    expect(cold).toMatchObject({ cellsInSeries: 4, compensationVPerK: 0, isChargeAllowed: false });
    expect(cold.absorptionV).toBe(
      chargeSettings({ chemistry: "lifepo4", nominalV: 12, tempC: 25 }).absorptionV,
    );
    expect(chargeSettings({ chemistry: "lifepo4", nominalV: 48, tempC: 20 }).cellsInSeries).toBe(16);
  });
});

describe("charge current", () => {
  it("C/20 to C/5 for lead-acid (common practice): 5 to 20 A on 100 Ah", () => {
    expect(chargeCurrentBoundsA({ chemistry: "lead-gel", capacityAh: 100 })).toEqual({ minA: 5, maxA: 20 });
  });
});
