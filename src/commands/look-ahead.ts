import { timeZoneAt } from "../core/place/index.ts";
import { type Design, type OutlookAnswer, outlookOf } from "../design/index.ts";
import type { OutlookAsked, OutlookSaid } from "../interview/conversation.ts";
import { outlookWords } from "../report/index.ts";

/** 0 = January; hours since midnight, whole. */
export interface PostClock {
  readonly month: number;
  readonly hourNow: number;
}

/** Month and hour by the clock at the post: whoever asks may be elsewhere. This machine's own where there is no place yet. */
export function postClock({ brief }: Design, nowUtc: string): PostClock {
  const site = brief.place.site.value;
  const parts = new Intl.DateTimeFormat("en", {
    ...(site === null ? {} : { timeZone: timeZoneAt(site) }),
    month: "numeric",
    hour: "numeric",
    hourCycle: "h23",
  }).formatToParts(new Date(nowUtc));
  const numberOf = (type: string): number => Number(parts.find((part) => part.type === type)!.value);
  return { month: numberOf("month") - 1, hourNow: numberOf("hour") };
}

export function lookAhead(
  design: Design,
  asked: OutlookAsked,
  clock: PostClock,
): { readonly answer: OutlookAnswer; readonly said: OutlookSaid } {
  const answer = outlookOf(design, { ...asked, ...clock });
  const said =
    answer.kind === "withheld"
      ? { lines: [answer.because], chart: null }
      : outlookWords(answer, design.brief.units);
  return { answer, said };
}
