import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** @source judgement: what two people raise by hand */
const TALLEST_M = 6;

export const tallMast: Rule = ({ brief, mounting }) => {
  if (brief.mounting.support.value !== "newMast" || mounting.mastHeightM <= TALLEST_M) return null;
  return {
    id: "mounting.tall",
    severity: "caution",
    says: `A mast of ${fixed(mounting.mastHeightM, 1)} m weighs ${fixed(mounting.tube?.weightKg ?? 0, 0)} kg and cannot be held by hand while it rises: a falling one kills.`,
    change: `Keep camera and radio at ${TALLEST_M} m or below, or have the mast raised with a crane or a tilting foot by somebody who does this.`,
    numbers: { mastHeightM: mounting.mastHeightM, weightKg: mounting.tube?.weightKg ?? 0 },
    topics: ["mounting.cameraHeight", "link.farHeight"],
  };
};
