import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const visit: Rule = ({ brief, battery }) => {
  const visitDays = brief.autonomy.visitDays.value;
  if (!battery || battery.lastsDays >= visitDays) return null;
  return {
    id: "autonomy.visit",
    severity: "caution",
    says: `The bank carries the post for ${fixed(battery.lastsDays, 1)} days, but it can take ${fixed(visitDays, 0)} days until somebody comes by: a fault on a dull day leaves it dark meanwhile.`,
    change: "Find somebody nearer, or ask for more days of autonomy.",
    numbers: { lastsDays: battery.lastsDays, visitDays },
    topics: ["autonomy.visit", "autonomy.days", "autonomy.consequence"],
  };
};
