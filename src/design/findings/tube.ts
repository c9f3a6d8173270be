import { sayingIn } from "../../core/units/index.ts";
import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const tube: Rule = ({ brief, mounting }) => {
  if (!mounting.tube || mounting.tube.isEnough) return null;
  const said = sayingIn(brief.units);
  return {
    id: "mounting.tube",
    severity: "stop",
    says: `No common tube bears this mast: even ${mounting.tube.name} would be at ${fixed(100 * mounting.tube.stressShareFrac, 0)} % of its permitted stress and its top would move ${said(mounting.tube.tipDeflectionM, "m", 2)} ${said.either("in", "under")} a gust of ${said(mounting.gustMPerS, "m/s")}.`,
    change: "Lower the mast, put less on it, or ask an engineer.",
    numbers: {
      stressShareFrac: mounting.tube.stressShareFrac,
      tipDeflectionM: mounting.tube.tipDeflectionM,
      mastHeightM: mounting.mastHeightM,
    },
    topics: ["mounting.cameraHeight", "mounting.gust", "mounting.support"],
  };
};
