import { DARK_MONTH_GHI_KWH_PER_M2 } from "../../core/sun/index.ts";
import { fixed, monthSpans } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** Where the sun stays away for weeks no panel carries the post. */
export const darkMonths: Rule = ({ sun, array, battery }) => {
  if (!sun || !array || !battery || array.darkMonths.length === 0) return null;
  const names = monthSpans(array.darkMonths);
  const snowedIn = array.darkMonths.filter(
    (month) =>
      sun.poaDailyKWhPerM2ByMonth[month]! >= (1 - sun.snowFracByMonth[month]!) * DARK_MONTH_GHI_KWH_PER_M2,
  );
  const snow =
    snowedIn.length === 0
      ? ""
      : ` In ${monthSpans(snowedIn)} it is the snow on the panels that keeps it away: such a month is carried by more battery and not by more panels, so more snow can ask for fewer of them.`;
  return {
    id: "sun.dark",
    severity: "stop",
    says: `In ${names} practically no sun reaches the panel, so no panel can carry the post then; the bank alone would need, by the handbook, ${fixed(battery.requiredAh, 0)} Ah at ${battery.bankV} V.${snow}`,
    change: `${snow === "" ? "" : "Clear the panels of snow; "}${snow === "" ? "Let" : "let"} the post sleep in ${names}, or plan another source of power for them.`,
    numbers: { darkMonths: names, requiredAh: battery.requiredAh, autonomyDays: battery.autonomyDays },
    topics: ["hours.when", "hours.fromMonth", "hours.toMonth", "place.where"],
  };
};
