import { sayingIn } from "../../core/units/index.ts";
import { fixed } from "../chain/words.ts";
import { LEAST_USEFUL_DOD_FRAC, PERMITTED_DOD_FRAC } from "../practice/battery.ts";
import type { Rule } from "./rule.ts";

/** A bank that may only be half emptied is twice the price. @source judgement */
const SHALLOW_DOD_FRAC = 0.5;

/** An empty lead-acid battery freezes and bursts: how deep frost lets it go. */
export const leadFreezing: Rule = ({ brief, climate, battery }) => {
  if (!climate || battery?.chemistry !== "agm" || battery.frostSafeDodFrac >= PERMITTED_DOD_FRAC.agm)
    return null;
  const cold = sayingIn(brief.units)(climate.designColdTempC, "°C");
  const isHopeless = battery.frostSafeDodFrac < LEAST_USEFUL_DOD_FRAC;
  const depth = fixed(100 * battery.frostSafeDodFrac, 0);
  return {
    id: "battery.leadFreezing",
    severity: isHopeless ? "stop" : battery.frostSafeDodFrac < SHALLOW_DOD_FRAC ? "caution" : "note",
    says: isHopeless
      ? `At ${cold} a lead-acid battery may freeze and burst once ${depth} % have been taken out: that leaves no usable battery.`
      : `At ${cold} a lead-acid battery emptied by more than ${depth} % may freeze and burst; the loads are therefore cut off at ${fixed(battery.lowVoltageDisconnectV, 1)} V, and the bank is larger for it.`,
    change:
      "Put the bank where it stays warmer (in the ground below frost, in a heated or well insulated room), or let the post sleep in the coldest months.",
    numbers: {
      designColdTempC: climate.designColdTempC,
      frostSafeDodFrac: battery.frostSafeDodFrac,
      lowVoltageDisconnectV: battery.lowVoltageDisconnectV,
    },
    topics: ["power.chemistry", "place.where"],
  };
};
