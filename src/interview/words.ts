/** The engine's own few sentences: what works at any time, and what to type where a line meant nothing. */

import { wordsIn } from "./both-units.ts";
import type { Units } from "./conversation.ts";
import type { Question } from "./define.ts";

// `outlook` is for a post that stands: among the words of a question it would only make a newcomer wonder
export const always = "why, how, not sure, back, undo, review, change 3, more, help, save";
export const alwaysAtTheEnd = "lists, review, change 3, more, outlook, back, undo, help, save";

export const endAsk = (stops: number): string =>
  stops === 0
    ? "Every question is answered."
    : `Every question is answered. Do not buy yet: ${stops === 1 ? "one thing" : `${stops} things`} must change first.`;
export const endHint =
  "Type lists for what to buy and do, review to see the answers, change 3 to correct the third, or save.";

export const confirmHintFor = ({ kind }: Question): string =>
  `Type yes to keep it, no to answer again, or ${kind === "place" ? "the right place" : "the right figure"}.`;

/** What the word alone is answered with. */
export const outlookLines: readonly string[] = [
  "For a post that stands: when its loads go off and come back in the days to come.",
  "Type outlook, the battery's charge in percent (or its voltage after some hours at rest), then each day from today: sunny, partly, overcast, rain, or its kWh/m2 on the level. Example: outlook 60 %, rain, rain, sunny",
  "If the picture is off now, say so: outlook 30 % and off, rain, sunny. If only what goes first is off: outlook 40 % and extras off, rain.",
];

/** What can be typed now, a line each. */
export function helpLines(question: Question | null, units: Units): readonly string[] {
  const anytime = [
    "back: the question before this one; the answer there is kept until you type another",
    "undo: takes the last answer back",
    "review: all the answers, numbered; change 3 corrects the third",
    "more: the design as it stands, and what this topic has worked",
    "lists: what to buy, build and check, as far as it is known",
    "outlook 60 %, rain, rain, sunny: when the loads go off and come back in the days to come",
    "save: keeps everything and leaves; come back any day",
  ];
  if (question === null) return anytime;
  return [
    wordsIn(units, answerLine(question)),
    "Enter alone: keeps the answer that is shown, where there is one",
    "not sure: a stated stand-in is used and marked",
    "why: what the answer changes",
    "how: how to find out",
    ...anytime,
    "A word that is also one of these goes in quotation marks, as an answer.",
  ];
}

function answerLine(question: Question): string {
  switch (question.kind) {
    case "quantity":
      return "An answer: 30 ft, 4 W, 20-30, about 25, at least 5; add where it is from, like 4 W measured or 4 W label";
    case "choice":
      return "An answer: the number of an option, its words, or a sentence that means one of them";
    case "place":
      return "An answer: a town, or latitude and longitude";
    case "clock":
      return "An answer: 6:30 to 18:00, 6 pm to 6 am, all day";
    case "horizon":
      return "An answer: 10, two fists, hill to the south 15 deg high, or pairs like 120:5, 180:15";
    case "sun":
      return "An answer: none, twelve figures, or a file's name";
    case "obstacles":
      return "An answer: barn [7 m|25 ft] high at [300 m|900 ft], trees [12 m|40 ft] high and [20 m|60 ft] deep half way; or nothing";
    case "ground":
      return "An answer: level, pairs of distance and height like [0 12, 200 14|0 40, 600 46], or a file's name";
  }
}
