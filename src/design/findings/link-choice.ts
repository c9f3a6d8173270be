import { sayingIn } from "../../core/units/index.ts";
import { LONGEST_CABLE_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** So short that a cable does it: no licence, no aim, no trees. */
export const cableInstead: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  if (!radio || radio.distanceM > LONGEST_CABLE_M) return null;
  const said = sayingIn(brief.units);
  return {
    id: "link.cableInstead",
    severity: "note",
    says: `${said(radio.distanceM, "m away")} is within the ${said(LONGEST_CABLE_M, "m away", { safe: "down" })} of a network cable, which needs no line of sight, draws nothing and can bring power the other way.`,
    change:
      "Where a trench can be dug, take a cable with surge protection at both ends; between two buildings' earths ask a licensed electrician, or use fibre.",
    numbers: { distanceM: radio.distanceM, longestM: LONGEST_CABLE_M },
    topics: ["link.carrier", "link.distance"],
  };
};

/** No radio does: what else would. */
export const otherCarrier: Rule = ({ link }) => {
  if (!link?.radio || link.radio.carriesPicture) return null;
  const others = link.choices.filter(({ name, suits }) => suits !== false && !name.endsWith("radio"));
  if (others.length === 0) return null;
  return {
    id: "link.otherCarrier",
    severity: "note",
    says: `Where no radio does: ${others.map(({ reason }) => reason).join(" ")}`,
    change: "",
    numbers: { distanceM: link.radio.distanceM },
    topics: ["link.carrier", "link.distance"],
  };
};

/** The usual 5 GHz does not do here, and another class was taken. */
export const otherClass: Rule = ({ link }) => {
  const radio = link?.radio;
  if (!link || !radio || radio.radioClass === "5 GHz") return null;
  const usual = link.choices.find(({ name }) => name === "5 GHz radio");
  return {
    id: "link.otherClass",
    severity: "note",
    says: `A ${radio.radioClass} radio is taken here. 5 GHz: ${usual?.reason ?? "not looked at."}`,
    change: "",
    numbers: { radioClass: radio.radioClass, frequencyMHz: radio.frequencyMHz },
    topics: ["link.distance", "place.where"],
  };
};
