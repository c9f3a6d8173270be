import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { folded } from "../../../src/core/place/fold.ts";
import {
  bearingAndDistance,
  countryName,
  findPlaces,
  nearestPlace,
  openPlaces,
} from "../../../src/core/place/index.ts";
import { ownFoldedName, placeInRow } from "../../../src/core/place/place.ts";
import { near } from "../../helpers/near.ts";
import { index, placeBytes } from "./gazetteer.ts";

const first = (text: string): string => {
  const [place] = findPlaces({ index, text, atMost: 1 });
  return place === undefined
    ? "nothing"
    : `${place.name}, ${place.region}, ${place.countryCode} (${place.match})`;
};

// Names, regions and coordinates below are GeoNames' own entries or common knowledge.
describe("findPlaces", () => {
  it.each([
    ["Llanidloes", "Llanidloes, Wales, GB (exact)"],
    ["LLANIDLOES", "Llanidloes, Wales, GB (exact)"],
    ["Llanidlos", "Llanidloes, Wales, GB (near-miss)"],
    ["llandiloes", "Llanidloes, Wales, GB (near-miss)"],
    ["aberystw", "Aberystwyth, Wales, GB (prefix)"],
    ["Zürich", "Zürich, Zurich, CH (exact)"],
    ["zurich", "Zürich, Zurich, CH (exact)"],
    ["München", "Munich, Bavaria, DE (exact)"],
    ["Wien", "Vienna, Vienna, AT (exact)"],
    ["Łódź", "Łódź, Łódź Voivodeship, PL (exact)"],
    ["Tromso", "Tromsø, Troms og Finnmark, NO (exact)"],
    ["Paris", "Paris, Île-de-France, FR (exact)"],
    ["Paris, Texas", "Paris, Texas, US (exact)"],
    ["Paris, TX", "Paris, Texas, US (exact)"],
    ["paris texas", "Paris, Texas, US (exact)"],
    ["Portland, Oregon, USA", "Portland, Oregon, US (exact)"],
    ["portland maine", "Portland, Maine, US (exact)"],
    ["Springfield, IL", "Springfield, Illinois, US (exact)"],
    ["Edmonton, AB", "Edmonton, Alberta, CA (exact)"],
    ["Newcastle, Australia", "Newcastle, New South Wales, AU (exact)"],
    ["St. Ives, UK", "St Ives, England, GB (exact)"],
    ["Saint Louis, Missouri", "St. Louis, Missouri, US (exact)"],
    ["Tremp, ES", "Tremp, Catalonia, ES (exact)"],
    ["  Tremp ,, ES ", "Tremp, Catalonia, ES (exact)"],
  ])("finds for %j first %s", (text, expected) => {
    expect(first(text)).toBe(expected);
  });

  it("puts the very name before longer ones, and the larger place first among equals", () => {
    const found = findPlaces({ index, text: "Springfield", atMost: 40 });
    const ranks = found.map(({ match }) => ["exact", "prefix", "near-miss"].indexOf(match));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(found.map(({ match }) => match)).size).toBeGreaterThan(1);
    for (const match of ["exact", "prefix"]) {
      const sizes = found.filter((place) => place.match === match).map(({ population }) => population);
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    }
  });

  it("prefers places near the builder when told where that is", () => {
    const near = { latitudeDeg: 44.05, longitudeDeg: -123.02 };
    expect(findPlaces({ index, text: "Springfield", near, atMost: 1 })[0]!.region).toBe("Oregon");
  });

  it("returns no more than asked, nothing for nothing, and nothing for nonsense", () => {
    expect(findPlaces({ index, text: "san", atMost: 5 }).length).toBe(5);
    for (const text of ["", "   ", ",", ", France", "qqqqxx", "東京", "🙂", "\n", "|", "|munich"]) {
      const found = findPlaces({ index, text, atMost: 3 });
      if (text === "|munich") expect(found[0]!.name).toBe("Munich");
      else expect(found, text).toEqual([]);
    }
  });

  it("for every letter typed keeps to the text as it stands: no slips, no region without a comma", () => {
    const asTyped = (text: string) =>
      findPlaces({ index, text, atMost: 3, isForgiving: false }).map(
        ({ name, match }) => `${name} (${match})`,
      );
    expect(asTyped("rhay")).toEqual(["Rhayader (prefix)"]);
    expect(asTyped("Llanidlos")).toEqual([]);
    expect(asTyped("paris texas")).toEqual([]);
    expect(asTyped("paris, tex")).toEqual(["Paris (exact)"]);
    fc.assert(
      fc.property(
        fc.constantFrom(..."Newport Rhayader Llanidloes Springfield Tremp".split(" ")),
        fc.nat(9),
        (name, end) => {
          const text = name.slice(0, 3 + end);
          const forgiving = findPlaces({ index, text, atMost: 100 }).filter(
            ({ match }) => match !== "near-miss",
          );
          expect(findPlaces({ index, text, atMost: 100, isForgiving: false })).toEqual(forgiving);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("does not take a word that may be written short for every name that begins with its short form", () => {
    for (const { name } of findPlaces({ index, text: "saint", atMost: 20 }))
      expect(name).toMatch(/^(saint|sankt|st\b)/i);
  });

  it("knows a place's whole entry", () => {
    const [place] = findPlaces({ index, text: "Denver, Colorado", atMost: 1 });
    expect(place).toMatchObject({ name: "Denver", region: "Colorado", countryCode: "US", match: "exact" });
    near(place!.latitudeDeg, 39.739, { within: 0.001 });
    near(place!.longitudeDeg, -104.985, { within: 0.001 });
    near(place!.elevationM!, 1609, { within: 10 });
    near(place!.population, 690000, { within: 40000 });
  });

  it("says so when an elevation is not known", () => {
    const [tromso] = findPlaces({ index, text: "Tromsø", atMost: 1 });
    expect(tromso!.elevationM).toBeUndefined();
  });

  it("answers any text with places that are whole", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (text) => {
        for (const place of findPlaces({ index, text, atMost: 3 })) {
          expect(place.name).not.toBe("");
          expect(place.countryCode).toMatch(/^[A-Z]{2}$/);
          expect(Math.abs(place.latitudeDeg)).toBeLessThanOrEqual(90);
          expect(Math.abs(place.longitudeDeg)).toBeLessThanOrEqual(180);
          expect(Number.isFinite(place.population)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("the gazetteer", () => {
  it("has every place of a thousand people or more, in order and within the earth", () => {
    expect(index.count).toBeGreaterThan(160000);
    let elevations = 0;
    for (let row = 0; row < index.count; row++) {
      const place = placeInRow(index, row);
      if (Math.abs(place.latitudeDeg) > 90 || Math.abs(place.longitudeDeg) > 180 || place.name === "")
        throw new Error(`row ${row}`);
      if (place.elevationM !== undefined) elevations++;
      if (place.elevationM !== undefined && (place.elevationM < -450 || place.elevationM > 5700))
        throw new Error(`row ${row} at ${place.elevationM}`);
    }
    expect(elevations / index.count).toBeGreaterThan(0.998);
  });

  it("folds names as the program does, but for a dozen that it has in other scripts", () => {
    let different = 0;
    for (let row = 0; row < index.count; row++) {
      if (folded(placeInRow(index, row).name) !== ownFoldedName(index, row)) different++;
    }
    expect(different).toBeLessThan(20);
  });

  it("says what is wrong with bytes that are no such file", () => {
    expect(() => openPlaces(new Uint8Array(100))).toThrow(/do not begin/);
    expect(() => openPlaces(placeBytes.subarray(0, placeBytes.length - 10))).toThrow(/lack the part/);
  });
});

describe("nearestPlace", () => {
  it("is the place itself from its middle, and a place across the date line from beside it", () => {
    const home = nearestPlace({ index, latitudeDeg: 52.449, longitudeDeg: -3.541 });
    expect(home.place.name).toBe("Llanidloes");
    expect(home.distanceKm).toBeLessThan(1);
    expect(nearestPlace({ index, latitudeDeg: -17, longitudeDeg: -179.99 }).place.countryCode).toBe("FJ");
    expect(nearestPlace({ index, latitudeDeg: 90, longitudeDeg: 0 }).distanceKm).toBeGreaterThan(500);
  });

  it("is nearer than any of a thousand others", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 75, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.integer({ min: 0, max: 160 }),
        (latitudeDeg, longitudeDeg, start) => {
          const { distanceKm } = nearestPlace({ index, latitudeDeg, longitudeDeg });
          for (let row = start; row < index.count; row += 163) {
            const { distanceM } = bearingAndDistance({
              fromLatitudeDeg: latitudeDeg,
              fromLongitudeDeg: longitudeDeg,
              toLatitudeDeg: index.latitudeThousandths[row]! / 1000,
              toLongitudeDeg: index.longitudeThousandths[row]! / 1000,
            });
            // The choice is made on a sphere: up to half a per cent between two rivals.
            if (distanceM / 1000 < distanceKm * 0.994) return false;
          }
          return true;
        },
      ),
      { numRuns: 25 },
    );
  });

  it("throws RangeFault for what is no place on earth", () => {
    expect(() => nearestPlace({ index, latitudeDeg: Number.NaN, longitudeDeg: 0 })).toThrow(RangeFault);
    expect(() => nearestPlace({ index, latitudeDeg: 0, longitudeDeg: 181 })).toThrow(RangeFault);
  });
});

describe("countryName", () => {
  it("names countries in English and nothing for what is no code", () => {
    expect(countryName("GB")).toBe("United Kingdom");
    expect(countryName("CH")).toBe("Switzerland");
    expect(countryName("")).toBe("");
    expect(countryName("england")).toBe("");
  });
});
