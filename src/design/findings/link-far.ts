import { sayingIn } from "../../core/units/index.ts";
import { FARTHEST_PATH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

export const linkFar: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  if (!radio || radio.distanceM <= FARTHEST_PATH_M) return null;
  const said = sayingIn(brief.units);
  return {
    id: "link.far",
    severity: "stop",
    says: `${said(radio.distanceM / 1000, "km")} is farther than a bridge of this class is planned for (${said(FARTHEST_PATH_M / 1000, "km")}): there a mast that leans by a degree and layers of air that bend the beam decide, and no such sum is sure.`,
    change: "Find a nearer far end, a relay between, or the mobile network.",
    numbers: { distanceM: radio.distanceM, farthestM: FARTHEST_PATH_M },
    topics: ["link.distance", "link.carrier"],
  };
};
