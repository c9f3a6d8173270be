import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packHours, unpackHours } from "../../../src/core/weather/index.ts";
import { near } from "../../helpers/near.ts";

const HOURS = 8760;
const yearOf = (value: (hour: number) => number): Float64Array =>
  Float64Array.from({ length: HOURS }, (_, hour) => value(hour));

describe("a year's hours as a text", () => {
  it("come back to half a watt and a twentieth of a degree", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -90, max: 60, noNaN: true }),
        (ghi, share, temp) => {
          const hours = {
            ghiWPerM2: yearOf((hour) => (ghi * (hour % 24)) / 23),
            dhiWPerM2: yearOf((hour) => (share * ghi * (hour % 24)) / 23),
            tempC: yearOf((hour) => temp * (hour / HOURS)),
          };
          const back = unpackHours(packHours(hours));
          for (const hour of [0, 11, 23, 4000, HOURS - 1]) {
            near(back.ghiWPerM2[hour]!, hours.ghiWPerM2[hour]!, { within: 0.5 });
            near(back.dhiWPerM2![hour]!, hours.dhiWPerM2[hour]!, { within: 0.5 });
            near(back.tempC[hour]!, hours.tempC[hour]!, { within: 0.0501 });
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  // RFC 4648 section 10 and by hand: the bytes 01 00 02 are the text "AQAC"
  it("is base64 of 16-bit values, low byte first", () => {
    const flat = yearOf(() => 0);
    const packed = packHours({ ghiWPerM2: yearOf((hour) => hour % 3), dhiWPerM2: flat, tempC: flat });
    expect(packed).toHaveLength((HOURS * 6 * 4) / 3);
    // values 0 1 2 0 are the bytes 00 00 01 00 02 00 00 00 .. which base64 parts as AAAB AAIA AA..
    expect(packed.startsWith("AAABAAIA")).toBe(true);
  });

  it("says by itself that there was no diffuse light", () => {
    const flat = yearOf(() => 1);
    expect(unpackHours(packHours({ ghiWPerM2: flat, dhiWPerM2: null, tempC: flat })).dhiWPerM2).toBeNull();
    const dark = yearOf(() => 0);
    expect(
      unpackHours(packHours({ ghiWPerM2: dark, dhiWPerM2: dark, tempC: flat })).dhiWPerM2,
    ).not.toBeNull();
  });

  it("refuses a year that is none, and holds what it never wrote to its range", () => {
    const flat = yearOf(() => 1);
    const good = packHours({ ghiWPerM2: flat, dhiWPerM2: null, tempC: flat });
    expect(() => packHours({ ghiWPerM2: flat.slice(1), dhiWPerM2: null, tempC: flat })).toThrow(/hours/);
    expect(() => packHours({ ghiWPerM2: flat, dhiWPerM2: null, tempC: yearOf(() => 70) })).toThrow(/tempC/);
    expect(() => unpackHours(good.slice(4))).toThrow(/packed/);
    const { ghiWPerM2, tempC } = unpackHours(`${"/3//f/9/".repeat(good.length / 8)}`);
    expect(Math.max(...ghiWPerM2)).toBeLessThanOrEqual(2000);
    expect(Math.min(...ghiWPerM2)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...tempC)).toBeLessThanOrEqual(60);
  });
});
