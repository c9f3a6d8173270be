import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** @source judgement: beyond this a usual mobile plan is slowed down or costs extra */
const USUAL_PLAN_GB = 100;

export const cellularData: Rule = ({ link }) => {
  if (link?.carrier !== "cellular") return null;
  const isMuch = link.monthlyGB > USUAL_PLAN_GB;
  return {
    id: "link.cellularData",
    severity: isMuch ? "caution" : "note",
    says: `Sent for as long as the camera runs, the pictures are about ${fixed(link.monthlyGB, 0)} GB a month, and the mobile plan costs every month for as long as the post stands.`,
    change: isMuch
      ? "Record at the post and send only events or a small picture, or send fewer pictures a second; and measure the signal at the spot with a phone of the same network first."
      : "Measure the signal at the spot with a phone of the same network first.",
    numbers: { monthlyGB: link.monthlyGB, needMbps: link.needMbps },
    topics: ["link.carrier", "view.smoothness"],
  };
};
