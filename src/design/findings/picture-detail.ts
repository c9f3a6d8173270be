import { fixed, plain } from "../chain/words.ts";
import { OFFERED_SENSORS } from "../practice/view.ts";
import type { Rule } from "./rule.ts";

const PURPOSE_WORDS = {
  notice: "notice that somebody is there",
  follow: "see what is done",
  recognise: "recognise people you know",
  identify: "tell who a stranger is",
} as const;

/** Too few pixels on the target, whatever camera is bought. */
export const pictureDetail: Rule = ({ view }) => {
  const scene = view.scenes.find(({ isEnough, isWideEnough }) => !isEnough && isWideEnough);
  if (!scene) return null;
  return {
    id: "view.detail",
    severity: "caution",
    says: `${scene.name}: to ${PURPOSE_WORDS[scene.purpose]} takes ${plain(scene.wantedPxPerM)} pixels per metre, and even ${OFFERED_SENSORS.at(-1)!.widthPx} pixels across give only ${fixed(scene.pxPerM, 0)} there.`,
    change: "Bring the camera nearer, look at a narrower scene, use two cameras, or ask for less.",
    numbers: { pxPerM: scene.pxPerM, wantedPxPerM: scene.wantedPxPerM, sceneWidthM: scene.sceneWidthM },
    topics: ["view.purpose", "view.distance", "view.width", "view.cameras"],
  };
};
