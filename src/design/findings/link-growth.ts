import { sayingIn } from "../../core/units/index.ts";
import { TREE_GROWTH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** Trees that the line clears today grow into it one day. */
export const linkGrowth: Rule = ({ brief, link }) => {
  const clearance = link?.clearance;
  const path = link?.path;
  if (!path || !clearance || clearance.clearingNearHeightM !== null) return null;
  const trees = path.obstacles.filter(({ kind }) => kind === "trees");
  if (trees.length === 0) return null;
  const said = sayingIn(brief.units);
  const spareM = -clearance.byRule[0]!.missingM;
  const isTrees = clearance.governingKind === "trees";
  return {
    id: "link.growth",
    severity: isTrees && spareM < TREE_GROWTH_M ? "caution" : "note",
    says: `The line clears the trees${isTrees ? ` with ${said(spareM, "m", { places: 1, safe: "down" })} to spare beyond the ${said(TREE_GROWTH_M, "m")} of growth that is allowed for` : `, ${said(TREE_GROWTH_M, "m")} of growth included`}. They keep growing.`,
    change:
      "Look along the line every two years when the leaves are out, and cut or raise before the level falls.",
    numbers: { spareM, growthM: TREE_GROWTH_M },
    topics: ["link.sight", "link.between"],
  };
};
