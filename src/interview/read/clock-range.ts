import { clockText, DAY_MIN, type TimeTyped, timeTyped } from "./clock.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

export interface ClockRangeHeard {
  readonly ok: true;
  /** Minutes after midnight, 0 to 1439. */
  readonly fromMin: number;
  /** 1 to 1440; smaller than fromMin where the range goes past midnight. */
  readonly toMin: number;
  /** "18:00 to 6:00 the next day, 12 h". */
  readonly heard: string;
}

const WHOLE_DAY =
  /^(?:all day(?: (?:and night|long))?|always|the whole day|whole day|day and night|around the clock|round the clock|24 ?(?:h|hrs?|hours?)(?: a day)?|24\/7)$/;
/** Leaves no doubt of the kind "9 to 5" raises. */
const NEXT_DAY = / (?:on |of )?(?:the )?(?:next|following) (?:day|morning)$/;
const JOINER = / ?(?:-|\.{2,3}) ?| (?:to|till|until|through|thru|and|up to) /g;

/** A stretch of clock time: "from 6 to 18", "6am-8pm", "half past six to ten at night", "all day". */
export function readClockRange(text: string): ClockRangeHeard | Refused {
  const plain = plainText(text).toLowerCase();
  if (plain === "") return refused({ code: "empty" });
  const typed = quotable(text);
  if (WHOLE_DAY.test(plain)) return heardRange(0, DAY_MIN);
  if (text.length > LONGEST_ANSWER) return refused({ code: "not-a-time", typed });
  const said = plain.replace(/^(?:from|between) /, "").replace(/[.,;!]+$/, "");
  const words = said.replace(NEXT_DAY, "");
  const isNextDay = words !== said;
  for (const joiner of words.matchAll(JOINER)) {
    const from = timeTyped(words.slice(0, joiner.index));
    const to = timeTyped(words.slice(joiner.index + joiner[0].length));
    if (from !== undefined && to !== undefined) {
      return isNextDay ? rangeByClock(from, to, typed) : rangeOf(from, to, typed);
    }
  }
  return refused({ code: "not-a-time", typed });
}

function rangeOf(from: TimeTyped, to: TimeTyped, typed: string): ClockRangeHeard | Refused {
  // "6-8pm" is an evening, "9-5pm" a working day: the bare first time takes the half that keeps the range short.
  if (from.isBare && !to.isBare && to.halfDay !== null && to.halfDay !== "am") {
    const evening = (from.minutes % 720) + 720;
    const morning = from.minutes % 720;
    const end = endOf(to);
    return heardRange(evening < end ? evening : morning, end);
  }
  if (from.isBare && to.isBare && to.minutes <= from.minutes) {
    return refused({
      code: "ambiguous-time",
      typed,
      readings: readingsOf(from.minutes % 720, to.minutes % 720),
    });
  }
  if (from.halfDay === null || !to.isBare) return rangeByClock(from, to, typed);
  const start = from.minutes % DAY_MIN;
  return heardRange(start, nearerEnd(start, to.minutes));
}

/** Both times as they stand. */
function rangeByClock(from: TimeTyped, to: TimeTyped, typed: string): ClockRangeHeard | Refused {
  const start = from.minutes % DAY_MIN;
  const end = endOf(to);
  return start === end ? refused({ code: "not-a-time", typed }) : heardRange(start, end);
}

/** Both readings by the twenty-four-hour clock, with the leading zero that leaves no doubt. */
function readingsOf(from: number, to: number): readonly string[] {
  // On the dial twelve stands before one: "12 to 1" is an hour by day or by night.
  const isForward = to > from;
  const ends = [isForward ? to : to + 720, isForward ? to + 720 : to] as const;
  const clock = (minutes: number): string => clockText(minutes).padStart(5, "0");
  return [`${clock(from)} to ${clock(ends[0])}`, `${clock(from + 720)} to ${clock(ends[1])}`];
}

const endOf = (to: TimeTyped): number => (to.minutes % DAY_MIN === 0 ? DAY_MIN : to.minutes);

/** "Noon to six", "8 pm to 6": a bare last time is the next one on the dial. */
function nearerEnd(start: number, bareMinutes: number): number {
  const onDial = bareMinutes % 720;
  const afterStart = (minutes: number): number => (minutes - start + DAY_MIN - 1) % DAY_MIN;
  const nearer = afterStart(onDial) < afterStart(onDial + 720) ? onDial : onDial + 720;
  return nearer === 0 ? DAY_MIN : nearer;
}

function heardRange(fromMin: number, toMin: number): ClockRangeHeard {
  const length = (toMin - fromMin + DAY_MIN) % DAY_MIN || DAY_MIN;
  const hours = Math.floor(length / 60);
  const minutes = length % 60;
  const said = [hours > 0 ? `${hours} h` : "", minutes > 0 ? `${minutes} min` : ""].filter(
    (part) => part !== "",
  );
  const next = toMin <= fromMin ? " the next day" : "";
  return {
    ok: true,
    fromMin,
    toMin,
    heard: `${clockText(fromMin)} to ${clockText(toMin)}${next}, ${said.join(" ")}`,
  };
}
