import { fixed } from "../chain/words.ts";
import { TREE_GROWTH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** Trees that the line clears today grow into it one day. */
export const linkGrowth: Rule = ({ link }) => {
  const clearance = link?.clearance;
  const path = link?.path;
  if (!path || !clearance || clearance.clearingNearHeightM !== null) return null;
  const trees = path.obstacles.filter(({ kind }) => kind === "trees");
  if (trees.length === 0) return null;
  const spareM = -clearance.byRule[0]!.missingM;
  const isTrees = clearance.governingKind === "trees";
  return {
    id: "link.growth",
    severity: isTrees && spareM < TREE_GROWTH_M ? "caution" : "note",
    says: `The line clears the trees${isTrees ? ` with ${fixed(spareM, 1)} m to spare beyond the ${TREE_GROWTH_M} m of growth that is allowed for` : `, ${TREE_GROWTH_M} m of growth included`}. They keep growing.`,
    change:
      "Look along the line every two years when the leaves are out, and cut or raise before the level falls.",
    numbers: { spareM, growthM: TREE_GROWTH_M },
    topics: ["link.sight", "link.between"],
  };
};
