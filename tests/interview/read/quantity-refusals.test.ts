import { describe, expect, it } from "vitest";
import { type QuantitySpec, type Refusal, readQuantity } from "../../../src/interview/read/index.ts";

const LENGTH: QuantitySpec = { dimension: "length", unit: "m", possible: { min: 0.1, max: 200 } };
const DAYS: QuantitySpec = { dimension: "duration", unit: "days", possible: { min: 0.5, max: 30 } };
const CELSIUS: QuantitySpec = { dimension: "temperature", unit: "C", possible: { min: -60, max: 60 } };
const VOLTAGE: QuantitySpec = { dimension: "voltage", unit: "V", possible: { min: 0, max: 100 } };
const SUN: QuantitySpec = { dimension: "irradiation", unit: "kWh/m2 a day", possible: { min: 0, max: 12 } };
const SLOPE: QuantitySpec = {
  dimension: "temperatureCoefficient",
  unit: "%/K",
  possible: { min: -1, max: 0 },
};
const COUNT: QuantitySpec = { dimension: "count", unit: "", possible: { min: 1, max: 8 }, isWhole: true };

const LENGTHS = ["m", "cm", "mm", "km", "ft", "in", "yd", "mi", "steps"];
const REFUSED: readonly (readonly [string, QuantitySpec, Refusal])[] = [
  ["", LENGTH, { code: "empty" }],
  ["   ", LENGTH, { code: "empty" }],
  ["hello", LENGTH, { code: "not-a-number", typed: "hello" }],
  ["5 5 5", LENGTH, { code: "not-a-number", typed: "5 5 5" }],
  // More inches than a foot holds, and a bare figure that could be centimetres or tenths.
  ["5 ft 14 in", LENGTH, { code: "not-a-number", typed: "5 ft 14 in" }],
  ["5 ft 12", LENGTH, { code: "not-a-number", typed: "5 ft 12" }],
  ["1 m 8", LENGTH, { code: "not-a-number", typed: "1 m 8" }],
  ["5 to", LENGTH, { code: "not-a-number", typed: "5 to" }],
  ["12/24 V", VOLTAGE, { code: "not-a-number", typed: "12/24 V" }],
  ["12 or 24 V", VOLTAGE, { code: "not-a-number", typed: "12 or 24 V" }],
  ["1.2.3", LENGTH, { code: "not-a-number", typed: "1.2.3" }],
  ["1e3", LENGTH, { code: "unknown-unit", typed: "e", known: LENGTHS }],
  ["30 fx", LENGTH, { code: "unknown-unit", typed: "fx", known: LENGTHS }],
  ["three bananas", LENGTH, { code: "unknown-unit", typed: "bananas", known: LENGTHS }],
  ["20 fx to 30 fx", LENGTH, { code: "unknown-unit", typed: "fx", known: LENGTHS }],
  [
    "12 V",
    LENGTH,
    {
      code: "wrong-kind",
      typed: "12 V",
      typedDimension: "voltage",
      wantedDimension: "length",
      example: "10 m",
    },
  ],
  [
    "10 W",
    DAYS,
    {
      code: "wrong-kind",
      typed: "10 W",
      typedDimension: "power",
      wantedDimension: "duration",
      example: "10 days",
    },
  ],
  [
    "10 m/s",
    LENGTH,
    {
      code: "wrong-kind",
      typed: "10 m/s",
      typedDimension: "speed",
      wantedDimension: "length",
      example: "10 m",
    },
  ],
  [
    "20 to 30 V",
    LENGTH,
    {
      code: "wrong-kind",
      typed: "30 V",
      typedDimension: "voltage",
      wantedDimension: "length",
      example: "10 m",
    },
  ],
  [
    "2000",
    LENGTH,
    { code: "too-large", typed: "2000 m", min: 0.1, max: 200, got: 2000, unit: "m", didYouMean: 200 },
  ],
  [
    "2000 ft",
    LENGTH,
    {
      code: "too-large",
      typed: "2000 ft",
      min: 0.1,
      max: 200,
      got: 609.6,
      unit: "m",
      didYouMean: 60.96,
      didYouMeanTyped: "200 ft",
    },
  ],
  ["0.5 mi", LENGTH, { code: "too-large", typed: "0.5 mi", min: 0.1, max: 200, got: 804.672, unit: "m" }],
  ["-5", LENGTH, { code: "too-small", typed: "-5 m", min: 0.1, max: 200, got: -5, unit: "m", didYouMean: 5 }],
  ["0", LENGTH, { code: "too-small", typed: "0 m", min: 0.1, max: 200, got: 0, unit: "m" }],
  [
    "20 to 300",
    LENGTH,
    { code: "too-large", typed: "300 m", min: 0.1, max: 200, got: 300, unit: "m", didYouMean: 30 },
  ],
  [
    "100",
    CELSIUS,
    {
      code: "too-large",
      typed: "100 C",
      min: -60,
      max: 60,
      got: 100,
      unit: "C",
      didYouMean: 37.7777777778,
      didYouMeanTyped: "100 F",
    },
  ],
  // Typed with its unit, Celsius was meant.
  [
    "100 F +- 5 F",
    { ...CELSIUS, possible: { min: -60, max: 30 } },
    {
      code: "too-large",
      typed: "100 F",
      min: -60,
      max: 30,
      got: 37.7777777778,
      unit: "C",
    },
  ],
  [
    "146",
    SUN,
    {
      code: "too-large",
      typed: "146 kWh/m2 a day",
      min: 0,
      max: 12,
      got: 146,
      unit: "kWh/m2 a day",
      didYouMean: 4.8,
      didYouMeanTyped: "146 kWh/m2 a month",
    },
  ],
  [
    "0.28",
    SLOPE,
    { code: "too-large", typed: "0.28 %/K", min: -1, max: 0, got: 0.28, unit: "%/K", didYouMean: -0.28 },
  ],
  ["1,500", LENGTH, { code: "ambiguous-comma", typed: "1,500", asThousands: 1500, asDecimal: 1.5 }],
  ["1,500 ft", LENGTH, { code: "ambiguous-comma", typed: "1,500", asThousands: 1500, asDecimal: 1.5 }],
  ["20 to 1,500", LENGTH, { code: "ambiguous-comma", typed: "1,500", asThousands: 1500, asDecimal: 1.5 }],
  ["2.5", COUNT, { code: "not-a-count", typed: "2.5", got: 2.5 }],
  ["9", COUNT, { code: "too-large", typed: "9", min: 1, max: 8, got: 9, unit: "" }],
];

describe("what cannot be taken is refused with its numbers", () => {
  it.each(REFUSED)("%s", (text, spec, refusal) => {
    expect(readQuantity(text, spec)).toEqual({ ok: false, refusal });
  });

  it("quotes no control characters and no more than 40 letters", () => {
    const read = readQuantity(`\u001b[31m${"x".repeat(100)}`, LENGTH);
    expect(read).toMatchObject({ ok: false, refusal: { code: "not-a-number" } });
    const typed = !read.ok && read.refusal.code === "not-a-number" ? read.refusal.typed : "";
    expect(typed).toMatch(/^[ -~]{1,40}$/);
  });

  it("does not search what is longer than any answer", () => {
    expect(readQuantity(`${" ".repeat(250)}5`, LENGTH).ok).toBe(false);
    expect(readQuantity("5 ".repeat(5000), LENGTH).ok).toBe(false);
  });

  it("takes both ends of the possible range, and nothing beyond", () => {
    for (const text of ["0.1", "200", "20000 cm", "10 cm"])
      expect(readQuantity(text, LENGTH).ok, text).toBe(true);
    for (const text of ["0.0999", "200.01", "9.9 cm"])
      expect(readQuantity(text, LENGTH).ok, text).toBe(false);
  });
});
