import { fixed } from "../chain/words.ts";
import { FARTHEST_PATH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

export const linkFar: Rule = ({ link }) => {
  const radio = link?.radio;
  if (!radio || radio.distanceM <= FARTHEST_PATH_M) return null;
  return {
    id: "link.far",
    severity: "stop",
    says: `${fixed(radio.distanceM / 1000, 0)} km is farther than a bridge of this class is planned for (${FARTHEST_PATH_M / 1000} km): there a mast that leans by a degree and layers of air that bend the beam decide, and no such sum is sure.`,
    change: "Find a nearer far end, a relay between, or the mobile network.",
    numbers: { distanceM: radio.distanceM, farthestM: FARTHEST_PATH_M },
    topics: ["link.distance", "link.carrier"],
  };
};
