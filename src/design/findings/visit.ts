import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const visit: Rule = ({ brief, battery }) => {
  const visitDays = brief.autonomy.visitDays.value;
  if (!battery || battery.autonomyDays >= visitDays) return null;
  return {
    id: "autonomy.visit",
    severity: "caution",
    says: `The bank carries the post for ${fixed(battery.autonomyDays, 1)} days, but it can take ${fixed(visitDays, 0)} days until somebody comes by: a fault on a dull day leaves it dark meanwhile.`,
    change: "Find somebody nearer, or ask for more days of autonomy.",
    numbers: { autonomyDays: battery.autonomyDays, visitDays },
    topics: ["autonomy.visit", "autonomy.days", "autonomy.consequence"],
  };
};
