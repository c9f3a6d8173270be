import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { formatNumber, formatQuantity, quantityWords } from "../../../src/core/units/index.ts";
import { nearRatio } from "../../helpers/near.ts";

/** Worked by hand from the rule: three significant digits, two below 10 where that is within 1 %. */
const SHOWN: readonly (readonly [number, string])[] = [
  [9.144, "9.1"],
  [6.096, "6.1"],
  [3.65, "3.65"],
  [1.25, "1.25"],
  [12.34, "12.3"],
  [14.4, "14.4"],
  [12, "12"],
  [127, "127"],
  [1234567, "1230000"],
  [0.0914, "0.091"],
  [0.125, "0.125"],
  [0.0000123, "0.0000123"],
  [-20, "-20"],
  [-0.284, "-0.284"],
  [-0.28, "-0.28"],
  [0, "0"],
  [-0, "0"],
  [1e-13, "0"],
  [9.996, "10"],
  [99.96, "100"],
  [999.6, "1000"],
  [0.9999, "1"],
  [100, "100"],
  [2000, "2000"],
  [1e15, "1000000000000000"],
];

describe("a number as it is shown", () => {
  it.each(SHOWN)("%d is shown as %s", (value, text) => {
    expect(formatNumber({ value })).toBe(text);
  });

  it("keeps as many digits as asked for, without trailing zeros", () => {
    expect(formatNumber({ value: 1500.5, digits: 12 })).toBe("1500.5");
    expect(formatNumber({ value: 9.144, digits: 3 })).toBe("9.14");
    expect(formatNumber({ value: 9.144, digits: 1 })).toBe("9");
    expect(formatNumber({ value: 3.6, digits: 3 })).toBe("3.6");
  });

  it("has no exponent and no trailing zero after the point, and is within 1 % of the value", () => {
    const size = fc.double({ min: 1e-9, max: 1e14, noNaN: true });
    fc.assert(
      fc.property(size, fc.boolean(), (value, isNegative) => {
        const signed = isNegative ? -value : value;
        const text = formatNumber({ value: signed });
        expect(text).toMatch(/^-?\d+(?:\.\d*[1-9])?$/);
        nearRatio(Number(text), signed, { withinFrac: 0.01 });
      }),
    );
  });

  it("throws outside what it can show", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 1.1e15, -1.1e15]) {
      expect(() => formatNumber({ value })).toThrow(RangeFault);
    }
    for (const digits of [0, 16]) expect(() => formatNumber({ value: 1, digits })).toThrow(RangeFault);
  });
});

describe("a quantity as it is shown and said", () => {
  it("has a space before its symbol", () => {
    expect(formatQuantity({ value: 9.144, unit: "m" })).toBe("9.1 m");
    expect(formatQuantity({ value: 5, unit: "%" })).toBe("5 %");
    expect(formatQuantity({ value: 4.44, unit: "kWh/m2 a day" })).toBe("4.4 kWh/m2 a day");
  });

  it("is a bare number for a count", () => {
    expect(formatQuantity({ value: 3, unit: "" })).toBe("3");
    expect(quantityWords({ value: 3, unit: "" })).toBe("3");
  });

  it("takes the singular for one where the symbol is a word", () => {
    expect(formatQuantity({ value: 1, unit: "weeks" })).toBe("1 week");
    expect(formatQuantity({ value: 1.004, unit: "weeks" })).toBe("1 week");
    expect(formatQuantity({ value: 2, unit: "weeks" })).toBe("2 weeks");
    expect(formatQuantity({ value: 1, unit: "fists" })).toBe("1 fist");
  });

  it("is said in words that can be read aloud", () => {
    expect(quantityWords({ value: 9.144, unit: "m" })).toBe("9.1 metres");
    expect(quantityWords({ value: 1, unit: "m" })).toBe("1 metre");
    expect(quantityWords({ value: 0.5, unit: "m" })).toBe("0.5 metres");
    expect(quantityWords({ value: -20, unit: "C" })).toBe("minus 20 degrees Celsius");
    expect(quantityWords({ value: -1, unit: "C" })).toBe("minus 1 degree Celsius");
    expect(quantityWords({ value: 6, unit: "ft" })).toBe("6 feet");
    expect(quantityWords({ value: 5, unit: "%" })).toBe("5 percent");
  });
});
