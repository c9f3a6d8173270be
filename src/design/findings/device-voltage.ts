import { DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import type { Rule } from "./rule.ts";

/** The post has one supply for its DC devices: what does not run on it must not be joined to it. */
export const deviceVoltage: Rule = ({ brief }) => {
  const odd = brief.loads.devices.filter(({ takes12V }) => takes12V?.value === false);
  if (odd.length === 0) return null;
  const names = odd.map(({ name }) => name).join(", ");
  return {
    id: "loads.voltage",
    severity: "stop",
    says: `${names}: not made for ${DEVICE_SUPPLY_V} V, and the wires and the converter of the lists bring ${DEVICE_SUPPLY_V} V to it.`,
    change: `Choose a device for ${DEVICE_SUPPLY_V} V direct current, or have an electrician plan a converter and a fuse of its own for the voltage on its label.`,
    numbers: { supplyV: DEVICE_SUPPLY_V, devices: odd.length },
    topics: ["loads.extra"],
  };
};
