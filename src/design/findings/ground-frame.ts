import { sayingIn } from "../../core/units/index.ts";
import { LARGEST_ARRAY_ON_MAST_M2 } from "../practice/mounting.ts";
import type { Rule } from "./rule.ts";

export const groundFrame: Rule = ({ brief, array, mounting }) => {
  if (!array || mounting.panelMount === "mast") return null;
  const said = sayingIn(brief.units);
  return {
    id: "mounting.groundFrame",
    severity: "caution",
    says: `${said(array.areaM2, "m2", 1)} of panels are too much for the mast (${said(LARGEST_ARRAY_ON_MAST_M2, "m2", { safe: "down" })}): they stand on a ground frame, which must be held against ${said(mounting.panelForceN, "N", { safe: "up" })} of wind.`,
    change:
      "Have the frame's maker or an engineer choose its anchors for that force; or make the load smaller.",
    numbers: { areaM2: array.areaM2, panelForceN: mounting.panelForceN },
    topics: ["loads.camera", "autonomy.consequence"],
  };
};
