import { describe, expect, it } from "vitest";
import { attributions, interview, world } from "../../src/commands/wiring.ts";
import type { Site } from "../../src/design/index.ts";

const hints = { near: null, currency: "GBP" };
const siteIn = (countryCode: string): Site => ({
  label: "x",
  latitudeDeg: 51.588,
  longitudeDeg: -2.998,
  elevationM: null,
  countryCode,
});
/** What is said beside coordinates that are taken; null where nothing is. */
const doubt = (text: string, about: { readonly near?: Site; readonly currency?: string } = {}) => {
  const read = interview.readPlace(text, { ...hints, ...about });
  expect(read.kind, text).toBe("sites");
  return read.kind === "sites" ? (read.says ?? null) : null;
};

const labels = (text: string) => {
  const read = interview.readPlace(text, hints);
  return read.kind === "sites" ? read.matches.map(({ label }) => label) : [`${read.kind}: ${read.says}`];
};

describe("a typed place", () => {
  it("is found with its region and country", () => {
    expect(labels("Rhayader")).toEqual(["Rhayader, Wales, United Kingdom"]);
    expect(labels("reykjavik")[0]).toMatch(/^Reykjavík, .*Iceland$/);
  });

  it("of many namesakes gives names that can all be told apart", () => {
    const found = labels("Newport");
    expect(found.length).toBeGreaterThan(3);
    expect(new Set(found).size).toBe(found.length);
    for (const label of found) expect(label).toMatch(/^Newport, /);
  });

  it("narrowed by its region or country gives fewer", () => {
    const found = labels("Newport, Wales");
    expect(found.length).toBeLessThan(labels("Newport").length);
    for (const label of found) expect(label).toMatch(/^Newport, Wales, United Kingdom/);
  });

  it("of many namesakes says how far each is from the place before", () => {
    const read = interview.readPlace("Newport", { near: siteIn("GB"), currency: "GBP" });
    const found = read.kind === "sites" ? read.matches : [];
    for (const { label, site } of found) {
      expect(label).toMatch(/, \d+ km away$/);
      expect(site.label).not.toMatch(/away/);
    }
    // Newport in Wales is where these coordinates lie.
    expect(found.some(({ label }) => /Wales.*, [0-3] km away$/.test(label))).toBe(true);
  });

  it("that nobody knows is refused with what would do", () => {
    expect(labels("Qqxzy")[0]).toMatch(/^refused: No place called Qqxzy is known here\..*52\.30, -3\.51/);
  });
});

describe("typed coordinates", () => {
  it("are named after the nearest place, whose country decides the radio rules", () => {
    const read = interview.readPlace("52.30, -3.51", hints);
    expect(read).toMatchObject({
      kind: "sites",
      matches: [{ site: { latitudeDeg: 52.3, longitudeDeg: -3.51, countryCode: "GB" } }],
    });
  });

  // Where these lie is plain from any atlas: the North Sea, the Indian Ocean off Somalia, the South Atlantic.
  it.each([
    ["a lost minus sign", "52.3, 3.51", "52.3, -3.51", "Rhayader"],
    ["changed over", "-3.51, 52.3", "52.3, -3.51", "Rhayader"],
    ["a lost minus sign in the south", "33.93, 18.42", "-33.93, 18.42", "Cape Town"],
  ])("at sea are suspected aloud: %s", (_what, typed, meant, near) => {
    const [says] = labels(typed);
    expect(says).toMatch(/^doubtful: /);
    expect(says).toContain(meant);
    expect(says).toContain(near);
  });

  it("at sea with nothing a slip away are doubted with what to check", () => {
    // The middle of the Pacific, by any atlas.
    expect(labels("0, -140")[0]).toMatch(/^doubtful: .*at sea.*latitude first.*south and west are negative/);
  });

  // Which country these lie in is plain from any atlas: Haarlem and Aberaeron, Toulouse and Biarritz, Bremerhaven and
  // Limerick's coast, central Turkey, north-western China and Nebraska.
  it.each([
    ["money that is paid a slip away", "52.24, 4.26", { currency: "GBP" }, "52.24, -4.26", "Wales"],
    ["money in dollars", "40.8, 96.7", { currency: "USD" }, "40.8, -96.7", "Nebraska"],
    ["the country of the place before", "43.32, 1.99", { near: siteIn("ES") }, "43.32, -1.99", "Spain"],
    [
      "that country, though the money is the same",
      "53.3, 8.9",
      { near: siteIn("IE"), currency: "EUR" },
      "53.3, -8.9",
      "Ireland",
    ],
  ])("on land are asked about where a slip away fits better: %s", (_what, typed, about, meant, near) => {
    const says = doubt(typed, about);
    expect(says).toContain(`Did you mean ${meant}, near `);
    expect(says).toContain(near);
    expect(says).toMatch(/^[^?]*change place[^?]*\?$/);
  });

  it.each([
    ["money that is paid there", "52.3, 4.8", { currency: "EUR" }],
    ["nothing a slip away", "52.52, 13.4", { currency: "GBP" }],
    ["money that is not known here", "52.3, 4.8", { currency: "XTS" }],
    ["the country of the place before, whatever the money", "52.3, 4.8", { near: siteIn("NL") }],
    [
      "money that is not paid where the place before was",
      "43.32, 1.99",
      { near: siteIn("GB"), currency: "EUR" },
    ],
  ])("on land are taken without a word: %s", (_what, typed, about) => {
    expect(doubt(typed, about)).toBeNull();
  });

  it("where the maps know no sun are taken with what will be needed", () => {
    // The middle of Greenland, and Alert on the north coast of Ellesmere Island (82.5 N).
    expect(doubt("72, -40")).toMatch(/ice: only sun figures of your own/);
    expect(doubt("82.5, -62.3")).toMatch(/only sun figures of your own/);
  });

  it("out of range are refused with the range", () => {
    expect(labels("91, 3")[0]).toMatch(/latitude, which lies between -90 and 90/);
  });
});

describe("the world handed to the design", () => {
  it("knows how far the clock is from the sun", () => {
    // Madrid keeps central European time (UTC+1) at 3.7 W: noon by the sun is 1 h and 15 min late, by arithmetic.
    expect(world.clockMinusSolarH({ latitudeDeg: 40.42, longitudeDeg: -3.7 })).toBeCloseTo(1 + 3.7 / 15, 6);
    // Nairobi keeps UTC+3 at 36.8 E.
    expect(world.clockMinusSolarH({ latitudeDeg: -1.29, longitudeDeg: 36.82 })).toBeCloseTo(
      3 - 36.82 / 15,
      6,
    );
    // Santiago changes its clocks in the southern summer: its standard time is UTC-4.
    expect(world.clockMinusSolarH({ latitudeDeg: -33.45, longitudeDeg: -70.67 })).toBeCloseTo(
      -4 + 70.67 / 15,
      6,
    );
  });

  it("credits every data set", () => {
    const text = attributions.join(" ");
    for (const name of [
      "GeoNames",
      "CC BY 4.0",
      "MERRA-2",
      "gsee-climate-data",
      "ITU-R P.1510",
      "P.837",
      "P.453",
      "P.1511",
      "POWER",
    ])
      expect(text).toContain(name);
  });
});
