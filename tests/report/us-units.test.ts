/** A builder who thinks in feet and pounds reads no metric figure, wherever they read. */
import { describe, expect, it } from "vitest";
import { details, tellings } from "../../flows/index.ts";
import { topicIds } from "../../src/design/brief.ts";
import { type Design, designOf } from "../../src/design/index.ts";
import type { Block, Document } from "../../src/report/document.ts";
import { chartsOf, designDocument, html, partsCsv, plainText, postLines } from "../../src/report/index.ts";
import { changed, given, simulatedWorld, sites, syntheticWorld } from "../design/fixtures.ts";
import { briefs } from "../design/lists/variants.ts";
import { metricIn } from "../helpers/metric.ts";

const variants = {
  ...briefs,
  "a pole with odd clamps": changed({
    mounting: { support: given("existingPole"), poleDiameterMm: given(140) },
  }),
  "a pole that is too low": changed({
    mounting: { support: given("existingPole"), poleHeightM: given(2.5) },
  }),
  "a wire at a known distance": changed({ mounting: { overheadLine: given("yes"), freeGroundM: given(11) } }),
  "looked not far enough": changed({ mounting: { freeGroundM: given(5) } }),
  "bought by the millimetre": changed({ place: { site: given(sites.south5) } }),
  "a trench": changed({ link: { carrier: given("cable"), distanceM: given(80) } }),
  "a battery that is bought with its heater": changed({
    power: { chemistry: given("lifepo4"), batteryHeaterW: given(60) },
  }),
};
const inFeet: readonly (readonly [name: string, design: Design])[] = [
  ...Object.entries(variants).map(
    ([name, brief]) => [name, designOf({ ...brief, units: "us" }, syntheticWorld)] as const,
  ),
  ["weather years", designOf({ ...briefs["tilted twice a year"]!, units: "us" }, simulatedWorld)],
];

const wholeOf = (design: Design) =>
  designDocument(design, { answers: [], attributions: [], withNotes: false });

/** Where the handbook's sums begin, and how many blocks they are: they are worked in degrees Celsius and say so. */
function sumsIn(document: Document): readonly [from: number, count: number] {
  const isHeading = (block: Block) => block.kind === "heading" && block.level === 2;
  const from = document.findIndex(
    (block) => isHeading(block) && "text" in block && /handbook's sums/.test(block.text),
  );
  if (from < 0) return [document.length, 0];
  return [from, 1 + document.slice(from + 1).findIndex(isHeading)];
}
const documentOf = (design: Design): Document => {
  const whole = wholeOf(design);
  return whole.toSpliced(...sumsIn(whole));
};

const told = (design: Design): string =>
  [
    ...tellings
      .filter((telling) => telling.figure(design) !== null)
      .flatMap((telling) => [telling.say(design, null), telling.label, telling.short(design)]),
    ...[...topicIds, null]
      .flatMap((topic) => details(topic, design))
      .flatMap(({ title, lines }) => [title, ...lines]),
  ].join("\n");

/** Words of a page, without its drawing instructions. */
const shownBy = (page: string): string =>
  page
    .replace(/<style>.*?<\/style>/gs, "")
    .replace(/<[^>]*>/g, "\n")
    .replaceAll("&#39;", "'");

const drawn = (design: Design): string =>
  [
    ...postLines(design, { width: 80, glyphs: "ascii" }),
    ...topicIds.flatMap((topic) => chartsOf(topic, design)).flatMap(({ words, lines }) => [words, ...lines]),
  ].join("\n");

describe("in feet and pounds", () => {
  it.each(inFeet)("%s: no metric figure on the sheet", (_name, design) => {
    const sheet = plainText(documentOf(design), 100_000);
    expect(metricIn(sheet)).toEqual([]);
    // "2 ft 10 in in a gust" reads as a slip
    expect(sheet).not.toMatch(/\bin in\b/);
    expect(metricIn(shownBy(html(documentOf(design), "post")))).toEqual([]);
  });
  it.each(inFeet)("%s: none in what is told after answers, nor in what is drawn", (_name, design) => {
    expect(metricIn(told(design))).toEqual([]);
    expect(metricIn(drawn(design))).toEqual([]);
  });
  it.each(inFeet)("%s: the handbook's sums say once that they are in degrees Celsius", (_name, design) => {
    const whole = wholeOf(design);
    const [from, count] = sumsIn(whole);
    const sums = plainText(whole.slice(from, from + count), 100_000);
    expect(sums.match(/degrees Celsius/g) ?? []).toHaveLength(count === 0 ? 0 : 1);
    const inMetric = designDocument(
      { ...design, brief: { ...design.brief, units: "metric" } },
      { answers: [], attributions: [], withNotes: false },
    );
    expect(plainText(inMetric, 100_000)).not.toContain("degrees Celsius (°C)");
    // nothing but temperatures
    expect(metricIn(sums.replaceAll("°C", "").replace("degrees Celsius", ""))).toEqual([]);
  });
  it("has none in the specifications for a shop; quantities there stay metric and say so", () => {
    for (const [, design] of inFeet) {
      for (const { specification } of design.parts.lines)
        expect(metricIn(specification.join("\n"))).toEqual([]);
      expect(partsCsv(design)).not.toMatch(/°|degrees[CF]/);
    }
  });
  it("names a wire by its gauge, and by what it is sold as where that is square millimetres", () => {
    const wires = (countryCode: string) =>
      designOf(
        { ...changed({ place: { site: given({ ...sites.colorado, countryCode }) } }), units: "us" },
        syntheticWorld,
      )
        .parts.lines.filter(({ id }) => id.startsWith("wire."))
        .map(({ name }) => name);
    expect(wires("US").length).toBeGreaterThan(0);
    for (const name of wires("US")) expect(name).toMatch(/^Copper wire [\d/]+ AWG, /);
    for (const name of wires("GB")) expect(name).toMatch(/^Copper wire [\d/]+ AWG \([\d.]+ mm2\), /);
  });
  it("gives the same figures to machines: only sentences differ", () => {
    const figures = (units: "metric" | "us") => {
      const { mounting, array, battery, link } = designOf({ ...briefs["a wall"]!, units }, syntheticWorld);
      return JSON.stringify([mounting, array, battery, link], (_key, value) =>
        typeof value === "string" ? "" : value,
      );
    };
    expect(figures("us")).toBe(figures("metric"));
  });
  it("would be found: the metric sheets are full of them, and so are planted texts", () => {
    const metric = designOf(briefs["new mast, radio, nothing owned"]!, syntheticWorld);
    expect(metricIn(plainText(documentOf(metric), 100_000)).length).toBeGreaterThan(40);
    expect(metricIn(told(metric)).length).toBeGreaterThan(5);
    for (const text of [
      "Dig 0.6 m deep.",
      "It weighs 12 kg.",
      "One way m",
      "Mean temperature °C",
      "up to 320 N of wind",
      "a metre stick",
      "10 K warmer",
      "16 mm2 (6 AWG)",
      "at 45 m/s",
      "five litres of water",
      "(25 kg)",
    ])
      expect(metricIn(text), text).not.toEqual([]);
    for (const text of [
      "6 AWG (16 mm2)",
      "lens 4 mm",
      "3 kWh/m2 a day",
      "a meter for watts",
      "10 ft 6 in",
      "12 V",
    ])
      expect(metricIn(text), text).toEqual([]);
  });
});
