import { fixed, monthName } from "../chain/words.ts";
import type { Reliability } from "../design.ts";
import type { Finding } from "../finding.ts";
import type { Rule } from "./rule.ts";

/** @source common practice, no source: 10 to 14 days */
const GOOD_DAYS = 14;
/** Beyond a month and a half lead-acid stays half empty for a season and sulphates. @source judgement */
const LONG_DAYS = 45;

/** After the longest dull spell the bank should be full again soon. */
export const recovery: Rule = ({ sun, loads, battery, array, reliability }) => {
  if (!sun || !battery || !array || array.darkMonths.length > 0) return null;
  // the stop about dark hours says what would help; more panels would not
  if (reliability && !reliability.isReached) return null;
  if (reliability) return refilledSlowly(reliability);
  const days = array.recoveryDays;
  if (days !== null && days <= GOOD_DAYS) return null;
  const supply = array.supplyRatioByMonth[sun.designMonth] ?? 0;
  const wantedRatio = 1 + battery.lastsDays / GOOD_DAYS;
  const wantedW = supply > 0 ? (array.installedW * wantedRatio) / supply : array.installedW;
  const month = monthName(sun.designMonth);
  return {
    id: "battery.recovery",
    severity: days !== null && days <= LONG_DAYS ? "note" : "caution",
    says:
      days === null
        ? `After a long dull spell in ${month} the bank would not fill up again that month: the panels give only ${fixed(supply, 2)} times what the load takes.`
        : `After the longest dull spell in ${month} the bank takes about ${fixed(days, 0)} days to fill again; ${GOOD_DAYS} or fewer keep it healthy.`,
    change: `About ${fixed(wantedW, 0)} W of panels instead of ${fixed(array.installedW, 0)} W would fill it in ${GOOD_DAYS} days: raise the margin, or ask for fewer days of autonomy.`,
    numbers: {
      recoveryDays: days ?? "never",
      supplyRatio: supply,
      wantedW,
      dailyWh: loads.designDailyWh,
    },
    topics: ["power.margin", "autonomy.consequence", "autonomy.days"],
  };
};

/** As the weather years have it: spells end when brighter days come, whatever the month's mean would say. */
function refilledSlowly({ yearly, chosen, years }: Reliability): Finding | null {
  const days = yearly.refillDays;
  if (days === null || days <= GOOD_DAYS) return null;
  return {
    id: "battery.recovery",
    severity: days <= LONG_DAYS ? "note" : "caution",
    says: `After a dark spell it takes about ${fixed(days, 0)} days from the first loads back on until the bank is nearly full again (mean of ${years} weather years); ${GOOD_DAYS} or fewer keep it healthy.`,
    change: `More panels than ${fixed(chosen.installedW, 0)} W would fill it sooner: raise the margin, or let the post sleep in the dull months.`,
    numbers: { refillDays: days, installedW: chosen.installedW },
    topics: ["power.margin", "autonomy.consequence", "hours.when"],
  };
}
