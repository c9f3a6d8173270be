import type { Rule } from "./rule.ts";

/** Words or ground that no longer fit the path: the distance was changed after them. */
export const linkUnread: Rule = ({ link }) => {
  const path = link?.path;
  if (!path || path.unread === null) return null;
  return {
    id: "link.unread",
    severity: "stop",
    says: `What was said of the way does not fit it and is left out of the sums: ${path.unread}`,
    change: "Answer again what stands in between and how the ground runs.",
    numbers: { distanceM: path.distanceM },
    topics: ["link.distance", "link.between", "link.ground"],
  };
};
