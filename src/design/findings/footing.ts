import { sayingIn } from "../../core/units/index.ts";
import type { Rule } from "./rule.ts";

export const footing: Rule = ({ brief, mounting }) => {
  if (!mounting.footing?.mustRedesign) return null;
  const said = sayingIn(brief.units);
  const isSoft = brief.mounting.soil.value === "soft";
  return {
    id: "mounting.footing",
    severity: "stop",
    says: isSoft
      ? "Soft ground (peat, mud, fill) has no strength one may count on: a footing there is an engineer's work."
      : `Against ${said(mounting.groundMomentNm, "Nm")} of wind the footing would have to be ${said(mounting.footing.depthM, "m", 1)} deep and ${said(mounting.footing.diameterM, "m", 1)} across, beyond what the rule holds for.`,
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
