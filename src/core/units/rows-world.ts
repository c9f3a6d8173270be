/**
 * Time, weight, weather and shares.
 * Base units: h, kg, Pa, C, K, %/K, kWh/m2 a day, fraction.
 */
import { DEFINITION, PRACTICE, SI, SI_ACCEPTED, SP811, type UnitRow } from "./unit.ts";

const POUND_KG = 0.45359237;
const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

export const DURATION: readonly UnitRow[] = [
  {
    symbol: "s",
    singular: "second",
    plural: "seconds",
    toBase: 1 / 3600,
    typed: ["sec", "secs"],
    source: SI,
  },
  {
    symbol: "min",
    singular: "minute",
    plural: "minutes",
    toBase: 1 / 60,
    typed: ["mins"],
    source: SI_ACCEPTED,
  },
  { symbol: "h", singular: "hour", plural: "hours", toBase: 1, typed: ["hr", "hrs"], source: SI_ACCEPTED },
  { symbol: "days", singular: "day", plural: "days", toBase: 24, typed: ["d"], source: SI_ACCEPTED },
  {
    symbol: "weeks",
    singular: "week",
    plural: "weeks",
    toBase: 168,
    typed: ["wk", "wks", "w"],
    source: DEFINITION,
  },
  {
    symbol: "fortnights",
    singular: "fortnight",
    plural: "fortnights",
    toBase: 336,
    typed: [],
    source: DEFINITION,
  },
  {
    symbol: "months",
    singular: "month",
    plural: "months",
    toBase: (365 * 24) / 12,
    typed: ["mo", "mos", "mth", "mths"],
    source: `a twelfth of the 365-day year, ${PRACTICE}`,
  },
  {
    symbol: "years",
    singular: "year",
    plural: "years",
    toBase: 365 * 24,
    typed: ["yr", "yrs", "y"],
    source: SP811,
  },
];

export const MASS: readonly UnitRow[] = [
  {
    symbol: "kg",
    singular: "kilogram",
    plural: "kilograms",
    toBase: 1,
    typed: ["kgs", "kilo", "kilos", "kilogramme", "kilogrammes"],
    source: SI,
  },
  {
    symbol: "g",
    singular: "gram",
    plural: "grams",
    toBase: 0.001,
    typed: ["gramme", "grammes"],
    source: SI,
  },
  { symbol: "lb", singular: "pound", plural: "pounds", toBase: POUND_KG, typed: ["lbs"], source: SP811 },
  { symbol: "oz", singular: "ounce", plural: "ounces", toBase: POUND_KG / 16, typed: ["ozs"], source: SP811 },
];

export const PRESSURE: readonly UnitRow[] = [
  { symbol: "Pa", singular: "pascal", plural: "pascals", toBase: 1, typed: ["N/m2"], source: SI },
  {
    symbol: "hPa",
    singular: "hectopascal",
    plural: "hectopascals",
    toBase: 100,
    typed: ["mbar", "millibar", "millibars"],
    source: SI,
  },
  { symbol: "kPa", singular: "kilopascal", plural: "kilopascals", toBase: 1e3, typed: ["kN/m2"], source: SI },
  { symbol: "MPa", singular: "megapascal", plural: "megapascals", toBase: 1e6, typed: ["N/mm2"], source: SI },
  { symbol: "bar", singular: "bar", plural: "bars", toBase: 1e5, typed: [], source: SP811 },
  {
    symbol: "psi",
    singular: "pound per square inch",
    plural: "pounds per square inch",
    toBase: (POUND_KG * STANDARD_GRAVITY_M_PER_S2) / (0.0254 * 0.0254),
    typed: ["lb/in2", "lbf/in2", "lb/sq in", "lbs/sq in"],
    source: SP811,
  },
  {
    symbol: "psf",
    singular: "pound per square foot",
    plural: "pounds per square foot",
    toBase: (POUND_KG * STANDARD_GRAVITY_M_PER_S2) / (0.3048 * 0.3048),
    typed: ["lb/ft2", "lbf/ft2", "lb/sq ft", "lbs/sq ft"],
    source: SP811,
  },
];

export const TEMPERATURE: readonly UnitRow[] = [
  {
    symbol: "C",
    singular: "degree Celsius",
    plural: "degrees Celsius",
    toBase: 1,
    typed: ["°C", "deg C", "degs C", "degrees C", "degree C", "celsius", "centigrade", "degrees centigrade"],
    source: SI,
  },
  {
    symbol: "F",
    singular: "degree Fahrenheit",
    plural: "degrees Fahrenheit",
    toBase: 5 / 9,
    baseOffset: (-32 * 5) / 9,
    typed: ["°F", "deg F", "degs F", "degrees F", "degree F", "fahrenheit", "farenheit", "degrees farenheit"],
    source: SP811,
  },
];

export const TEMPERATURE_DIFFERENCE: readonly UnitRow[] = [
  {
    symbol: "K",
    singular: "kelvin",
    plural: "kelvins",
    toBase: 1,
    typed: ["°K", "deg K", "degrees K"],
    source: SI,
  },
  {
    symbol: "C deg",
    singular: "Celsius degree",
    plural: "Celsius degrees",
    toBase: 1,
    typed: ["C", "°C", "deg C", "degrees C", "degree C", "celsius", "degrees celsius", "degree celsius"],
    source: SI,
  },
  {
    symbol: "F deg",
    singular: "Fahrenheit degree",
    plural: "Fahrenheit degrees",
    toBase: 5 / 9,
    typed: [
      "F",
      "°F",
      "deg F",
      "degrees F",
      "degree F",
      "fahrenheit",
      "degrees fahrenheit",
      "degree fahrenheit",
    ],
    source: SP811,
  },
];

export const TEMPERATURE_COEFFICIENT: readonly UnitRow[] = [
  {
    symbol: "%/K",
    singular: "percent per kelvin",
    plural: "percent per kelvin",
    toBase: 1,
    typed: [
      "%/C",
      "%/°C",
      "%/deg C",
      "percent per degree",
      "%/degree",
      "percent/C",
      "percent per degree celsius",
    ],
    source: DEFINITION,
  },
];

export const IRRADIATION: readonly UnitRow[] = [
  {
    symbol: "kWh/m2 a day",
    singular: "kilowatt-hour per square metre a day",
    plural: "kilowatt-hours per square metre a day",
    toBase: 1,
    typed: [
      "kWh/m2/day",
      "kWh/m2/d",
      "kWh/m2",
      "kWh/(m2 day)",
      "kWh/m2 day",
      "kWh/m2 each day",
      "kWh/sq m/day",
      "kWh",
      "peak sun hours",
      "peak sun hour",
      "sun hours",
      "psh",
      "peak sun hours a day",
    ],
    source: DEFINITION,
  },
  {
    symbol: "Wh/m2 a day",
    singular: "watt-hour per square metre a day",
    plural: "watt-hours per square metre a day",
    toBase: 1e-3,
    typed: ["Wh/m2/day", "Wh/m2/d", "Wh/m2", "Wh/m2 day"],
    source: DEFINITION,
  },
  {
    symbol: "kWh/m2 a month",
    singular: "kilowatt-hour per square metre a month",
    plural: "kilowatt-hours per square metre a month",
    toBase: 12 / 365,
    typed: ["kWh/m2/month", "kWh/m2/mo", "kWh/m2 month", "kWh a month", "kWh/month"],
    source: `a month is a twelfth of the 365-day year, ${PRACTICE}`,
  },
  {
    symbol: "MJ/m2 a day",
    singular: "megajoule per square metre a day",
    plural: "megajoules per square metre a day",
    toBase: 1 / 3.6,
    typed: ["MJ/m2/day", "MJ/m2/d", "MJ/m2", "MJ/m2 day", "MJ"],
    source: `1 kWh is 3.6 MJ: ${SP811}`,
  },
];

export const SHARE: readonly UnitRow[] = [
  {
    symbol: "%",
    singular: "percent",
    plural: "percent",
    toBase: 0.01,
    typed: ["per cent", "pct", "percents"],
    source: DEFINITION,
  },
  {
    symbol: "of 1",
    singular: "as a fraction of one",
    plural: "as a fraction of one",
    toBase: 1,
    typed: ["fraction", "as a fraction", "of one"],
    source: DEFINITION,
  },
];
