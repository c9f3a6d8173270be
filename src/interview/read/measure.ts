/**
 * One measure inside a text: a number with its unit, or several that add up ("5 ft 6 in", "1 h 30 min"). What follows
 * it (a range, a doubt) is quantity.ts's business.
 */
import { sum } from "../../core/numerics/index.ts";
import {
  convert,
  type Dimension,
  findUnit,
  formatNumber,
  formatQuantity,
  type Unit,
} from "../../core/units/index.ts";
import { readAndPart, readNumber } from "./number.ts";
import type { Refusal } from "./refusal.ts";

export interface Term {
  readonly value: number;
  /** null for a bare number. */
  readonly unit: Unit | null;
}

/** At least one term; all of one dimension, and of one sign. */
export interface Measure {
  readonly terms: readonly Term[];
  readonly next: number;
}

/** No number begins here, or one with a reason not to take it. */
export type NotFound =
  | { readonly found: "refusal"; readonly refusal: Refusal }
  | { readonly found: "nothing" };
export type MeasureFound = { readonly found: "measure"; readonly measure: Measure } | NotFound;

export interface Wanted {
  readonly dimension: Dimension;
  readonly shown: Unit;
  /** Something that would do, for a refusal to name. */
  readonly example: string;
  readonly known: readonly string[];
}

const NOTHING: NotFound = { found: "nothing" };
const SIGN = /^(?:[-+] ?|(?:minus|negative) )/i;
const BELOW_ZERO = /^ ?(?:below zero|below)(?![a-z])/i;
const LONGEST_UNIT = 48;
/** A bare number right after a larger unit: "5 ft 6", "1 h 30". */
const SMALLER: Readonly<Record<string, string>> = { ft: "in", h: "min", min: "s", lb: "oz", m: "cm" };
/** Words that may follow a bare number without being its unit. */
const CONNECTOR = /^(?:to|and|or|till|until|through|thru|plus|give|below)(?![a-z])/i;

/** Reads the measure that begins at `at`. `hasAnd` is false where "and" parts the two ends of a range. */
export function readMeasure(text: string, at: number, wanted: Wanted, hasAnd: boolean): MeasureFound {
  const start = skipSpaces(text, at);
  const signMatch = SIGN.exec(text.slice(start));
  const isNegative = signMatch !== null && !signMatch[0].startsWith("+");
  const first = readTerm(text, start + (signMatch?.[0].length ?? 0), wanted);
  if (first.found !== "term") return first;

  const terms: Term[] = [first.term];
  let next = first.next;
  for (;;) {
    const further = readSmallerTerm(text, next, terms.at(-1)!, wanted, hasAnd);
    if (further === undefined) break;
    terms.push(further.term);
    next = further.next;
  }
  if (first.isPart && wanted.dimension === "share") {
    // "Half" of a share is a half of the whole, not half a percent.
    const frac = isNegative ? -first.term.value : first.term.value;
    const value = convert({ value: frac, from: "of 1", to: wanted.shown.symbol });
    return { found: "measure", measure: { terms: [{ value, unit: wanted.shown }], next } };
  }
  const below = wanted.dimension === "temperature" ? BELOW_ZERO.exec(text.slice(next)) : null;
  const isFlipped = isNegative || below !== null;
  const signed = isFlipped ? terms.map((term) => ({ ...term, value: -term.value })) : terms;
  return { found: "measure", measure: { terms: signed, next: next + (below?.[0].length ?? 0) } };
}

type TermFound =
  | { readonly found: "term"; readonly term: Term; readonly isPart: boolean; readonly next: number }
  | NotFound;

function readTerm(text: string, at: number, wanted: Wanted): TermFound {
  const number = readNumber(text, at);
  if (number === undefined) return NOTHING;
  const after = skipSpaces(text, number.next);
  const rest = text.slice(after);
  const unit = CONNECTOR.test(rest) ? undefined : readUnit(rest, wanted);
  if (number.isArticle && unit === undefined) return NOTHING;
  if (number.comma !== undefined) {
    return { found: "refusal", refusal: { code: "ambiguous-comma", ...number.comma } };
  }
  if (unit === undefined) {
    const word = CONNECTOR.test(rest) ? undefined : unknownUnit(rest);
    if (word !== undefined) {
      return { found: "refusal", refusal: { code: "unknown-unit", typed: word, known: wanted.known } };
    }
    return {
      found: "term",
      term: { value: number.value, unit: null },
      isPart: number.isPart,
      next: number.next,
    };
  }
  if (unit.unit.dimension !== wanted.dimension) {
    const refusal: Refusal = {
      code: "wrong-kind",
      typed: typedTerm({ value: number.value, unit: unit.unit }),
      typedDimension: unit.unit.dimension,
      wantedDimension: wanted.dimension,
      example: wanted.example,
    };
    return { found: "refusal", refusal };
  }
  const end = after + unit.length;
  const part = readAndPart(text.slice(end));
  return {
    found: "term",
    term: { value: number.value + (part?.value ?? 0), unit: unit.unit },
    isPart: false,
    next: end + (part?.length ?? 0),
  };
}

/** The "6 in" of "5 ft 6 in": a smaller unit of the same kind, and less than one of the larger. */
function readSmallerTerm(
  text: string,
  at: number,
  before: Term,
  wanted: Wanted,
  hasAnd: boolean,
): { readonly term: Term; readonly next: number } | undefined {
  const larger = before.unit;
  if (larger === null || larger.baseOffset !== undefined) return undefined;
  const join = (hasAnd ? /^(?:,? and |, ?| ?)/ : /^(?:, ?| ?)/).exec(text.slice(at))![0];
  const from = at + join.length;
  const number = readNumber(text, from);
  if (number === undefined || number.comma !== undefined || number.isArticle) return undefined;
  const after = skipSpaces(text, number.next);
  const rest = text.slice(after);
  const unit = readSmallerUnit(rest, larger, wanted);
  if (unit !== undefined) {
    if (isWholeOf(number.value * unit.unit.toBase, larger)) return undefined;
    return { term: { value: number.value, unit: unit.unit }, next: after + unit.length };
  }
  const smaller = SMALLER[larger.symbol];
  if (smaller === undefined || (/^[a-z%°]/i.test(rest) && !CONNECTOR.test(rest)) || /and/.test(join))
    return undefined;
  // "1m80" is 1.80 m; "1 m 8" could be 1.8 m or 1.08 m.
  if (larger.symbol === "m" && !/^\d\d(?!\d)/.test(text.slice(from))) return undefined;
  const bare = findUnit(smaller, wanted.dimension)!;
  if (isWholeOf(number.value * bare.toBase, larger)) return undefined;
  return { term: { value: number.value, unit: bare }, next: number.next };
}

/** True from one of the larger unit on; twelve inches miss a foot by the last digit of a product. */
const isWholeOf = (inBase: number, larger: Unit): boolean => inBase >= larger.toBase * (1 - 1e-9);

function readSmallerUnit(rest: string, larger: Unit, wanted: Wanted): UnitFound | undefined {
  // After hours "m" is minutes, whatever it is elsewhere.
  if (larger.symbol === "h" && /^m(?![a-z])/i.test(rest)) {
    return { unit: findUnit("min", "duration")!, length: 1 };
  }
  const found = readUnit(rest, wanted);
  const isSmaller = found?.unit.dimension === wanted.dimension && found.unit.toBase < larger.toBase;
  return isSmaller ? found : undefined;
}

interface UnitFound {
  readonly unit: Unit;
  readonly length: number;
}

/** The longest unit with which a text begins; of two readings as long the wanted kind wins ("5 C" as a difference). */
function readUnit(rest: string, wanted: Wanted): UnitFound | undefined {
  const found = readTableUnit(rest, wanted);
  return found?.unit.dimension === wanted.dimension ? found : (readDegrees(rest, wanted) ?? found);
}

function readTableUnit(rest: string, wanted: Wanted): UnitFound | undefined {
  for (let length = Math.min(rest.length, LONGEST_UNIT); length > 0; length--) {
    const word = rest.slice(0, length);
    if (/\s$/.test(word)) continue;
    if (/[a-z]$/i.test(word) && /^[a-z]/i.test(rest.slice(length))) continue;
    const unit = unitNamed(word, wanted.dimension);
    if (unit !== undefined) return { unit, length };
  }
  return undefined;
}

/** The wanted kind wins, but not by a change of letter case over another unit's own symbol: "10 W" is no weeks. */
function unitNamed(word: string, dimension: Dimension): Unit | undefined {
  const here = findUnit(word, dimension);
  const anywhere = findUnit(word);
  if (here === undefined || anywhere?.symbol !== word) return here ?? anywhere;
  const isTypedSo = [here.symbol, here.singular, here.plural, ...here.typed].includes(word);
  return isTypedSo ? here : anywhere;
}

/** "20 degrees" of temperature are degrees of the unit shown. */
function readDegrees(rest: string, wanted: Wanted): UnitFound | undefined {
  if (wanted.dimension !== "temperature" && wanted.dimension !== "temperatureDifference") return undefined;
  const match = /^(?:°|degrees?(?![a-z])|degs?(?![a-z]))/i.exec(rest);
  return match === null ? undefined : { unit: wanted.shown, length: match[0].length };
}

/** The word that stands where a unit should. */
function unknownUnit(rest: string): string | undefined {
  return /^[\p{L}°$€£"'%][^\s\d,;()+]*/u.exec(rest)?.[0].slice(0, 30);
}

function skipSpaces(text: string, at: number): number {
  let next = at;
  while (text[next] === " ") next++;
  return next;
}

/** The measure in the shown unit, every digit kept that was typed. */
export function inShownUnit(measure: Measure, shown: Unit, bareUnit: Unit): number {
  const parts = measure.terms.map(({ value, unit }) =>
    convert({ value, from: (unit ?? bareUnit).symbol, to: shown.symbol }),
  );
  return withoutNoise(sum(parts));
}

/** Sums and factors leave dust in the sixteenth digit; what is typed never has twelve. */
export const withoutNoise = (value: number): number => Number(value.toPrecision(12));

/** As typed, in one spelling: "5 ft 6 in". */
export function typedMeasure(measure: Measure, bareUnit: Unit): string {
  return measure.terms.map((term) => typedTerm({ value: term.value, unit: term.unit ?? bareUnit })).join(" ");
}

function typedTerm({ value, unit }: { readonly value: number; readonly unit: Unit }): string {
  return formatQuantity({ value, unit: unit.symbol, digits: 12 });
}

export const typedNumber = (value: number): string => formatNumber({ value, digits: 12 });
