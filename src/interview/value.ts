/** Between the three forms of a value: what a question's stand-in names, what is kept, and what a rule is handed. */

import { clamp } from "../core/numerics/index.ts";
import type { HorizonProfile } from "../core/sun/index.ts";
import type { OwnGround, OwnSun } from "../design/brief.ts";
import type { Answer, StoredValue } from "./conversation.ts";
import type { AnyValue, ClockRange, HorizonQuestion, QuantityQuestion, Question } from "./define.ts";
import type { QuantityHeard } from "./read/index.ts";

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
    case "horizon":
      return { kind: "horizon", points: use as HorizonProfile };
    case "sun":
      return { kind: "sun", figures: use as OwnSun | null };
    case "obstacles":
      return { kind: "obstacles", words: use as string };
    case "ground":
      return { kind: "ground", ground: use as OwnGround | null };
  }
}

type QuantityValue = Extract<StoredValue, { kind: "quantity" }>;

/**
 * A typed quantity as it is kept. The open end of "at least" or "under" goes as far as is usual, not as far as is
 * possible: nobody who says "at least 4 W" means sixty. Where only whole numbers will do, the middle of a range goes
 * to the cautious side.
 */
export function quantityValue(heard: QuantityHeard, question: QuantityQuestion): QuantityValue {
  const { possible, usual, lean, unit } = question;
  const inside = (end: number): number => clamp(end, possible.min, possible.max);
  const whole = { low: Math.floor, best: Math.round, high: Math.ceil }[lean];
  const best = inside(question.isWhole === true ? whole(heard.best) : heard.best);
  const low = heard.doubt === "under" ? Math.min(best, usual.min) : inside(heard.low);
  const high = heard.doubt === "atLeast" ? Math.max(best, usual.max) : inside(heard.high);
  return { kind: "quantity", low, best, high, unit };
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
    case "horizon":
      return value.points;
    case "sun":
      return value.figures;
    case "obstacles":
      return value.words;
    case "ground":
      return value.ground;
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
    case "horizon": {
      const { possible } = question as HorizonQuestion;
      return value.points.every(
        ({ azimuthDeg, elevationDeg }) =>
          azimuthDeg >= 0 && azimuthDeg <= 360 && elevationDeg >= 0 && elevationDeg <= possible.max,
      );
    }
    case "sun":
      return value.figures === null || value.figures.ghiDailyKWhPerM2ByMonth.length === 12;
    case "obstacles":
      return true;
    case "ground":
      return value.ground === null || isOutwards(value.ground);
  }
}

/** From the post outwards, two points at least: what the sums of a path can take. */
const isOutwards = ({ profile }: OwnGround): boolean =>
  profile.length > 1 &&
  profile[0]!.distanceFromNearM === 0 &&
  profile.every((point, i) => i === 0 || point.distanceFromNearM > profile[i - 1]!.distanceFromNearM);

/** The option of a choice by its id; undefined where there is none. */
export function optionOf(question: Question, id: string): { id: string; label: string } | undefined {
  return question.kind === "choice"
    ? question.options.find((option: { id: string }) => option.id === id)
    : undefined;
}

/** Whether two kept values, or two answers, are the same in every part. */
export function isSame<T extends Answer | StoredValue>(one: T, other: T): boolean {
  return canonical(one) === canonical(other);
}

/** Parts in one order, however the file they came from had them. */
const canonical = (part: unknown): string =>
  JSON.stringify(part, (_key, inner) =>
    inner !== null && typeof inner === "object" && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
