import { MOST_STRINGS } from "../practice/battery.ts";
import type { Rule } from "./rule.ts";

export const manyStrings: Rule = ({ battery }) => {
  if (!battery || battery.inParallel <= MOST_STRINGS) return null;
  return {
    id: "battery.manyStrings",
    severity: "caution",
    says: `The bank would be ${battery.inParallel} strings of blocks side by side; beyond ${MOST_STRINGS} they share the current badly and the weakest drags the others down.`,
    change: "Take larger blocks, a higher bank voltage, or a smaller load.",
    numbers: { inParallel: battery.inParallel, mostStrings: MOST_STRINGS },
    topics: ["power.bankVolts", "power.lift", "parts.owned"],
  };
};
