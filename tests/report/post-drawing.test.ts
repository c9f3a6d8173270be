/** What a reader of the drawing must be able to count and see. The limits are judgement: nothing outside prescribes them. */
import { describe, expect, test } from "vitest";
import type { Design } from "../../src/design/index.ts";
import { postLines, postSvg } from "../../src/report/post-drawing.ts";
import { designs } from "../design/lists/variants.ts";

const [, base] = designs.find(
  ([, { array, battery, link }]) => array !== null && battery !== null && link?.radio != null,
)!;

/** The same post with so many panels of 1 m2 on a frame beside it. */
const withPanels = (panels: number): Design => ({
  ...base,
  array: { ...base.array!, panels, areaM2: panels },
  mounting: { ...base.mounting, panelMount: "ground frame" },
});
const counts = [1, 2, 3, 7, 12, 40, 144];
const widths = [30, 40, 60, 80, 160];
const cases = counts.flatMap((panels) => widths.map((width) => [panels, width] as const));
const drawn = (panels: number, width: number) => postLines(withPanels(panels), { width, glyphs: "ascii" });
const legendAt = (lines: readonly string[]) => lines.findIndex((line) => line.includes(" high"));

describe("a post in characters", () => {
  test.each(cases)(
    "%i panels at %i columns: each is drawn or counted, and the post keeps its height",
    (panels, width) => {
      const lines = drawn(panels, width);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      const drawing = lines.slice(0, legendAt(lines));
      const legend = lines.slice(legendAt(lines)).join("  ");
      const left = Number(/ and (\d+) more$/m.exec(drawing.join("\n"))?.[1] ?? 0);
      const said = /# (?:(\d+) of )?(?:(\d+) )?panels?(?: |$)/.exec(legend)!;
      expect(Number(said[2] ?? 1)).toBe(panels);
      expect(Number(said[1] ?? panels)).toBe(panels - left);
      const row = drawing.find((line) => line.includes("#"))!;
      expect(row.match(/#+/g)).toHaveLength(panels - left);
      if (width >= 40) expect(drawing.length).toBeGreaterThanOrEqual(13);
    },
  );

  test("a wider terminal shows more of them", () => {
    const shown = (width: number) =>
      drawn(144, width)
        .find((line) => line.includes("#"))!
        .match(/#+/g)!.length;
    expect(shown(60)).toBeGreaterThan(shown(40));
    expect(shown(160)).toBeGreaterThan(shown(60));
  });

  test("a line of ground is there where nothing is dug too", () => {
    const lines = postLines(
      { ...base, mounting: { ...base.mounting, footing: null } },
      { width: 60, glyphs: "ascii" },
    );
    expect(lines.filter((line) => line.includes("--"))).toHaveLength(1);
  });
});

describe("a post on a page", () => {
  test.each(counts)("%i panels: each is drawn or counted", (panels) => {
    const svg = postSvg(withPanels(panels));
    const rects = svg.match(/fill="#235"/g)!.length;
    const [, some, more] = />(?:(\d+) )?panels?(?: and (\d+) more)?</.exec(svg)!;
    expect(Number(some ?? 1)).toBe(rects);
    expect(rects + Number(more ?? 0)).toBe(panels);
    const [, , viewWidth, viewHeight] = /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(svg)!.slice(1).map(Number);
    expect(viewWidth! / viewHeight!).toBeLessThan(3.5);
  });
});
