import type { Rule } from "./rule.ts";

export const noDevice: Rule = ({ brief }) => {
  if (brief.loads.devices.some(({ dayW, nightExtraW }) => dayW.value + nightExtraW.value > 0)) return null;
  return {
    id: "loads.none",
    severity: "stop",
    says: "Nothing that draws power has been named: the figures are for a charge controller alone.",
    change: "Name the camera and what else stands at the post, with their watts.",
    numbers: { devices: brief.loads.devices.length },
    topics: ["loads.camera", "view.cameras"],
  };
};
