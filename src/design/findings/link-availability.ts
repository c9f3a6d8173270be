import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

const SIDE = { computed: "about", "at-most": "at most", "at-least": "at least" } as const;

/** Weather takes the link away for longer than the picture may be dark. */
export const linkAvailability: Rule = ({ link }) => {
  const year = link?.availability;
  // where the picture is not carried in clear air either, that is said, not the weather
  if (!link?.radio?.carriesPicture || !year || year.lostHPerYear <= year.askedHPerYear) return null;
  const isRain = year.rainHPerYear >= year.multipathHPerYear;
  return {
    id: "link.availability",
    severity: "caution",
    says: `${isRain ? "Rain" : "Layers of air that bend the beam"} would take the link away for ${SIDE[year.certainty]} ${fixed(year.lostHPerYear, 0)} hours a year; the picture may be dark for ${fixed(year.askedHPerYear, 0)}.`,
    change: isRain
      ? "Shorten the path, or take a lower band or a larger antenna where the rules allow it."
      : "Shorten or clear the path, or keep recordings at the post so that nothing is lost meanwhile.",
    numbers: {
      lostHPerYear: year.lostHPerYear,
      rainHPerYear: year.rainHPerYear,
      multipathHPerYear: year.multipathHPerYear,
      askedHPerYear: year.askedHPerYear,
    },
    topics: ["link.distance", "link.carrier", "autonomy.consequence"],
  };
};
