import { comparedSources } from "../../core/climate/index.ts";
import { fixed, monthName } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** The builder's own figures beside the map, in the month that decides. */
export const twoSources: Rule = ({ climate, sun }) => {
  const other = climate?.otherGhiDailyKWhPerM2ByMonth;
  if (!climate || !sun || !other || climate.otherSunSource === null) return null;
  const month = sun.designMonth;
  const compared = comparedSources({
    firstGhiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    secondGhiDailyKWhPerM2ByMonth: other,
    month,
  });
  const { differenceFrac, firstKWhPerM2: used, secondKWhPerM2: beside } = compared;
  const isFar = compared.agreement !== "agree";
  return {
    id: "sun.twoSources",
    severity: isFar ? "caution" : "note",
    says: `In ${monthName(month)} ${climate.sunSource} gives ${fixed(used, 2)} kWh/m2 a day on level ground and ${climate.otherSunSource} ${fixed(beside, 2)}: ${isFar ? "they differ by" : "they agree within"} ${fixed(100 * differenceFrac, 0)} %. The sizes use the ${used <= beside ? "lower" : "higher"}.`,
    change: isFar
      ? "Find out how each was measured, for how many years and how far away, and answer which one to trust."
      : "",
    numbers: { usedKWhPerM2: used, otherKWhPerM2: beside, differenceFrac },
    topics: ["place.sun", "place.trust"],
  };
};
