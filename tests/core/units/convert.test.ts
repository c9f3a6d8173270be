import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, type Dimension, unitsOf } from "../../../src/core/units/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

/**
 * One of `from` in `to`. Printed by pint 0.25.3 (its own unit definitions), except where said otherwise.
 * NIST: printed in NIST SP 811 (2008), appendix B.8, given there as exact, from memory.
 */
const FACTORS: readonly (readonly [string, string, number, string])[] = [
  ["in", "m", 0.0254, "pint 0.25.3; NIST"],
  ["ft", "m", 0.3048, "pint 0.25.3; NIST"],
  ["yd", "m", 0.9144, "pint 0.25.3; NIST"],
  ["mi", "m", 1609.344, "pint 0.25.3; NIST"],
  ["km", "m", 1000, "SI prefix"],
  ["cm", "m", 0.01, "SI prefix"],
  ["mm", "m", 0.001, "SI prefix"],
  ["steps", "m", 0.75, "common practice, no source"],
  ["ft2", "m2", 0.09290304, "pint 0.25.3; NIST"],
  ["in2", "m2", 0.00064516, "pint 0.25.3; NIST"],
  ["mm2", "m2", 1e-6, "SI prefix squared"],
  ["cm2", "m2", 1e-4, "SI prefix squared"],
  ["fists", "deg", 10, "common practice, no source"],
  ["km/h", "m/s", 0.2777777777777778, "pint 0.25.3"],
  ["mph", "m/s", 0.44704, "pint 0.25.3; NIST"],
  ["kn", "m/s", 0.5144444444444445, "pint 0.25.3"],
  ["mW", "W", 0.001, "SI prefix"],
  ["kW", "W", 1000, "SI prefix"],
  ["MW", "W", 1e6, "SI prefix"],
  ["kWh", "Wh", 1000, "SI prefix"],
  ["MJ", "Wh", 277.77777777777777, "pint 0.25.3"],
  ["mAh", "Ah", 0.001, "SI prefix"],
  ["mV", "V", 0.001, "SI prefix"],
  ["kV", "V", 1000, "SI prefix"],
  ["mA", "A", 0.001, "SI prefix"],
  ["kHz", "Hz", 1e3, "SI prefix"],
  ["MHz", "Hz", 1e6, "SI prefix"],
  ["GHz", "Hz", 1e9, "SI prefix"],
  ["Gbit/s", "Mbit/s", 1e3, "SI prefix"],
  ["kbit/s", "Mbit/s", 1e-3, "SI prefix"],
  ["MB/s", "Mbit/s", 8, "pint 0.25.3: 8000000 bit/s"],
  ["kB/s", "kbit/s", 8, "pint 0.25.3: 8000 bit/s"],
  ["frames/min", "frames/s", 1 / 60, "worked by hand"],
  ["s", "h", 1 / 3600, "BIPM SI Brochure, from memory"],
  ["min", "h", 1 / 60, "BIPM SI Brochure, from memory"],
  ["days", "h", 24, "BIPM SI Brochure, from memory"],
  ["weeks", "s", 604800, "scipy.constants 1.17.1 week"],
  ["fortnights", "weeks", 2, "definition of the word"],
  ["years", "s", 31536000, "scipy.constants 1.17.1 year; NIST"],
  ["months", "days", 30.416666666666668, "365/12 worked by hand"],
  ["g", "kg", 0.001, "SI prefix"],
  ["lb", "kg", 0.45359237, "pint 0.25.3; NIST"],
  ["oz", "kg", 0.028349523125, "pint 0.25.3; NIST"],
  ["hPa", "Pa", 100, "SI prefix"],
  ["kPa", "Pa", 1e3, "SI prefix"],
  ["MPa", "Pa", 1e6, "SI prefix"],
  ["bar", "Pa", 1e5, "pint 0.25.3; NIST"],
  ["psi", "Pa", 6894.7572931683635, "pint 0.25.3; NIST prints 6.894757 E+03"],
  ["psf", "Pa", 47.88025898033586, "pint 0.25.3; NIST prints 4.788026 E+01"],
  ["C deg", "K", 1, "BIPM SI Brochure, from memory"],
  ["F deg", "K", 0.5555555555555556, "pint 0.25.3; NIST"],
  ["MJ/m2 a day", "kWh/m2 a day", 0.2777777777777778, "pint 0.25.3"],
  ["Wh/m2 a day", "kWh/m2 a day", 0.001, "SI prefix"],
  ["kWh/m2 a month", "kWh/m2 a day", 0.03287671232876712, "12/365 worked by hand"],
  ["%", "of 1", 0.01, "definition"],
];

/** Scales whose zeros differ: value and unit, the same in another. */
const SCALES: readonly (readonly [number, string, number, string, string])[] = [
  [-40, "F", -40, "C", "pint 0.25.3 (-39.99999999999997)"],
  [68, "F", 20, "C", "pint 0.25.3 (20.000000000000057)"],
  [0, "F", -17.777777777777779, "C", "worked by hand: -160/9"],
  [37, "C", 98.6, "F", "pint 0.25.3 (98.59999999999994)"],
  [100, "C", 212, "F", "boiling point of water, by definition of the old scales"],
  [0, "dBd", 2.15, "dBi", "textbook figure, from memory"],
  [0, "dBW", 30, "dBm", "10 log10(1000), worked by hand"],
  [-70, "dBm", -100, "dBW", "10 log10(1000), worked by hand"],
];

describe("conversion of units", () => {
  it.each(FACTORS)("one %s in %s is %d (%s)", (from, to, factor) => {
    nearRatio(convert({ value: 1, from, to }), factor, { withinFrac: 1e-14 });
  });

  it.each(SCALES)("%d %s is %d %s (%s)", (value, from, expected, to) => {
    near(convert({ value, from, to }), expected, { within: 1e-12 });
    near(convert({ value: expected, from: to, to: from }), value, { within: 1e-12 });
  });

  it("has a reference for every unit but the base of its dimension", () => {
    const checked = new Set(
      [...FACTORS, ...SCALES].flatMap((row) => row.filter((cell) => typeof cell === "string")),
    );
    const unchecked = DIMENSIONS.flatMap((dimension) => unitsOf(dimension))
      .filter((unit) => !checked.has(unit.symbol))
      .map((unit) => unit.symbol);
    // The only units of their dimension: nothing to convert.
    expect(unchecked).toEqual(["dB", "%/K", ""]);
  });

  it("comes back to the same value from any unit through any other", () => {
    const pair = fc
      .constantFrom(...DIMENSIONS)
      .chain((dimension) => fc.tuple(unitIn(dimension), unitIn(dimension)));
    fc.assert(
      fc.property(pair, fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([from, to], value) => {
        const there = convert({ value, from, to });
        // The zero of a scale takes part in the rounding: 0 F is -17.8 C.
        near(convert({ value: there, from: to, to: from }), value, {
          within: 1e-12 * Math.max(Math.abs(value), 100),
        });
      }),
    );
  });

  it("gives the very same number in the same unit", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true }), (value) => convert({ value, from: "ft", to: "ft" }) === value),
    );
  });

  it("keeps the order of two values", () => {
    const pair = fc
      .constantFrom(...DIMENSIONS)
      .chain((dimension) => fc.tuple(unitIn(dimension), unitIn(dimension)));
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(pair, value, value, ([from, to], a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return convert({ value: low, from, to }) <= convert({ value: high, from, to });
      }),
    );
  });

  it("treats a temperature and a difference of temperatures as two kinds", () => {
    expect(() => convert({ value: 20, from: "C", to: "K" })).toThrow("temperature");
    near(convert({ value: 18, from: "F deg", to: "C deg" }), 10, { within: 1e-12 });
  });

  it("throws where the two units measure different things, or one is unknown", () => {
    expect(() => convert({ value: 1, from: "m", to: "W" })).toThrow('"m" is length, "W" is power');
    expect(() => convert({ value: 1, from: "m", to: "furlongs" })).toThrow("furlongs");
  });
});

const DIMENSIONS: readonly Dimension[] = [
  "length",
  "area",
  "angle",
  "speed",
  "power",
  "energy",
  "charge",
  "voltage",
  "current",
  "frequency",
  "gain",
  "level",
  "loss",
  "bitrate",
  "frameRate",
  "duration",
  "mass",
  "pressure",
  "temperature",
  "temperatureDifference",
  "temperatureCoefficient",
  "irradiation",
  "share",
  "count",
];

const unitIn = (dimension: Dimension) => fc.constantFrom(...unitsOf(dimension).map((unit) => unit.symbol));
