import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { designOf } from "../../src/design/index.ts";
import { anyBrief, typicalSomewhere } from "./arbitrary.ts";
import { syntheticWorld } from "./fixtures.ts";

/** Paths of every number in a value that is not finite. */
function unfit(value: unknown, path: string): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => unfit(below, `${path}.${key}`));
}

describe("any brief the questions can make", () => {
  it("becomes a design of finite numbers, and never throws", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const design = designOf(brief, syntheticWorld);
        expect(unfit(design, "design")).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
  it("gives the same design twice", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        expect(designOf(brief, syntheticWorld)).toEqual(designOf(brief, syntheticWorld));
      }),
      { numRuns: 20 },
    );
  });
  it("where every month has sun, is supplied with its ratio in every month", () => {
    fc.assert(
      fc.property(typicalSomewhere, (brief) => {
        const { array } = designOf(brief, syntheticWorld);
        if (!array || array.darkMonths.length > 0) return;
        for (const supply of array.supplyRatioByMonth) {
          expect(supply!).toBeGreaterThanOrEqual(array.arrayToLoadRatio - 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });
  it("and where some months have none, is told so with a stop", () => {
    fc.assert(
      fc.property(typicalSomewhere, (brief) => {
        const { array, findings } = designOf(brief, syntheticWorld);
        const isTold = findings.some(({ id, severity }) => id === "sun.dark" && severity === "stop");
        expect(isTold).toBe((array?.darkMonths.length ?? 0) > 0);
      }),
      { numRuns: 40 },
    );
  });
});
