import { fixed, monthName } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** What stands round the panel may take this much of the design month before it is said. @source judgement */
const BEARABLE_FRAC = 0.1;

/** Trees and hills take most in the month that has least. */
export const shade: Rule = ({ brief, sun }) => {
  const horizonDeg = Math.max(0, ...brief.place.horizon.value.map(({ elevationDeg }) => elevationDeg));
  if (!sun || horizonDeg === 0) return null;
  const lostFrac = sun.shadeFracByMonth[sun.designMonth]!;
  if (lostFrac <= BEARABLE_FRAC) return null;
  return {
    id: "sun.shade",
    severity: "caution",
    says: `What stands round the panel (up to ${fixed(horizonDeg, 0)}° high) takes ${fixed(100 * lostFrac, 0)} % of the sun in ${monthName(sun.designMonth)}, the month that decides.`,
    change:
      "Move the panel to where the sky toward the equator is open, raise it, or cut what shades it; a panel may stand apart from the camera.",
    numbers: { horizonDeg, lostFrac },
    topics: ["place.shade"],
  };
};
