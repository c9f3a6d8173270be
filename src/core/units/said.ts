import { convert } from "./convert.ts";
import { formatNumber } from "./format.ts";

/** The units a reader thinks in. */
export type UnitSystem = "metric" | "us";

/** How exactly the metric figure is written, and which way another system's may not err. */
export interface Exactness {
  /** Decimals, 0 to 12; trailing zeros are dropped. */
  readonly places?: number;
  /** Significant digits instead, 1 to 15. */
  readonly digits?: number;
  /** Trailing zeros stay: columns and labels. */
  readonly keepsZeros?: true;
  /** "up" for what must not fall short (clearances, depths, what is to be borne), "down" for what must not be passed. */
  readonly safe?: "up" | "down";
}

interface Other {
  readonly symbol: string;
  readonly of: (metric: number) => number;
  /** No finer step is read off a tape, a scale or a sky. */
  readonly finest: number;
  /** True for what is bought and fitted by its very size. */
  readonly isExact?: true;
}

interface Kind {
  readonly symbol: string;
  readonly us: Other;
}

const by = (from: string, to: string) => (value: number) => convert({ value, from, to });
const footM = convert({ value: 1, from: "ft", to: "m" });
const inchM = convert({ value: 1, from: "in", to: "m" });
/** @source standard gravity, 9.80665 m/s2: NIST SP 811 (2008), appendix B.8, exact; from memory */
const poundForceN = convert({ value: 9.80665, from: "lb", to: "kg" });
/** @source a US gallon is 231 cubic inches: NIST SP 811 (2008), appendix B.8; from memory */
const gallonL = 1000 * 231 * inchM ** 3;

const feet: Other = { symbol: "ft", of: by("m", "ft"), finest: 0.1 };

const KINDS = {
  /** Heights, depths, lengths. */
  m: { symbol: "m", us: feet },
  /** Along the ground: far ones are miles. */
  "m away": { symbol: "m", us: feet },
  km: { symbol: "km", us: { symbol: "mi", of: by("km", "mi"), finest: 0.1 } },
  mm: { symbol: "mm", us: { symbol: "in", of: by("mm", "in"), finest: 0.001, isExact: true } },
  m2: { symbol: "m2", us: { symbol: "sq ft", of: by("m2", "ft2"), finest: 0.1 } },
  cm2: { symbol: "cm2", us: { symbol: "sq in", of: by("cm2", "in2"), finest: 1 } },
  litres: { symbol: "litres", us: { symbol: "gallons", of: (l) => l / gallonL, finest: 1 } },
  /** What a box holds. */
  "litres of room": {
    symbol: "litres",
    us: { symbol: "cu ft", of: (l) => l / 1000 / footM ** 3, finest: 0.1 },
  },
  kg: { symbol: "kg", us: { symbol: "lb", of: by("kg", "lb"), finest: 0.1 } },
  N: { symbol: "N", us: { symbol: "lbf", of: (n) => n / poundForceN, finest: 0.1 } },
  Nm: { symbol: "Nm", us: { symbol: "lb-ft", of: (nm) => nm / poundForceN / footM, finest: 1 } },
  "m/s": { symbol: "m/s", us: { symbol: "mph", of: by("m/s", "mph"), finest: 1 } },
  C: { symbol: "C", us: { symbol: "F", of: by("C", "F"), finest: 1, isExact: true } },
  "°C": { symbol: "°C", us: { symbol: "°F", of: by("C", "F"), finest: 1, isExact: true } },
  /** A difference of temperatures. */
  K: { symbol: "K", us: { symbol: "°F", of: by("K", "F deg"), finest: 1 } },
  /** So many to each metre; the reader's word for it stands in the sentence. */
  "a metre": { symbol: "a metre", us: { symbol: "a foot", of: (perM) => perM * footM, finest: 1 } },
} as const satisfies Readonly<Record<string, Kind>>;

export type SaidUnit = keyof typeof KINDS;

/** How a reader is told quantities. Every figure with a unit that differs between systems goes through one of these. */
export interface Saying {
  readonly system: UnitSystem;
  /** "3 m", "10 ft": a metric value in the reader's units; a number for `how` is so many decimals. */
  (value: number, unit: SaidUnit, how?: number | Exactness): string;
  /** The same without its unit, for columns and where the unit is said elsewhere: "3", "10". */
  readonly bare: (value: number, unit: SaidUnit, how?: number | Exactness) => string;
  /** The unit alone: "m", "ft". */
  readonly symbol: (unit: SaidUnit) => string;
  /** Words that differ as a whole: "metre stick", "yardstick"; figures printed both ways in a code or a trade. */
  readonly either: (metric: string, us: string) => string;
}

/**
 * Quantities in the units of a reader. The metric figure is written as exactly as asked. The other system's is the
 * roundest one that the same metric figure could stand for, so that 3 m are 10 ft and never 9.84 ft, and what was answered
 * as 13 ft comes back as 13 ft; on the side that is safe, where one is named.
 *
 * @throws RangeFault as `formatNumber`
 * @source factors: see the table of units
 * @example sayingIn("us")(3, "m", 1)  // "10 ft"
 */
export function sayingIn(system: UnitSystem): Saying {
  const isUs = system === "us";
  const said = (value: number, unit: SaidUnit, how: number | Exactness = 0): string => {
    const kind: Kind = KINDS[unit];
    if (!isUs) return `${metricNumber(value, exactness(how))} ${kind.symbol}`;
    const span = spanOf(value, exactness(how));
    if (unit === "m") return lengthText(span);
    if (unit === "m away") return distanceText(span);
    return `${number(otherNumber(span, kind.us))} ${kind.us.symbol}`;
  };
  const bare = (value: number, unit: SaidUnit, how: number | Exactness = 0): string => {
    const exact = exactness(how);
    return isUs
      ? number(otherNumber(spanOf(value, exact), (KINDS[unit] as Kind).us))
      : metricNumber(value, exact);
  };
  return Object.assign(said, {
    system,
    bare,
    symbol: (unit: SaidUnit): string => (isUs ? KINDS[unit].us.symbol : KINDS[unit].symbol),
    either: (metric: string, us: string): string => (isUs ? us : metric),
  });
}

const exactness = (how: number | Exactness): Exactness => (typeof how === "number" ? { places: how } : how);

function metricNumber(value: number, { places = 0, digits, keepsZeros }: Exactness): string {
  if (digits !== undefined) return formatNumber({ value, digits });
  const text = value.toFixed(places);
  if (keepsZeros) return Number(text) === 0 ? text.replace("-", "") : text;
  return number(Number(text));
}

/** Without exponent, noise of arithmetic or trailing zeros. */
function number(value: number): string {
  const text = value.toFixed(6).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}

/** A metric figure as all that it may stand for. */
interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly safe: "up" | "down" | null;
  /** Its decimals say how fine a tape is, not how many digits are meant. */
  readonly isByPlaces: boolean;
}

function spanOf(value: number, { places = 0, digits, safe }: Exactness): Span {
  const step =
    digits === undefined
      ? 10 ** -places
      : 10 ** ((value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)))) - digits + 1);
  const isByPlaces = digits === undefined;
  if (safe === "up") return { value, low: value, high: value + step, safe, isByPlaces };
  if (safe === "down") return { value, low: value - step, high: value, safe, isByPlaces };
  return { value, low: value - step / 2, high: value + step / 2, safe: null, isByPlaces };
}

const scaled = (span: Span, of: (metric: number) => number): Span => ({
  ...span,
  value: of(span.value),
  low: of(span.low),
  high: of(span.high),
});

/** What is large is known no better than this, however many decimals it is written with: 5329 N are 1200 lbf. */
const KNOWN_FRAC = 1 / 200;

function widened(span: Span): Span {
  const { value, low, high, safe } = span;
  const slack = (safe === null ? KNOWN_FRAC / 2 : KNOWN_FRAC) * Math.abs(value);
  return {
    ...span,
    low: safe === "up" ? low : Math.min(low, value - slack),
    high: safe === "down" ? high : Math.max(high, value + slack),
  };
}

function otherNumber(span: Span, { of, finest, isExact }: Other): number {
  const other = scaled(span.isByPlaces && !isExact ? widened(span) : span, of);
  const { value, isIn } = roundest(other, finest);
  return isIn ? value : onGrid(other, finest);
}

const EPSILON = 1e-9;

function onGrid({ value, safe }: Span, step: number): number {
  const steps = value / step;
  const whole =
    safe === "up"
      ? Math.ceil(steps - EPSILON)
      : safe === "down"
        ? Math.floor(steps + EPSILON)
        : Math.round(steps);
  return whole * step;
}

/** The multiple of the largest step, of tens, fives and ones of each decade, that lies within the span. */
function roundest(span: Span, finest: number): { readonly value: number; readonly isIn: boolean } {
  const { low, high } = span;
  const top = Math.ceil(Math.log10(Math.max(Math.abs(low), Math.abs(high), finest)));
  const bottom = Math.floor(Math.log10(finest) + EPSILON);
  for (let decade = top; decade >= bottom; decade -= 1) {
    for (const step of [10 ** decade, 5 * 10 ** (decade - 1)]) {
      if (step < finest * (1 - EPSILON)) continue;
      const value = onGrid(span, step);
      const slack = EPSILON * Math.max(1, Math.abs(value));
      if (value >= low - slack && value <= high + slack) return { value, isIn: true };
    }
  }
  return { value: span.value, isIn: false };
}

/** Below this inches alone are said. */
const INCHES_BELOW_FT = 2;
/** From here on nobody counts inches. */
const WHOLE_FEET_FROM_FT = 100;

/** "18 in", "3 ft 2 in", "10 ft", "250 ft". */
function lengthText(spanM: Span): string {
  const span = scaled(spanM, feet.of);
  const whole = roundest(span, 1);
  const isCoarse = span.high - span.low >= 1;
  const isShort = span.value !== 0 && Math.abs(span.value) < INCHES_BELOW_FT - 0.5 / 12;
  if (whole.isIn && (isCoarse || !isShort)) return `${number(whole.value)} ft`;
  if (Math.abs(span.value) >= WHOLE_FEET_FROM_FT) return `${number(onGrid(span, 1))} ft`;
  const inches = scaled(span, (ft) => 12 * ft);
  if (isShort) {
    const finest = Math.abs(inches.value) < 3 ? 0.1 : 1;
    return `${number(otherNumber(inches, { symbol: "in", of: (value) => value, finest }))} in`;
  }
  const grid = [6, 3, 1].map((step) => onGrid(inches, step));
  const total = Math.round(
    grid.find((value) => value >= inches.low - EPSILON && value <= inches.high + EPSILON) ?? grid.at(-1)!,
  );
  const sign = total < 0 ? "-" : "";
  const [ft, left] = [Math.floor(Math.abs(total) / 12), Math.abs(total) % 12];
  return `${sign}${ft} ft${left === 0 ? "" : ` ${left} in`}`;
}

/** From a quarter mile on, miles where they are as round a figure as feet; from a mile on, always. */
const MILES_FROM_FT = 1320;
const ONLY_MILES_FROM_FT = 5280;

const digitsOf = (value: number): number =>
  number(value)
    .replace(/^[-0.]+|\./g, "")
    .replace(/0+$/, "").length;

/** "250 ft", "0.5 mi", "12 mi". */
function distanceText(spanM: Span): string {
  const wide = widened(spanM);
  const ft = Math.abs(feet.of(spanM.value));
  if (ft < WHOLE_FEET_FROM_FT) return lengthText(spanM);
  const inFeet = otherNumber(wide, { ...feet, finest: 1 });
  if (ft < MILES_FROM_FT) return `${number(inFeet)} ft`;
  const inMiles = otherNumber(wide, { symbol: "mi", of: by("m", "mi"), finest: 0.001 });
  return ft >= ONLY_MILES_FROM_FT || digitsOf(inMiles) < digitsOf(inFeet)
    ? `${number(inMiles)} mi`
    : `${number(inFeet)} ft`;
}
