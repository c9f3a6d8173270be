import { sayingIn } from "../../core/units/index.ts";
import { LARGEST_ARRAY_ON_MAST_M2, PANEL_LOWER_EDGE_M } from "../practice/mounting.ts";
import type { Rule } from "./rule.ts";

export const groundFrame: Rule = ({ brief, array, mounting }) => {
  if (!array || mounting.panelMount === "mast") return null;
  const said = sayingIn(brief.units);
  return {
    id: "mounting.groundFrame",
    severity: "caution",
    says: `${said(array.areaM2, "m2", 1)} of panels are too much for the mast (${said(LARGEST_ARRAY_ON_MAST_M2, "m2", { safe: "down" })}): they stand on a ground frame, which must be held against ${said(mounting.panelGustForceN, "N", { safe: "up" })} in the strongest gust (design load, 0.6 of it: ${said(mounting.panelForceN, "N", { safe: "up" })}).`,
    change: `Have the frame's maker or an engineer choose its anchors for that force; or make the load smaller. A frame stands lower than a panel on a mast (${said(PANEL_LOWER_EDGE_M, "m", 1)}): if what shades it was answered in ${said.either("metres", "feet")}, answer again in degrees, as seen from the frame.`,
    numbers: {
      areaM2: array.areaM2,
      panelGustForceN: mounting.panelGustForceN,
      panelForceN: mounting.panelForceN,
    },
    topics: ["loads.camera", "autonomy.consequence", "place.shade"],
  };
};
