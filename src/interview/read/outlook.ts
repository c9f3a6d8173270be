/** The charge now and the days to come, as somebody at the post would say them: "60 %, rain, rain, sunny". */
import type { ChargeNow, ComingSky, SkyKind } from "../../design/index.ts";
import { LONGEST_ANSWER, plainText } from "./typed-text.ts";

export type OutlookHeard =
  | {
      readonly kind: "outlook";
      readonly charge: ChargeNow;
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

/** First the charge in percent or the voltage at rest, then a word or a figure in kWh/m2 for each day, today's rest first. */
export function readOutlook(text: string): OutlookHeard {
  if (text.length > LONGEST_ANSWER) return refused("That is longer than an outlook can be.");
  const words = plainText(text)
    .toLowerCase()
    .replace(/(\d),(\d)/g, "$1.$2");
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
