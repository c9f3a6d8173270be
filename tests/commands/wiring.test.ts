import { describe, expect, it } from "vitest";
import { attributions, interview, world } from "../../src/commands/wiring.ts";

const labels = (text: string) => {
  const read = interview.readPlace(text, null);
  return read.kind === "sites" ? read.matches.map(({ label }) => label) : [`refused: ${read.says}`];
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
    const near = {
      label: "x",
      latitudeDeg: 51.588,
      longitudeDeg: -2.998,
      elevationM: null,
      countryCode: "GB",
    };
    const read = interview.readPlace("Newport", near);
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
    const read = interview.readPlace("52.30, -3.51", null);
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
    expect(says).toContain(meant);
    expect(says).toContain(near);
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
