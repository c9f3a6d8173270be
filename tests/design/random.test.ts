import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { designOf } from "../../src/design/index.ts";
import { anyBrief } from "./arbitrary.ts";
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
      { numRuns: 150 },
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
});
