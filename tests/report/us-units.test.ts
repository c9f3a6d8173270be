/** A builder who thinks in feet and pounds reads no metric figure, wherever they read. */
import { describe, expect, it } from "vitest";
import { tellings } from "../../flows/index.ts";
import { topicIds } from "../../src/design/brief.ts";
import { type Design, designOf } from "../../src/design/index.ts";
import { chartsOf, designDocument, html, partsCsv, plainText, postLines } from "../../src/report/index.ts";
import { changed, given, simulatedWorld, sites, syntheticWorld } from "../design/fixtures.ts";
import { briefs } from "../design/lists/variants.ts";
import { metricIn } from "../helpers/metric.ts";

const variants = {
  ...briefs,
  "a pole with odd clamps": changed({
    mounting: { support: given("existingPole"), poleDiameterMm: given(140) },
  }),
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

const documentOf = (design: Design) =>
  designDocument(design, { answers: [], attributions: [], withNotes: false });

const told = (design: Design): string =>
  tellings
    .filter((telling) => telling.figure(design) !== null)
    .flatMap((telling) => [telling.say(design, null), telling.label, telling.short(design)])
    .join("\n");

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
  it("has none in the specifications for a shop; quantities there stay metric and say so", () => {
    for (const [, design] of inFeet) {
      for (const { specification } of design.parts.lines)
        expect(metricIn(specification.join("\n"))).toEqual([]);
      expect(partsCsv(design)).not.toMatch(/°|degrees[CF]/);
    }
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
