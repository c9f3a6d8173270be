import { limitText } from "../chain/limit.ts";
import { darkHoursText, fixed, monthSpans } from "../chain/words.ts";
import { MUCH_SNOW_FRAC } from "../practice/sun.ts";
import type { Rule } from "./rule.ts";

/** Months that hold most of the dark hours are named: those that together have this share of them. @source judgement */
const MOST_FRAC = 0.8;

/** The built size misses the dark hours asked for: what would reach them. */
export const darkHours: Rule = ({ brief, climate, sun, reliability, loads, battery, array }) => {
  if (!reliability || reliability.isReached || reliability.askedDarkHours === null) return null;
  const { chosen, pairs, askedDarkHours, yearly, years } = reliability;
  const best = pairs[0];
  const darkest = darkestMonths(yearly.darkHoursByMonth);
  const months = monthSpans(darkest);
  // sleep must begin where the sun stays away, or the bank is empty when the dull months come
  const asleep = monthSpans([...new Set([...darkest, ...(array?.darkMonths ?? [])])]);
  const snowy = sun?.snowFracByMonth.some((frac, month) => frac > MUCH_SNOW_FRAC && darkest.includes(month));
  // frost that keeps a lithium bank from charging is mended by warmth or lead, not by a smaller load
  const isFrozenOut =
    battery?.chemistry === "lifepo4" &&
    brief.power.batteryHeaterW.value === 0 &&
    (climate?.designColdTempC ?? 0) < 0;
  const dark = `${darkHoursText(chosen.darkHours)} (by ${years} weather years, ${reliability.carefulMeans}, the battery old)`;
  const when = months === "" ? "" : `, most of them in ${months}`;
  return {
    id: "reliability.missed",
    severity: best === undefined ? "stop" : "caution",
    says:
      best === undefined
        ? `No panels and battery that were tried bring the picture below ${fixed(askedDarkHours, 0)} dark hours a year; this size has ${dark}${when}.`
        : `The size you chose has ${dark}${when}; ${limitText(brief.autonomy)}.`,
    change:
      best === undefined
        ? `${isFrozenOut ? "Lithium without a heater takes no charge in frost: take AGM lead-acid, or blocks with a heater of their own, and see what that leaves. " : ""}${snowy ? "Snow lies on the panels for much of that time: set them upright or clear them. " : ""}Let the post sleep in the dull months${asleep === "" ? "" : ` (${asleep})`}, run the camera by daylight only, take devices that draw less than the ${fixed(loads.designDailyWh, 0)} Wh a day, or plan another source of power.`
        : `Take ${fixed(best.installedW, 0)} W with ${fixed(best.bankAh, 0)} Ah, or ask for less.`,
    numbers: {
      askedDarkHours,
      darkHours: chosen.darkHours,
      asAnsweredDarkHours: yearly.darkHours,
      installedW: chosen.installedW,
      bankAh: chosen.bankAh,
    },
    topics: [
      "autonomy.consequence",
      "autonomy.darkHours",
      "power.sizing",
      ...(brief.hours.runsInMonth.value.every(Boolean) ? ["hours.when"] : []),
    ],
  };
};

/** The fewest months that hold most of the dark hours; none where there are none. */
function darkestMonths(hoursByMonth: readonly number[]): readonly number[] {
  const total = hoursByMonth.reduce((all, hours) => all + hours, 0);
  if (total < 1) return [];
  const months: number[] = [];
  let held = 0;
  for (const month of hoursByMonth.map((_, i) => i).toSorted((a, b) => hoursByMonth[b]! - hoursByMonth[a]!)) {
    if (held >= MOST_FRAC * total) break;
    months.push(month);
    held += hoursByMonth[month]!;
  }
  return months.toSorted((a, b) => a - b);
}
