/** Between the three forms of a value: what a question's stand-in names, what is kept, and what a rule is handed. */

import type { Answer, StoredValue } from "./conversation.ts";
import type { AnyValue, ClockRange, Question } from "./define.ts";

/** The kept form of a value that a flow names: a stand-in or a suggestion. */
export function storedFrom(question: Question, use: AnyValue): StoredValue {
  switch (question.kind) {
    case "quantity": {
      const exact = use as number;
      if (!Number.isFinite(exact))
        throw new Error(`the stand-in of "${question.label}" came out as ${exact}`);
      return { kind: "quantity", low: exact, best: exact, high: exact, unit: question.unit };
    }
    case "choice":
      return { kind: "choice", option: use as string };
    case "place":
      return { kind: "place", site: use as Extract<StoredValue, { kind: "place" }>["site"] };
    case "clock":
      return { kind: "clock", ...(use as ClockRange) };
  }
}

/** What a rule is handed of a kept value: the cautious end of a quantity, an option id, a site, a clock range. */
export function ruleValue(question: Question, value: StoredValue): AnyValue {
  switch (value.kind) {
    case "quantity":
      return value[question.kind === "quantity" ? question.lean : "best"];
    case "choice":
      return value.option;
    case "place":
      return value.site;
    case "clock":
      return { fromMin: value.fromMin, toMin: value.toMin };
  }
}

const isMinute = (minutes: number): boolean => Number.isInteger(minutes) && minutes >= 0 && minutes <= 1440;

/**
 * Whether a kept value answers this question: the right kind and unit, within what is possible, an option that exists.
 * Answers come back from files that people edit and older versions wrote; one that does not fit counts as not answered.
 */
export function fits(question: Question, value: StoredValue): boolean {
  if (question.kind !== value.kind) return false;
  switch (value.kind) {
    case "quantity": {
      const { unit, possible, isWhole } = question as Extract<Question, { kind: "quantity" }>;
      const ends = [value.low, value.best, value.high];
      return (
        value.unit === unit &&
        ends.every((end) => end >= possible.min && end <= possible.max) &&
        (isWhole !== true || ends.every((end) => Number.isInteger(end))) &&
        value.low <= value.best &&
        value.best <= value.high
      );
    }
    case "choice":
      return optionOf(question, value.option) !== undefined;
    case "place":
      return true;
    case "clock":
      return isMinute(value.fromMin) && isMinute(value.toMin);
  }
}

/** The option of a choice by its id; undefined where there is none. */
export function optionOf(question: Question, id: string): { id: string; label: string } | undefined {
  return question.kind === "choice"
    ? question.options.find((option: { id: string }) => option.id === id)
    : undefined;
}

/** Whether two answers are the same in every part. */
export function isSameAnswer(one: Answer | null, other: Answer | null): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
