import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dimension, findUnit, unitOf } from "../../../src/core/units/index.ts";

/** What people type, and the unit they mean: written by hand. */
const TYPED: readonly (readonly [string, Dimension, string])[] = [
  ["watts", "power", "W"],
  ["w", "power", "W"],
  ["FEET", "length", "ft"],
  ["'", "length", "ft"],
  ["’", "length", "ft"],
  ["Inches", "length", "in"],
  ['"', "length", "in"],
  ["″", "length", "in"],
  ["''", "length", "in"],
  ["meters", "length", "m"],
  ["metres", "length", "m"],
  ["KM", "length", "km"],
  ["ft.", "length", "ft"],
  ["m²", "area", "m2"],
  ["sq. ft", "area", "ft2"],
  ["sq ft", "area", "ft2"],
  ["hrs", "duration", "h"],
  ["D", "duration", "days"],
  ["°C", "temperature", "C"],
  ["° C", "temperature", "C"],
  ["℃", "temperature", "C"],
  ["degrees F", "temperature", "F"],
  ["°C", "temperatureDifference", "C deg"],
  ["k", "temperatureDifference", "K"],
  ["°", "angle", "deg"],
  ["fist", "angle", "fists"],
  ["per cent", "share", "%"],
  ["kph", "speed", "km/h"],
  ["miles per hour", "speed", "mph"],
  ["metres / second", "speed", "m/s"],
  ["amp hours", "charge", "Ah"],
  ["AH", "charge", "Ah"],
  ["MAH", "charge", "mAh"],
  ["KWH", "energy", "kWh"],
  ["kWh/m²/day", "irradiation", "kWh/m2 a day"],
  ["kWh/m2 per day", "irradiation", "kWh/m2 a day"],
  ["kwh / m2 / d", "irradiation", "kWh/m2 a day"],
  ["mbps", "bitrate", "Mbit/s"],
  ["Kbps", "bitrate", "kbit/s"],
  ["MBps", "bitrate", "MB/s"],
  ["fps", "frameRate", "frames/s"],
  ["mhz", "frequency", "MHz"],
  ["db", "gain", "dBi"],
  ["dB", "level", "dBm"],
  ["%/°C", "temperatureCoefficient", "%/K"],
  ["lbs", "mass", "lb"],
];

describe("the unit a typed word names", () => {
  it.each(TYPED)("%s as %s is %s", (typed, dimension, symbol) => {
    expect(findUnit(typed, dimension)?.symbol).toBe(symbol);
  });

  it("forgives letter case only where one unit can be meant", () => {
    expect(findUnit("MW")?.symbol).toBe("MW");
    expect(findUnit("mW")?.symbol).toBe("mW");
    expect(findUnit("mw", "power")).toBeUndefined();
    expect(findUnit("Mw", "power")).toBeUndefined();
    expect(findUnit("mb/s", "bitrate")).toBeUndefined();
  });

  it("takes the most usual meaning where no dimension is given", () => {
    expect(findUnit("C")?.dimension).toBe("temperature");
    expect(findUnit("m")?.dimension).toBe("length");
    expect(findUnit("degrees")?.dimension).toBe("angle");
    expect(findUnit("kWh")?.dimension).toBe("energy");
  });

  it("knows nothing of what is no unit", () => {
    for (const text of ["fx", "bananas", "", " ", "5", "toString", "__proto__", "constructor"]) {
      expect(findUnit(text), text).toBeUndefined();
    }
    expect(findUnit("V", "length")).toBeUndefined();
    expect(findUnit("", "length")).toBeUndefined();
  });

  it("takes an empty text for a bare count, where a count is asked for", () => {
    expect(findUnit("", "count")?.symbol).toBe("");
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        findUnit(text);
        findUnit(text, "length");
      }),
    );
  });

  it("throws for a symbol of ours that is not in the table", () => {
    expect(() => unitOf("furlongs")).toThrow('no unit "furlongs"');
  });
});
