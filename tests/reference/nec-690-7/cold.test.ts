// NEC table 690.7(A), crystalline silicon: factors as quoted in a public data file and from memory. Example
// worked by hand.
import { describe, expect, it } from "vitest";
import { coldVoc, necColdFactorRatio } from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

const BANDS = [
  [24, 20, 1.02],
  [19, 15, 1.04],
  [14, 10, 1.06],
  [9, 5, 1.08],
  [4, 0, 1.1],
  [-1, -5, 1.12],
  [-6, -10, 1.14],
  [-11, -15, 1.16],
  [-16, -20, 1.18],
  [-21, -25, 1.2],
  [-26, -30, 1.21],
  [-31, -35, 1.23],
  [-36, -40, 1.25],
] as const;

describe("table 690.7(A)", () => {
  it.each(BANDS)("%d to %d deg C: %d", (warmC, coldC, factor) => {
    for (let tempC = warmC; tempC >= coldC; tempC -= 1) expect(necColdFactorRatio(tempC)).toBe(factor);
  });
  it("between bands the colder one; 1 at 25; nothing below -40", () => {
    expect(necColdFactorRatio(-5.5)).toBe(1.14);
    expect(necColdFactorRatio(25)).toBe(1);
    expect(necColdFactorRatio(-40.5)).toBeNull();
  });
  it("every module with a coefficient of -0.38 %/K or less lies at or below the table in every band", () => {
    for (const [, coldC, factor] of BANDS)
      expect(1 + 0.0038 * (25 - coldC)).toBeLessThanOrEqual(factor + 0.0001);
  });
});

describe("22.5 V module at -18 deg C", () => {
  const module = { moduleVocV: 22.5, modulesInSeries: 1, recordLowTempC: -18 };
  it("table 26.55 V, coefficient -0.30 %/K 25.40 V, the higher counts", () => {
    const got = coldVoc({ ...module, vocTempCoefficientPerK: -0.003 });
    near(got.byTableV!, 26.55, { within: 0.0001 });
    near(got.byCoefficientV!, 25.4, { within: 0.005 });
    near(got.coldVocV, 26.55, { within: 0.0001 });
  });
  it("two in series double it; a silent sheet leaves the table", () => {
    const got = coldVoc({ ...module, modulesInSeries: 2, vocTempCoefficientPerK: null });
    expect(got.byCoefficientV).toBeNull();
    near(got.coldVocV, 53.1, { within: 0.0001 });
  });
  it("below the table the coefficient serves, or a steep stand-in, never less than the table's last line", () => {
    const at = (vocTempCoefficientPerK: number): number =>
      coldVoc({ ...module, recordLowTempC: -50, vocTempCoefficientPerK }).coldVocV;
    near(at(-0.0036), 22.5 * 1.27, { within: 0.0001 });
    near(at(-0.003), 22.5 * 1.25, { within: 0.0001 });
    const silent = coldVoc({ ...module, recordLowTempC: -50, vocTempCoefficientPerK: null });
    expect(silent.byTableV).toBeNull();
    near(silent.coldVocV, 22.5 * 1.3, { within: 0.0001 });
  });
});
