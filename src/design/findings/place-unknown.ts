import type { Rule } from "./rule.ts";

/** Without a climate neither battery nor panel can be worked. */
export const placeUnknown: Rule = ({ brief, climate, withheld }) => {
  if (climate) return null;
  const because = withheld.find(({ stage }) => stage === "climate")?.because ?? "the place is not known";
  return {
    id: "place.unknown",
    severity: "stop",
    says: `Sun, cold, battery, panel and wires cannot be worked, because ${because}.`,
    change: brief.place.site.value
      ? "Name the nearest town on land, give its coordinates, or bring sun figures of your own for the place."
      : "Name the nearest town, or give the coordinates from a map.",
    numbers: { because },
    topics: ["place.where"],
  };
};
