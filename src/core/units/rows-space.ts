/** Lengths, areas, angles and speeds. Base units: m, m2, deg, m/s. */
import { DEFINITION, PRACTICE, SI, SI_ACCEPTED, SP811, type UnitRow } from "./unit.ts";

export const LENGTH: readonly UnitRow[] = [
  {
    symbol: "m",
    singular: "metre",
    plural: "metres",
    toBase: 1,
    typed: ["meter", "meters", "mtr", "mtrs"],
    source: SI,
  },
  {
    symbol: "cm",
    singular: "centimetre",
    plural: "centimetres",
    toBase: 0.01,
    typed: ["centimeter", "centimeters", "cms"],
    source: SI,
  },
  {
    symbol: "mm",
    singular: "millimetre",
    plural: "millimetres",
    toBase: 0.001,
    typed: ["millimeter", "millimeters", "mms"],
    source: SI,
  },
  {
    symbol: "km",
    singular: "kilometre",
    plural: "kilometres",
    toBase: 1000,
    typed: ["kilometer", "kilometers", "kms"],
    source: SI,
  },
  {
    symbol: "ft",
    singular: "foot",
    plural: "feet",
    toBase: 0.3048,
    typed: ["'"],
    source: SP811,
  },
  { symbol: "in", singular: "inch", plural: "inches", toBase: 0.0254, typed: ['"', "ins"], source: SP811 },
  { symbol: "yd", singular: "yard", plural: "yards", toBase: 0.9144, typed: ["yds"], source: SP811 },
  { symbol: "mi", singular: "mile", plural: "miles", toBase: 1609.344, typed: [], source: SP811 },
  {
    symbol: "steps",
    singular: "step",
    plural: "steps",
    toBase: 0.75,
    typed: ["pace", "paces", "strides", "stride", "long steps", "big steps"],
    isRough: true,
    source: `a long step of a grown-up, ${PRACTICE}`,
  },
];

export const AREA: readonly UnitRow[] = [
  {
    symbol: "m2",
    singular: "square metre",
    plural: "square metres",
    toBase: 1,
    typed: ["square meter", "square meters", "sq m", "sqm", "m^2"],
    source: SI,
  },
  {
    symbol: "cm2",
    singular: "square centimetre",
    plural: "square centimetres",
    toBase: 1e-4,
    typed: ["square centimeter", "square centimeters", "sq cm", "sqcm", "cm^2"],
    source: SI,
  },
  {
    symbol: "mm2",
    singular: "square millimetre",
    plural: "square millimetres",
    toBase: 1e-6,
    typed: ["square millimeter", "square millimeters", "sq mm", "sqmm", "square mm", "mm^2"],
    source: SI,
  },
  {
    symbol: "ft2",
    singular: "square foot",
    plural: "square feet",
    toBase: 0.3048 * 0.3048,
    typed: ["sq ft", "sqft", "square ft", "ft^2"],
    source: SP811,
  },
  {
    symbol: "in2",
    singular: "square inch",
    plural: "square inches",
    toBase: 0.0254 * 0.0254,
    typed: ["sq in", "sqin", "square in", "in^2"],
    source: SP811,
  },
];

export const ANGLE: readonly UnitRow[] = [
  {
    symbol: "deg",
    singular: "degree",
    plural: "degrees",
    toBase: 1,
    typed: ["°", "degs"],
    source: SI_ACCEPTED,
  },
  {
    symbol: "fists",
    singular: "fist",
    plural: "fists",
    toBase: 10,
    typed: ["fists at arm's length", "fist at arm's length"],
    isRough: true,
    source: `a fist at arm's length, ${PRACTICE}`,
  },
];

export const SPEED: readonly UnitRow[] = [
  {
    symbol: "m/s",
    singular: "metre per second",
    plural: "metres per second",
    toBase: 1,
    typed: [
      "meter per second",
      "meters per second",
      "m per s",
      "mps",
      "m/sec",
      "metres a second",
      "meters a second",
    ],
    source: SI,
  },
  {
    symbol: "km/h",
    singular: "kilometre per hour",
    plural: "kilometres per hour",
    toBase: 1 / 3.6,
    typed: [
      "kilometer per hour",
      "kilometers per hour",
      "km per hour",
      "kmh",
      "kph",
      "kmph",
      "km/hr",
      "km an hour",
    ],
    source: "from the SI kilometre and the hour: 1000 m in 3600 s",
  },
  {
    symbol: "mph",
    singular: "mile per hour",
    plural: "miles per hour",
    toBase: 0.44704,
    typed: ["mi/h", "miles an hour", "mile an hour", "mi/hr"],
    source: SP811,
  },
  {
    symbol: "kn",
    singular: "knot",
    plural: "knots",
    toBase: 1852 / 3600,
    typed: ["kt", "kts", "kns"],
    source: "1852 m an hour: NIST SP 811 (2008), appendix B.8; from memory",
  },
];

export const COUNT: readonly UnitRow[] = [
  {
    symbol: "",
    singular: "piece",
    plural: "pieces",
    toBase: 1,
    typed: ["pcs", "pc", "items", "item"],
    source: DEFINITION,
  },
];
