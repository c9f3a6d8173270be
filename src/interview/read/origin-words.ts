import type { Origin } from "../../design/brief.ts";

export type OriginWord = Exclude<Origin, "assumed">;

const DATASHEET =
  "(?:labels?|stickers?|name ?plate|type plate|rating plate|data ?-?sheets?|specs?|spec ?sheets?|specifications?|manual|leaflet|packaging)";

/** "A" right after a figure is amperes, as "in" is inches: "4 A guess", "5 in label". */
const A = "(?<!\\d ?)a ";

/** What may stand after a figure to say where it came from: "4 W (label)", "4 W from the datasheet". */
const TAILS: readonly (readonly [OriginWord, RegExp])[] = [
  [
    "measured",
    /^(.+?)[\s,;:(-]*(?<![a-z])(?:as |i |we |i've |i have )?(?:measured|metered|weighed|tape measured)(?: it| that| this)?(?: (?:with|by|at|on|using|overnight|there|myself)(?: [a-z ]{1,30})?)?\)?$/i,
  ],
  [
    "datasheet",
    new RegExp(
      `^(.+?)[\\s,;:(-]*(?<![a-z])(?:(?:from|on|per|as per|according to|by|off|in(?= the )|says) )?(?:the |its |my |${A})?${DATASHEET}(?: says(?: so)?| value| figure)?\\)?$`,
      "i",
    ),
  ],
  [
    "estimate",
    new RegExp(
      `^(.+?)[\\s,;:(-]*(?<![a-z])(?:(?:just |only )?(?:${A}|my |my best |best )?(?:guess|estimate|guesstimate)|guessed|estimated|est\\.?|i (?:think|guess|reckon|believe|suppose)|probably|by eye|from memory)\\)?$`,
      "i",
    ),
  ],
];

/** The same said first: "label says 4 W", "I guess 4 W". */
const HEADS: readonly (readonly [OriginWord, RegExp])[] = [
  [
    "measured",
    /^(?:i |we |i've |i have )?(?:measured|metered|weighed)(?: it)?(?: (?:at|as|to be))?[:,]? (.+)$/i,
  ],
  [
    "datasheet",
    new RegExp(
      `^(?:from |on |per |as per |according to )?(?:the |its |a |my )?${DATASHEET}(?: says| gives| said|:|,)? (.+)$`,
      "i",
    ),
  ],
  [
    "estimate",
    /^(?:(?:just |only )?(?:a |my |my best |best )?(?:guess|estimate|guesstimate)(?: is)?|guessed|estimated|i (?:think|guess|reckon|believe|suppose)(?: it's| it is)?|probably)[:,]? (.+)$/i,
  ],
];

/** Parts the words that say where a figure came from from the figure itself. They never change the figure. */
export function splitOrigin(text: string): { readonly rest: string; readonly originWord?: OriginWord } {
  for (const patterns of [TAILS, HEADS]) {
    for (const [originWord, pattern] of patterns) {
      const match = pattern.exec(text);
      if (match !== null) return { rest: match[1]!.trim(), originWord };
    }
  }
  return { rest: text };
}
