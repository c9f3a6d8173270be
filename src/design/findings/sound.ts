import type { Rule } from "./rule.ts";

export const sound: Rule = ({ brief }) => {
  if (!brief.view.recordsSound.value) return null;
  return {
    id: "view.sound",
    severity: "caution",
    says: "Recording sound is ruled far more strictly than pictures: in many places everybody heard must agree, and breaking that is a crime.",
    change: "Switch sound off, or ask a local lawyer before the first recording.",
    numbers: { recordsSound: "yes" },
    topics: ["view.sound"],
  };
};
