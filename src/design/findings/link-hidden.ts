import { counted } from "../lists/figures.ts";
import type { Rule } from "./rule.ts";

/** Posts that cannot hear each other talk at once. */
export const linkHidden: Rule = ({ link }) => {
  const sector = link?.sector;
  if (!sector || sector.hiddenPairs === 0) return null;
  const pairs = (sector.posts * (sector.posts - 1)) / 2;
  return {
    id: "link.hiddenPosts",
    severity: "note",
    says: `Of the ${counted(pairs, "pair")} among ${sector.posts} posts ${sector.hiddenPairs} would not hear each other, and whoever does not hear another talks at the same time. That takes them as spread evenly over ${sector.spreadDeg} degrees: where the others stand is not known.`,
    change:
      "Let the radio at the far end give each post its turn (scheduled or polled access), or make every post ask leave to send (RTS/CTS).",
    numbers: { posts: sector.posts, hiddenPairs: sector.hiddenPairs, spreadDeg: sector.spreadDeg },
    topics: ["link.otherPosts"],
  };
};
