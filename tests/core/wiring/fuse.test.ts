import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FuseFamily, fuseKind, pickFuse } from "../../../src/core/wiring/index.ts";

const FAMILIES: readonly FuseFamily[] = ["blade", "strip", "class-t", "gpv", "breaker"];

describe("pickFuse", () => {
  it("spares the fuse and protects the wire, always", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FAMILIES),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        (family, continuousCurrentA, ampacityA) => {
          const pick = pickFuse({ continuousCurrentA, ampacityA, family });
          const serving = fuseKind(family).ratingsA.filter(
            (ratingA) => ratingA >= 1.25 * continuousCurrentA && ratingA <= ampacityA,
          );
          if (pick.kind === "picked") expect(pick.ratingA).toBe(Math.min(...serving));
          else expect(serving).toEqual([]);
        },
      ),
    );
  });

  it("12 A finds 15 A on a wire of 15 A exactly", () =>
    expect(pickFuse({ continuousCurrentA: 12, ampacityA: 15, family: "breaker" })).toEqual({
      kind: "picked",
      ratingA: 15,
      minA: 15,
      maxA: 15,
    }));

  it("says which limits leave no rating", () =>
    expect(pickFuse({ continuousCurrentA: 13, ampacityA: 18, family: "blade" })).toEqual({
      kind: "none-fits",
      minA: 16.25,
      maxA: 18,
    }));

  it.each(FAMILIES)("%s ratings rise", (family) => {
    const { ratingsA } = fuseKind(family);
    expect(ratingsA.length).toBeGreaterThan(9);
    expect([...ratingsA].sort((a, b) => a - b)).toEqual(ratingsA);
  });

  it("refuses a factor that would tire the fuse", () =>
    expect(() => pickFuse({ continuousCurrentA: 1, ampacityA: 9, family: "blade", factor: 0.9 })).toThrow(
      /factor is 0.9/,
    ));
});
