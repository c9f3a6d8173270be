import { readNumberWords } from "./number-words.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

export interface ClockHeard {
  readonly ok: true;
  /** 0 to 1439. */
  readonly minutesAfterMidnight: number;
  /** "18:30". */
  readonly heard: string;
}

export const DAY_MIN = 1440;

type HalfDay = "am" | "pm" | "night";

/** A time as typed: whether its half of the day was said decides what a bare neighbour means. */
export interface TimeTyped {
  /** 0 to 1440; 1440 only for "24:00". */
  readonly minutes: number;
  readonly halfDay: HalfDay | null;
  /** Hour 1 to 12 with no half of the day said: half past six may be either. */
  readonly isBare: boolean;
}

const HALF_DAYS: readonly (readonly [HalfDay, RegExp])[] = [
  ["am", /^(.+?) ?(?:a\.? ?m\.?|in the morning|of the morning|before noon|early in the morning)$/],
  ["pm", /^(.+?) ?(?:p\.? ?m\.?|in the afternoon|in the evening|of the evening|after noon)$/],
  ["night", /^(.+?) (?:at night|in the night)$/],
];

/** A time of day: 6:30, 06.30, 6pm, 18h, 1830, "half past six", "quarter to seven", noon, midnight. */
export function readClock(text: string): ClockHeard | Refused {
  if (plainText(text) === "") return refused({ code: "empty" });
  const time = text.length > LONGEST_ANSWER ? undefined : timeTyped(text);
  if (time === undefined) return refused({ code: "not-a-time", typed: quotable(text) });
  const minutesAfterMidnight = time.minutes % DAY_MIN;
  return { ok: true, minutesAfterMidnight, heard: clockText(minutesAfterMidnight) };
}

/** "6:30"; the end of the day is "24:00". */
export function clockText(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

export function timeTyped(text: string): TimeTyped | undefined {
  const words = plainText(text)
    .toLowerCase()
    .replace(/^(?:at|about|around|from|by) /, "")
    .replace(/[,;!]+$/, "")
    .replace(/o ?'? ?clock|hours$|hrs$/g, "")
    .replace(/\s+/g, " ")
    .trim();
  if (/^(?:12 )?(?:noon|midday|mid-day)$/.test(words)) return { minutes: 720, halfDay: "pm", isBare: false };
  if (/^(?:12 )?(?:midnight|mid-night)$/.test(words)) return { minutes: 0, halfDay: "night", isBare: false };
  for (const [halfDay, pattern] of HALF_DAYS) {
    const match = pattern.exec(words);
    if (match !== null) return inHalfDay(minutesOf(match[1]!.trim()), halfDay);
  }
  const minutes = minutesOf(words);
  if (minutes === undefined) return undefined;
  // "06:30" and "0630" are the twenty-four-hour clock.
  return { minutes, halfDay: null, isBare: minutes >= 60 && minutes < 780 && !/^0/.test(words) };
}

function inHalfDay(minutes: number | undefined, halfDay: HalfDay): TimeTyped | undefined {
  if (minutes === undefined || minutes >= DAY_MIN) return undefined;
  // "18:30 in the evening" says the same twice; "18:30 am" contradicts itself.
  if (minutes >= 780) return halfDay === "am" ? undefined : { minutes, halfDay, isBare: false };
  const onDial = minutes % 720;
  // At night it is late evening from six on, and early morning before.
  const isAfterNoon = halfDay === "pm" || (halfDay === "night" && onDial >= 360);
  return { minutes: onDial + (isAfterNoon ? 720 : 0), halfDay, isBare: false };
}

/** Minutes after midnight by the figures or words alone. */
function minutesOf(words: string): number | undefined {
  const parted = /^(\d{1,2}) ?(?:[:.h]|u(?=\d)) ?(\d{2})(?:[:.]00)?(?: ?h)?$/.exec(words);
  if (parted !== null) return onClock(Number(parted[1]), Number(parted[2]));
  const packed = /^(\d{1,2})(\d{2}) ?h?$/.exec(words);
  if (packed !== null && /^\d{3,4} ?h?$/.test(words)) return onClock(Number(packed[1]), Number(packed[2]));
  const hour = /^(\d{1,2}) ?(?:h|hrs?|hours?)?$/.exec(words);
  if (hour !== null) return onClock(Number(hour[1]), 0);
  return minutesOfWords(words);
}

function minutesOfWords(words: string): number | undefined {
  const relative =
    /^(?:a )?(half|quarter|.+?)(?: minutes?| mins?)? (past|after|to|before|of|till) (.+)$/.exec(words) ??
    /^(half)() (.+)$/.exec(words);
  if (relative !== null) {
    const [, part, side, hourWords] = relative;
    const hour = hourOf(hourWords!);
    const minutes = part === "half" ? 30 : part === "quarter" ? 15 : wholeOf(part!);
    if (hour === undefined || minutes === undefined || minutes < 1 || minutes > 59) return undefined;
    const isBefore = side === "to" || side === "before" || side === "of" || side === "till";
    // Half only counts onwards: "half six" is taken as half past, as in Britain, and echoed.
    if (isBefore && part === "half") return undefined;
    return (hour * 60 + (isBefore ? -minutes : minutes) + DAY_MIN) % DAY_MIN;
  }
  // "six thirty", "eighteen hundred", "six oh five"
  const pair = /^(\S+) (?:(?:oh|o) )?(\S+(?:[ -]\S+)?)$/.exec(words);
  if (pair !== null) {
    const hour = wholeOf(pair[1]!);
    const minutes = pair[2] === "hundred" ? 0 : wholeOf(pair[2]!);
    const isSaid = pair[2] === "hundred" || / (?:oh|o) /.test(words) || (minutes ?? 0) >= 10;
    if (hour !== undefined && minutes !== undefined && isSaid) return onClock(hour, minutes);
  }
  const hour = hourOf(words);
  return hour === undefined ? undefined : hour * 60;
}

function hourOf(words: string): number | undefined {
  if (words === "noon" || words === "midday") return 12;
  if (words === "midnight") return 0;
  const hour = wholeOf(words);
  return hour !== undefined && hour <= 24 ? hour : undefined;
}

function wholeOf(words: string): number | undefined {
  if (/^\d{1,2}$/.test(words)) return Number(words);
  const number = readNumberWords(words);
  const isWhole = number !== undefined && !number.isArticle && number.next === words.length;
  return isWhole && Number.isInteger(number.value) ? number.value : undefined;
}

function onClock(hour: number, minute: number): number | undefined {
  const minutes = hour * 60 + minute;
  return hour <= 24 && minute <= 59 && minutes <= DAY_MIN ? minutes : undefined;
}
