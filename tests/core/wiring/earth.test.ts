import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundingGauge, lightningFlashesPerYear, rodOhm } from "../../../src/core/wiring/index.ts";

describe("rodOhm", () => {
  it("falls with a longer or thicker rod, and is never below zero", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 10_000, noNaN: true }),
        fc.double({ min: 0.5, max: 9, noNaN: true }),
        fc.double({ min: 5, max: 45, noNaN: true }),
        (soilOhmM, lengthM, diameterMm) => {
          const here = rodOhm({ soilOhmM, lengthM, diameterMm });
          expect(here).toBeGreaterThan(0);
          expect(rodOhm({ soilOhmM, lengthM: lengthM + 1, diameterMm })).toBeLessThan(here);
          expect(rodOhm({ soilOhmM, lengthM, diameterMm: diameterMm + 5 })).toBeLessThan(here);
        },
      ),
    );
  });
  it("refuses a nail", () =>
    expect(() => rodOhm({ soilOhmM: 100, lengthM: 0.1, diameterMm: 6 })).toThrow(/lengthM is 0.1/));
});

describe("lightningFlashesPerYear", () => {
  it("goes with the square of the height", () => {
    const at = { flashesPerKm2Year: 2, location: "isolated" } as const;
    expect(
      lightningFlashesPerYear({ ...at, heightM: 10 }) / lightningFlashesPerYear({ ...at, heightM: 5 }),
    ).toBeCloseTo(4, 9);
  });
});

describe("groundingGauge", () => {
  it("refuses what its table does not hold", () => expect(() => groundingGauge(201)).toThrow(/fuseA is 201/));
});
