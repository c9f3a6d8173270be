import { limitText } from "../chain/limit.ts";
import { darkHoursText, fixed, monthName } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** The climate is a grid's, not the spot's: how far it may be off, and what covers that. */
export const sunUncertainty: Rule = ({ brief, climate, sun, array, reliability }) => {
  if (!climate || !sun || !array || array.darkMonths.length > 0) return null;
  const percent = fixed(100 * climate.ghiUncertaintyFrac, 0);
  const supply = array.supplyRatioByMonth[sun.designMonth] ?? 0;
  const dull = supply * (1 - climate.ghiUncertaintyFrac);
  const isShort = dull < 1;
  // the battery may carry what the dull month lacks: the weather years have tried it
  const isCovered =
    reliability !== null &&
    reliability.askedDarkHours !== null &&
    reliability.yearly.dullSunDarkHours <= reliability.askedDarkHours;
  const covered =
    isShort && isCovered
      ? ` Over a whole year of it the battery still carries the post: ${darkHoursText(reliability.yearly.dullSunDarkHours)} by ${reliability.years} weather years, and ${limitText(brief.autonomy)}.`
      : "";
  // rounded down where it falls short, so that 0.996 is not called 1
  const times = fixed(isShort ? Math.floor(100 * dull) / 100 : dull, 2);
  return {
    id: "sun.uncertainty",
    severity: isShort && !isCovered ? "caution" : "note",
    says: `The sun of one month is known to about ${percent} % here; with that much less in ${monthName(sun.designMonth)} the panels ${isShort ? "only" : "still"} give ${times} times what the load takes.${covered}`,
    change:
      isShort && !isCovered ? "Take a larger margin, or put in monthly figures measured near the place." : "",
    numbers: { ghiUncertaintyFrac: climate.ghiUncertaintyFrac, supplyRatio: supply, dullSupplyRatio: dull },
    topics: ["place.where", "power.margin"],
  };
};
