import type { Rule } from "./rule.ts";

export const linkSight: Rule = ({ brief, link }) => {
  if (!link?.radio || brief.link.sight.value !== "unknown") return null;
  return {
    id: "link.sightUnknown",
    severity: "caution",
    says: "Nobody has seen the far end from the post yet; the sums take the way as free, and without a free line most bridges do not work.",
    change:
      "Before buying, walk it: stand where the antenna will be with binoculars while somebody shows a bright light or a mirror at the other end, and answer again.",
    numbers: { distanceM: link.radio.distanceM },
    topics: ["link.sight"],
  };
};
