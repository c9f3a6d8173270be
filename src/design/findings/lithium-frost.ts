import { fixed } from "../chain/words.ts";
import { BATTERY_BOX_LOSS_W_PER_K, BATTERY_WARM_C } from "../practice/loads.ts";
import type { Rule } from "./rule.ts";

/** Below this lithium iron phosphate may not even be discharged. @source makers' limits, from memory */
const NO_DISCHARGE_BELOW_C = -20;

/** Lithium charged in frost is spoilt for good. */
export const lithiumFrost: Rule = ({ climate, battery }) => {
  if (!climate || !battery?.needsWarmth) return null;
  const cold = fixed(climate.designColdTempC, 0);
  const neededW = Math.ceil(BATTERY_BOX_LOSS_W_PER_K * (BATTERY_WARM_C - climate.designColdTempC));
  const isHopeless = battery.temperatureC < NO_DISCHARGE_BELOW_C;
  return {
    id: "battery.lithiumFrost",
    severity: isHopeless ? "stop" : "caution",
    says: isHopeless
      ? `The coldest month averages ${fixed(battery.temperatureC, 0)} °C: lithium iron phosphate may then be neither charged nor discharged.`
      : `It freezes here (${cold} °C in the coldest hour), and lithium iron phosphate charged below 0 °C is spoilt for good.`,
    change: `Choose sealed lead-acid (AGM); or buy a battery with its own heater of ${fixed(neededW, 0)} W or more and a low-temperature cut-off, put it in an insulated box, and answer with the heater's watts.`,
    numbers: {
      designColdTempC: climate.designColdTempC,
      coldestMonthTempC: battery.temperatureC,
      neededHeaterW: neededW,
    },
    topics: ["power.chemistry", "power.batteryHeater", "place.where"],
  };
};
