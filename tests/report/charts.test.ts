import { describe, expect, test } from "vitest";
import type { Design, Reliability } from "../../src/design/index.ts";
import { chargeColumns, chargeDrawing, chartsOf } from "../../src/report/charts.ts";

/** From 96 % down by 4 points a day to 20 % on the twentieth day, then up again. */
const days = Array.from({ length: 39 }, (_, i) => (i < 20 ? 0.96 - 0.04 * i : 0.2 + 0.04 * (i - 19)));
const reliability = {
  years: 30,
  yearly: { darkSpell: { month: 11, lowestSocFracByDay: days, offBelowSocFrac: 0.2 } },
} as unknown as Reliability;

describe("the charge through the darkest spell", () => {
  const [chart] = chartsOf("power", { reliability } as Design);
  test("is drawn when the power topic closes, where it was simulated, and at no other", () => {
    expect(chartsOf("power", { reliability: null } as Design)).toEqual([]);
    expect(chartsOf("hours", { reliability } as Design)).toEqual([]);
    expect(chart!.title).toBe("Charge through the darkest spell");
  });
  test("in words: from what, to what, on which day, and what then", () => {
    expect(chart!.words).toBe(
      "In the darkest spell of 30 years, from December, the charge falls from 96 % to 20 % on day 20, where the loads go off (at about 20 %).",
    );
  });
  test("in signs: no line wider than 46 columns, the first day full to the top, the twentieth to a fifth", () => {
    for (const line of chart!.lines) expect([...line].length).toBeLessThanOrEqual(46);
    const column = (day: number) => chart!.lines.slice(0, 8).map((line) => [...line][6 + day] ?? " ");
    // eight rows of an eighth each: 0.96 fills seven and three quarters
    expect(column(1).join("")).toBe("▄███████".replace("▄", "▄"));
    // 0.2 fills one row and three fifths of the next
    expect(column(20).join("").trim()).toBe("▄█");
  });
  test("as bars for the page: a bar a day, one line where the loads go off, and a name for whoever does not see it", () => {
    const { svg } = chargeDrawing(reliability) as { svg: string };
    expect(svg.match(/<rect/g)).toHaveLength(39);
    expect(svg.match(/stroke-dasharray/g)).toHaveLength(1);
    expect(svg).toContain('aria-label="Charge through the darkest spell"');
  });
});

test("an empty battery shows only the line at which the loads go off", () => {
  const lines = chargeColumns({
    socFracs: [0, 0],
    offBelowSocFrac: 0.3,
    isMarked: (column) => column === 1,
    foot: "two",
  });
  expect(lines.filter((line) => line.includes("╌"))).toHaveLength(1);
  expect(lines.at(-2)).toBe("  0 % └─┴");
});
