/** The radio path as it is drawn: the same facts in signs, in words and on the page. */
import { describe, expect, it } from "vitest";
import type { Brief } from "../../src/design/brief.ts";
import { designOf } from "../../src/design/index.ts";
import { chartColumns } from "../../src/interview/conversation.ts";
import { asciiText } from "../../src/plain/ascii.ts";
import { chartsOf } from "../../src/report/charts.ts";
import { linkBlocks } from "../../src/report/link-blocks.ts";
import { at, changed, given, sites, syntheticWorld } from "../design/fixtures.ts";

const designed = (link: Partial<Brief["link"]>) => designOf(changed({ link }), syntheticWorld);
const chart = (link: Partial<Brief["link"]>) => chartsOf("link", designed(link))[0]!;
const barn = { sight: given("buildings" as const), between: given("barn 10 m high and 40 m deep half way") };

describe("the chart", () => {
  it.each([
    ["a barn in the line", barn],
    ["a long plain", { distanceM: given(12_000), farHeightM: given(20) }],
    ["a far end high up", { farHeightM: given(90) }],
    ["the shortest", { distanceM: given(1) }],
  ] as const)("keeps to its columns, in signs that plain terminals spell: %s", (_what, link) => {
    const { lines, words } = chart(link);
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(chartColumns);
      expect(asciiText(line)).not.toContain("?");
      expect(asciiText(line).length).toBe(line.length);
    }
    expect(words).toMatch(/^The line from .*\.$/);
  });
  it("draws the line through a barn that is higher, half way along, and says by how much", () => {
    const { lines, words } = chart(barn);
    // 38 columns: the middle of 800 m is column 18 or 19, and 40 m are two columns
    const columns = lines.flatMap((line) => Array.from(line.matchAll(/▒/g), ({ index }) => index - 8));
    expect(Math.min(...columns)).toBeGreaterThanOrEqual(17);
    expect(Math.max(...columns)).toBeLessThanOrEqual(20);
    const line = lines.findIndex((row) => /─{30}/.test(row));
    expect(lines.findIndex((row) => row.includes("▒"))).toBeLessThan(line);
    // both antennas at 6 m, the barn 10 m high
    expect(words).toMatch(
      /passes 4 m below the top of the barn 400 m from the post; 2 m of room are wanted there/,
    );
  });
  it("shows the swell of a long plain, and nothing in between", () => {
    const { lines } = chart({ distanceM: given(12_000), farHeightM: given(20) });
    expect(lines.slice(0, -1).join("")).not.toContain("▒");
    // bulge of 2.1 m half way: 6000^2 / (2 x 4/3 x 6371 km); of about 20 m drawn that is a row
    expect(lines.filter((line) => /[█▄]{10}/.test(line)).length).toBeGreaterThanOrEqual(2);
  });
  it("is none without a radio, and for other topics", () => {
    expect(chartsOf("link", designed({ carrier: given("cellular") }))).toEqual([]);
    expect(chartsOf("view", designed({}))).toEqual([]);
  });
});

describe("in the document", () => {
  it("stand the drawing, the parts of the loss and both directions, with the design's own figures", () => {
    const design = designed(barn);
    const blocks = linkBlocks(design);
    const text = JSON.stringify(blocks);
    const { loss, budget } = design.link!;
    for (const value of [loss!.freeSpaceDb, loss!.diffractionDb, budget!.nearToFar.expectedDbm])
      expect(text).toContain(value.toFixed(1));
    const drawing = blocks.find((block) => block.kind === "drawing");
    expect(drawing?.kind === "drawing" && drawing.svg).toMatch(/^<svg .*<\/svg>$/);
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    // what is radiated, less path and allowance, plus the antenna that hears, less half the feeds: the table adds up
    const { nearToFar } = budget!;
    expect(
      nearToFar.eirpDbm -
        loss!.totalDb -
        budget!.allowanceDb +
        nearToFar.rxGainDbi -
        nearToFar.feedLossDb / 2,
    ).toBeCloseTo(nearToFar.rxLevelDbm, 6);
  });
  it("a link that does not work says so, counts no hours, and nothing is ordered for it", () => {
    const far = designOf(
      at(sites.north40, changed({ link: { distanceM: given(14_000), farHeightM: given(100) } })),
      syntheticWorld,
    );
    const shared = designed({ otherPosts: given(30), distanceM: given(3000), farHeightM: given(12) });
    expect(far.link!.radio!.phyMbps).toBe(0);
    expect(shared.link!.radio!.phyMbps).toBeGreaterThan(0);
    expect(shared.link!.radio!.carriesPicture).toBe(false);
    for (const [design, words] of [
      [far, "the link does not work"],
      [shared, "the link does not carry the picture"],
    ] as const) {
      const text = JSON.stringify(linkBlocks(design));
      expect(text).toContain(`As it stands ${words}`);
      expect(text).not.toMatch(/Weather takes the link away/);
      const { specification } = design.parts.lines.find(({ id }) => id === "radio")!;
      expect(specification[0]).toMatch(/^DO NOT ORDER YET: .* order none before the path is cleared/);
      expect(specification.join()).not.toContain("at 0 Mbit/s");
    }
    const working = designed({});
    expect(JSON.stringify(linkBlocks(working))).toContain("Weather takes the link away");
    const { specification } = working.parts.lines.find(({ id }) => id === "radio")!;
    expect(specification.join()).not.toContain("ORDER");
    expect(specification.join()).toMatch(/receives -\d+ dBm or better at [1-9]\d* Mbit/);
  });
  it("what remains with every tree cut stands beside what they take", () => {
    const between = "row of trees 12 m high and 20 m deep at 450 m; barn 10 m high half way";
    const design = designed({ sight: given("trees"), between: given(between) });
    // 17.6 dB over the barn: v = 1.670, J(v) of ITU-R P.526 (31)
    expect(JSON.stringify(linkBlocks(design))).toContain("with every tree cut 17.6 dB remain");
    expect(JSON.stringify(linkBlocks(designed(barn)))).not.toContain("every tree");
  });
  it("are nothing without a radio", () => {
    expect(linkBlocks(designed({ carrier: given("cable"), distanceM: given(40) }))).toEqual([]);
  });
});
