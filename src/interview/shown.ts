/** How values and answers are written out: in the review, in summaries, after an answer, in refusals. */

import { coordinatesText } from "../core/place/index.ts";
import { compassWord, type HorizonPoint, type HorizonProfile } from "../core/sun/index.ts";
import { convert, formatNumber, formatQuantity } from "../core/units/index.ts";
import type { OwnGround, OwnSun } from "../design/brief.ts";
import type { Answer, ReviewRow, Said, StoredValue, Walked } from "./conversation.ts";
import type { Question } from "./define.ts";
import { clockText } from "./read/clock.ts";
import { forcedText, type QuantityHeard, readQuantityAmongWords } from "./read/index.ts";
import { roundText } from "./units.ts";
import { isSame, optionOf, quantityValue } from "./value.ts";
import { labelOf } from "./walk.ts";

/** A kept value in words: "9.1 m", "6 to 9 m", "All year", "18:00 to 6:00 the next day". */
export function valueText(question: Question, value: StoredValue): string {
  switch (value.kind) {
    case "quantity": {
      const { low, high, unit, spot } = value;
      if (spot !== undefined) return coordinatesText(spot).replace(/\.?0+(?=,|$)/g, "");
      const upper = formatQuantity({ value: high, unit });
      return low === high ? upper : `${formatNumber({ value: low })} to ${upper}`;
    }
    case "choice":
      return optionOf(question, value.option)?.label ?? value.option;
    case "place":
      return value.site?.label ?? "not known";
    case "clock": {
      const { fromMin, toMin } = value;
      return `${clockText(fromMin)} to ${clockText(toMin)}${toMin <= fromMin ? " the next day" : ""}`;
    }
    case "horizon":
      return horizonText(value.points);
    case "sun":
      return ownSunText(value.figures);
    case "obstacles":
      return value.words;
    case "ground":
      return groundText(value.ground, question.kind === "ground" ? question.unit : "m");
  }
}

/** A stand-in in words: round in the unit it is told in. */
export const standInText = (question: Question, value: StoredValue): string =>
  roundText(question, value) ?? valueText(question, value);

/** "clear all round", "12 deg all round", "up to 15 deg, highest in the south". */
function horizonText(points: HorizonProfile): string {
  const highest = points.reduce<HorizonPoint | null>(
    (high, point) => (high === null || point.elevationDeg > high.elevationDeg ? point : high),
    null,
  );
  if (highest === null || highest.elevationDeg === 0) return "clear all round";
  const height = formatQuantity({ value: highest.elevationDeg, unit: "deg" });
  if (points.every(({ elevationDeg }) => elevationDeg === highest.elevationDeg)) return `${height} all round`;
  // Where the top is level, its middle.
  const top = points.filter(({ elevationDeg }) => elevationDeg === highest.elevationDeg);
  const [first, last] = [top[0]!.azimuthDeg, top.at(-1)!.azimuthDeg];
  const middleDeg = last - first > 180 ? (first + last) / 2 + 180 : (first + last) / 2;
  return `up to ${height}, highest in the ${compassWord(middleDeg)}`;
}

function ownSunText(figures: OwnSun | null): string {
  if (figures === null) return "none: the built-in map";
  const months = figures.ghiDailyKWhPerM2ByMonth.map((value) => formatNumber({ value, digits: 2 }));
  return `${figures.source}: ${months.join(" ")} kWh/m2 a day`;
}

function groundText(ground: OwnGround | null, unit: string): string {
  if (ground === null) return "level between the two ends";
  const heights = ground.profile.map(({ groundM }) => groundM);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const of = (valueM: number) => convert({ value: valueM, from: "m", to: unit });
  return `${ground.source}: ${ground.profile.length} points, ${formatNumber({ value: of(low), digits: 4 })} to ${formatNumber({ value: of(high), digits: 4 })} ${unit} high`;
}

/** What was heard in a typed answer: "30 ft = 9.1 m". Read again from what was typed, so that it is kept nowhere. */
export function heardText(question: Question, answer: Answer): string {
  const reading = readAgain(question, answer);
  return reading?.heard ?? valueText(question, answer.value);
}

/**
 * What was typed for a quantity, read as the question stands now; null where it does not say the kept value: an answer
 * edited in its file, or a bare number typed while another unit was shown.
 */
function readAgain(question: Question, { typed, value }: Answer): QuantityHeard | null {
  if (value.kind !== "quantity" || question.kind !== "quantity") return null;
  const reading = readQuantityAmongWords(forcedText(typed), question);
  return reading.ok && isSame(quantityValue(reading, question), value) ? reading : null;
}

const saysValue = (question: Question, answer: Answer): boolean =>
  question.kind !== "quantity" || readAgain(question, answer) !== null;

/** The same, or null where it would only repeat what was typed. */
export function heardBeside(question: Question, answer: Answer): string | null {
  if (answer.origin === "assumed") return null;
  const heard = heardText(question, answer);
  return folded(heard) === folded(answer.typed) ? null : heard;
}

const folded = (text: string): string => text.toLowerCase().replace(/\s+/g, "");

/** An answer in a list: "30 ft = 9.1 m", "assumed: 15 m", "not answered". */
export function answerText(walked: Walked): string {
  const { question, answer } = walked;
  if (answer === null) return "not answered";
  if (answer.origin === "assumed") return `assumed: ${standInText(question, answer.value)}`;
  return heardText(question, answer);
}

/** The answer that Enter keeps: as typed, but an option or a place by its name. */
export function keptText(walked: Walked): string | null {
  const { question, answer } = walked;
  if (answer === null) return null;
  if (answer.origin === "assumed") return answerText(walked);
  const isNamed = question.kind === "choice" || question.kind === "place" || answer.typed.trim() === "";
  return isNamed || !saysValue(question, answer) ? valueText(question, answer.value) : answer.typed;
}

/** Every question the answers call for, numbered as "change 3" takes it. */
export function reviewRows(walked: readonly Walked[]): readonly ReviewRow[] {
  return walked.map((each, index) => ({
    number: index + 1,
    id: each.id,
    topic: each.topic.title,
    label: labelOf(each),
    answer: answerText(each),
    origin: each.answer?.origin ?? null,
  }));
}

/** The summary of a topic whose questions are all answered. */
export function topicSummary(walked: readonly Walked[], topicId: string): Said {
  const own = walked.filter((each) => each.topic.id === topicId);
  return {
    kind: "topicClosed",
    title: own[0]!.topic.title,
    rows: own.map((each) => ({ label: labelOf(each), value: answerText(each) })),
  };
}

/** Something that would do as an answer: the hint's own example, or the stand-in. */
export function exampleOf(walked: Walked): string {
  const { question, standIn } = walked;
  const example = /Example: (.+?)(?:,? or .*|[.;](?:\s.*)?)?$/.exec(question.hint)?.[1];
  if (example !== undefined) return example;
  switch (question.kind) {
    case "choice":
      return "1";
    case "place":
      return "52.30, -3.51";
    case "sun":
      return "none";
    default:
      return standInText(question, standIn.value);
  }
}

/** What stands between the question and the answer's usual size: "1 to 60 m". */
export function usualText(question: Extract<Question, { kind: "quantity" }>): string {
  const { usual, unit } = question;
  return `${formatNumber({ value: usual.min })} to ${formatQuantity({ value: usual.max, unit })}`;
}
