import { plain } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Blocks in the shed that the bank cannot use, or too few of them. */
export const ownedBattery: Rule = ({ brief, battery }) => {
  const owned = brief.parts.battery?.value;
  if (!owned || !battery) return null;
  const topics = ["parts.owned", "power.bankVolts", "power.chemistry"];
  if (owned.chemistry !== battery.chemistry) {
    const words = { agm: "sealed lead-acid (AGM)", lifepo4: "lithium iron phosphate" } as const;
    return {
      id: "battery.owned",
      severity: "stop",
      says: `You own ${words[owned.chemistry]} blocks, but the bank is to be ${words[battery.chemistry]}: the two must never be mixed, and a controller charges only one kind.`,
      change: `Choose ${words[owned.chemistry]} for the bank, or leave the owned blocks out.`,
      numbers: { owned: owned.chemistry, bank: battery.chemistry },
      topics,
    };
  }
  const series = Math.round(battery.bankV / owned.blockV);
  if (series < 1 || Math.abs((series * owned.blockV) / battery.bankV - 1) > 0.1) {
    return {
      id: "battery.owned",
      severity: "stop",
      says: `Blocks of ${plain(owned.blockV)} V cannot make a bank of ${battery.bankV} V.`,
      change: "Choose a bank voltage that is a whole number of your blocks, or leave the owned blocks out.",
      numbers: { blockV: owned.blockV, bankV: battery.bankV },
      topics,
    };
  }
  if (battery.blocks <= owned.blocks) return null;
  return {
    id: "battery.owned",
    severity: "caution",
    says: `The bank needs ${battery.blocks} blocks of ${plain(owned.blockAh)} Ah and you own ${owned.blocks}: new blocks beside old ones are dragged down to the old ones' age.`,
    change: "Buy the whole bank new, or ask for fewer days of autonomy or a smaller load.",
    numbers: { blocks: battery.blocks, owned: owned.blocks },
    topics,
  };
};
