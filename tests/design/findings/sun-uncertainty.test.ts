// What a duller sun means is said as it is: still enough, or only so much, and whether the battery carries the rest.
import { describe, expect, it } from "vitest";
import type { Design } from "../../../src/design/design.ts";
import { sunUncertainty } from "../../../src/design/findings/sun-uncertainty.ts";
import { designOf } from "../../../src/design/index.ts";
import { simulatedWorld, syntheticWorld, typicalBrief } from "../fixtures.ts";

const plain = designOf(typicalBrief, syntheticWorld);
const simulated = designOf(typicalBrief, simulatedWorld);
/** The same post with panels that give so many times the load in every month; the sun is known to 8 %. */
const giving = (supplyRatio: number, design: Design = plain): Design => ({
  ...design,
  array: { ...design.array!, supplyRatioByMonth: Array.from({ length: 12 }, () => supplyRatio) },
});
const dark = (dullSunDarkHours: number, askedDarkHours: number | null): Design => {
  const reliability = simulated.reliability!;
  return giving(1.05, {
    ...simulated,
    reliability: { ...reliability, askedDarkHours, yearly: { ...reliability.yearly, dullSunDarkHours } },
  });
};
const found = (design: Design) => sunUncertainty(design, syntheticWorld)!;

describe("a duller sun", () => {
  it("1.25 x 0.92 = 1.15: still enough, a note without advice", () => {
    expect(found(giving(1.25))).toMatchObject({ severity: "note", change: "" });
    expect(found(giving(1.25)).says).toContain("the panels still give 1.15 times");
  });
  it("1.05 x 0.92 = 0.966: only that, a caution with advice, never rounded up", () => {
    const { severity, says, change } = found(giving(1.05));
    expect(severity).toBe("caution");
    expect(says).toContain("the panels only give 0.96 times");
    expect(says).not.toContain("still");
    expect(change).not.toBe("");
    // 1.085 x 0.92 = 0.998
    expect(found(giving(1.085)).says).toContain("only give 0.99 times");
  });
  it("is a note where the weather years stay within what was asked even so, and says by how much", () => {
    const { severity, says, change } = found(dark(50, 88));
    expect([severity, change]).toEqual(["note", ""]);
    expect(says).toContain("only give 0.96 times");
    expect(says).toContain("about 50 dark hours a year");
    expect(says).toContain("a worry allows at most 88");
  });
  it("is a caution where they do not, or where no hours were asked", () => {
    expect(found(dark(89, 88)).severity).toBe("caution");
    expect(found(dark(1, null)).severity).toBe("caution");
  });
});
