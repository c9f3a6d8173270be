import { limitText } from "../chain/limit.ts";
import { darkHoursText, fixed } from "../chain/words.ts";
import type { PairOutcome } from "../design.ts";
import type { Rule } from "./rule.ts";

const pairText = (pair: PairOutcome) => `${fixed(pair.installedW, 0)} W with ${fixed(pair.bankAh, 0)} Ah`;

/** What each sizing says of the other, and which is built. */
export const twoSizings: Rule = ({ brief, reliability, battery }) => {
  if (!reliability || !battery) return null;
  const { handbook, pairs, askedDarkHours, because, years } = reliability;
  const best = pairs[0];
  const ofHandbook = `The handbook's size, ${pairText(handbook)}, would have ${darkHoursText(handbook.darkHours)} by ${years} weather years`;
  const days =
    battery.sizedBy === "simulation"
      ? ` It lasts ${fixed(battery.lastsDays, 1)} days without any sun, the handbook's ${fixed(battery.autonomyDays, 1)}: enough for this place's weather, not for a fault that nobody sees.`
      : "";
  return {
    id: "reliability.methods",
    severity: "note",
    says:
      askedDarkHours === null || best === undefined
        ? `${ofHandbook}.`
        : `${ofHandbook}; ${limitText(brief.autonomy)}, and the best that keeps to it is ${pairText(best)}.`,
    change: `Built is ${because}.${days}`,
    numbers: {
      handbookDarkHours: handbook.darkHours,
      handbookW: handbook.installedW,
      handbookAh: handbook.bankAh,
      ...(best === undefined ? {} : { simulatedW: best.installedW, simulatedAh: best.bankAh }),
    },
    topics: ["autonomy.consequence", "power.lift"],
  };
};
