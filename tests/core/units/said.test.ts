import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Exactness, type SaidUnit, sayingIn } from "../../../src/core/units/index.ts";

const us = sayingIn("us");
const metric = sayingIn("metric");

/**
 * How much of the metric unit one of the other holds, and how much of each makes the same temperature.
 *
 * @source NIST SP 811 (2008), appendix B.8 and B.9, as printed there to seven digits; from memory
 */
const PRINTED: readonly (readonly [unit: SaidUnit, symbol: string, metricOfOne: number])[] = [
  ["m", "ft", 0.3048],
  ["m away", "ft", 0.3048],
  ["km", "mi", 1.609344],
  ["mm", "in", 25.4],
  ["m2", "sq ft", 0.09290304],
  ["cm2", "sq in", 6.4516],
  ["litres", "gallons", 3.785412],
  ["litres of room", "cu ft", 28.31685],
  ["kg", "lb", 0.4535924],
  ["N", "lbf", 4.448222],
  ["Nm", "lb-ft", 1.355818],
  ["m/s", "mph", 0.44704],
  // a kelvin is 1.8 Fahrenheit degrees
  ["K", "°F", 5 / 9],
  // so many a metre are 0.3048 times as many a foot
  ["a metre", "a foot", 1 / 0.3048],
];

/** The figure of a text; of a length, however it is said, in feet. */
function readBack(text: string, unit: SaidUnit): number {
  const [, sign, ft, inches] = /^(-?)(\d+) ft (\d+) in$/.exec(text) ?? [];
  if (ft !== undefined) return (sign === "-" ? -1 : 1) * (Number(ft) + Number(inches) / 12);
  const [, value, symbol] = /^(-?[\d.]+) (.+)$/.exec(text)!;
  const isLength = unit === "m" || unit === "m away";
  return Number(value) * (isLength && symbol === "in" ? 1 / 12 : isLength && symbol === "mi" ? 5280 : 1);
}

const FACTOR = new Map(PRINTED.map(([unit, , metricOfOne]) => [unit, metricOfOne]));
/** In the other unit, from the printed factor; temperatures by the definition of the Fahrenheit scale. */
const exactly = (value: number, unit: SaidUnit): number =>
  unit === "C" || unit === "°C" ? value * 1.8 + 32 : value / FACTOR.get(unit)!;

describe("in feet and pounds", () => {
  it.each(PRINTED)("%s: a thousand %s are what NIST SP 811 prints", (unit, symbol, metricOfOne) => {
    expect(us.symbol(unit)).toBe(symbol);
    expect(Number(us.bare(1000 * metricOfOne, unit, { digits: 7 }))).toBeCloseTo(1000, 3);
  });
  it.each([
    [-40, "-40"],
    [0, "32"],
    [25, "77"],
    [100, "212"],
  ])("%d degrees Celsius are %s Fahrenheit (fixed points of the scales)", (tempC, tempF) => {
    expect(us(tempC, "°C")).toBe(`${tempF} °F`);
    expect(us.bare(tempC, "C")).toBe(tempF);
  });

  // the round figure that a builder there would say for the same thing; common practice, no source
  it.each<readonly [number, SaidUnit, number | Exactness, string]>([
    [3, "m", 1, "10 ft"],
    [4.5, "m", 1, "14 ft 9 in"],
    [2.4, "m", 1, "8 ft"],
    [0.95, "m", 2, "3 ft 1 in"],
    [0.3, "m", 2, "12 in"],
    [0, "m", 1, "0 ft"],
    [-3.05, "m", 1, "-10 ft"],
    [30, "m", 0, "100 ft"],
    [250, "m away", 0, "820 ft"],
    [804.672, "m away", 0, "0.5 mi"],
    [12_000, "m away", 0, "7.45 mi"],
    [60.3, "mm", 1, "2.375 in"],
    [25, "kg", 0, "55 lb"],
    // no wind is known to the pound
    [5329, "N", 0, "1200 lbf"],
    [40, "m/s", 0, "90 mph"],
    [10, "K", 0, "18 °F"],
    [15, "litres", 0, "4 gallons"],
  ])("%d %s (%j) is %s", (value, unit, how, text) => {
    expect(us(value, unit, how)).toBe(text);
  });

  it.each([
    ["13 ft", 13 * 0.3048, "m", { digits: 2 }],
    ["800 ft", 800 * 0.3048, "m away", 0],
    ["35 lb", 35 * 0.45359237, "kg", 1],
    ["115 mph", 115 * 0.44704, "m/s", 0],
    ["3 in", 76.2, "mm", 0],
    ["95 °F", 35, "°C", 0],
  ] as const)("what was answered as %s comes back so", (typed, value, unit, how) => {
    expect(us(value, unit, how)).toBe(typed);
  });

  it.each<readonly [number, SaidUnit, Exactness, string]>([
    // a network cable ends at 90 m, which are 295.28 ft
    [90, "m away", { safe: "down" }, "295 ft"],
    // 6 m are 19.69 ft
    [6, "m", { safe: "down" }, "19 ft"],
    // 0.6 m of frost are 23.6 in
    [0.6, "m", { places: 2, safe: "up" }, "2 ft"],
    [7.6, "m", { places: 1, safe: "up" }, "25 ft"],
    [1.25, "m", { places: 2, safe: "up" }, "4 ft 2 in"],
    [320, "N", { digits: 2, safe: "up" }, "72 lbf"],
  ])("%d %s keeps to the safe side (%j): %s", (value, unit, how, text) => {
    expect(us(value, unit, how)).toBe(text);
  });

  const anyUnit = fc.constantFrom(...FACTOR.keys(), "C" as const, "°C" as const);
  const anyValue = fc.double({ min: 0.001, max: 99_999, noNaN: true });
  const thousandths = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((value) => value / 1000);
  const anyHow = fc.oneof(
    fc.record({ places: fc.integer({ min: 0, max: 3 }) }),
    fc.record({ digits: fc.integer({ min: 1, max: 4 }) }),
  );
  it("never falls short upwards, never goes beyond downwards", () => {
    fc.assert(
      fc.property(anyUnit, anyValue, anyHow, (unit, value, how) => {
        const exact = exactly(value, unit);
        const slack = 1e-6 * Math.max(1, exact);
        expect(readBack(us(value, unit, { ...how, safe: "up" }), unit)).toBeGreaterThanOrEqual(exact - slack);
        expect(readBack(us(value, unit, { ...how, safe: "down" }), unit)).toBeLessThanOrEqual(exact + slack);
      }),
      { numRuns: 2000 },
    );
  });
  it("is off by no more than the metric figure may be, a quarter per cent, or half of the finest step that is read", () => {
    const halfStep: Partial<Record<SaidUnit, number>> = { mm: 0.0005 };
    const isExact: readonly SaidUnit[] = ["mm", "m", "C", "°C"];
    fc.assert(
      fc.property(anyUnit, anyValue, fc.integer({ min: 0, max: 3 }), (unit, value, places) => {
        const exact = exactly(value, unit);
        const off = Math.abs(readBack(us(value, unit, places), unit) - exact);
        const mayBe = exactly(value + 10 ** -places / 2, unit) - exact;
        // far ground is told in thousandths of a mile at the finest
        const ground = unit === "m away" ? 2.64 : 0;
        const known = isExact.includes(unit) ? 0 : 0.0025 * exact;
        expect(off).toBeLessThanOrEqual(
          Math.max(mayBe, known, halfStep[unit] ?? 0.5, ground) * 1.00001 + 1e-6,
        );
      }),
      { numRuns: 2000 },
    );
  });
  it("has no noise of arithmetic, no exponent, no minus before nothing", () => {
    fc.assert(
      fc.property(anyUnit, thousandths, anyHow, (unit, value, how) => {
        for (const text of [us(value, unit, how), metric(value, unit, how)]) {
          expect(text).not.toMatch(/\d\.\d{7}|e[+-]?\d|NaN|-0(?![.\d])/);
          expect(text).toMatch(/^-?\d/);
        }
      }),
    );
  });
});

describe("in metric", () => {
  it("is the number as it is asked for, with its unit", () => {
    expect(metric(3.04, "m", 1)).toBe("3 m");
    expect(metric(3.04, "m", { places: 1, keepsZeros: true })).toBe("3.0 m");
    expect(metric(1234.5, "m away", { digits: 3 })).toBe("1230 m");
    expect(metric(-0.04, "°C", 1)).toBe("0 °C");
    expect(metric.bare(12.5, "kg", 1)).toBe("12.5");
    expect(metric.symbol("litres of room")).toBe("litres");
    expect(metric.either("metre stick", "yardstick")).toBe("metre stick");
  });
  it("is not turned by what is safe: whoever rounds for safety has done it in metres", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 999, noNaN: true }),
        fc.constantFrom("up", "down"),
        (value, safe) => {
          expect(metric(value, "m", { places: 1, safe: safe as "up" })).toBe(metric(value, "m", 1));
        },
      ),
    );
  });
});
