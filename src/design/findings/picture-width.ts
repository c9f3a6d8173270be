import { sayingIn } from "../../core/units/index.ts";
import { paced, plain } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** No common lens is wide enough. */
export const pictureWidth: Rule = ({ brief, view }) => {
  const i = view.scenes.findIndex(({ isWideEnough }) => !isWideEnough);
  const scene = view.scenes[i];
  const asked = brief.view.scenes[i];
  if (!scene || !asked) return null;
  const said = sayingIn(brief.units);
  return {
    id: "view.width",
    severity: "caution",
    says: `${scene.name}: even the widest common lens (${plain(scene.focalLengthMm)} mm) spans only ${paced(said, scene.sceneWidthM)} at ${paced(said, asked.distanceM.value)}, and you asked for ${paced(said, asked.widthM.value)}.`,
    change: "Stand further back, look at a narrower scene, or use two cameras.",
    numbers: { sceneWidthM: scene.sceneWidthM, askedWidthM: asked.widthM.value },
    topics: ["view.width", "view.distance", "view.cameras"],
  };
};
