// The life of the battery is the same in the calendar as in the document.
import { describe, expect, it } from "vitest";
import { type Design, designOf, listsOf } from "../../../src/design/index.ts";
import { changed, given, simulatedWorld, syntheticWorld, typicalBrief } from "../fixtures.ts";

const simulated = designOf(typicalBrief, simulatedWorld);
const capacity = (design: Design): string =>
  listsOf(design)
    .find(({ id }) => id === "upkeep")!
    .steps.find(({ id }) => id === "capacity")!.does;
const lasting = (batteryYears: number): string => {
  const reliability = simulated.reliability!;
  return capacity({
    ...simulated,
    reliability: { ...reliability, yearly: { ...reliability.yearly, batteryYears } },
  });
};

describe("when the battery is replaced", () => {
  it.each([
    [7, "about 7 years"],
    [7.26, "about 7.3 years"],
    [1.04, "about 1 year by"],
    [12.4, "about 12 years"],
  ])("%f years by the weather years: %s", (years, words) => {
    expect(lasting(years)).toContain(words);
    expect(lasting(years)).toContain("within a factor of two");
    expect(lasting(years)).not.toContain("usually");
  });
  it("without weather years the usual span of its kind", () => {
    const lithium = changed({ power: { chemistry: given("lifepo4") } });
    expect(capacity(designOf(typicalBrief, syntheticWorld))).toContain("usually after 3 to 6 years");
    expect(capacity(designOf(lithium, syntheticWorld))).toContain("usually after 8 to 15 years");
  });
});
