export type Doubt = "about" | "atLeast" | "under";

type Head = Doubt | "between" | "filler";

/** What may stand before a figure. A word ends where its letters end: "min 5", not "minus 5". */
const HEADS: readonly (readonly [Head, RegExp])[] = [
  [
    "atLeast",
    head(
      "at least|no less than|not less than|more than|over|above|minimum of|minimum|min\\.?|upwards of",
      ">=?",
    ),
  ],
  [
    "under",
    head(
      "at most|no more than|not more than|not over|less than|fewer than|under|below|up to|maximum of|maximum|max\\.?",
      "<=?",
    ),
  ],
  [
    "about",
    head(
      "about|abt\\.?|approximately|approx\\.?|roughly|around|circa|ca\\.?|some|maybe|perhaps|say|nearly|almost|more or less|not sure|unsure|i'm not sure|i don't know|i dont know",
      "~",
    ),
  ],
  ["between", head("between|somewhere between|anywhere between")],
  [
    "filler",
    head("it is|it's|its|that is|that's|they are|exactly|precisely|just|only|but|from|a total of", "=|:|,"),
  ],
];

/** What may stand after one. */
const TAILS: readonly (readonly [Doubt | "filler", RegExp])[] = [
  [
    "about",
    tail(
      " or so| or thereabouts| more or less| roughly| approx\\.?| approximately| ?-?ish| about|,? give or take",
    ),
  ],
  [
    "atLeast",
    tail(" or (?:more|over|above|longer|higher|better)| and (?:more|up|over)| at least| minimum| ?\\+"),
  ],
  [
    "under",
    tail(" or (?:less|fewer|under|below|shorter|lower)| and (?:less|under)| at most| max\\.?| maximum| tops"),
  ],
  [
    "filler",
    tail(
      " (?:long|high|tall|wide|deep|away|apart|up|each|exactly)|(?<!\\d) in (?:all|total)|(?<!\\bin) total| altogether",
    ),
  ],
  ["filler", tail(" (?:typical|typ\\.?|nominal|rated|continuous|on average|average|avg\\.?)")],
  ["filler", tail(" above (?:the )?ground| off the ground")],
];

function head(words: string, signs?: string): RegExp {
  const ways = `(?:${words})(?![a-z])${signs === undefined ? "" : `|${signs}`}`;
  return new RegExp(`^(?:${ways}),? ?(.+)$`, "i");
}

function tail(words: string): RegExp {
  return new RegExp(`^(.+?)(?:${words})$`, "i");
}

/**
 * Parts the words of doubt from the figures. A bound says more than "about": "at least about 20" is at least 20.
 * Words that add nothing ("it's", "long") go too.
 */
export function splitDoubt(text: string): {
  readonly rest: string;
  readonly doubt: Doubt | undefined;
  readonly isBetween: boolean;
} {
  let rest = text;
  let doubt: Doubt | undefined;
  let isBetween = false;
  for (let isChanged = true; isChanged; ) {
    isChanged = false;
    for (const [kind, pattern] of [...HEADS, ...TAILS]) {
      const match = pattern.exec(rest);
      if (match === null) continue;
      rest = match[1]!.trim();
      isChanged = true;
      if (kind === "between") isBetween = true;
      else if (kind !== "filler" && (doubt === undefined || doubt === "about")) doubt = kind;
    }
  }
  // "20+ ft"; "20 +- 5 ft" and "20 + 5" are something else.
  const plus = /^(\d[\d.,]*) ?\+ ?(?=[a-z"'%°]|$)/i.exec(rest);
  if (plus === null) return { rest, doubt, isBetween };
  return { rest: `${plus[1]} ${rest.slice(plus[0].length)}`, doubt: doubt ?? "atLeast", isBetween };
}
