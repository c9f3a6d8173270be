import { fixed } from "../chain/words.ts";
import { LARGEST_ARRAY_ON_MAST_M2, PANEL_LOWER_EDGE_M } from "../practice/mounting.ts";
import type { Rule } from "./rule.ts";

export const groundFrame: Rule = ({ array, mounting }) => {
  if (!array || mounting.panelMount === "mast") return null;
  return {
    id: "mounting.groundFrame",
    severity: "caution",
    says: `${fixed(array.areaM2, 1)} m2 of panels are too much for the mast (${LARGEST_ARRAY_ON_MAST_M2} m2): they stand on a ground frame, which must be held against ${fixed(mounting.panelGustForceN, 0)} N in the strongest gust (design load, 0.6 of it: ${fixed(mounting.panelForceN, 0)} N).`,
    change: `Have the frame's maker or an engineer choose its anchors for that force; or make the load smaller. A frame stands lower than a panel on a mast (${PANEL_LOWER_EDGE_M} m): if what shades it was answered in metres, answer again in degrees, as seen from the frame.`,
    numbers: {
      areaM2: array.areaM2,
      panelGustForceN: mounting.panelGustForceN,
      panelForceN: mounting.panelForceN,
    },
    topics: ["loads.camera", "autonomy.consequence", "place.shade"],
  };
};
