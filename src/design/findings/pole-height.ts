import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** A pole that stands already does not grow with what is to hang on it. */
export const poleHeight: Rule = ({ brief, mounting }) => {
  const poleM = brief.mounting.poleHeightM.value;
  if (brief.mounting.support.value !== "existingPole" || poleM === 0) return null;
  if (mounting.neededHeightM <= poleM + 0.005) return null;
  const isPanel = mounting.neededHeightM > Math.max(mounting.cameraHeightM, mounting.radioHeightM);
  return {
    id: "mounting.poleHeight",
    severity: "stop",
    says: `The pole ends at ${fixed(poleM, 1)} m, and ${isPanel ? "the upper edge of the panels" : "what is to hang on it"} would reach ${fixed(mounting.neededHeightM, 1)} m.`,
    change: isPanel
      ? "Put the panels on a frame of their own, use a higher pole or a new mast, or make the load smaller."
      : `Keep the camera at ${fixed(poleM, 1)} m or below, or use a higher pole or a new mast.`,
    numbers: { poleHeightM: poleM, neededHeightM: mounting.neededHeightM },
    topics: ["mounting.poleHeight", "mounting.cameraHeight", "mounting.support"],
  };
};
