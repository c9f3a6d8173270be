import { limitText } from "../chain/limit.ts";
import { darkHoursText, fixed } from "../chain/words.ts";
import type { PairOutcome, Reliability } from "../design.ts";
import type { Rule } from "./rule.ts";

const pairText = (pair: PairOutcome) => `${fixed(pair.installedW, 0)} W with ${fixed(pair.bankAh, 0)} Ah`;

/** Why a polar bank by the worksheets falls short of what it promises; nothing where it does not. */
function shortfall({ handbook, handbookNewDarkHours, askedDarkHours, carefulMeans }: Reliability): string {
  if (handbookNewDarkHours === null || askedDarkHours === null || handbook.darkHours <= askedDarkHours)
    return "";
  return ` The handbook takes so deep a discharge to be rare, and so does not add the battery's age to it; here it comes every winter, in the battery's last one too. New, and with the demand as you answered it, that size would have ${darkHoursText(handbookNewDarkHours)}; the rest comes of an old battery, with ${carefulMeans}.`;
}

/** What each sizing says of the other, and which is built. */
export const twoSizings: Rule = ({ brief, reliability, battery }) => {
  if (!reliability || !battery) return null;
  const { handbook, pairs, askedDarkHours, because, years } = reliability;
  const best = pairs[0];
  const ofHandbook = `The handbook's size, ${pairText(handbook)}, would have ${darkHoursText(handbook.darkHours)} by ${years} weather years`;
  const why = shortfall(reliability);
  const days =
    battery.sizedBy === "simulation"
      ? ` It lasts ${fixed(battery.lastsDays, 1)} days without any sun, the handbook's ${fixed(battery.autonomyDays, 1)}: enough for this place's weather, not for a fault that nobody sees.`
      : "";
  return {
    id: "reliability.methods",
    severity: "note",
    says:
      askedDarkHours === null || best === undefined
        ? `${ofHandbook}.${why}`
        : `${ofHandbook}; ${limitText(brief.autonomy)}, and the best that keeps to it is ${pairText(best)}.${why}`,
    change: `Built is ${because}.${days}`,
    numbers: {
      handbookDarkHours: handbook.darkHours,
      handbookW: handbook.installedW,
      handbookAh: handbook.bankAh,
      ...(why === "" ? {} : { handbookNewDarkHours: reliability.handbookNewDarkHours! }),
      ...(best === undefined ? {} : { simulatedW: best.installedW, simulatedAh: best.bankAh }),
    },
    topics: ["autonomy.consequence", "power.lift"],
  };
};
