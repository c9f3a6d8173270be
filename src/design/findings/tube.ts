import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const tube: Rule = ({ mounting }) => {
  if (!mounting.tube || mounting.tube.isEnough) return null;
  return {
    id: "mounting.tube",
    severity: "stop",
    says: `No common tube bears this mast: even ${mounting.tube.name} would be at ${fixed(100 * mounting.tube.stressShareFrac, 0)} % of its permitted stress and its top would move ${fixed(mounting.tube.tipDeflectionM, 2)} m in a gust of ${fixed(mounting.gustMPerS, 0)} m/s.`,
    change: "Lower the mast, put less on it, or ask an engineer.",
    numbers: {
      stressShareFrac: mounting.tube.stressShareFrac,
      tipDeflectionM: mounting.tube.tipDeflectionM,
      mastHeightM: mounting.mastHeightM,
    },
    topics: ["mounting.cameraHeight", "mounting.gust", "mounting.support"],
  };
};
