/** Questions as they are shown to those who think in the other unit, and values between the two. */

import { convert } from "../core/units/index.ts";
import type { StoredValue, Units } from "./conversation.ts";
import type { Question } from "./define.ts";

/** Enough digits that going to the other unit and back gives the same figure. */
const digits = 12;
const converted = (value: number, from: string, to: string): number =>
  from === to ? value : Number(convert({ value, from, to }).toPrecision(digits));

/** The question with its two units changed over, where it has two and they are asked for. */
export function questionIn(units: Units, question: Question): Question {
  if (units === "metric" || question.kind !== "quantity" || question.alsoUnit === undefined) return question;
  const { unit, alsoUnit, possible, usual, unsure } = question;
  const other = (value: number): number => converted(value, unit, alsoUnit);
  return {
    ...question,
    unit: alsoUnit,
    alsoUnit: unit,
    possible: { min: other(possible.min), max: other(possible.max) },
    usual: { min: other(usual.min), max: other(usual.max) },
    unsure: { ...unsure, use: other(unsure.use) },
  };
}

/** A value in the unit of this form of the question; as it is, where the question knows no such unit. */
export function valueFor(question: Question, value: StoredValue): StoredValue {
  if (value.kind !== "quantity" || question.kind !== "quantity") return value;
  const { unit, alsoUnit } = question;
  if (value.unit === unit || value.unit !== alsoUnit) return value;
  const { low, best, high } = value;
  const to = (end: number): number => converted(end, value.unit, unit);
  return { kind: "quantity", low: to(low), best: to(best), high: to(high), unit };
}
