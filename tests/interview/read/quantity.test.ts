import { describe, expect, it } from "vitest";
import {
  type QuantitySpec,
  readQuantity,
  readQuantityAmongWords,
} from "../../../src/interview/read/index.ts";
import { near } from "../../helpers/near.ts";

const LENGTH: QuantitySpec = { dimension: "length", unit: "m", possible: { min: 0.1, max: 20000 } };
const FEET: QuantitySpec = { dimension: "length", unit: "ft", possible: { min: 0.1, max: 2000 } };
const POWER: QuantitySpec = { dimension: "power", unit: "W", possible: { min: 0, max: 5000 } };
const ENERGY: QuantitySpec = { dimension: "energy", unit: "Wh", possible: { min: 0, max: 1e5 } };
const CHARGE: QuantitySpec = { dimension: "charge", unit: "Ah", possible: { min: 0, max: 2000 } };
const VOLTAGE: QuantitySpec = { dimension: "voltage", unit: "V", possible: { min: 0, max: 100 } };
const DAYS: QuantitySpec = { dimension: "duration", unit: "days", possible: { min: 0, max: 60 } };
const HOURS: QuantitySpec = { dimension: "duration", unit: "h", possible: { min: 0, max: 200 } };
const WEEKS: QuantitySpec = { dimension: "duration", unit: "weeks", possible: { min: 0, max: 52 } };
const CELSIUS: QuantitySpec = { dimension: "temperature", unit: "C", possible: { min: -60, max: 60 } };
const FAHRENHEIT: QuantitySpec = { dimension: "temperature", unit: "F", possible: { min: -80, max: 150 } };
const WARMER: QuantitySpec = { dimension: "temperatureDifference", unit: "K", possible: { min: 0, max: 60 } };
const ANGLE: QuantitySpec = { dimension: "angle", unit: "deg", possible: { min: 0, max: 90 } };
const SHARE: QuantitySpec = { dimension: "share", unit: "%", possible: { min: 0, max: 100 } };
const SPEED: QuantitySpec = { dimension: "speed", unit: "m/s", possible: { min: 0, max: 100 } };
const SUN: QuantitySpec = { dimension: "irradiation", unit: "kWh/m2 a day", possible: { min: 0, max: 12 } };
const WEIGHT: QuantitySpec = { dimension: "mass", unit: "kg", possible: { min: 0, max: 200 } };
const SLOPE: QuantitySpec = {
  dimension: "temperatureCoefficient",
  unit: "%/K",
  possible: { min: -1, max: 0 },
};
const LEVEL: QuantitySpec = { dimension: "level", unit: "dBm", possible: { min: -120, max: 40 } };
const COUNT: QuantitySpec = { dimension: "count", unit: "", possible: { min: 0, max: 50 }, isWhole: true };

const PRICE: QuantitySpec = { dimension: "count", unit: "", possible: { min: 0, max: 1e5 } };

/** One figure, no doubt: typed text, the value in the unit shown, the unit typed, what is echoed. Worked by hand. */
const EXACT: readonly (readonly [string, QuantitySpec, number, string, string])[] = [
  ["30 ft", LENGTH, 9.144, "ft", "30 ft = 9.1 m"],
  ["30ft", LENGTH, 9.144, "ft", "30 ft = 9.1 m"],
  ["30 FEET", LENGTH, 9.144, "ft", "30 ft = 9.1 m"],
  ["9.1m", LENGTH, 9.1, "m", "9.1 m"],
  ["9,1 m", LENGTH, 9.1, "m", "9.1 m"],
  ["9.14 m", LENGTH, 9.14, "m", "9.14 m"],
  ["  12   m  ", LENGTH, 12, "m", "12 m"],
  ["12 m.", LENGTH, 12, "m", "12 m"],
  ["12", LENGTH, 12, "m", "12 m"],
  ["12", FEET, 12, "ft", "12 ft"],
  ["+12", LENGTH, 12, "m", "12 m"],
  [".5 m", LENGTH, 0.5, "m", "0.5 m"],
  ["0,500", LENGTH, 0.5, "m", "0.5 m"],
  ["5'6\"", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5’6”", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5'6", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5' 6\"", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5'6''", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5 ft 6 in", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5 feet and 6 inches", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5 foot 6", LENGTH, 1.6764, "ft", "5 ft 6 in = 1.68 m"],
  ["5 ft 6", FEET, 5.5, "ft", "5 ft 6 in = 5.5 ft"],
  ["5'", LENGTH, 1.524, "ft", "5 ft = 1.52 m"],
  ['30"', LENGTH, 0.762, "in", "30 in = 0.76 m"],
  ["5 1/2 in", LENGTH, 0.1397, "in", "5.5 in = 0.14 m"],
  ["5-1/2 in", LENGTH, 0.1397, "in", "5.5 in = 0.14 m"],
  ["5½ in", LENGTH, 0.1397, "in", "5.5 in = 0.14 m"],
  ["1m80", LENGTH, 1.8, "m", "1 m 80 cm = 1.8 m"],
  ["1 m 80 cm", LENGTH, 1.8, "m", "1 m 80 cm = 1.8 m"],
  ["1.5 miles", LENGTH, 2414.016, "mi", "1.5 mi = 2410 m"],
  ["half a mile", LENGTH, 804.672, "mi", "0.5 mi = 805 m"],
  ["3/4 mile", LENGTH, 1207.008, "mi", "0.75 mi = 1210 m"],
  ["a quarter of a mile", LENGTH, 402.336, "mi", "0.25 mi = 402 m"],
  ["half a metre", LENGTH, 0.5, "m", "0.5 m"],
  ["a metre", LENGTH, 1, "m", "1 m"],
  ["one and a half metres", LENGTH, 1.5, "m", "1.5 m"],
  ["1 and a half metres", LENGTH, 1.5, "m", "1.5 m"],
  ["two metres and a half", LENGTH, 2.5, "m", "2.5 m"],
  ["twenty-five feet", LENGTH, 7.62, "ft", "25 ft = 7.6 m"],
  ["a hundred yards", LENGTH, 91.44, "yd", "100 yd = 91.4 m"],
  ["two hundred and fifty metres", LENGTH, 250, "m", "250 m"],
  ["it's 30 ft long", LENGTH, 9.144, "ft", "30 ft = 9.1 m"],
  ["exactly 30 ft", LENGTH, 9.144, "ft", "30 ft = 9.1 m"],
  ["1500", LENGTH, 1500, "m", "1500 m"],
  ["1 500 m", LENGTH, 1500, "m", "1500 m"],
  ["1\u202f500 m", LENGTH, 1500, "m", "1500 m"],
  ["1,500.5", LENGTH, 1500.5, "m", "1500.5 m"],
  ["1.500,5", LENGTH, 1500.5, "m", "1500.5 m"],
  ["1 500,5", LENGTH, 1500.5, "m", "1500.5 m"],
  ["12,5", LENGTH, 12.5, "m", "12.5 m"],
  ["1,50", LENGTH, 1.5, "m", "1.5 m"],
  ["12.500", LENGTH, 12.5, "m", "12.5 m"],
  ["1,2345", LENGTH, 1.2345, "m", "1.2345 m"],
  ["12V", VOLTAGE, 12, "V", "12 V"],
  ["12 volts", VOLTAGE, 12, "V", "12 V"],
  ["12 VDC", VOLTAGE, 12, "V", "12 V"],
  ["1.2 kWh", ENERGY, 1200, "kWh", "1.2 kWh = 1200 Wh"],
  ["1.2kWh", ENERGY, 1200, "kWh", "1.2 kWh = 1200 Wh"],
  ["100Ah", CHARGE, 100, "Ah", "100 Ah"],
  ["100 amp-hours", CHARGE, 100, "Ah", "100 Ah"],
  ["20000mAh", CHARGE, 20, "mAh", "20000 mAh = 20 Ah"],
  ["500 mW", POWER, 0.5, "mW", "500 mW = 0.5 W"],
  ["4w", POWER, 4, "W", "4 W"],
  ["three days", DAYS, 3, "days", "3 days"],
  ["72 h", DAYS, 3, "h", "72 h = 3 days"],
  ["a week", DAYS, 7, "weeks", "1 week = 7 days"],
  ["a couple of weeks", DAYS, 14, "weeks", "2 weeks = 14 days"],
  ["a fortnight", DAYS, 14, "fortnights", "1 fortnight = 14 days"],
  ["a day and a half", DAYS, 1.5, "days", "1.5 days"],
  ["1 day 12 hours", DAYS, 1.5, "days", "1 day 12 h = 1.5 days"],
  ["none", DAYS, 0, "days", "0 days"],
  ["half a dozen weeks", WEEKS, 6, "weeks", "6 weeks"],
  ["a dozen weeks", WEEKS, 12, "weeks", "12 weeks"],
  ["2 months", WEEKS, 8.69047619048, "months", "2 months = 8.7 weeks"],
  ["1 h 30 min", HOURS, 1.5, "h", "1 h 30 min = 1.5 h"],
  ["1 hour, 30 minutes", HOURS, 1.5, "h", "1 h 30 min = 1.5 h"],
  ["1h30m", HOURS, 1.5, "h", "1 h 30 min = 1.5 h"],
  ["1h30", HOURS, 1.5, "h", "1 h 30 min = 1.5 h"],
  ["90 min", HOURS, 1.5, "min", "90 min = 1.5 h"],
  ["half an hour", HOURS, 0.5, "h", "0.5 h"],
  ["an hour and a half", HOURS, 1.5, "h", "1.5 h"],
  ["three quarters of an hour", HOURS, 0.75, "h", "0.75 h"],
  ["-20", CELSIUS, -20, "C", "-20 C"],
  ["−20 °C", CELSIUS, -20, "C", "-20 C"],
  ["- 20 C", CELSIUS, -20, "C", "-20 C"],
  ["minus 20 degrees", CELSIUS, -20, "C", "-20 C"],
  ["20 below zero", CELSIUS, -20, "C", "-20 C"],
  ["68 F", CELSIUS, 20, "F", "68 F = 20 C"],
  ["-40°F", CELSIUS, -40, "F", "-40 F = -40 C"],
  ["20 degrees", FAHRENHEIT, 20, "F", "20 F"],
  ["20 degrees fahrenheit", CELSIUS, -6.66666666667, "F", "20 F = -6.7 C"],
  ["20 degrees C", FAHRENHEIT, 68, "C", "20 C = 68 F"],
  ["18 F", WARMER, 10, "F deg", "18 F deg = 10 K"],
  ["10 °C", WARMER, 10, "C deg", "10 C deg = 10 K"],
  ["10 degrees", WARMER, 10, "K", "10 K"],
  ["30°", ANGLE, 30, "deg", "30 deg"],
  ["30 degrees", ANGLE, 30, "deg", "30 deg"],
  ["5", SHARE, 5, "%", "5 %"],
  ["5%", SHARE, 5, "%", "5 %"],
  ["5 per cent", SHARE, 5, "%", "5 %"],
  ["0.5", SHARE, 0.5, "%", "0.5 %"],
  ["half", SHARE, 50, "%", "50 %"],
  ["1/4", SHARE, 25, "%", "25 %"],
  ["three quarters", SHARE, 75, "%", "75 %"],
  ["half a percent", SHARE, 0.5, "%", "0.5 %"],
  ["100 mph", SPEED, 44.704, "mph", "100 mph = 44.7 m/s"],
  ["36 km/h", SPEED, 10, "km/h", "36 km/h = 10 m/s"],
  ["10 metres per second", SPEED, 10, "m/s", "10 m/s"],
  ["4.5 kWh/m²/day", SUN, 4.5, "kWh/m2 a day", "4.5 kWh/m2 a day"],
  ["18 MJ/m2 a day", SUN, 5, "MJ/m2 a day", "18 MJ/m2 a day = 5 kWh/m2 a day"],
  ["3 peak sun hours", SUN, 3, "kWh/m2 a day", "3 kWh/m2 a day"],
  ["146 kWh/m2 a month", SUN, 4.8, "kWh/m2 a month", "146 kWh/m2 a month = 4.8 kWh/m2 a day"],
  ["6 lb 4 oz", WEIGHT, 2.8349523125, "lb", "6 lb 4 oz = 2.83 kg"],
  ["-0.28 %/°C", SLOPE, -0.28, "%/K", "-0.28 %/K"],
  ["-65 dBm", LEVEL, -65, "dBm", "-65 dBm"],
  ["3", COUNT, 3, "", "3"],
  ["three", COUNT, 3, "", "3"],
  ["120", PRICE, 120, "", "120"],
  ["$120", PRICE, 120, "", "120"],
  ["£ 99.50", PRICE, 99.5, "", "99.5"],
  ["120 EUR", PRICE, 120, "", "120"],
  ["120 dollars", PRICE, 120, "", "120"],
  ["3 pieces", COUNT, 3, "", "3"],
];

describe("one figure, typed without a doubt", () => {
  it.each(EXACT)("%s", (text, spec, value, typedUnit, heard) => {
    const read = readQuantity(text, spec);
    if (!read.ok) throw new Error(JSON.stringify(read.refusal));
    expect({ ...read, low: 0, best: 0, high: 0 }).toEqual({
      ok: true,
      low: 0,
      best: 0,
      high: 0,
      typedUnit,
      isExact: true,
      doubt: "none",
      heard,
    });
    near(read.best, value, { within: 1e-9 });
    expect([read.low, read.high]).toEqual([read.best, read.best]);
  });
});

type Doubt = "about" | "range" | "atLeast" | "under";

/** Low, best and high in the unit shown, worked by hand; "about" is a fifth either way. */
const DOUBTFUL: readonly (readonly [
  string,
  QuantitySpec,
  Doubt,
  readonly [number, number, number],
  string,
])[] = [
  ["20-30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20 - 30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20–30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20 to 30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20..30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20...30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["20 ft to 30", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["between 20 and 30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["from 20 to 30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["30 to 20 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["5'6\" to 6'", LENGTH, "range", [1.6764, 1.7526, 1.8288], "5 ft 6 in to 6 ft = 1.68 to 1.83 m"],
  ["5 ft 6 to 6 ft", LENGTH, "range", [1.6764, 1.7526, 1.8288], "5 ft 6 in to 6 ft = 1.68 to 1.83 m"],
  ["6 in to 2 ft", LENGTH, "range", [0.1524, 0.381, 0.6096], "6 in to 2 ft = 0.152 to 0.61 m"],
  ["5-6", LENGTH, "range", [5, 5.5, 6], "5 to 6 m"],
  ["half to one metre", LENGTH, "range", [0.5, 0.75, 1], "0.5 to 1 m"],
  ["2 or 3 days", DAYS, "range", [2, 2.5, 3], "2 to 3 days"],
  ["two to three days", DAYS, "range", [2, 2.5, 3], "2 to 3 days"],
  ["-20 to -10", CELSIUS, "range", [-20, -15, -10], "-20 to -10 C"],
  ["20 degrees to 30 degrees", CELSIUS, "range", [20, 25, 30], "20 to 30 C"],
  ["20° to 30°", CELSIUS, "range", [20, 25, 30], "20 to 30 C"],
  ["20 below to 10 below", CELSIUS, "range", [-20, -15, -10], "-20 to -10 C"],
  ["-20--10", CELSIUS, "range", [-20, -15, -10], "-20 to -10 C"],
  ["-5 to 5 C", CELSIUS, "range", [-5, 0, 5], "-5 to 5 C"],
  ["20 to 75 %", SHARE, "range", [20, 47.5, 75], "20 to 75 %"],
  ["half to three quarters", SHARE, "range", [50, 62.5, 75], "50 to 75 %"],
  ["12-24 V", VOLTAGE, "range", [12, 18, 24], "12 to 24 V"],
  ["about 20 to 30 ft", LENGTH, "range", [6.096, 7.62, 9.144], "20 to 30 ft = 6.1 to 9.1 m"],
  ["about 25 ft", LENGTH, "about", [6.096, 7.62, 9.144], "about 25 ft = 7.6 m (6.1 to 9.1 m)"],
  ["not sure, maybe 25 m", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["I don't know, 25 m", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["say 25", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["~25", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["≈ 25 m", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["roughly 25 m", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["around 25", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["approx. 25", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["ca. 25 m", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["25 m or so", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  ["25ish", LENGTH, "about", [20, 25, 30], "about 25 m (20 to 30 m)"],
  [
    "about half a mile",
    LENGTH,
    "about",
    [643.7376, 804.672, 965.6064],
    "about 0.5 mi = 805 m (644 to 966 m)",
  ],
  ["about -10", CELSIUS, "about", [-15, -10, -5], "about -10 C (-15 to -5 C)"],
  ["about 50 F", CELSIUS, "about", [5, 10, 15], "about 50 F = 10 C (5 to 15 C)"],
  ["about -65 dBm", LEVEL, "about", [-68, -65, -62], "about -65 dBm (-68 to -62 dBm)"],
  ["about 90 %", SHARE, "about", [72, 90, 100], "about 90 % (72 to 100 %)"],
  ["about 3", COUNT, "about", [2, 3, 4], "about 3 (2 to 4)"],
  ["12 steps", LENGTH, "about", [7.2, 9, 10.8], "12 steps = about 9 m (7.2 to 10.8 m)"],
  ["2 fists", ANGLE, "about", [16, 20, 24], "2 fists = about 20 deg (16 to 24 deg)"],
  ["a fist", ANGLE, "about", [8, 10, 12], "1 fist = about 10 deg (8 to 12 deg)"],
  ["25 +- 5 ft", LENGTH, "range", [6.096, 7.62, 9.144], "25 ft +- 5 ft = 7.6 m (6.1 to 9.1 m)"],
  ["25 ft ± 5", LENGTH, "range", [6.096, 7.62, 9.144], "25 ft +- 5 ft = 7.6 m (6.1 to 9.1 m)"],
  ["25+/-5 ft", LENGTH, "range", [6.096, 7.62, 9.144], "25 ft +- 5 ft = 7.6 m (6.1 to 9.1 m)"],
  ["25 m give or take 5", LENGTH, "range", [20, 25, 30], "25 m +- 5 m (20 to 30 m)"],
  ["25 m +- 10 %", LENGTH, "range", [22.5, 25, 27.5], "25 m +- 10 % (22.5 to 27.5 m)"],
  ["20 % +- 5 %", SHARE, "range", [15, 20, 25], "20 % +- 5 % (15 to 25 %)"],
  ["68 F +- 9 F", CELSIUS, "range", [15, 20, 25], "68 F +- 9 F = 20 C (15 to 25 C)"],
  ["5 +- 10 m", LENGTH, "range", [0.1, 5, 15], "5 m +- 10 m (0.1 to 15 m)"],
  ["at least 20", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["at least 20 ft", LENGTH, "atLeast", [6.096, 6.096, 20000], "at least 20 ft = 6.1 m"],
  ["20 ft or more", LENGTH, "atLeast", [6.096, 6.096, 20000], "at least 20 ft = 6.1 m"],
  ["20+ ft", LENGTH, "atLeast", [6.096, 6.096, 20000], "at least 20 ft = 6.1 m"],
  [">= 20", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["≥20 m", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["more than 20", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["at least about 20", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["about 20 or more", LENGTH, "atLeast", [20, 20, 20000], "at least 20 m"],
  ["at most about 40", LENGTH, "under", [0.1, 40, 40], "at most 40 m"],
  ["under 40", LENGTH, "under", [0.1, 40, 40], "at most 40 m"],
  ["less than 40 yd", LENGTH, "under", [0.1, 36.576, 36.576], "at most 40 yd = 36.6 m"],
  ["up to 40", LENGTH, "under", [0.1, 40, 40], "at most 40 m"],
  ["<40", LENGTH, "under", [0.1, 40, 40], "at most 40 m"],
  ["max 4 W", POWER, "under", [0, 4, 4], "at most 4 W"],
  ["4 W max.", POWER, "under", [0, 4, 4], "at most 4 W"],
  ["40 or less", LENGTH, "under", [0.1, 40, 40], "at most 40 m"],
];

describe("figures typed with a doubt", () => {
  it.each(DOUBTFUL)("%s", (text, spec, doubt, [low, best, high], heard) => {
    const read = readQuantity(text, spec);
    if (!read.ok) throw new Error(JSON.stringify(read.refusal));
    expect({ doubt: read.doubt, isExact: read.isExact, heard: read.heard }).toEqual({
      doubt,
      isExact: false,
      heard,
    });
    near(read.low, low, { within: 1e-9 });
    near(read.best, best, { within: 1e-9 });
    near(read.high, high, { within: 1e-9 });
  });
});

const ORIGINS: readonly (readonly [string, "measured" | "datasheet" | "estimate"])[] = [
  ["4 W measured", "measured"],
  ["4 W, measured", "measured"],
  ["4 W (measured)", "measured"],
  ["4 W I measured it", "measured"],
  ["4 W measured with a meter", "measured"],
  ["measured 4 W", "measured"],
  ["I measured 4 watts", "measured"],
  ["4 W (label)", "datasheet"],
  ["4 W label", "datasheet"],
  ["4 W on the label", "datasheet"],
  ["4 W from the sticker", "datasheet"],
  ["4 W data sheet", "datasheet"],
  ["4 W from the datasheet", "datasheet"],
  ["4 W per the spec sheet", "datasheet"],
  ["label says 4 W", "datasheet"],
  ["data sheet: 4 W", "datasheet"],
  ["4 guess", "estimate"],
  ["4 W guess", "estimate"],
  ["4 W, just a guess", "estimate"],
  ["4 W i think", "estimate"],
  ["I guess 4 W", "estimate"],
  ["4 W (estimate)", "estimate"],
  ["probably 4 W", "estimate"],
];

describe("words that say where a figure came from", () => {
  it.each(ORIGINS)("%s", (text, originWord) => {
    expect(readQuantity(text, POWER)).toEqual({ ...readQuantity("4 W", POWER), originWord });
  });

  it("go together with a doubt, and never change the figures", () => {
    expect(readQuantity("about 4 W, from the label", POWER)).toEqual({
      ...readQuantity("about 4 W", POWER),
      originWord: "datasheet",
    });
    expect(readQuantity("20-30 ft guess", LENGTH)).toEqual({
      ...readQuantity("20-30 ft", LENGTH),
      originWord: "estimate",
    });
  });

  it("never swallow a unit that is spelt like a small word", () => {
    const current: QuantitySpec = { dimension: "current", unit: "mA", possible: { min: 0, max: 1e5 } };
    expect(readQuantity("4 A guess", current)).toMatchObject({ best: 4000, originWord: "estimate" });
    expect(readQuantity("4 A label", current)).toMatchObject({ best: 4000, originWord: "datasheet" });
    expect(readQuantity("4, a guess", current)).toMatchObject({ best: 4, originWord: "estimate" });
    expect(readQuantity("4 mA, a guess", current)).toMatchObject({ best: 4, originWord: "estimate" });
    expect(readQuantity("5 in label", LENGTH)).toMatchObject({ best: 0.127, originWord: "datasheet" });
    expect(readQuantity("5 m in total", LENGTH)).toMatchObject({ best: 5 });
    expect(readQuantity("5 in total", LENGTH)).toMatchObject({ ok: false });
  });

  it("are no figure by themselves", () => {
    for (const text of ["measured", "label", "guess", "from the datasheet"]) {
      expect(readQuantity(text, POWER)).toMatchObject({ ok: false, refusal: { code: "not-a-number" } });
    }
  });

  it("are not seen where none was typed", () => {
    expect(Object.keys(readQuantity("4 W", POWER))).not.toContain("originWord");
  });
});

describe("the unit of the question", () => {
  it("is a slip of ours where it is not of the question's dimension", () => {
    expect(() => readQuantity("4", { ...POWER, unit: "m" })).toThrow('"m" is no unit of power');
  });

  it("may be given by any of its names", () => {
    expect(readQuantity("-20", { ...CELSIUS, unit: "°C" })).toEqual(readQuantity("-20", CELSIUS));
  });
});

describe("one figure among words", () => {
  it("is the one that is meant", () => {
    expect(readQuantityAmongWords("very windy, 180 km/h", SPEED)).toMatchObject({ ok: true });
    expect(readQuantityAmongWords("on the coast; 50 m/s", SPEED)).toMatchObject({ ok: true });
  });
  it("two figures, or a word glued to one, are not guessed at", () => {
    expect(readQuantityAmongWords("windy 3 days, 50 m/s", SPEED)).toMatchObject({ ok: false });
    expect(readQuantityAmongWords("windy, gust9", SPEED)).toMatchObject({ ok: false });
  });
});
