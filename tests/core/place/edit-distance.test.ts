import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distanceFrom } from "../../../src/core/place/edit-distance.ts";

const distance = (word: string, other: string, atMost = 9): number =>
  distanceFrom({ word, atMost })(other, 0, other.length);

describe("distanceFrom", () => {
  // Counted by hand.
  it.each([
    ["denver", "denver", 0],
    ["denver", "dnver", 1],
    ["denver", "deenver", 1],
    ["denver", "denvar", 1],
    ["denver", "dnever", 1],
    ["denver", "", 6],
    ["kitten", "sitting", 3],
    ["ca", "abc", 3],
  ])("from %s to %s is %i", (word, other, steps) => {
    expect(distance(word, other)).toBe(steps);
  });

  it("compares a piece of a longer text, and stops counting beyond what was asked", () => {
    const asked = distanceFrom({ word: "denver", atMost: 2 });
    expect(asked("xxdenverxx", 2, 8)).toBe(0);
    expect(asked("xxsingapore", 2, 11)).toBe(3);
    expect(asked("xxdenverxx", 2, 8)).toBe(0);
  });

  it("is the same both ways and nothing only between equals", () => {
    const word = fc.stringMatching(/^[abc]{0,7}$/);
    fc.assert(
      fc.property(
        word,
        word,
        (a, b) => distance(a, b) === distance(b, a) && (distance(a, b) === 0) === (a === b),
      ),
      { numRuns: 1000 },
    );
  });
});
