import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { designOf, listsOf } from "../../../src/design/index.ts";
import { anyBrief } from "../arbitrary.ts";
import { syntheticWorld } from "../fixtures.ts";
import { missingCautions } from "./hazards.ts";

describe("the lists of any post the questions can make", () => {
  it("warn of what can hurt, tell steps apart, and hold no figure that is none", () => {
    fc.assert(
      fc.property(anyBrief, (brief) => {
        const design = designOf(brief, syntheticWorld);
        const lists = listsOf(design);
        expect(missingCautions(lists, design)).toEqual([]);
        for (const { steps } of lists) {
          expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
          for (const step of steps) {
            const text = JSON.stringify(step);
            expect(text).not.toMatch(/\b(NaN|undefined|Infinity)\b|\bnull\b|-0(?![.\d])|\(s\)| {2}/);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
