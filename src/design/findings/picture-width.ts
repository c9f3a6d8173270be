import { fixed, plain } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** No common lens is wide enough. */
export const pictureWidth: Rule = ({ brief, view }) => {
  const i = view.scenes.findIndex(({ isWideEnough }) => !isWideEnough);
  const scene = view.scenes[i];
  const asked = brief.view.scenes[i];
  if (!scene || !asked) return null;
  return {
    id: "view.width",
    severity: "caution",
    says: `${scene.name}: even the widest common lens (${plain(scene.focalLengthMm)} mm) spans only ${fixed(scene.sceneWidthM, 1)} m at ${fixed(asked.distanceM.value, 1)} m, and you asked for ${fixed(asked.widthM.value, 1)} m.`,
    change: "Stand further back, look at a narrower scene, or use two cameras.",
    numbers: { sceneWidthM: scene.sceneWidthM, askedWidthM: asked.widthM.value },
    topics: ["view.width", "view.distance", "view.cameras"],
  };
};
