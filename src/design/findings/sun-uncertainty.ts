import { fixed, monthName } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** The climate is a grid's, not the spot's: how far it may be off, and what covers that. */
export const sunUncertainty: Rule = ({ climate, sun, array }) => {
  if (!climate || !sun || !array || array.darkMonths.length > 0) return null;
  const percent = fixed(100 * climate.ghiUncertaintyFrac, 0);
  const supply = array.supplyRatioByMonth[sun.designMonth] ?? 0;
  const dull = supply * (1 - climate.ghiUncertaintyFrac);
  return {
    id: "sun.uncertainty",
    severity: "note",
    says: `The sun of one month is known to about ${percent} % here; with that much less in ${monthName(sun.designMonth)} the panels still give ${fixed(dull, 2)} times what the load takes.`,
    change: dull < 1 ? "Take a larger margin, or put in monthly figures measured near the place." : "",
    numbers: { ghiUncertaintyFrac: climate.ghiUncertaintyFrac, supplyRatio: supply, dullSupplyRatio: dull },
    topics: ["place.where", "power.margin"],
  };
};
