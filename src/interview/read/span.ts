import type { Dimension } from "../../core/units/index.ts";
import { type Measure, type MeasureFound, type NotFound, readMeasure, type Wanted } from "./measure.ts";

/** One measure, two ends, or a middle with what to give or take. */
export type Span =
  | { readonly kind: "one"; readonly at: Measure }
  | { readonly kind: "range"; readonly from: Measure; readonly to: Measure }
  | {
      readonly kind: "giveOrTake";
      readonly middle: Measure;
      readonly by: Measure | { readonly frac: number };
    };

export type SpanFound = { readonly found: "span"; readonly span: Span } | NotFound;

const RANGE = /^ ?(?:-|\.{2,3}|(?:to|or|till|until|through|thru|up to)(?![a-z])) ?/i;
const BETWEEN_AND = /^ ?(?:-|\.{2,3}|(?:and|to|or)(?![a-z])) ?/i;
const GIVE_OR_TAKE = /^ ?(?:\+ ?-|plus or minus|plus\/minus|give or take)(?: about)? ?/i;
const EITHER_OR: readonly Dimension[] = ["voltage", "frequency"];
const PERCENT = /^(\d+(?:[.,]\d+)?) ?(?:%|per ?cent)$/i;

/**
 * Reads a whole text as a span: nothing may be left over.
 *
 * @param isBetween  true after "between", where "and" parts the two ends
 */
export function readSpan(text: string, wanted: Wanted, isBetween: boolean): SpanFound {
  const first = readMeasure(text, 0, wanted, !isBetween);
  if (first.found !== "measure") return first;
  const { measure } = first;
  const rest = text.slice(measure.next);
  if (rest.trim() === "") return { found: "span", span: { kind: "one", at: measure } };

  const giveOrTake = GIVE_OR_TAKE.exec(rest);
  if (giveOrTake !== null) return readGiveOrTake(text, measure, measure.next + giveOrTake[0].length, wanted);
  const joiner = (isBetween ? BETWEEN_AND : RANGE).exec(rest);
  if (joiner === null) return { found: "nothing" };
  // "2 or 3 days" is a range; "12 or 24 V", "2.4 or 5 GHz" are two different things, with nothing between them.
  if (/or/i.test(joiner[0]) && EITHER_OR.includes(wanted.dimension)) return { found: "nothing" };
  const second = readLast(text, measure.next + joiner[0].length, wanted);
  if (second.found !== "measure") return second;
  return { found: "span", span: { kind: "range", from: measure, to: second.measure } };
}

function readGiveOrTake(text: string, middle: Measure, at: number, wanted: Wanted): SpanFound {
  const percent = PERCENT.exec(text.slice(at).trim());
  // In a share "20 % +- 5 %" are points of the same percent, not a twentieth of them.
  if (percent !== null && wanted.dimension !== "share") {
    const frac = Number(percent[1]!.replace(",", ".")) / 100;
    return { found: "span", span: { kind: "giveOrTake", middle, by: { frac } } };
  }
  const by = readLast(text, at, wanted);
  if (by.found !== "measure") return by;
  return { found: "span", span: { kind: "giveOrTake", middle, by: by.measure } };
}

/** A measure after which the text ends. */
function readLast(text: string, at: number, wanted: Wanted): MeasureFound {
  const found = readMeasure(text, at, wanted, true);
  const isLast = found.found !== "measure" || text.slice(found.measure.next).trim() === "";
  return isLast ? found : { found: "nothing" };
}
