import { fixed, plain } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** No common panel gives more current than this. @source from memory: the largest cells give about 18 A */
const LARGEST_PANEL_A = 20;

export const ownedPanel: Rule = ({ brief, array }) => {
  const owned = brief.parts.panel?.value;
  if (!owned || !array) return null;
  if (array.shortCircuitA > LARGEST_PANEL_A) {
    return {
      id: "array.ownedPanel",
      severity: "stop",
      says: `A panel of ${plain(owned.ratedW)} W with ${plain(owned.openCircuitV)} V open would give ${fixed(array.shortCircuitA, 0)} A, which no common panel does: one of the two figures is wrong.`,
      change: "Read both figures off the label on the panel's back again.",
      numbers: { ratedW: owned.ratedW, openCircuitV: owned.openCircuitV, shortCircuitA: array.shortCircuitA },
      topics: ["parts.owned"],
    };
  }
  if (array.panels <= owned.count) return null;
  return {
    id: "array.ownedPanel",
    severity: "caution",
    says: `The array needs ${array.panels} panels of ${plain(owned.ratedW)} W and you own ${owned.count}: the ones to be added must match them in voltage and current.`,
    change: `Buy ${array.panels - owned.count} more of the same, or leave the owned ones out, or make the load smaller.`,
    numbers: { panels: array.panels, owned: owned.count },
    topics: ["parts.owned"],
  };
};
