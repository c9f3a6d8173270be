import type { Rule } from "./rule.ts";

export const controllerChemistry: Rule = ({ brief, battery }) => {
  const owned = brief.parts.controller?.value;
  if (!owned || battery?.chemistry !== "lifepo4" || owned.chargesLifepo4) return null;
  return {
    id: "array.controllerChemistry",
    severity: "stop",
    says: "Your controller cannot be set for lithium iron phosphate, and the bank is to be of that kind: it would be charged wrongly.",
    change:
      "Choose sealed lead-acid (AGM), or buy a controller with a lithium iron phosphate setting (leave the owned one out).",
    numbers: { chemistry: battery.chemistry },
    topics: ["parts.owned", "power.chemistry"],
  };
};
