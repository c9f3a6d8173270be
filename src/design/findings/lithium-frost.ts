import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Below this lithium iron phosphate may not even be discharged. @source makers' limits, from memory */
const NO_DISCHARGE_BELOW_C = -20;

/** Lithium charged in frost is spoilt for good. */
export const lithiumFrost: Rule = ({ climate, battery }) => {
  if (!climate || !battery?.needsWarmth) return null;
  const cold = fixed(climate.designColdTempC, 0);
  const isHopeless = battery.temperatureC < NO_DISCHARGE_BELOW_C;
  return {
    id: "battery.lithiumFrost",
    severity: isHopeless ? "stop" : "caution",
    says: isHopeless
      ? `The coldest month averages ${fixed(battery.temperatureC, 0)} °C: lithium iron phosphate may then be neither charged nor discharged.`
      : `It freezes here (${cold} °C in the coldest hour), and lithium iron phosphate charged below 0 °C is spoilt for good.`,
    change:
      "Choose sealed lead-acid (AGM); or buy a battery with its own heater and low-temperature cut-off, put it in an insulated box, and add the heater's energy to the loads.",
    numbers: { designColdTempC: climate.designColdTempC, coldestMonthTempC: battery.temperatureC },
    topics: ["power.chemistry", "place.where"],
  };
};
