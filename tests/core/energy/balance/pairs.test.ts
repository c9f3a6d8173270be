import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equalReliabilityPairs, simulateBalance } from "../../../../src/core/energy/index.ts";
import { RangeFault } from "../../../../src/core/numerics/index.ts";
import { typicalPlant } from "./weather.ts";

/** Dark hours that fall with panels and strings by a plain rule: enough is strings >= need - panels. */
const falling =
  (need: number) =>
  ({ panels, strings }: { readonly panels: number; readonly strings: number }): number =>
    Math.max(0, need - panels - strings) * 10;

describe("equalReliabilityPairs", () => {
  it("finds the smallest bank for each count of panels", () => {
    const { pairs, runs } = equalReliabilityPairs({
      panelCounts: [1, 2, 4, 8, 16],
      mostStrings: 20,
      targetDarkHours: 0,
      darkHoursOf: falling(12),
    });
    expect(pairs.map(({ strings }) => strings)).toEqual([11, 10, 8, 4, 1]);
    expect(pairs.every(({ darkHours }) => darkHours === 0)).toBe(true);
    expect(runs).toBeLessThan(5 * 6);
  });
  it("says when not even the largest bank does, and how dark that is", () => {
    const { pairs } = equalReliabilityPairs({
      panelCounts: [1, 2, 9],
      mostStrings: 10,
      targetDarkHours: 5,
      darkHoursOf: falling(12),
    });
    expect(pairs).toEqual([
      { panels: 1, strings: null, darkHours: 10 },
      { panels: 2, strings: 10, darkHours: 0 },
      { panels: 9, strings: 3, darkHours: 0 },
    ]);
  });
  it("agrees with trying every pair, for any falling staircase, in far fewer runs", () => {
    const staircase = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(staircase, fc.integer({ min: 1, max: 50 }), (steps, mostStrings) => {
        const need = [...steps].sort((a, b) => b - a);
        const { pairs, runs } = equalReliabilityPairs({
          panelCounts: need.map((_, i) => i + 1),
          mostStrings,
          targetDarkHours: 0,
          darkHoursOf: ({ panels, strings }) => Math.max(0, need[panels - 1]! - strings),
        });
        expect(pairs.map(({ strings }) => strings)).toEqual(need.map((n) => (n <= mostStrings ? n : null)));
        expect(runs).toBeLessThanOrEqual(need.length * (2 + 2 * Math.ceil(Math.log2(mostStrings + 1))));
      }),
    );
  });
  it("finds the smallest bank of those between too small and too large to heat, by trying few", () => {
    const band = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 10 }));
    fc.assert(
      fc.property(
        fc.array(band, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 30 }),
        (bands, most) => {
          // more panels widen the band on both sides
          const low = bands.map(([from]) => from).sort((a, b) => b - a);
          const high = bands.map(([from, wide]) => from + wide).sort((a, b) => a - b);
          const isEnough = (panels: number, strings: number) =>
            strings >= low[panels - 1]! && strings <= high[panels - 1]!;
          const { pairs, runs } = equalReliabilityPairs({
            panelCounts: low.map((_, i) => i + 1),
            mostStrings: most,
            targetDarkHours: 5,
            isLargerNeverDarker: false,
            darkHoursOf: ({ panels, strings }) => (isEnough(panels, strings) ? 0 : 10),
          });
          const all = Array.from({ length: most }, (_, i) => i + 1);
          expect(pairs.map(({ strings }) => strings)).toEqual(
            low.map((_, i) => all.find((strings) => isEnough(i + 1, strings)) ?? null),
          );
          expect(runs).toBeLessThanOrEqual(most + 2 * low.length);
        },
      ),
    );
  });
  it("goes up again where more panels do need a larger bank", () => {
    const need = [5, 3, 6, 2];
    const { pairs } = equalReliabilityPairs({
      panelCounts: [1, 2, 3, 4],
      mostStrings: 10,
      targetDarkHours: 0,
      darkHoursOf: ({ panels, strings }) => Math.max(0, need[panels - 1]! - strings),
    });
    expect(pairs.map(({ strings }) => strings)).toEqual(need);
  });
  it("with the balance itself: every pair reaches the target and the next smaller bank does not", () => {
    const post = typicalPlant({ seed: 21, years: 2 });
    const darkHoursOf = ({
      panels,
      strings,
    }: {
      readonly panels: number;
      readonly strings: number;
    }): number =>
      simulateBalance({
        ...post,
        pv: { kind: "mppt", outputRatio: post.pv.outputRatio, ratedW: 130 * panels },
        bank: { ...post.bank, ratedAh: 50 * strings },
      }).tiers[0]!.darkHoursPerYear;
    const { pairs } = equalReliabilityPairs({
      panelCounts: [1, 2, 3, 4, 6],
      mostStrings: 40,
      targetDarkHours: 20,
      darkHoursOf,
    });
    const found = pairs.filter(({ strings }) => strings !== null);
    expect(found.length).toBeGreaterThan(2);
    for (const { panels, strings } of found) {
      expect(darkHoursOf({ panels, strings: strings! })).toBeLessThanOrEqual(20);
      if (strings! > 1) expect(darkHoursOf({ panels, strings: strings! - 1 })).toBeGreaterThan(20);
    }
  });
  it("refuses counts that fall", () => {
    const search = { panelCounts: [2, 1], mostStrings: 5, targetDarkHours: 1, darkHoursOf: falling(1) };
    expect(() => equalReliabilityPairs(search)).toThrow(RangeFault);
  });
});
