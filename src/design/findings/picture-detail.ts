import { sayingIn } from "../../core/units/index.ts";
import { COMMON_FOCAL_LENGTHS_MM, sceneWidthM } from "../../core/view/index.ts";
import { paced, plain } from "../chain/words.ts";
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
  const i = view.scenes.findIndex(({ isEnough, isWideEnough }) => !isEnough && isWideEnough);
  const scene = view.scenes[i];
  const asked = brief.view.scenes[i];
  if (!scene || !asked) return null;
  const said = sayingIn(brief.units);
  const longer = asked.kind.value === "fixed" ? longerLens(scene.wantedPxPerM, asked.distanceM.value) : null;
  return {
    id: "view.detail",
    severity: "caution",
    says: `${scene.name}: to ${PURPOSE_WORDS[scene.purpose]} takes ${said.bare(scene.wantedPxPerM, "a metre", { places: 3, safe: "up" })} pixels per ${said.either("metre", "foot")}, and even ${OFFERED_SENSORS.at(-1)!.widthPx} pixels across give only ${said.bare(scene.pxPerM, "a metre", { safe: "down" })} there.`,
    change: `${longer === null ? "Bring" : `A longer lens, ${plain(longer.focalLengthMm)} mm, would do for a scene ${paced(said, longer.sceneWidthM)} wide. Or bring`} the camera nearer, look at a narrower scene, use two cameras, or ask for less.`,
    numbers: { pxPerM: scene.pxPerM, wantedPxPerM: scene.wantedPxPerM, sceneWidthM: scene.sceneWidthM },
    topics: ["view.purpose", "view.distance", "view.width", "view.cameras"],
  };
};

/** The shortest common lens that brings enough pixels on the sensor with most, and how much of the scene it leaves. */
function longerLens(wantedPxPerM: number, distanceM: number) {
  const { widthPx, widthMm } = OFFERED_SENSORS.at(-1)!;
  const focalLengthMm = COMMON_FOCAL_LENGTHS_MM.find(
    (sold) =>
      widthPx / sceneWidthM({ sensorWidthMm: widthMm, focalLengthMm: sold, distanceM }) >=
      wantedPxPerM - 1e-9,
  );
  return focalLengthMm === undefined
    ? null
    : { focalLengthMm, sceneWidthM: sceneWidthM({ sensorWidthMm: widthMm, focalLengthMm, distanceM }) };
}
