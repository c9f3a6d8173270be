/**
 * Whole posts against what field engineers build. The embedded climate is real here, so the figures move a little when its
 * grids are made anew: bounds, not digits.
 *
 * @source UNAVCO knowledge base article 190, "Remote Station Power Analysis (2007)", sealed lead-acid for 5 W all year at 12 V:
 *         at 60 N 170 W with 900 Ah, 255 W with 700 Ah, 340 W with 500 Ah; at 70 N 170 W with 1500 Ah, 255 W with 1400 Ah.
 *         Printed values; the 12 V is that group's practice and does not stand beside the table.
 * @source UNAVCO "power and enclosures": stations of 4 to 24 W in Alaska and the Pacific Northwest run on 24 to 30 batteries and
 *         3 to 6 panels (of about 100 Ah and 85 W, from memory), others on 2 to 16 batteries
 */
import { readFileSync } from "node:fs";
import { brotliDecompressSync } from "node:zlib";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { climateAt, climateOfOwn, openClimate } from "../../../src/core/climate/index.ts";
import type { Brief, Site } from "../../../src/design/brief.ts";
import { type Design, designOf, type World } from "../../../src/design/index.ts";
import { at, changed, given, radio, sites, typicalBrief } from "../../design/fixtures.ts";

const grids = openClimate(
  brotliDecompressSync(readFileSync(new URL("../../../src/core/climate/data/climate.bin", import.meta.url))),
);
const world: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids, latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg }, own) => climateOfOwn({ grids, longitudeDeg, own }),
  clockMinusSolarH: () => 0,
  simulation: null,
};

/** 4.41 W / 0.98 + 0.5 W of controller = 5.0 W at the battery, straight from a 12 V bank, day and night. */
const fiveWatts = changed({
  loads: { devices: [{ ...radio, dayW: given(4.41), feed: "dc" }] },
  parts: { radio: given({ feed: "dc", minInputV: 9, maxInputV: 32 }) },
  power: { chemistry: given("agm"), bankV: given(12) },
});
const post = (brief: Brief, site: Site): Design => designOf(at(site, brief), world);

describe("a 5 W station", () => {
  it("at 60 N lies on the table's line: each 85 W more saves 200 Ah", () => {
    for (const longitudeDeg of [25, 11, -150]) {
      const { array, battery } = post(fiveWatts, { ...sites.north60, longitudeDeg });
      const onTheLineAh = 900 - (200 * (array!.requiredW - 170)) / 85;
      expect(battery!.bankV).toBe(12);
      expect(battery!.requiredAh).toBeGreaterThan(Math.max(onTheLineAh, 150) / 1.6);
      expect(battery!.requiredAh).toBeLessThan(900);
      expect(array!.requiredW).toBeGreaterThan(120);
      expect(array!.requiredW).toBeLessThan(1000);
    }
  });
  it("at 71 N needs months of storage, not days, and is told not to be bought", () => {
    const { battery, array, findings } = post(fiveWatts, sites.north71);
    expect(battery!.autonomyDays).toBeGreaterThan(100);
    expect(battery!.requiredAh).toBeGreaterThan(1400);
    expect(battery!.requiredAh).toBeLessThan(4000);
    expect(array!.requiredW).toBeLessThan(340);
    expect(findings.find(({ id }) => id === "sun.dark")!.severity).toBe("stop");
  });
});

describe("a post of one camera and one radio (about 20 W at the battery)", () => {
  /** Batteries of 100 Ah at 12 V that the bank is worth, and panels of 85 W. */
  const inStationParts = ({ battery, array }: Design) => ({
    batteries: (battery!.requiredAh * battery!.bankNominalV) / 1200,
    panels: array!.requiredW / 85,
  });
  const nuisance = changed({ autonomy: { consequence: given("nuisance") } });

  it("at 40 N is a worry of 5 to 10 batteries and 2 to 3 panels, a nuisance of 2 to 4", () => {
    for (const site of [sites.north40, sites.colorado]) {
      const worry = inStationParts(post(typicalBrief, site));
      const light = inStationParts(post(nuisance, site));
      expect(worry.batteries).toBeGreaterThan(4);
      expect(worry.batteries).toBeLessThan(10);
      expect(worry.panels).toBeGreaterThan(1.5);
      expect(worry.panels).toBeLessThan(3.5);
      expect(light.batteries).toBeGreaterThan(1.5);
      expect(light.batteries).toBeLessThan(4);
    }
  });
  it("at 60 N is of the largest station class: 10 to 30 batteries, and panels to match the darkest month", () => {
    const { batteries, panels } = inStationParts(post(typicalBrief, sites.north60));
    expect(batteries).toBeGreaterThan(10);
    expect(batteries).toBeLessThan(30);
    expect(panels).toBeGreaterThan(6);
    expect(panels).toBeLessThan(35);
  });
  it("at 5 S is small: lithium, one or two panels, 1 to 2 batteries for a nuisance", () => {
    const worry = post(typicalBrief, sites.south5);
    const light = inStationParts(post(nuisance, sites.south5));
    expect(worry.battery!.chemistry).toBe("lifepo4");
    expect(worry.array!.installedW).toBeLessThanOrEqual(250);
    expect(light.batteries).toBeGreaterThan(1);
    expect(light.batteries).toBeLessThan(2.5);
  });
});

describe("anywhere on the real grids", () => {
  it("a design comes of it, or it is said why not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (latitudeDeg, longitudeDeg) => {
          const { battery, withheld, findings } = post(typicalBrief, {
            label: "",
            latitudeDeg,
            longitudeDeg,
            elevationM: null,
            countryCode: null,
          });
          expect(battery === null).toBe(withheld.length > 0);
          expect(findings.some(({ id }) => id === "place.unknown")).toBe(battery === null);
        },
      ),
      { numRuns: 60 },
    );
  });
});
