import { describe, expect, it } from "vitest";
import { interview, suggestedPlaces } from "../../src/commands/wiring.ts";
import { placeInRow } from "../../src/core/place/place.ts";
import { asciiText } from "../../src/plain/index.ts";
import { index } from "../core/place/gazetteer.ts";

const hints = { near: null, currency: "GBP" };

// Names, regions and countries are GeoNames' own entries or common knowledge.
describe("names suggested for a place being typed", () => {
  it("come from the third letter on, with region and country", () => {
    expect(suggestedPlaces("rh", 3)).toEqual([]);
    expect(suggestedPlaces(" r h 1", 3)).toEqual([]);
    expect(suggestedPlaces("rhay", 3)).toEqual(["Rhayader, Wales, United Kingdom"]);
    expect(suggestedPlaces("Newport, Wal", 3)).toEqual(["Newport, Wales, United Kingdom"]);
  });

  it("are as many as asked for and all different", () => {
    for (const text of ["san", "new", "springfield", "santa maria"]) {
      const names = suggestedPlaces(text, 3);
      expect(names.length, text).toBe(3);
      expect(new Set(names).size, text).toBe(3);
    }
  });

  it("are none for a slip of the keys, for coordinates, and for what is no name", () => {
    for (const text of [
      "",
      "Llanidlos",
      "52.30, -3.51",
      "52 24 N, 3 14 W",
      "north 52, west 3",
      "geo:52.3,-3.5",
      "lat 52.3",
      "xqzw",
    ])
      expect(suggestedPlaces(text, 3), text).toEqual([]);
  });

  it("are none for words that are understood at any question, which go before places of that name", () => {
    for (const text of ["why", "help", "more", "Back", "lists", "not sure", "change 3", "save ", "undo"])
      expect(suggestedPlaces(text, 3), text).toEqual([]);
    // Longer, or in quotation marks, they are names again, such as Whyalla in South Australia.
    expect(suggestedPlaces("whya", 3).join()).toContain("Whyalla");
    expect(suggestedPlaces("'more", 3)).not.toEqual([]);
    expect(suggestedPlaces("moreton", 3)).not.toEqual([]);
  });

  it("can be handed in as they are: a place called so is found, for a place of every country", () => {
    const seen = new Set<string>();
    for (let row = 0; row < index.count; row++) {
      const { name, countryCode } = placeInRow(index, row);
      if (seen.has(countryCode)) continue;
      seen.add(countryCode);
      for (const suggested of suggestedPlaces(name, 3)) {
        for (const typed of [suggested, asciiText(suggested)]) {
          const read = interview.readPlace(typed, hints);
          const labels = read.kind === "sites" ? read.matches.map(({ label }) => label) : [read.says];
          // Namesakes in one region have their coordinates behind the name.
          expect(
            labels.some((label) => label.startsWith(suggested)),
            `${typed}: ${labels.join("; ")}`,
          ).toBe(true);
        }
      }
    }
    expect(seen.size).toBeGreaterThan(200);
  });

  it("take a small part of the time that slips of the keys would", () => {
    const fastestMs = (look: () => unknown): number => {
      const times = Array.from({ length: 5 }, () => {
        const start = performance.now();
        look();
        return performance.now() - start;
      });
      return Math.min(...times);
    };
    // A frame is 16 ms; the machine that runs this may be busy, so the ratio is tested and the time only roughly.
    const texts = ["rhay", "xqzw", "llanfihan"];
    for (const text of texts) {
      const suggestedMs = fastestMs(() => suggestedPlaces(text, 3));
      expect(suggestedMs, text).toBeLessThan(fastestMs(() => interview.readPlace(text, hints)) / 2);
      expect(suggestedMs, text).toBeLessThan(16);
    }
  });
});
