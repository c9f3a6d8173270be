/** Questions as they are shown to those who think in the other unit, and values between the two. */

import { convert } from "../core/units/index.ts";
import type { StoredValue, Units } from "./conversation.ts";
import type { Question } from "./define.ts";

/** Enough digits that going to the other unit and back gives the same figure. */
const digits = 12;
const converted = (value: number, from: string, to: string): number =>
  from === to ? value : Number(convert({ value, from, to }).toPrecision(digits));

function threeDigits(value: number, round: (value: number) => number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  return Number((round(value / step) * step).toPrecision(3));
}

/** The question with its two units changed over, where it has two and they are asked for. */
export function questionIn(units: Units, question: Question): Question {
  if (units === "metric" || question.kind !== "quantity" || question.alsoUnit === undefined) return question;
  const { unit, alsoUnit, possible, usual, unsure } = question;
  const other = (value: number): number => converted(value, unit, alsoUnit);
  // Limits are shown in refusals: three digits, rounded outwards so that no value of the other unit falls out.
  const around = ({ min, max }: { readonly min: number; readonly max: number }) => ({
    min: threeDigits(other(min), Math.floor),
    max: threeDigits(other(max), Math.ceil),
  });
  return {
    ...question,
    unit: alsoUnit,
    alsoUnit: unit,
    possible: around(possible),
    usual: around(usual),
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
  return { ...value, low: to(low), best: to(best), high: to(high), unit };
}
