import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const footing: Rule = ({ brief, mounting }) => {
  if (!mounting.footing?.mustRedesign) return null;
  const isSoft = brief.mounting.soil.value === "soft";
  return {
    id: "mounting.footing",
    severity: "stop",
    says: isSoft
      ? "Soft ground (peat, mud, fill) has no strength one may count on: a footing there is an engineer's work."
      : `Against ${fixed(mounting.groundMomentNm, 0)} Nm of wind the footing would have to be ${fixed(mounting.footing.depthM, 1)} m deep and ${fixed(mounting.footing.diameterM, 1)} m across, beyond what the rule holds for.`,
    change: isSoft
      ? "Find firmer ground (a thumb pressed into a test hole leaves hardly a mark), a wall or an existing pole, or ask an engineer."
      : "Lower the mast, shrink the panel or set it on a frame of its own, or ask an engineer.",
    numbers: {
      soil: brief.mounting.soil.value,
      groundMomentNm: mounting.groundMomentNm,
      depthM: mounting.footing.depthM,
    },
    topics: ["mounting.soil", "mounting.cameraHeight", "power.largestPanel", "mounting.support"],
  };
};
