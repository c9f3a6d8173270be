import { fixed, monthSpans } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Where the sun stays away for weeks no panel carries the post. */
export const darkMonths: Rule = ({ array, battery }) => {
  if (!array || !battery || array.darkMonths.length === 0) return null;
  const names = monthSpans(array.darkMonths);
  return {
    id: "sun.dark",
    severity: "stop",
    says: `In ${names} practically no sun reaches the panel, so no panel can carry the post then; the bank alone would need ${fixed(battery.requiredAh, 0)} Ah at ${battery.bankV} V.`,
    change: `Let the post sleep in ${names}, or plan another source of power for them.`,
    numbers: { darkMonths: names, requiredAh: battery.requiredAh, autonomyDays: battery.autonomyDays },
    topics: ["hours.when", "hours.fromMonth", "hours.toMonth", "place.where"],
  };
};
