import { sayingIn } from "../../core/units/index.ts";
import type { Rule } from "./rule.ts";

/** Code maps hardly anywhere show less. @source from memory: strength-level gusts of 40 to 60 m/s, 35 in the calmest regions */
const UNUSUALLY_LOW_M_PER_S = 35;

export const gust: Rule = ({ brief, mounting }) => {
  if (mounting.gustMPerS >= UNUSUALLY_LOW_M_PER_S) return null;
  const said = sayingIn(brief.units);
  return {
    id: "mounting.gust",
    severity: "caution",
    says: `A design gust of ${said(mounting.gustMPerS, "m/s")} is unusually low: code maps show ${said(UNUSUALLY_LOW_M_PER_S, "m/s", { safe: "up" })} and more almost everywhere, and the wind force grows with its square.`,
    change:
      "Ask the local building office for the 3-second gust at strength level (not a mean wind, not a service-level figure).",
    numbers: { gustMPerS: mounting.gustMPerS, usualLeastMPerS: UNUSUALLY_LOW_M_PER_S },
    topics: ["mounting.gust"],
  };
};
