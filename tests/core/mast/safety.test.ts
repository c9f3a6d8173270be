import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ladderFootM, overheadLineClearanceM, recommendedWeightKg } from "../../../src/core/mast/index.ts";

describe("recommendedWeightKg", () => {
  it("is above nothing, never above 23 kg; reaching, twisting and haste never allow more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: 0, max: 1.75, noNaN: true }),
        fc.double({ min: 0, max: 1.7, noNaN: true }),
        (horizontalM, startHeightM, travelM) => {
          const at = { horizontalM, startHeightM, travelM };
          const here = recommendedWeightKg(at);
          expect(here).toBeGreaterThan(0);
          expect(here).toBeLessThanOrEqual(23);
          for (const harder of [
            { ...at, horizontalM: horizontalM + 0.03 },
            { ...at, travelM: travelM + 0.05 },
            { ...at, twistDeg: 45 },
            { ...at, couplingFactor: 0.9 },
            { ...at, frequencyFactor: 0.8 },
          ]) {
            expect(recommendedWeightKg(harder)).toBeLessThanOrEqual(here);
          }
        },
      ),
    );
  });
  it("refuses a reach beyond 63 cm, where nothing may be lifted", () =>
    expect(() => recommendedWeightKg({ horizontalM: 0.64, startHeightM: 0.5, travelM: 0.5 })).toThrow(
      /horizontalM is 0.64/,
    ));
});

describe("edges", () => {
  it("overhead clearance never shrinks with voltage or length", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 900, noNaN: true }), (lineKv) => {
        expect(overheadLineClearanceM({ mastLengthM: 5, lineKv: lineKv + 50 })).toBeGreaterThanOrEqual(
          overheadLineClearanceM({ mastLengthM: 5, lineKv }),
        );
      }),
    );
  });
  it("refuses a ladder of nothing", () => expect(() => ladderFootM(0)).toThrow(/workingLengthM is 0/));
});
