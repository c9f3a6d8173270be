import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { coordinatesText, readCoordinates } from "../../../src/core/place/index.ts";
import { near } from "../../helpers/near.ts";

/** The same point in the notations people type: 52 24 10.8 N, 3 14 2.4 W, worked by hand. */
const SAME_POINT = [
  "52.403, -3.234",
  "52.403,-3.234",
  "52.403 -3.234",
  "52.403; -3.234",
  "  52.403 ,  -3.234  ",
  "52.403, −3.234",
  "(52.403, -3.234)",
  "52.403N 3.234W",
  "52.403 N, 3.234 W",
  "52.403° N, 3.234° W",
  "52.403°, -3.234°",
  "N52.403 W3.234",
  "n 52.403, w 3.234",
  "52.403N, 3.234W.",
  "3.234W 52.403N",
  "W 3.234 N 52.403",
  "52.403 north, 3.234 west",
  "52.403 degrees north, 3.234 degrees west",
  "lat 52.403 lon -3.234",
  "latitude: 52.403, longitude: -3.234",
  "Lat: 52.403 Lng: -3.234",
  "52.403N3.234W",
  "+52.403-003.234/",
  "N52 24.18 W3 14.04",
  "N 52° 24.18' W 3° 14.04'",
  "52° 24.18′ N, 3° 14.04′ W",
  "52 24.18, -3 14.04",
  "52 24 10.8 N, 3 14 2.4 W",
  "52 24 10.8, -3 14 2.4",
  `52°24'10.8"N 3°14'2.4"W`,
  "52°24′10.8″N, 3°14′2.4″W",
  "52°24’10.8”N 3°14’2.4”W",
  "52º24'10.8''N 3º14'2.4''W",
  `N52°24'10.8" W3°14'2.4"`,
  `52° 24' 10.8" -3° 14' 2.4"`,
  "52-24-10.8N 003-14-2.4W",
  "geo:52.403,-3.234",
  "geo:52.403,-3.234;u=35",
  "geo:52.403,-3.234,214;crs=wgs84;u=35",
  "GEO:52.403,-3.234?z=12",
  "52,403; -3,234",
  "52,403 -3,234",
  "52,403, -3,234",
  "52,403° N 3,234° W",
  "52,403 N 3,234 W",
  "52° 24,18' N; 3° 14,04' W",
];

describe("readCoordinates", () => {
  for (const text of SAME_POINT) {
    it(`reads ${text}`, () => {
      const read = readCoordinates(text);
      if (read.kind !== "coordinates") throw new Error(JSON.stringify(read));
      near(read.latitudeDeg, 52.403, { within: 1e-9 });
      near(read.longitudeDeg, -3.234, { within: 1e-9 });
    });
  }

  it("reads the southern and eastern half too", () => {
    expect(readCoordinates("33.86 S 151.2 E")).toEqual({
      kind: "coordinates",
      latitudeDeg: -33.86,
      longitudeDeg: 151.2,
    });
    expect(readCoordinates("-33.86,+151.2")).toEqual({
      kind: "coordinates",
      latitudeDeg: -33.86,
      longitudeDeg: 151.2,
    });
  });

  it("keeps the sign of an angle whose degrees are nought", () => {
    expect(readCoordinates("-0 30 0, -0 15 0")).toEqual({
      kind: "coordinates",
      latitudeDeg: -0.5,
      longitudeDeg: -0.25,
    });
    expect(readCoordinates("0 0")).toEqual({ kind: "coordinates", latitudeDeg: 0, longitudeDeg: 0 });
  });

  it("takes a comma alone between two whole numbers for what divides a pair", () => {
    expect(readCoordinates("52,40")).toEqual({ kind: "coordinates", latitudeDeg: 52, longitudeDeg: 40 });
  });

  it("reads both ends of the ranges, and nothing beyond", () => {
    expect(readCoordinates("90, 180").kind).toBe("coordinates");
    expect(readCoordinates("-90, -180").kind).toBe("coordinates");
    expect(readCoordinates("90.001, 0")).toEqual({
      kind: "bad-coordinates",
      why: "latitude-range",
      got: 90.001,
    });
    expect(readCoordinates("-91, 0")).toEqual({ kind: "bad-coordinates", why: "latitude-range", got: -91 });
    expect(readCoordinates("0, 180.5")).toEqual({
      kind: "bad-coordinates",
      why: "longitude-range",
      got: 180.5,
    });
    expect(readCoordinates("geo:10,190")).toEqual({
      kind: "bad-coordinates",
      why: "longitude-range",
      got: 190,
    });
  });

  it.each([
    ["52 60 0 N 3 0 0 W", "minutes-range", 60],
    ["52 30 75 N 3 0 0 W", "seconds-range", 75],
    ["52.5 30 N 3 0 W", "fraction-not-last", 52.5],
    ["-52.4N 3.2W", "sign-and-letter", "N"],
    ["52.4N -3.2W", "sign-and-letter", "W"],
    ["52.4N 51.2N", "two-latitudes", "52.4N 51.2N"],
    ["3.2W 2.9E", "two-longitudes", "3.2W 2.9E"],
    ["52.4N", "one-angle-only", "52.4N"],
    ["geo:52.4,-3.2;crs=nad27", "other-reference-system", "nad27"],
  ] as const)("says why %s cannot be: %s", (text, why, got) => {
    expect(readCoordinates(text)).toEqual({ kind: "bad-coordinates", why, got });
  });

  it.each([
    "",
    "   ",
    "Llanidloes",
    "Paris, TX",
    "12 Main Street",
    "52.4",
    "S",
    "West",
    "Newport 3",
    "48.2, 16.37 Wien",
    "1 2 3",
    "1.2.3, 4",
    "geo:",
    "geo:here",
    "'",
    "°",
    "- -",
  ])("lets %j pass as something else", (text) => {
    expect(readCoordinates(text)).toEqual({ kind: "not-coordinates" });
  });

  it("answers any text at all, and never with a number that is none", () => {
    const scraps = fc.constantFrom(
      "52",
      "-3",
      ".",
      ",",
      ";",
      " ",
      "°",
      "'",
      '"',
      "N",
      "S",
      "E",
      "W",
      "geo:",
      "lat",
      "x",
      "-",
      "7.5",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(scraps, { maxLength: 14 }).map((parts) => parts.join("")),
        ),
        (text) => {
          const read = readCoordinates(text);
          if (read.kind !== "coordinates") return true;
          return Math.abs(read.latitudeDeg) <= 90 && Math.abs(read.longitudeDeg) <= 180;
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe("coordinatesText", () => {
  const latitude = fc.double({ min: -90, max: 90, noNaN: true });
  const longitude = fc.double({ min: -180, max: 180, noNaN: true });

  it("is read back to the fifth place", () => {
    fc.assert(
      fc.property(latitude, longitude, (latitudeDeg, longitudeDeg) => {
        const read = readCoordinates(coordinatesText({ latitudeDeg, longitudeDeg }));
        return (
          read.kind === "coordinates" &&
          Math.abs(read.latitudeDeg - latitudeDeg) <= 0.5000001e-5 &&
          Math.abs(read.longitudeDeg - longitudeDeg) <= 0.5000001e-5
        );
      }),
    );
  });

  it("is read back from degrees, minutes and seconds as well", () => {
    const parts = (deg: number): string => {
      const tenths = Math.round(Math.abs(deg) * 36000);
      return `${Math.floor(tenths / 36000)}°${Math.floor((tenths % 36000) / 600)}'${((tenths % 600) / 10).toFixed(1)}"`;
    };
    fc.assert(
      fc.property(latitude, longitude, (latitudeDeg, longitudeDeg) => {
        const text = `${parts(latitudeDeg)}${latitudeDeg < 0 ? "S" : "N"} ${parts(longitudeDeg)}${longitudeDeg < 0 ? "W" : "E"}`;
        const read = readCoordinates(text);
        return (
          read.kind === "coordinates" &&
          Math.abs(read.latitudeDeg - latitudeDeg) < 2e-5 &&
          Math.abs(read.longitudeDeg - longitudeDeg) < 2e-5
        );
      }),
    );
  });

  it("writes no minus before nought", () => {
    expect(coordinatesText({ latitudeDeg: -0.000001, longitudeDeg: -3.2339 })).toBe("0.00000, -3.23390");
  });

  it("throws RangeFault beyond the earth", () => {
    expect(() => coordinatesText({ latitudeDeg: 91, longitudeDeg: 0 })).toThrow(RangeFault);
    expect(() => coordinatesText({ latitudeDeg: 0, longitudeDeg: Number.NaN })).toThrow(RangeFault);
  });
});
