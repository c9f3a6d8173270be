/** The charge now and the days to come, as somebody at the post would say them: "30 % and off, rain, rain, sunny". */
import type { ChargeNow, ComingSky, SkyKind, SwitchedNow } from "../../design/index.ts";
import { LONGEST_ANSWER, plainText } from "./typed-text.ts";

export type OutlookHeard =
  | {
      readonly kind: "outlook";
      readonly charge: ChargeNow;
      /** Null: nothing was said of the loads. */
      readonly switched: SwitchedNow | null;
      readonly days: readonly ComingSky[];
    }
  | { readonly kind: "refused"; readonly says: string };

const WORDS: Readonly<Record<SkyKind, readonly string[]>> = {
  sunny: ["sunny", "sun", "clear", "bright", "fair", "fine"],
  partly: ["partly", "partial", "mixed", "changeable", "broken", "showers"],
  overcast: ["overcast", "cloudy", "cloud", "clouds", "dull", "grey", "gray"],
  rain: ["rain", "rainy", "snow", "snowy", "fog", "foggy", "storm", "wet"],
};
const KIND_BY_WORD: ReadonlyMap<string, SkyKind> = new Map(
  (Object.keys(WORDS) as SkyKind[]).flatMap((kind) => WORDS[kind].map((word) => [word, kind] as const)),
);

const EXAMPLE = "Example: 60 %, rain, rain, sunny";
const DAYS_AT_MOST = 30;
/** No day on Earth brings more. */
const MOST_KWH_PER_M2 = 14;

const refused = (says: string): OutlookHeard => ({ kind: "refused", says: `${says} ${EXAMPLE}` });

/** "and it is off", "the picture is still on", "extras off", "not off": what is seen of the loads, with the words round it. */
const SWITCHED =
  /(?:\b(?:and|but|with|it|its|it's|is|isn't|isnt|are|aren't|arent|not|the|all|everything|picture|pictures|cameras?|post|loads?|lights?|power|still|now|already|they|only|just|went|has|have|been|gone|switched|turned|extras?|lamps?|recorders?|sensors?)\b[\s,;:]*)*\b(?:off|on|dark|shed|running)\b/g;
/** What is always shed first. */
const GOES_FIRST = /\b(?:extras?|lamps?|recorders?|sensors?)\b/;

/**
 * Whether a charge begins here: "60 %", "12.4", "V," or "off, 60 %". A word of its own before it belongs to it, a number of a
 * brief's name does not.
 */
export function beginsWithCharge(text: string): boolean {
  const words = plainText(text).toLowerCase();
  const first = words.search(SWITCHED);
  const rest = first === 0 ? words.replace(SWITCHED, "").replace(/^[\s,;:]+/, "") : words;
  return /^(?:(?:at|charge|battery)\s+)*\d+(?:[.,]\d+)?\s*(?:%|percent\b|per cent\b|v\b|volts?\b)/.test(rest);
}

/** What was said of the loads; undefined: two things that cannot both be. */
function switchedOf(said: readonly string[]): SwitchedNow | null | undefined {
  const heard = said.map((phrase): SwitchedNow => {
    const isNegated = /\b(?:not|isn't|isnt|aren't|arent)\b/.test(phrase);
    const isOff = /(?:off|dark|shed)$/.test(phrase) !== isNegated;
    return isOff ? (GOES_FIRST.test(phrase) ? "extrasOff" : "off") : "on";
  });
  const isExtrasOnly = heard.includes("extrasOff") && !heard.includes("off");
  const kinds = new Set(isExtrasOnly ? (["extrasOff"] as const) : heard.filter((one) => one !== "extrasOff"));
  return kinds.size > 1 ? undefined : ([...kinds][0] ?? null);
}

/**
 * First the charge in percent or the voltage at rest, then a word or a figure in kWh/m2 for each day, today's rest first; at any
 * place whether the loads are on or off.
 */
export function readOutlook(text: string): OutlookHeard {
  if (text.length > LONGEST_ANSWER) return refused("That is longer than an outlook can be.");
  const typed = plainText(text)
    .toLowerCase()
    .replace(/(\d),(\d)/g, "$1.$2");
  const switched = switchedOf(typed.match(SWITCHED) ?? []);
  if (switched === undefined) return refused("Say that it is on or that it is off, not both.");
  const words = typed.replace(SWITCHED, " ").replace(/^[\s,;:]+/, "");
  const charge =
    /^\s*(?:at |charge |battery )*(\d+(?:\.\d+)?)\s*(%|percent|per cent|v|volts?)(?![a-z])[\s,;]*/.exec(
      words,
    );
  if (charge === null)
    return refused("Begin with the charge in percent, or with the battery's voltage after an hour at rest.");
  const figure = Number(charge[1]);
  const isVolts = charge[2]!.startsWith("v");
  if (!isVolts && figure > 100) return refused("A battery cannot be fuller than 100 %.");
  if (isVolts && (figure < 8 || figure > 64)) return refused(`${charge[1]} V is no bank of 12, 24 or 48 V.`);
  const days = daysOf(words.slice(charge[0].length));
  if (typeof days === "string") return refused(days);
  if (days.length > DAYS_AT_MOST)
    return refused(`No forecast reaches ${days.length} days; ${DAYS_AT_MOST} at most.`);
  return {
    kind: "outlook",
    charge: isVolts ? { by: "volts", restV: figure } : { by: "share", socFrac: figure / 100 },
    switched,
    days,
  };
}

/** The days, or what is wrong with them. */
function daysOf(words: string): readonly ComingSky[] | string {
  const days: ComingSky[] = [];
  const parts = words
    .replace(/\b(?:then|and|days?|of|kwh\/m2|kwh|a day|cloudy sky)\b/g, " ")
    .split(/[\s,;]+/)
    .filter((part) => part !== "");
  for (let i = 0; i < parts.length; i += 1) {
    const part = parts[i]!;
    const times = /^(\d{1,2})x?$/.exec(part);
    const next = KIND_BY_WORD.get(parts[i + 1] ?? "");
    if (times !== null && next !== undefined) {
      for (let n = 0; n < Number(times[1]); n += 1) days.push({ kind: next });
      i += 1;
      continue;
    }
    const kind = KIND_BY_WORD.get(part);
    if (kind !== undefined) {
      days.push({ kind });
      continue;
    }
    const ghiKWhPerM2 = Number(part);
    if (!/^\d+(?:\.\d+)?$/.test(part) || ghiKWhPerM2 > MOST_KWH_PER_M2)
      return `"${part}" is neither sunny, partly, overcast or rain, nor kWh/m2 of a day.`;
    days.push({ kind: "figure", ghiKWhPerM2 });
  }
  return days.length === 0 ? "Say how the coming days will be: sunny, partly, overcast or rain." : days;
}
