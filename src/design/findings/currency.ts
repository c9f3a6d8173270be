import type { Rule } from "./rule.ts";

export const currency: Rule = ({ brief, money }) => {
  if (money.currency === brief.currency) return null;
  return {
    id: "money.currency",
    severity: "note",
    says: `No rate for ${brief.currency} is kept here: prices are in ${money.currency}, and your ceiling is not compared with them.`,
    change: "",
    numbers: { wished: brief.currency, shown: money.currency },
    topics: ["place.where"],
  };
};
