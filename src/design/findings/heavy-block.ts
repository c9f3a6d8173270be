import { sayingIn } from "../../core/units/index.ts";
import { MOST_STRINGS } from "../practice/battery.ts";
import type { Rule } from "./rule.ts";

export const heavyBlock: Rule = ({ brief, battery }) => {
  if (!battery?.isHeavierThanAsked) return null;
  const { value: askedKg, origin } = brief.power.heaviestBlockKg;
  const said = sayingIn(brief.units);
  const whose = origin === "assumed" ? "assumed" : "you named";
  return {
    id: "battery.heavyBlock",
    severity: "caution",
    says: `Each battery block weighs ${said(battery.blockKg, "kg", 1)}, more than the ${said(askedKg, "kg", 1)} ${whose}: lighter ones would need more than ${MOST_STRINGS} strings side by side.`,
    change: `Lift with two people or a hand truck and answer ${said(Math.ceil(battery.blockKg), "kg", { safe: "up" })}, take a higher bank voltage, or make the load smaller.`,
    numbers: { blockKg: battery.blockKg, askedKg, blocks: battery.blocks },
    topics: ["power.lift", "power.bankVolts", "power.chemistry"],
  };
};
