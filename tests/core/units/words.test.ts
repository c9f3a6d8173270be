import { describe, expect, it } from "vitest";
import { type Dimension, dimensionWords, findUnit, unitOf, unitsOf } from "../../../src/core/units/index.ts";

/**
 * Symbol, singular and plural of every unit, typed by hand from the dictionary spelling (British), not from the table:
 * a name misspelt there differs from the one here.
 */
const NAMES: Readonly<Record<Dimension, readonly (readonly [string, string, string])[]>> = {
  length: [
    ["m", "metre", "metres"],
    ["cm", "centimetre", "centimetres"],
    ["mm", "millimetre", "millimetres"],
    ["km", "kilometre", "kilometres"],
    ["ft", "foot", "feet"],
    ["in", "inch", "inches"],
    ["yd", "yard", "yards"],
    ["mi", "mile", "miles"],
    ["steps", "step", "steps"],
  ],
  area: [
    ["m2", "square metre", "square metres"],
    ["cm2", "square centimetre", "square centimetres"],
    ["mm2", "square millimetre", "square millimetres"],
    ["ft2", "square foot", "square feet"],
    ["in2", "square inch", "square inches"],
  ],
  angle: [
    ["deg", "degree", "degrees"],
    ["fists", "fist", "fists"],
  ],
  speed: [
    ["m/s", "metre per second", "metres per second"],
    ["km/h", "kilometre per hour", "kilometres per hour"],
    ["mph", "mile per hour", "miles per hour"],
    ["kn", "knot", "knots"],
  ],
  power: [
    ["W", "watt", "watts"],
    ["mW", "milliwatt", "milliwatts"],
    ["kW", "kilowatt", "kilowatts"],
    ["MW", "megawatt", "megawatts"],
  ],
  energy: [
    ["Wh", "watt-hour", "watt-hours"],
    ["kWh", "kilowatt-hour", "kilowatt-hours"],
    ["MJ", "megajoule", "megajoules"],
  ],
  charge: [
    ["Ah", "amp-hour", "amp-hours"],
    ["mAh", "milliamp-hour", "milliamp-hours"],
  ],
  voltage: [
    ["V", "volt", "volts"],
    ["mV", "millivolt", "millivolts"],
    ["kV", "kilovolt", "kilovolts"],
  ],
  current: [
    ["A", "amp", "amps"],
    ["mA", "milliamp", "milliamps"],
  ],
  frequency: [
    ["Hz", "hertz", "hertz"],
    ["kHz", "kilohertz", "kilohertz"],
    ["MHz", "megahertz", "megahertz"],
    ["GHz", "gigahertz", "gigahertz"],
  ],
  gain: [
    ["dBi", "decibel over isotropic", "decibels over isotropic"],
    ["dBd", "decibel over a dipole", "decibels over a dipole"],
  ],
  level: [
    ["dBm", "decibel-milliwatt", "decibel-milliwatts"],
    ["dBW", "decibel-watt", "decibel-watts"],
  ],
  loss: [["dB", "decibel", "decibels"]],
  bitrate: [
    ["Mbit/s", "megabit per second", "megabits per second"],
    ["kbit/s", "kilobit per second", "kilobits per second"],
    ["Gbit/s", "gigabit per second", "gigabits per second"],
    ["MB/s", "megabyte per second", "megabytes per second"],
    ["kB/s", "kilobyte per second", "kilobytes per second"],
  ],
  frameRate: [
    ["frames/s", "frame per second", "frames per second"],
    ["frames/min", "frame per minute", "frames per minute"],
  ],
  duration: [
    ["s", "second", "seconds"],
    ["min", "minute", "minutes"],
    ["h", "hour", "hours"],
    ["days", "day", "days"],
    ["weeks", "week", "weeks"],
    ["fortnights", "fortnight", "fortnights"],
    ["months", "month", "months"],
    ["years", "year", "years"],
  ],
  mass: [
    ["kg", "kilogram", "kilograms"],
    ["g", "gram", "grams"],
    ["lb", "pound", "pounds"],
    ["oz", "ounce", "ounces"],
  ],
  pressure: [
    ["Pa", "pascal", "pascals"],
    ["hPa", "hectopascal", "hectopascals"],
    ["kPa", "kilopascal", "kilopascals"],
    ["MPa", "megapascal", "megapascals"],
    ["bar", "bar", "bars"],
    ["psi", "pound per square inch", "pounds per square inch"],
    ["psf", "pound per square foot", "pounds per square foot"],
  ],
  temperature: [
    ["C", "degree Celsius", "degrees Celsius"],
    ["F", "degree Fahrenheit", "degrees Fahrenheit"],
  ],
  temperatureDifference: [
    ["K", "kelvin", "kelvins"],
    ["C deg", "Celsius degree", "Celsius degrees"],
    ["F deg", "Fahrenheit degree", "Fahrenheit degrees"],
  ],
  temperatureCoefficient: [["%/K", "percent per kelvin", "percent per kelvin"]],
  irradiation: [
    ["kWh/m2 a day", "kilowatt-hour per square metre a day", "kilowatt-hours per square metre a day"],
    ["Wh/m2 a day", "watt-hour per square metre a day", "watt-hours per square metre a day"],
    ["kWh/m2 a month", "kilowatt-hour per square metre a month", "kilowatt-hours per square metre a month"],
    ["MJ/m2 a day", "megajoule per square metre a day", "megajoules per square metre a day"],
  ],
  share: [
    ["%", "percent", "percent"],
    ["of 1", "as a fraction of one", "as a fraction of one"],
  ],
  count: [["", "piece", "pieces"]],
};

const dimensions = Object.keys(NAMES) as readonly Dimension[];
const everyUnit = dimensions.flatMap((dimension) => unitsOf(dimension));

describe("the words of the unit table", () => {
  it.each(dimensions)("%s: every unit is named as listed by hand, and none is missing", (dimension) => {
    const named = unitsOf(dimension).map((unit) => [unit.symbol, unit.singular, unit.plural]);
    expect(named).toEqual(NAMES[dimension]);
  });

  it("shows every symbol in plain ASCII, and each only once in the whole table", () => {
    const symbols = everyUnit.map((unit) => unit.symbol);
    expect(symbols.length).toBeGreaterThan(70);
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const symbol of symbols) expect(symbol).toMatch(/^[ -~]*$/);
  });

  it.each(dimensions)("%s: no typed form belongs to two units", (dimension) => {
    const owners = new Map<string, string>();
    for (const unit of unitsOf(dimension)) {
      for (const form of new Set([unit.symbol, unit.singular, unit.plural, ...unit.typed])) {
        expect(owners.get(form), `"${form}" is ${owners.get(form)} and ${unit.symbol}`).toBeUndefined();
        owners.set(form, unit.symbol);
      }
    }
  });

  it("finds every unit by its symbol, its names and every typed form", () => {
    for (const unit of everyUnit) {
      for (const form of [unit.symbol, unit.singular, unit.plural, ...unit.typed]) {
        expect(findUnit(form, unit.dimension)?.symbol, `"${form}" in ${unit.dimension}`).toBe(unit.symbol);
      }
      expect(unitOf(unit.symbol)).toBe(unit);
    }
  });

  it("says where every factor comes from", () => {
    for (const unit of everyUnit) expect(unit.source.length, unit.symbol).toBeGreaterThan(10);
  });

  it("names every dimension with its article", () => {
    for (const dimension of dimensions) expect(dimensionWords(dimension)).toMatch(/^an? [a-z ]+$/);
    expect(dimensionWords("voltage")).toBe("a voltage");
  });
});
