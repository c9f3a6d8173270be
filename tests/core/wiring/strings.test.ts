import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pvCircuitCurrents, stringFuse } from "../../../src/core/wiring/index.ts";

const anyArray = fc.record({
  iscA: fc.double({ min: 1, max: 15, noNaN: true }),
  stringsInParallel: fc.integer({ min: 1, max: 8 }),
  maxSeriesFuseA: fc.constantFrom(10, 15, 20, 25, 30),
  conductorAmpacityA: fc.double({ min: 10, max: 55, noNaN: true }),
  batteryCanBackfeed: fc.boolean(),
});

describe("stringFuse", () => {
  it("a fuse that is given bears the string, and spares module and wire, by both rules", () => {
    fc.assert(
      fc.property(anyArray, (array) => {
        const found = stringFuse(array);
        if (found.kind !== "fuse") return;
        expect(found.ratingA).toBeGreaterThanOrEqual(1.5625 * array.iscA * (1 - 1e-9));
        expect(found.ratingA).toBeGreaterThan(1.5 * array.iscA);
        expect(found.ratingA).toBeLessThanOrEqual(2.4 * array.iscA * (1 + 1e-9));
        expect(found.ratingA).toBeLessThanOrEqual(array.maxSeriesFuseA);
        expect(found.ratingA).toBeLessThanOrEqual(array.conductorAmpacityA * (1 + 1e-9));
      }),
    );
  });
  it("one more string never takes the need away", () => {
    fc.assert(
      fc.property(anyArray, (array) => {
        const more = stringFuse({ ...array, stringsInParallel: array.stringsInParallel + 1 });
        if (stringFuse(array).kind !== "not-needed") expect(more.kind).not.toBe("not-needed");
      }),
    );
  });
});

describe("pvCircuitCurrents", () => {
  it("grows with the strings", () =>
    expect(pvCircuitCurrents({ iscA: 8, stringsInParallel: 2 })).toEqual({ maxCurrentA: 20, minFuseA: 25 }));
  it("refuses no string at all", () =>
    expect(() => pvCircuitCurrents({ iscA: 8, stringsInParallel: 0 })).toThrow(/stringsInParallel is 0/));
});
