export type Doubt = "about" | "atLeast" | "under";

const ABOUT =
  "(?:about|abt\\.?|approximately|approx\\.?|roughly|around|circa|ca\\.?|some|maybe|perhaps|say|nearly|almost|more or less|~)";

const HEADS: readonly (readonly [Doubt | "between" | "filler", RegExp])[] = [
  [
    "atLeast",
    /^(?:at least|no less than|not less than|more than|over|above|min\.?|minimum(?: of)?|upwards of|from at least|>=?) ?(.+)$/i,
  ],
  [
    "under",
    /^(?:at most|no more than|not more than|not over|less than|fewer than|under|below|up to|max\.?|maximum(?: of)?|<=?) ?(.+)$/i,
  ],
  ["about", new RegExp(`^${ABOUT}(?<![a-z](?=[a-z])) ?(.+)$`, "i")],
  ["between", /^(?:(?:somewhere |anywhere )?between) (.+)$/i],
  [
    "filler",
    /^(?:it is|it's|its|that is|that's|they are|exactly|precisely|just|only|from|a total of|=|:) ?(?=[^a-z]| ?[a-z])(.+)$/i,
  ],
];

const TAILS: readonly (readonly [Doubt | "filler", RegExp])[] = [
  [
    "about",
    /^(.+?)(?: or so| or thereabouts| more or less| roughly| approx\.?| approximately| ?-?ish| about|,? give or take)$/i,
  ],
  [
    "atLeast",
    /^(.+?)(?: or (?:more|over|above|longer|higher|better)| and (?:more|up|over)| at least| minimum| ?\+)$/i,
  ],
  [
    "under",
    /^(.+?)(?: or (?:less|fewer|under|below|shorter|lower)| and (?:less|under)| at most| max\.?| maximum| tops)$/i,
  ],
  [
    "filler",
    /^(.+?)(?: long| high| tall| wide| deep| away| apart| in all| in total| total| altogether| each| exactly)$/i,
  ],
];

/**
 * Parts the words of doubt from the figures. The first doubt found wins: "at least about 20" is at least 20.
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
      else if (kind !== "filler") doubt ??= kind;
    }
  }
  // "20+ ft"; "20 +- 5 ft" and "20 + 5" are something else.
  const plus = /^(\d[\d.,]*) ?\+ ?(?=[a-z"'%°]|$)/i.exec(rest);
  if (plus !== null)
    return { rest: `${plus[1]} ${rest.slice(plus[0].length)}`, doubt: doubt ?? "atLeast", isBetween };
  return { rest, doubt, isBetween };
}
