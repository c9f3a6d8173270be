import { sayingIn } from "../../core/units/index.ts";
import { LONGEST_CABLE_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

export const cableLength: Rule = ({ brief }) => {
  const distanceM = brief.link.distanceM.value;
  if (brief.link.carrier.value !== "cable" || distanceM <= LONGEST_CABLE_M) return null;
  const said = sayingIn(brief.units);
  return {
    id: "link.cableLength",
    severity: "stop",
    says: `A data cable carries the picture over ${said(LONGEST_CABLE_M, "m away", { safe: "down" })} at most; it is ${said(distanceM, "m away")}.`,
    change: "Take a radio, or find a nearer building; fibre goes further but is no first project.",
    numbers: { distanceM, longestM: LONGEST_CABLE_M },
    topics: ["link.carrier", "link.distance"],
  };
};
