import { sayingIn } from "../../core/units/index.ts";
import type { Rule } from "./rule.ts";

/** @source judgement: what two people raise by hand */
const TALLEST_M = 6;

export const tallMast: Rule = ({ brief, mounting }) => {
  if (brief.mounting.support.value !== "newMast" || mounting.mastHeightM <= TALLEST_M) return null;
  const said = sayingIn(brief.units);
  return {
    id: "mounting.tall",
    severity: "caution",
    says: `A mast of ${said(mounting.mastHeightM, "m", 1)} weighs ${said(mounting.tube?.weightKg ?? 0, "kg")} and cannot be held by hand while it rises: a falling one kills.`,
    change: `Keep camera and radio at ${said(TALLEST_M, "m", { safe: "down" })} or below, or have the mast raised with a crane or a tilting foot by somebody who does this.`,
    numbers: { mastHeightM: mounting.mastHeightM, weightKg: mounting.tube?.weightKg ?? 0 },
    topics: ["mounting.cameraHeight", "link.farHeight"],
  };
};
