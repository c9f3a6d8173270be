/** What a typed line is as an answer to the question at hand. Nothing is decided here but that; session.ts acts on it. */

import { formatQuantity } from "../core/units/index.ts";
import type { Origin, Site } from "../design/brief.ts";
import type { Answer, PlaceMatch, PlaceReading, StoredValue, Walked } from "./conversation.ts";
import type { QuantityQuestion } from "./define.ts";
import {
  forcedText,
  type QuantityHeard,
  type Refusal,
  readChoice,
  readClockRange,
  readQuantity,
  refusalText,
} from "./read/index.ts";
import { exampleOf, usualText } from "./shown.ts";
import { quantityValue } from "./value.ts";
import { labelOf } from "./walk.ts";

export type Reading =
  /** `adds`: one sentence on which end is used of an answer that leaves room. */
  | { readonly kind: "taken"; readonly answer: Answer; readonly adds: string | null }
  /** Possible but outside the usual range: `says` asks whether to keep it. */
  | { readonly kind: "unusual"; readonly answer: Answer; readonly says: string }
  | { readonly kind: "refused"; readonly text: string }
  | { readonly kind: "places"; readonly matches: readonly PlaceMatch[] };

/**
 * A line as an answer.
 *
 * @param readPlace the interview's reader of places
 */
export function readAnswer(
  text: string,
  walked: Walked,
  readPlace: (text: string, near: Site | null) => PlaceReading,
): Reading {
  const { question } = walked;
  const words = forcedText(text);
  const refused = (refusal: Refusal): Reading => ({
    kind: "refused",
    text: refusalSentence(refusal, walked),
  });
  const taken = (value: StoredValue, origin: Origin = "estimate"): Reading => ({
    kind: "taken",
    answer: { typed: words.trim(), value, origin },
    adds: null,
  });
  if (words.trim() === "") return refused({ code: "empty" });
  switch (question.kind) {
    case "quantity": {
      const heard = readQuantity(words, question);
      return heard.ok ? quantityReading(words.trim(), heard, question) : refused(heard.refusal);
    }
    case "choice": {
      const heard = readChoice(words, question.options);
      return heard.ok ? taken({ kind: "choice", option: heard.id }) : refused(heard.refusal);
    }
    case "clock": {
      const heard = readClockRange(words);
      if (!heard.ok) return refused(heard.refusal);
      return taken({ kind: "clock", fromMin: heard.fromMin, toMin: heard.toMin });
    }
    case "place": {
      const near = walked.value.kind === "place" ? walked.value.site : null;
      const found = readPlace(words.trim(), near);
      if (found.kind === "refused") return { kind: "refused", text: found.says };
      const [first, second] = found.matches;
      if (first === undefined) return refused({ code: "not-a-place", typed: words.trim().slice(0, 40) });
      if (second !== undefined) return { kind: "places", matches: found.matches };
      return taken({ kind: "place", site: first.site });
    }
  }
}

function quantityReading(typed: string, heard: QuantityHeard, question: QuantityQuestion): Reading {
  const value = quantityValue(heard, question);
  const answer: Answer = { typed, value, origin: heard.originWord ?? "estimate" };
  const { usual, lean } = question;
  // An open end is ours, not the builder's: only what was said can be unusual.
  const said = heard.doubt === "range" ? [heard.low, heard.high] : [heard.best];
  const odd = said.find((end) => end < usual.min || end > usual.max);
  if (odd !== undefined) {
    const size = odd > usual.max ? "more" : "less";
    const says = `${heard.heard} is ${size} than usual here (usual: ${usualText(question)}). Keep it?`;
    return { kind: "unusual", answer, says };
  }
  const adds = `To be on the safe side I use ${formatQuantity({ value: value[lean], unit: question.unit })} until you know more.`;
  return { kind: "taken", answer, adds: value[lean] === value.best ? null : adds };
}

/** Why a text was not taken, in one sentence that says what to type. */
export function refusalSentence(refusal: Refusal, walked: Walked): string {
  const { question } = walked;
  if (question.kind === "choice" && refusal.code === "empty")
    return `Type a number from 1 to ${question.options.length}. If you are not sure, type: not sure.`;
  return refusalText(refusal, { label: labelOf(walked), example: exampleOf(walked) });
}
