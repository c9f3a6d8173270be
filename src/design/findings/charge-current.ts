import { chargeCurrentBoundsA } from "../../core/energy/index.ts";
import { fixed } from "../chain/words.ts";
import { CELL_CHEMISTRY } from "../practice/battery.ts";
import type { Rule } from "./rule.ts";

/** Too much current heats a battery, too little never brings lead-acid to absorption. */
export const chargeCurrent: Rule = ({ battery, array }) => {
  if (!battery || !array) return null;
  const { minA, maxA } = chargeCurrentBoundsA({
    chemistry: CELL_CHEMISTRY[battery.chemistry],
    capacityAh: Math.max(battery.bankAh, 0.1),
  });
  const isA = array.chargeCurrentA;
  if (isA >= minA && isA <= maxA) return null;
  const isFast = isA > maxA;
  return {
    id: "battery.chargeCurrent",
    severity: isFast ? "caution" : "note",
    says: isFast
      ? `In full sun the panels charge with ${fixed(isA, 0)} A; this bank should not get more than about ${fixed(maxA, 0)} A.`
      : `In full sun the panels charge with ${fixed(isA, 1)} A; below ${fixed(minA, 1)} A (a twentieth of the capacity) a lead-acid bank is slow to reach a full charge.`,
    change: isFast
      ? `Limit the controller to ${fixed(maxA, 0)} A, or take a larger bank.`
      : `Raise the margin: ${fixed((array.installedW * minA) / isA, 0)} W of panels would do; or ask for fewer days of autonomy.`,
    numbers: { chargeCurrentA: isA, minA, maxA },
    topics: ["power.margin", "autonomy.consequence", "autonomy.days"],
  };
};
