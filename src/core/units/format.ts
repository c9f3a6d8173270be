import { within } from "../numerics/index.ts";
import { unitOf } from "./find.ts";

interface Shown {
  readonly value: number;
  /** Symbol. */
  readonly unit: string;
  /** Significant digits, 1 to 15; left out: three, or two below 10 where that is within 1 %. */
  readonly digits?: number;
}

const LARGEST = 1e15;
const SMALLEST = 1e-12;

/**
 * A number as people read it: no exponent, no trailing zeros, no thousands separator, "." before decimals.
 *
 * @param value   any unit, -1e15 to 1e15; below 1e-12 in size it is 0
 * @param digits  significant digits, 1 to 15; left out: three, or two below 10 where that is within 1 %
 * @accuracy half a unit in the last digit kept; within 1 % where digits are left out
 * @throws RangeFault outside the ranges above
 */
export function formatNumber(shown: { readonly value: number; readonly digits?: number }): string {
  const value = within("value", shown.value, -LARGEST, LARGEST);
  if (Math.abs(value) < SMALLEST) return "0";
  const digits = shown.digits === undefined ? usualDigits(value) : within("digits", shown.digits, 1, 15);
  const rounded = Number(value.toPrecision(digits));
  const exponent = Math.floor(Math.log10(Math.abs(rounded)));
  const decimals = Math.min(Math.max(digits - 1 - exponent, 0), 100);
  const text = rounded.toFixed(decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

function usualDigits(value: number): number {
  if (Math.abs(value) >= 10) return 3;
  return Math.abs(Number(value.toPrecision(2)) - value) <= 0.01 * Math.abs(value) ? 2 : 3;
}

/**
 * A quantity as it is shown and as a reader can type it back: "9.1 m", "1 week", "3" for a bare count.
 *
 * @throws RangeFault, Error as `formatNumber` and `unitOf`
 * @example formatQuantity({ value: 9.144, unit: "m" })  // "9.1 m"
 */
export function formatQuantity(shown: Shown): string {
  const unit = unitOf(shown.unit);
  const number = formatNumber(shown);
  if (unit.symbol === "") return number;
  // Symbols that are words take the singular: "1 week".
  const symbol = unit.symbol === unit.plural && isOne(number) ? unit.singular : unit.symbol;
  return `${number} ${symbol}`;
}

/**
 * A quantity as it is said aloud, for the face that is read by ear: "9.1 metres", "minus 20 degrees Celsius".
 *
 * @throws RangeFault, Error as `formatNumber` and `unitOf`
 */
export function quantityWords(shown: Shown): string {
  const unit = unitOf(shown.unit);
  const number = formatNumber(shown);
  const said = number.replace("-", "minus ");
  if (unit.symbol === "") return said;
  return `${said} ${isOne(number) ? unit.singular : unit.plural}`;
}

const isOne = (number: string): boolean => number === "1" || number === "-1";
