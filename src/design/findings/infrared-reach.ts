import { sayingIn } from "../../core/units/index.ts";
import { paced } from "../chain/words.ts";
import { INFRARED_REACH_M } from "../practice/view.ts";
import type { Rule } from "./rule.ts";

export const infraredReach: Rule = ({ brief }) => {
  const far = brief.view.scenes.find(
    ({ kind, distanceM }) => kind.value === "fixed" && distanceM.value > INFRARED_REACH_M,
  );
  if (brief.view.night.value !== "infrared" || !far) return null;
  const said = sayingIn(brief.units);
  return {
    id: "view.infraredReach",
    severity: "caution",
    says: `The infrared light built into a fixed camera reaches about ${said(INFRARED_REACH_M, "m")}; the scene lies ${paced(said, far.distanceM.value, 0)} away and will be black at night.`,
    change:
      "Bring the camera nearer, or plan a separate infrared lamp (10 to 20 W in the dark) among the loads.",
    numbers: { distanceM: far.distanceM.value, reachM: INFRARED_REACH_M },
    topics: ["view.distance", "view.night"],
  };
};
