import { clamp } from "../../core/numerics/index.ts";
import { convert, formatQuantity, type Unit, unitOf } from "../../core/units/index.ts";
import { withoutNoise } from "./measure.ts";
import type { QuantitySpec } from "./quantity-heard.ts";
import { type Refused, refused } from "./refusal.ts";

/** One figure of an answer, held against what is possible. */
export interface Figure {
  /** In the unit shown. */
  readonly value: number;
  /** As typed, for the refusal to quote. */
  readonly typed: string;
  /** The one unit typed; null where several add up. */
  readonly unit: Unit | null;
}

/** Room for the last digit of a conversion at the very end of the range. */
const EDGE_FRAC = 1e-9;

/** Why a figure cannot be taken, or null where it can. */
export function rangeRefusal(figure: Figure, spec: QuantitySpec, shown: Unit): Refused | null {
  const { value, typed } = figure;
  const { min, max } = spec.possible;
  if (spec.isWhole && !Number.isInteger(value)) return refused({ code: "not-a-count", typed, got: value });
  const room = EDGE_FRAC * Math.max(Math.abs(min), Math.abs(max));
  if (value >= min - room && value <= max + room) return null;
  const got = clamp(value, -1e15, 1e15);
  const facts = { typed, min, max, got, unit: shown.symbol, ...slipOf(figure, spec, shown) };
  return refused(value < min ? { code: "too-small", ...facts } : { code: "too-large", ...facts });
}

interface Slip {
  readonly didYouMean?: number;
  readonly didYouMeanTyped?: string;
}

/** What would explain the figure: a sign, a digit too many or too few, the other scale of temperature. */
function slipOf(figure: Figure, spec: QuantitySpec, shown: Unit): Slip {
  const { value, unit } = figure;
  if (unit === null || value === 0) return {};
  const { min, max } = spec.possible;
  const isPossible = (candidate: number): boolean => candidate >= min && candidate <= max;
  if (spec.dimension === "temperature") {
    const other = unitOf(shown.symbol === "F" ? "C" : "F");
    const meant = withoutNoise(convert({ value, from: other.symbol, to: shown.symbol }));
    // Typed with its unit, the scale is no slip.
    if (unit !== shown || !isPossible(meant)) return {};
    return { didYouMean: meant, didYouMeanTyped: formatQuantity({ value, unit: other.symbol, digits: 12 }) };
  }
  if (spec.dimension === "irradiation" && value > max) return monthSlip(value, isPossible, shown);
  const isSignSlip = (value < 0 && min >= 0) || (value > 0 && max <= 0);
  const isTooFar = Math.abs(value) > Math.max(Math.abs(min), Math.abs(max));
  const candidates = [10, 100, 1000].map((factor) =>
    withoutNoise(isTooFar ? value / factor : value * factor),
  );
  const meant = [...(isSignSlip ? [-value] : []), ...candidates].find(isPossible);
  if (meant === undefined) return {};
  if (unit === shown) return { didYouMean: meant };
  // In the unit typed, and only where it still reads like something one would type.
  const typed = withoutNoise(convert({ value: meant, from: shown.symbol, to: unit.symbol }));
  if (Math.abs(typed) < 1) return {};
  return {
    didYouMean: meant,
    didYouMeanTyped: formatQuantity({ value: typed, unit: unit.symbol, digits: 6 }),
  };
}

/** Tables of sun often give the sum of a month. */
function monthSlip(value: number, isPossible: (candidate: number) => boolean, shown: Unit): Slip {
  const monthly = "kWh/m2 a month";
  const inKWh = withoutNoise(convert({ value, from: shown.symbol, to: "kWh/m2 a day" }));
  const meant = withoutNoise(convert({ value: inKWh, from: monthly, to: shown.symbol }));
  if (!isPossible(meant)) return {};
  return { didYouMean: meant, didYouMeanTyped: formatQuantity({ value: inKWh, unit: monthly, digits: 12 }) };
}
