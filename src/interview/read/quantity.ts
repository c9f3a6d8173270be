/**
 * A typed quantity: one figure, a range, a figure with a doubt. Everything comes out in the unit shown, with
 * low <= best <= high, and with the sentence that says what was heard.
 */
import { clamp, sum } from "../../core/numerics/index.ts";
import {
  type Dimension,
  findUnit,
  formatQuantity,
  type Unit,
  unitOf,
  unitsOf,
} from "../../core/units/index.ts";
import { type Doubt, splitDoubt } from "./doubt-words.ts";
import { heardText, rangeText } from "./heard-text.ts";
import { labelWatts } from "./label-watts.ts";
import {
  inShownUnit,
  type Measure,
  typedMeasure,
  typedNumber,
  type Wanted,
  withoutNoise,
} from "./measure.ts";
import { splitOrigin } from "./origin-words.ts";
import { type Figure, rangeRefusal } from "./possible-range.ts";
import type { QuantityHeard, QuantitySpec } from "./quantity-heard.ts";
import { type Refused, refused } from "./refusal.ts";
import { readSpan, type Span } from "./span.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

/** "About" is taken as a fifth either way: common practice, no source. */
const ABOUT_FRAC = 0.2;
/** Where a fifth of the figure means nothing, because zero is only a mark on the scale: common practice, no source. */
const ABOUT_STEP: Readonly<Partial<Record<Dimension, { readonly size: number; readonly unit: string }>>> = {
  temperature: { size: 5, unit: "K" },
  gain: { size: 3, unit: "dB" },
  level: { size: 3, unit: "dB" },
};

/**
 * A typed quantity in the unit shown, or the reason why it cannot be taken.
 *
 * @throws Error only for a spec whose unit is not one of its dimension: a slip of ours, whatever was typed
 */
export function readQuantity(text: string, spec: QuantitySpec): QuantityHeard | Refused {
  const shown = findUnit(spec.unit, spec.dimension);
  if (shown === undefined) throw new Error(`"${spec.unit}" is no unit of ${spec.dimension}`);
  const plain = plainText(text);
  if (plain === "") return refused({ code: "empty" });
  const notANumber = refused({ code: "not-a-number", typed: quotable(text) });
  if (text.length > LONGEST_ANSWER) return notANumber;

  const { rest: figures, originWord } = splitOrigin(plain.replace(/[.,;:!?]+$/, "").trim());
  const { rest, doubt, isBetween } = splitDoubt(isPlainNumber(spec) ? withoutCurrency(figures) : figures);
  const asked = spec.dimension === "power" ? labelWatts(rest) : rest;
  const found = readSpan(asked, wantedOf(spec, shown), isBetween);
  if (found.found === "nothing") return notANumber;
  if (found.found === "refusal") return refused(found.refusal);
  const heard = weigh(found.span, { doubt, spec, shown });
  return heard.ok && originWord !== undefined ? { ...heard, originWord } : heard;
}

/** The same where words and commas may stand round the one figure that is meant: "very windy, 180 km/h". */
export function readQuantityAmongWords(text: string, spec: QuantitySpec): QuantityHeard | Refused {
  const whole = readQuantity(text, spec);
  if (whole.ok || whole.refusal.code !== "not-a-number") return whole;
  // a second part with a digit may be what was meant: then nothing is guessed
  const told = text.split(/[,;:]\s+|\s+-\s+/).filter((part) => /\d/.test(part));
  if (told.length !== 1 || told[0] === text) return whole;
  const part = readQuantity(told[0]!, spec);
  return part.ok ? part : whole;
}

/** A number that is no count of things may be a price, and prices are typed with their currency. */
const isPlainNumber = (spec: QuantitySpec): boolean => spec.dimension === "count" && !spec.isWhole;

function withoutCurrency(text: string): string {
  return text
    .replace(/[$€£¥]/g, " ")
    .replace(/(?<=[\d ])(?:[A-Z]{3}|dollars?|euros?|pounds?)$/, " ")
    .replace(/\s+/g, " ")
    .trim();
}

function wantedOf(spec: QuantitySpec, shown: Unit): Wanted {
  const others = unitsOf(spec.dimension).filter((unit) => unit !== shown);
  const value = clamp(10, spec.possible.min, spec.possible.max);
  return {
    dimension: spec.dimension,
    shown,
    example: formatQuantity({ value, unit: shown.symbol }),
    known: [shown, ...others].map((unit) => unit.symbol).filter((symbol) => symbol !== ""),
  };
}

interface Weighing {
  readonly doubt: Doubt | undefined;
  readonly spec: QuantitySpec;
  readonly shown: Unit;
}

function weigh(span: Span, weighing: Weighing): QuantityHeard | Refused {
  switch (span.kind) {
    case "one":
      return weighOne(span.at, weighing);
    case "range":
      return weighRange(span.from, span.to, weighing);
    case "giveOrTake":
      return weighGiveOrTake(span.middle, span.by, weighing);
  }
}

function weighOne(at: Measure, { doubt, spec, shown }: Weighing): QuantityHeard | Refused {
  const bare = bareUnit([at], shown);
  const figure = figureOf(at, bare, shown);
  const refusal = rangeRefusal(figure, spec, shown);
  if (refusal !== null) return refusal;
  const isRough = at.terms.some((term) => term.unit?.isRough);
  const kind = doubt ?? (isRough ? "about" : "none");
  const half = kind === "about" ? aboutHalf(figure.value, spec, shown) : 0;
  const ends = endsAround(figure.value, half, spec);
  return heardOf({
    ends: {
      ...ends,
      ...(kind === "atLeast" ? { high: Math.max(spec.possible.max, figure.value) } : {}),
      ...(kind === "under" ? { low: Math.min(spec.possible.min, figure.value) } : {}),
    },
    doubt: kind,
    measures: [at],
    typed: figure.typed,
    hasMiddle: false,
    isRough: isRough && doubt === undefined,
    bare,
    shown,
  });
}

function weighRange(from: Measure, to: Measure, { spec, shown }: Weighing): QuantityHeard | Refused {
  const bare = bareUnit([to, from], shown);
  const [lower, upper] = [from, to]
    .map((end) => figureOf(end, bare, shown))
    .sort((a, b) => a.value - b.value) as [Figure, Figure];
  const refusal = rangeRefusal(lower, spec, shown) ?? rangeRefusal(upper, spec, shown);
  if (refusal !== null) return refusal;
  const middle = withoutNoise((lower.value + upper.value) / 2);
  return heardOf({
    ends: { low: lower.value, best: clamp(middle, lower.value, upper.value), high: upper.value },
    doubt: "range",
    measures: [from, to],
    typed: rangeText(lower.typed, upper.typed),
    hasMiddle: false,
    isRough: false,
    bare,
    shown,
  });
}

function weighGiveOrTake(
  middle: Measure,
  by: Measure | { readonly frac: number },
  { spec, shown }: Weighing,
): QuantityHeard | Refused {
  const measures = "frac" in by ? [middle] : [middle, by];
  const bare = bareUnit(measures, shown);
  const figure = figureOf(middle, bare, shown);
  const refusal = rangeRefusal(figure, spec, shown);
  if (refusal !== null) return refusal;
  const half = Math.abs("frac" in by ? figure.value * by.frac : sizeInShownUnit(by, bare, shown));
  const byTyped = "frac" in by ? `${typedNumber(by.frac * 100)} %` : typedMeasure(by, bare);
  return heardOf({
    ends: endsAround(figure.value, half, spec),
    doubt: "range",
    measures,
    typed: `${figure.typed} +- ${byTyped}`,
    hasMiddle: true,
    isRough: false,
    bare,
    shown,
  });
}

/** The unit of a bare number: that of the other end where one was typed there, or the one shown. */
function bareUnit(measures: readonly Measure[], shown: Unit): Unit {
  for (const measure of measures) {
    const { unit } = measure.terms[0]!;
    if (unit !== null) return unit;
  }
  return shown;
}

function figureOf(measure: Measure, bare: Unit, shown: Unit): Figure {
  const unit = measure.terms.length === 1 ? (measure.terms[0]!.unit ?? bare) : null;
  return { value: inShownUnit(measure, shown, bare), typed: typedMeasure(measure, bare), unit };
}

/** A difference: the zero of a scale has no part in it. */
function sizeInShownUnit(measure: Measure, bare: Unit, shown: Unit): number {
  return sum(measure.terms.map(({ value, unit }) => (value * (unit ?? bare).toBase) / shown.toBase));
}

function aboutHalf(best: number, spec: QuantitySpec, shown: Unit): number {
  const step = ABOUT_STEP[spec.dimension];
  if (step === undefined) return Math.abs(best) * ABOUT_FRAC;
  return (step.size * unitOf(step.unit).toBase) / shown.toBase;
}

/** Both ends stay within what is possible: the doubt was reckoned, not typed, so it refuses nothing. */
function endsAround(best: number, half: number, spec: QuantitySpec): Ends {
  const { min, max } = spec.possible;
  const low = withoutNoise(clamp(best - half, min, max));
  const high = withoutNoise(clamp(best + half, min, max));
  const [wholeLow, wholeHigh] = spec.isWhole ? [Math.floor(low), Math.ceil(high)] : [low, high];
  return { low: Math.min(wholeLow, best), best, high: Math.max(wholeHigh, best) };
}

interface Ends {
  readonly low: number;
  readonly best: number;
  readonly high: number;
}

function heardOf(given: {
  readonly ends: Ends;
  readonly doubt: QuantityHeard["doubt"];
  readonly measures: readonly Measure[];
  readonly typed: string;
  readonly hasMiddle: boolean;
  readonly isRough: boolean;
  readonly bare: Unit;
  readonly shown: Unit;
}): QuantityHeard {
  const { ends, doubt, measures, bare, shown } = given;
  const terms = measures.flatMap((measure) => measure.terms);
  const isShownUnit = terms.every(({ unit }) => (unit ?? bare) === shown);
  return {
    ok: true,
    ...ends,
    typedUnit: (measures[0]!.terms[0]!.unit ?? bare).symbol,
    isExact: doubt === "none",
    doubt,
    heard: heardText({ ...given, isShownUnit }),
  };
}
