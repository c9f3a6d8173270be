// The same run, given up early: no outside value, held against the run that is not.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balanceUnlessDarker, simulateBalance } from "../../../../src/core/energy/index.ts";
import { postOf, recipe } from "../../../properties/posts.ts";

describe("a balance given up where it is darker than asked", () => {
  it("is the whole one where it is not, and nothing where it is", () => {
    let givenUp = 0;
    let whole = 0;
    fc.assert(
      fc.property(recipe, fc.constantFrom(0.3, 0.8, 0.99, 1.01, 1.5), (given, share) => {
        const post = postOf(given);
        const all = simulateBalance(post);
        const darkH = all.tiers[0]!.darkHoursPerYear;
        const mostDarkHoursPerYear = Math.min(8760, share * Math.max(1, darkH));
        const found = balanceUnlessDarker({ ...post, mostDarkHoursPerYear });
        if (darkH > mostDarkHoursPerYear + 1e-5) {
          expect(found).toBeNull();
          givenUp += 1;
        } else if (darkH < mostDarkHoursPerYear - 1e-5) {
          expect(found).toEqual(all);
          whole += 1;
        }
      }),
      { numRuns: 25, seed: 4 },
    );
    expect(Math.min(givenUp, whole)).toBeGreaterThan(3);
  });
  it("refuses hours that no year has", () => {
    const [post] = fc.sample(recipe, { numRuns: 1, seed: 4 }).map((given) => postOf(given));
    expect(() => balanceUnlessDarker({ ...post!, mostDarkHoursPerYear: -1 })).toThrow(/mostDarkHoursPerYear/);
  });
});
