import { darkHoursText } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** No battery makes a single post sure: what must not be missed needs a second way to know. */
export const secondWay: Rule = ({ brief, reliability }) => {
  if (brief.autonomy.consequence.value !== "disaster") return null;
  const misses = reliability !== null && !reliability.isReached;
  const aim = misses
    ? `the design misses the 9 dark hours a year that would stand for that (${darkHoursText(reliability.chosen.darkHours)})`
    : "the design aims at about 9 dark hours a year";
  return {
    id: "autonomy.secondWay",
    severity: "note",
    says: `You said a dark camera would be a disaster: ${aim}, ${misses ? "and" : "but"} a stolen panel or a failed radio takes far longer to mend than that.`,
    change: "Have a second way to know, on its own power and its own way home.",
    numbers: { aimedDarkHours: 8.76 },
    topics: ["autonomy.consequence"],
  };
};
