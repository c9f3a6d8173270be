import { dimensionWords, formatNumber, formatQuantity } from "../../core/units/index.ts";
import type { Refusal } from "./refusal.ts";

/** The question a refusal is about. */
export interface RefusedQuestion {
  /** Its short name: "Distance". */
  readonly label: string;
  /** What would do: "30 ft". */
  readonly example: string;
}

/** One sentence, two short ones at most: what stands in the way, and what to type instead. Never blames. */
export function refusalText(refusal: Refusal, about: RefusedQuestion): string {
  const the = `the ${lowerFirst(about.label)}`;
  const { example } = about;
  switch (refusal.code) {
    case "empty":
      return `Type ${the}, for example ${example}. If you are not sure, type: not sure.`;
    case "not-a-number":
      return `There is no figure for ${the} in "${refusal.typed}". Type it like this: ${example}.`;
    case "unknown-unit":
      return refusal.known.length === 0
        ? `I don't know "${refusal.typed}" here. Type only the number, for example ${example}.`
        : `I don't know the unit "${refusal.typed}". For ${the} use ${listed(refusal.known, "or")}.`;
    case "wrong-kind":
      return `${refusal.typed} is ${dimensionWords(refusal.typedDimension)}. This asks for ${dimensionWords(refusal.wantedDimension)}, for example ${example || refusal.example}.`;
    case "too-small":
    case "too-large":
      return rangeText(refusal, about.label);
    case "ambiguous-comma":
      return `"${refusal.typed}" can be read two ways. Type ${refusal.asThousands} or ${refusal.asDecimal}.`;
    case "not-an-option":
      return `"${refusal.typed}" is not in the list. Type ${picks(refusal.options)}.`;
    case "several-options":
      return `"${refusal.typed}" fits ${listed(refusal.matches.map(quoted), "and")}. Type the one you mean.`;
    case "no-option-said":
      return `"${refusal.typed}" does not say which one it is. Type ${picks(refusal.options)}.`;
    case "asked-back":
      return `"${refusal.typed}" is a question. Type why or how to be told more, or answer with ${picks(refusal.options)}.`;
    case "not-a-time":
      return `I could not read "${refusal.typed}" as a time of day. Type it like this: ${example}.`;
    case "ambiguous-time":
      return `"${refusal.typed}" can be read two ways. Type ${listed(refusal.readings, "or")}.`;
    case "not-a-place":
      return `I could not find "${refusal.typed}". Type a town nearby or coordinates, for example ${example}.`;
    case "not-a-count":
      return `${upperFirst(about.label)} counts whole things, and ${refusal.typed} is not whole. Type ${wholeNeighbours(refusal.got)}.`;
  }
}

type OutOfRange = Extract<Refusal, { readonly code: "too-small" | "too-large" }>;

function rangeText(refusal: OutOfRange, label: string): string {
  const { min, max, unit, got } = refusal;
  const show = (value: number, digits: number): string => formatQuantity({ value, unit, digits });
  const isLow = refusal.code === "too-small";
  const inShown = refusal.typed === show(got, 12) ? "" : ` (${apart(got, isLow ? min : max, unit)})`;
  const side = isLow ? "below" : "above";
  const limits = `${formatNumber({ value: min, digits: 12 })} and ${show(max, 12)}`;
  const facts = `${upperFirst(label)} must be between ${limits}; ${refusal.typed}${inShown} is ${side} that.`;
  if (refusal.didYouMean === undefined) return facts;
  const meant = formatQuantity({ value: refusal.didYouMean, unit });
  const typed = refusal.didYouMeanTyped;
  return `${facts} Did you mean ${typed === undefined ? show(refusal.didYouMean, 6) : `${typed} (${meant})`}?`;
}

/** What was typed, with as many digits as it takes to look different from the limit it breaks. */
function apart(got: number, limit: number, unit: string): string {
  const shown = [3, 6, 12].map((digits) => formatQuantity({ value: got, unit, digits }));
  const shownLimit = formatQuantity({ value: limit, unit, digits: 12 });
  return shown.find((text) => text !== shownLimit) ?? shown.at(-1)!;
}

function wholeNeighbours(got: number): string {
  const below = Math.floor(got);
  return below < 0 ? String(below + 1) : `${below} or ${below + 1}`;
}

/** A short list is said again; a long one stands on the screen. */
function picks(options: readonly string[]): string {
  if (options.length > 4) return `a number from 1 to ${options.length}, or the first words of one of them`;
  return listed(
    options.map((option, i) => `${i + 1} for ${quoted(option)}`),
    "or",
  );
}

const quoted = (words: string): string => `"${words}"`;

function listed(words: readonly string[], last: "or" | "and"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** "Distance" begins small inside a sentence; "PoE class" and "MPPT" keep their capitals. */
function lowerFirst(label: string): string {
  const [first = ""] = label.split(" ");
  return /^[A-Z][a-z]*$/.test(first) && first.length > 1 ? label[0]!.toLowerCase() + label.slice(1) : label;
}

const upperFirst = (label: string): string => label.slice(0, 1).toUpperCase() + label.slice(1);
