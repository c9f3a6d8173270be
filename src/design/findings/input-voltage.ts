import { sayingIn } from "../../core/units/index.ts";
import { fixed } from "../chain/words.ts";
import { INPUT_HEADROOM_FRAC } from "../practice/array.ts";
import { CONTROLLER_INPUT_V } from "../practice/sold.ts";
import type { Rule } from "./rule.ts";

/** A string beyond the controller's input destroys it on the first cold, clear morning. */
export const inputVoltage: Rule = ({ brief, climate, array }) => {
  if (!climate || !array) return null;
  const owned = brief.parts.controller?.value;
  const coldV = array.coldOpenCircuitV;
  const largestV = CONTROLLER_INPUT_V.at(-1)!;
  if (owned && coldV <= owned.maxInputV) return null;
  if (!owned && coldV * (1 + INPUT_HEADROOM_FRAC) <= largestV) return null;
  const said = sayingIn(brief.units);
  const limitV = owned?.maxInputV ?? largestV;
  return {
    id: "array.inputVoltage",
    severity: "stop",
    says: `On a record cold morning (${said(climate.recordColdTempC, "°C")}) a string of ${array.inSeries} reaches ${fixed(coldV, 0)} V, more than the ${fixed(limitV, 0)} V that ${owned ? "your controller" : "any common controller"} bears: it would be destroyed.`,
    change: owned
      ? `Buy a controller for at least ${array.controllerMaxInputV} V (leave the owned one out).`
      : "Take panels of lower voltage or a lower bank voltage.",
    numbers: { coldOpenCircuitV: coldV, limitV, recordColdTempC: climate.recordColdTempC },
    topics: ["parts.owned", "power.largestPanel", "power.bankVolts"],
  };
};
