import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Less is within the error of the model. @source judgement */
const WORTH_SAYING_H = 1;

/** In some weather years the emptied bank would freeze: blocks burst. */
export const frostHours: Rule = ({ reliability, battery }) => {
  const hours = reliability?.yearly.frostHours ?? 0;
  if (!battery || hours < WORTH_SAYING_H) return null;
  return {
    id: "battery.frostHours",
    severity: "caution",
    says: `In the weather years the acid of the emptied bank would be frozen for about ${fixed(hours, 0)} hours a year; a frozen block bursts and leaks.`,
    change: "Take a larger bank, cut the loads off earlier, or bury or insulate the box.",
    numbers: { frostHours: hours, lowVoltageDisconnectV: battery.lowVoltageDisconnectV },
    topics: ["power.chemistry", "autonomy.consequence"],
  };
};
