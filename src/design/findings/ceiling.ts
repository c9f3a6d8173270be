import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const ceiling: Rule = ({ brief, money }) => {
  if (money.ceiling <= 0 || money.currency !== brief.currency || money.highTotal <= money.ceiling)
    return null;
  const isSure = money.lowTotal > money.ceiling;
  return {
    id: "money.ceiling",
    severity: "caution",
    says: `${isSure ? "Even at low prices it costs" : "It may cost"} ${fixed(isSure ? money.lowTotal : money.highTotal, 0)} ${money.currency} with ${fixed(100 * money.contingencyFrac, 0)} % for what is forgotten; you named ${fixed(money.ceiling, 0)}.`,
    change:
      "Save on what the post must do (night, days of autonomy, pixels), not on what keeps it safe; ask real prices before giving up.",
    numbers: { lowTotal: money.lowTotal, highTotal: money.highTotal, ceiling: money.ceiling },
    topics: ["money.ceiling", "autonomy.consequence", "hours.when"],
  };
};
