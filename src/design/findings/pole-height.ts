import { sayingIn } from "../../core/units/index.ts";
import type { Rule } from "./rule.ts";

/** A pole that stands already does not grow with what is to hang on it. */
export const poleHeight: Rule = ({ brief, mounting }) => {
  const poleM = brief.mounting.poleHeightM.value;
  if (brief.mounting.support.value !== "existingPole" || poleM === 0) return null;
  if (mounting.neededHeightM <= poleM + 0.005) return null;
  const isPanel = mounting.neededHeightM > Math.max(mounting.cameraHeightM, mounting.radioHeightM);
  const said = sayingIn(brief.units);
  return {
    id: "mounting.poleHeight",
    severity: "stop",
    says: `The pole ends at ${said(poleM, "m", 1)}, and ${isPanel ? "the upper edge of the panels" : "what is to hang on it"} would reach ${said(mounting.neededHeightM, "m", { places: 1, safe: "up" })}.`,
    change: isPanel
      ? "Put the panels on a frame of their own, use a higher pole or a new mast, or make the load smaller."
      : `Keep the camera at ${said(poleM, "m", { places: 1, safe: "down" })} or below, or use a higher pole or a new mast.`,
    numbers: { poleHeightM: poleM, neededHeightM: mounting.neededHeightM },
    topics: ["mounting.poleHeight", "mounting.cameraHeight", "mounting.support"],
  };
};
