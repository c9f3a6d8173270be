import { fixed } from "../chain/words.ts";
import { MOST_STRINGS } from "../practice/battery.ts";
import type { Rule } from "./rule.ts";

export const heavyBlock: Rule = ({ brief, battery }) => {
  if (!battery?.isHeavierThanAsked) return null;
  const { value: askedKg, origin } = brief.power.heaviestBlockKg;
  const whose = origin === "assumed" ? "assumed" : "you named";
  return {
    id: "battery.heavyBlock",
    severity: "caution",
    says: `Each battery block weighs ${fixed(battery.blockKg, 1)} kg, more than the ${fixed(askedKg, 1)} kg ${whose}: lighter ones would need more than ${MOST_STRINGS} strings side by side.`,
    change: `Lift with two people or a hand truck and answer ${fixed(Math.ceil(battery.blockKg), 0)} kg, take a higher bank voltage, or make the load smaller.`,
    numbers: { blockKg: battery.blockKg, askedKg, blocks: battery.blocks },
    topics: ["power.lift", "power.bankVolts", "power.chemistry"],
  };
};
