import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const controllerCurrent: Rule = ({ brief, array }) => {
  const owned = brief.parts.controller?.value;
  if (!owned || !array || owned.maxChargeA >= array.chargeCurrentA) return null;
  const isDirect = owned.kind === "pwm";
  return {
    id: "array.controllerCurrent",
    severity: isDirect ? "stop" : "caution",
    says: isDirect
      ? `The panels give ${fixed(array.chargeCurrentA, 0)} A in full sun, more than the ${fixed(owned.maxChargeA, 0)} A that your direct (PWM) controller bears: it would be overloaded.`
      : `The panels give ${fixed(array.chargeCurrentA, 0)} A in full sun and your controller stops at ${fixed(owned.maxChargeA, 0)} A: the rest of the sun is lost around noon.`,
    change: `Buy a controller of at least ${array.controllerA} A (leave the owned one out), or take a higher bank voltage.`,
    numbers: { chargeCurrentA: array.chargeCurrentA, maxChargeA: owned.maxChargeA },
    topics: ["parts.owned", "power.bankVolts"],
  };
};
