import { fixed } from "../chain/words.ts";
import { LONGEST_CABLE_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

export const cableLength: Rule = ({ brief }) => {
  const distanceM = brief.link.distanceM.value;
  if (brief.link.carrier.value !== "cable" || distanceM <= LONGEST_CABLE_M) return null;
  return {
    id: "link.cableLength",
    severity: "stop",
    says: `A data cable carries the picture over ${LONGEST_CABLE_M} m at most; it is ${fixed(distanceM, 0)} m.`,
    change: "Take a radio, or find a nearer building; fibre goes further but is no first project.",
    numbers: { distanceM, longestM: LONGEST_CABLE_M },
    topics: ["link.carrier", "link.distance"],
  };
};
