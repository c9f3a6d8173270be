import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const severalControllers: Rule = ({ battery, array }) => {
  if (!battery || !array || array.controllers === 1) return null;
  return {
    id: "array.controllers",
    severity: "caution",
    says: `The panels charge with ${fixed(array.chargeCurrentA, 0)} A at ${battery.bankV} V, which takes ${array.controllers} controllers of ${array.controllerA} A with the panels shared among them.`,
    change: "Take a higher bank voltage, or make the load smaller.",
    numbers: { chargeCurrentA: array.chargeCurrentA, controllers: array.controllers, bankV: battery.bankV },
    topics: ["power.bankVolts", "loads.camera"],
  };
};
