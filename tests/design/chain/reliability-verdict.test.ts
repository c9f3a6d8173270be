import { describe, expect, it } from "vitest";
import type { Brief } from "../../../src/design/brief.ts";
import {
  bestFirst,
  leastDarkOf,
  recommended as recommendedOf,
} from "../../../src/design/chain/reliability-verdict.ts";
import type { PairOutcome } from "../../../src/design/design.ts";
import { changed, given, typicalBrief } from "../fixtures.ts";

const pair = (darkHours: number, highCost: number, areaM2 = 2): PairOutcome =>
  ({ darkHours, highCost, areaM2, installedW: highCost, bankAh: 100 }) as PairOutcome;
const wishing = (sizing: "recommended" | "handbook" | "simulation") =>
  changed({ power: { sizing: given(sizing) } });

describe("the best of the pairs that reach what was asked", () => {
  it("is the least dark of those within a tenth of the cheapest, the rest by cost", () => {
    const pairs = [pair(5, 1200), pair(80, 1000), pair(2, 1090), pair(30, 1050)];
    expect(bestFirst(pairs).map(({ highCost }) => highCost)).toEqual([1090, 1000, 1050, 1200]);
  });
  it("is not one that asks for more than a quarter more panel", () => {
    const pairs = [pair(80, 1000, 2), pair(2, 1090, 2.6), pair(30, 1050, 2.4)];
    expect(bestFirst(pairs)[0]).toMatchObject({ darkHours: 30 });
  });
  it("is nothing where there is none", () => {
    expect(bestFirst([])).toEqual([]);
  });
});

describe("the least dark of those tried", () => {
  it("is that, the cheapest of equals, or nothing of nothing", () => {
    const tried = [pair(40.2, 5000), pair(12.3, 7000), pair(12.1, 9000)];
    expect(leastDarkOf(tried)!.highCost).toBe(7000);
    expect(leastDarkOf([])).toBeNull();
  });
});

describe("which of the two sizings is built", () => {
  const handbook = pair(20, 3000);
  const recommended = (
    brief: Brief,
    given: Pick<Parameters<typeof recommendedOf>[1], "askedDarkHours" | "handbook" | "pairs">,
    leastDark: PairOutcome | null = null,
  ) => recommendedOf(brief, { ...given, leastDark });
  it("the cheaper of two that reach what was asked", () => {
    const cheap = recommended(typicalBrief, { askedDarkHours: 88, handbook, pairs: [pair(80, 1500)] });
    expect(cheap).toMatchObject({ method: "simulation", chosen: { highCost: 1500 } });
    expect(cheap.because).toContain("costs less and still has no more than about 80 dark hours a year");
    expect(cheap.because).not.toContain("lowest price");
    const dear = recommended(typicalBrief, { askedDarkHours: 88, handbook, pairs: [pair(80, 3500)] });
    expect(dear.method).toBe("handbook");
  });
  it("the weather years', where the handbook's size would be dark too long, whatever it costs", () => {
    const verdict = recommended(typicalBrief, { askedDarkHours: 10, handbook, pairs: [pair(9, 9000)] });
    expect(verdict.method).toBe("simulation");
    expect(verdict.because).toContain("about 20 dark hours a year where a worry allows at most 88");
  });
  it("says so where a cheaper one was passed over", () => {
    const pairs = bestFirst([pair(80, 1000), pair(20, 1090)]);
    const { because } = recommended(typicalBrief, { askedDarkHours: 88, handbook, pairs });
    expect(because).toContain("1000 W with 100 Ah would cost a little less and have about 80 dark hours");
  });
  it("the handbook's, where days were asked for and not hours", () => {
    expect(recommended(typicalBrief, { askedDarkHours: null, handbook, pairs: [] }).method).toBe("handbook");
  });
  it("the handbook's for want of better, and it says so, where nothing reaches it", () => {
    const verdict = recommended(typicalBrief, { askedDarkHours: 10, handbook, pairs: [] });
    expect(verdict.method).toBe("handbook");
    expect(verdict.because).toContain("for want of anything better");
  });
  it("the least dark of those tried, where nothing reaches it and that is better than the handbook's", () => {
    const options = { askedDarkHours: 10, handbook, pairs: [] };
    const verdict = recommended(typicalBrief, options, pair(14, 8000));
    expect(verdict).toMatchObject({ method: "simulation", chosen: { highCost: 8000 } });
    expect(verdict.because).toMatch(/for want of anything better.*about 14 dark hours/);
    expect(recommended(typicalBrief, options, pair(21, 8000)).method).toBe("handbook");
    expect(recommended(wishing("handbook"), options, pair(14, 8000)).method).toBe("handbook");
  });
  it("the one that the builder chose, whatever is cheaper", () => {
    const options = { askedDarkHours: 88, handbook, pairs: [pair(80, 1500)] };
    expect(recommended(wishing("handbook"), options)).toMatchObject({ method: "handbook", chosen: handbook });
    const dear = { askedDarkHours: 88, handbook, pairs: [pair(80, 9500)] };
    expect(recommended(wishing("simulation"), dear).method).toBe("simulation");
  });
});
