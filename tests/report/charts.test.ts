import { describe, expect, it, test } from "vitest";
import type { Design, Reliability } from "../../src/design/index.ts";
import { chargeColumns, chargeDrawing, chartsOf } from "../../src/report/charts.ts";
import { saidRows } from "../../src/screen/page.ts";

/** From 96 % down by 4 points a day to 20 % on the twentieth day, then up again. */
const days = Array.from({ length: 39 }, (_, i) => (i < 20 ? 0.96 - 0.04 * i : 0.2 + 0.04 * (i - 19)));
const chosen = { installedW: 350, blocks: 4, blockAh: 90 };
const spell = { month: 11, lowestSocFracByDay: days, offBelowSocFrac: 0.2, isOff: true };
const reliabilityOf = (about: Partial<typeof spell>) =>
  ({ years: 30, chosen, yearly: { darkSpell: { ...spell, ...about } } }) as unknown as Reliability;
const reliability = reliabilityOf({});
const chartOf = (about: Partial<typeof spell>) =>
  chartsOf("power", { reliability: reliabilityOf(about) } as Design)[0]!;

describe("the charge through the darkest spell", () => {
  const [chart] = chartsOf("power", { reliability } as Design);
  test("belongs to the topics that size battery and panels, and to the end, where it was simulated", () => {
    expect(chartsOf("power", { reliability: null } as Design)).toEqual([]);
    expect(chartsOf("hours", { reliability, link: null } as Design)).toEqual([]);
    for (const topicId of ["autonomy", "power", null])
      expect(chartsOf(topicId, { reliability } as Design)).toEqual([chart]);
    expect(chart!.title).toBe("Charge through the darkest spell");
  });
  test("in words: from what, to what, on which day, and what then", () => {
    expect(chart!.words).toBe(
      "In the darkest spell of 30 years, from December, the charge falls from 96 % to 20 % on day 20, where the loads are off: they go off at about 20 %.",
    );
    expect(chartOf({ isOff: false, offBelowSocFrac: 0.15 }).words).toContain(
      "to 20 % on day 20; the loads would go off at about 15 %.",
    );
    // shed in a colder hour at a higher mark and not yet back: the mark of the lowest hour would explain nothing
    expect(chartOf({ offBelowSocFrac: 0.15 }).words).toContain(
      "to 20 % on day 20, where the loads are off since a colder hour.",
    );
  });
  test("in signs: no line wider than 46 columns, the first day full to the top, the twentieth to a fifth", () => {
    for (const line of chart!.lines) expect([...line].length).toBeLessThanOrEqual(46);
    const column = (day: number) => chart!.lines.slice(0, 8).map((line) => [...line][6 + day] ?? " ");
    // eight rows of an eighth each: 0.96 fills seven and three quarters; in the second from below the loads go off
    expect(column(1).join("")).toBe("▄█████▒█");
    // 0.2 fills one row and three fifths of the next
    expect(column(20).join("").trim()).toBe("▄█");
  });
  it.each([
    [60, false, /off │[▒▄]{39}$/, "█"],
    [160, false, /off │[▒▄]{39}$/, "█"],
    [60, true, /off \|[%=]{39}$/, "#"],
    [160, true, /off \|[%=]{39}$/, "#"],
  ])(
    "at %d columns, plain signs: %s, the row where the loads go off is named and crosses every column",
    (columns, isAscii, off, bar) => {
      const rows = saidRows({ columns, rows: 40, isAscii }, { kind: "chart", chart: chart! }).map((row) =>
        row.map(({ text }) => text).join(""),
      );
      for (const row of rows) expect([...row].length).toBeLessThan(columns);
      const crossing = rows.filter((row) => off.test(row));
      expect(crossing).toHaveLength(1);
      // 0.2 lies in the second of eight rows from below, over the axis; no bar hides it
      expect(rows.indexOf(crossing[0]!)).toBe(rows.findIndex((row) => row.includes("  0 % ")) - 2);
      expect(crossing[0]).not.toContain(bar);
      expect(rows.filter((row) => row.includes(bar))).toHaveLength(6);
    },
  );
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
