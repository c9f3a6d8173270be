/** Values between the unit in which a flow keeps them and the one in which they are shown. */

import { type SaidUnit, sayingIn } from "../core/units/index.ts";
import { converted } from "./both-units.ts";
import type { StoredValue } from "./conversation.ts";
import type { Question } from "./define.ts";

/** A value in the unit of this form of the question; as it is, where the question knows no such unit. */
export function valueFor(question: Question, value: StoredValue): StoredValue {
  if (value.kind !== "quantity" || question.kind !== "quantity") return value;
  const { unit, alsoUnit } = question;
  if (value.unit === unit || value.unit !== alsoUnit) return value;
  const { low, best, high } = value;
  const to = (end: number): number => converted(end, value.unit, unit);
  return { ...value, low: to(low), best: to(best), high: to(high), unit };
}

/**
 * A stand-in as it is told: one that is round in the metric unit of a question that is asked in another is a round figure in
 * that too, "10 ft" for the 3 m that are worked with; null where it is told as any other value.
 */
export function roundText(question: Question, value: StoredValue): string | null {
  if (value.kind !== "quantity" || question.kind !== "quantity" || value.spot !== undefined) return null;
  const { unit, alsoUnit } = question;
  const metric = TOLD.find((told) => told === alsoUnit);
  if (metric === undefined || value.low !== value.high) return null;
  return sayingIn("us")(converted(value.best, unit, metric), metric, { digits: 2 });
}
const TOLD: readonly SaidUnit[] = ["m", "mm", "kg", "m/s", "C"];
