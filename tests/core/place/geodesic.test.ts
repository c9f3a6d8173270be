import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { bearingAndDistance, timeZoneAt } from "../../../src/core/place/index.ts";
import { near } from "../../helpers/near.ts";

const dms = (sign: 1 | -1, degrees: number, minutes: number, seconds: number): number =>
  sign * (degrees + minutes / 60 + seconds / 3600);

describe("bearingAndDistance", () => {
  // The worked line of the Geocentric Datum of Australia technical manual (from memory): on GRS 80, which differs from
  // WGS 84 by less than a tenth of a millimetre here.
  it("is 54972.271 m at 306 52 05.37 from Flinders Peak to Buninyong", () => {
    const found = bearingAndDistance({
      fromLatitudeDeg: dms(-1, 37, 57, 3.7203),
      fromLongitudeDeg: dms(1, 144, 25, 29.5244),
      toLatitudeDeg: dms(-1, 37, 39, 10.1561),
      toLongitudeDeg: dms(1, 143, 55, 35.3839),
    });
    near(found.distanceM, 54972.271, { within: 0.0006 });
    near(found.bearingDeg, dms(1, 306, 52, 5.37), { within: 0.005 / 3600 });
  });

  // GeographicLib's documentation of the inverse problem, Wellington to Salamanca (from memory): 19959.679 km.
  it("is 19959.679 km from Wellington to Salamanca, nearly the other end of the earth", () => {
    const found = bearingAndDistance({
      fromLatitudeDeg: -41.32,
      fromLongitudeDeg: 174.81,
      toLatitudeDeg: 40.96,
      toLongitudeDeg: -5.5,
    });
    near(found.distanceM, 19959679, { within: 0.5 });
    near(found.bearingDeg, 161.0677, { within: 0.0001 });
  });

  it("is the quarter meridian of WGS 84 from the equator to the pole: 10001965.729 m (published constant, from memory)", () => {
    const found = bearingAndDistance({
      fromLatitudeDeg: 0,
      fromLongitudeDeg: 12,
      toLatitudeDeg: 90,
      toLongitudeDeg: 12,
    });
    near(found.distanceM, 10001965.729, { within: 0.001 });
    expect(found.bearingDeg).toBe(0);
  });

  it("counts clockwise from north, and crosses the date line the short way", () => {
    const from = { fromLatitudeDeg: 0, fromLongitudeDeg: 179.9 };
    near(bearingAndDistance({ ...from, toLatitudeDeg: 0, toLongitudeDeg: -179.9 }).bearingDeg, 90, {
      within: 1e-9,
    });
    near(
      bearingAndDistance({ ...from, toLatitudeDeg: 0, toLongitudeDeg: -179.9 }).distanceM,
      0.2 * 111319.4908,
      { within: 0.01 },
    );
    near(bearingAndDistance({ ...from, toLatitudeDeg: 0, toLongitudeDeg: 179 }).bearingDeg, 270, {
      within: 1e-9,
    });
  });

  it("is 0 and 0 for a point and itself", () => {
    const spot = { fromLatitudeDeg: 52.4, fromLongitudeDeg: 180, toLatitudeDeg: 52.4, toLongitudeDeg: -180 };
    expect(bearingAndDistance(spot)).toEqual({ distanceM: 0, bearingDeg: 0 });
  });

  it("is as long there as back, with bearings in 0 to 360, for any two points", () => {
    const lat = fc.double({ min: -90, max: 90, noNaN: true });
    const lon = fc.double({ min: -180, max: 180, noNaN: true });
    fc.assert(
      fc.property(lat, lon, lat, lon, (a, b, c, d) => {
        const there = bearingAndDistance({
          fromLatitudeDeg: a,
          fromLongitudeDeg: b,
          toLatitudeDeg: c,
          toLongitudeDeg: d,
        });
        const back = bearingAndDistance({
          fromLatitudeDeg: c,
          fromLongitudeDeg: d,
          toLatitudeDeg: a,
          toLongitudeDeg: b,
        });
        return (
          Math.abs(there.distanceM - back.distanceM) < 1e-3 &&
          there.distanceM <= 20003932 &&
          there.bearingDeg >= 0 &&
          there.bearingDeg < 360
        );
      }),
    );
  });

  it("throws RangeFault for what is no place on earth", () => {
    const spot = { fromLatitudeDeg: 0, fromLongitudeDeg: 0, toLatitudeDeg: 0, toLongitudeDeg: 0 };
    for (const name of Object.keys(spot)) {
      expect(() => bearingAndDistance({ ...spot, [name]: 181 })).toThrow(RangeFault);
      expect(() => bearingAndDistance({ ...spot, [name]: Number.NaN })).toThrow(RangeFault);
    }
  });
});

describe("timeZoneAt", () => {
  // The zones' names are IANA's; which place keeps which is common knowledge.
  it.each([
    [52.449, -3.541, "Europe/London"],
    [39.74, -104.99, "America/Denver"],
    [33.45, -112.07, "America/Phoenix"],
    [27.7, 85.32, "Asia/Kathmandu"],
    [-33.87, 151.21, "Australia/Sydney"],
  ])("at %f, %f is %s", (latitudeDeg, longitudeDeg, zone) => {
    expect(timeZoneAt({ latitudeDeg, longitudeDeg })).toBe(zone);
  });

  it("names a zone everywhere, at sea too", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (latitudeDeg, longitudeDeg) =>
          /^[A-Z][\w+-]+\/[\w/+-]+$/.test(timeZoneAt({ latitudeDeg, longitudeDeg })),
      ),
    );
  });

  it("throws RangeFault for what is no place on earth", () => {
    expect(() => timeZoneAt({ latitudeDeg: 90.1, longitudeDeg: 0 })).toThrow(RangeFault);
    expect(() => timeZoneAt({ latitudeDeg: 0, longitudeDeg: Number.NaN })).toThrow(RangeFault);
  });
});
