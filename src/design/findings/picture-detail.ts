import { sayingIn } from "../../core/units/index.ts";
import { OFFERED_SENSORS } from "../practice/view.ts";
import type { Rule } from "./rule.ts";

const PURPOSE_WORDS = {
  notice: "notice that somebody is there",
  follow: "see what is done",
  recognise: "recognise people you know",
  identify: "tell who a stranger is",
} as const;

/** Too few pixels on the target, whatever camera is bought. */
export const pictureDetail: Rule = ({ brief, view }) => {
  const scene = view.scenes.find(({ isEnough, isWideEnough }) => !isEnough && isWideEnough);
  if (!scene) return null;
  const said = sayingIn(brief.units);
  return {
    id: "view.detail",
    severity: "caution",
    says: `${scene.name}: to ${PURPOSE_WORDS[scene.purpose]} takes ${said.bare(scene.wantedPxPerM, "a metre", { places: 3, safe: "up" })} pixels per ${said.either("metre", "foot")}, and even ${OFFERED_SENSORS.at(-1)!.widthPx} pixels across give only ${said.bare(scene.pxPerM, "a metre", { safe: "down" })} there.`,
    change: "Bring the camera nearer, look at a narrower scene, use two cameras, or ask for less.",
    numbers: { pxPerM: scene.pxPerM, wantedPxPerM: scene.wantedPxPerM, sceneWidthM: scene.sceneWidthM },
    topics: ["view.purpose", "view.distance", "view.width", "view.cameras"],
  };
};
