import { findUnit } from "../units/index.ts";
import { type Form, PARTINGS, type Parting, scan } from "../words/index.ts";
import type { ObstacleKind } from "./clearance.ts";

/** What one stretch of a builder's words about a path says; words that say nothing here are passed over. */
export type PathFact =
  | { readonly kind: "thing"; readonly obstacle: ObstacleKind; readonly noun: string }
  /** "two", "three". */
  | { readonly kind: "count"; readonly count: number }
  | { readonly kind: "length"; readonly lengthM: number; readonly role: PathRole | null }
  /** Distances named together: "at 200 m and 350 m". */
  | { readonly kind: "places"; readonly distancesM: readonly number[]; readonly from: "near" | "far" }
  /** "from 200 m to 300 m". */
  | { readonly kind: "span"; readonly fromM: number; readonly toM: number }
  /** "half way". */
  | { readonly kind: "share"; readonly share: number }
  | Parting
  | { readonly kind: "loose-number"; readonly word: string };

export type PathRole = "height" | "depth" | "width";

const TREES =
  "trees?|woods?|woodland|forest|hedges?|hedgerow|orchard|copse|bush(?:es)?|grove|plantation|shrubs?";
const BUILDINGS =
  "houses?|barns?|sheds?|buildings?|walls?|silos?|church(?:es)?|garages?|roofs?|fences?|cottages?|hangars?|stables?|warehouses?|greenhouses?|factory|hall";
const RIDGES =
  "rises?|ridges?|hills?|banks?|dykes?|dikes?|levees?|knolls?|humps?|mounds?|embankments?|crests?|bumps?";

const COUNTS: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
};

const NUMBER = "-?\\d+(?:[.,]\\d+)?";
const LENGTH = `(${NUMBER})\\s*-?\\s*([a-z]+|')(?![\\w'])`;
const FAR_END =
  "(?:before|short\\s+of|from)\\s+(?:the\\s+)?(?:far(?:\\s+end)?|other\\s+end|receiver|receiving\\s+end|home|office|base)";
const NEAR_END =
  "(?:(?:away|out|off|along|distant)(?:\\s+from\\s+(?:the\\s+)?(?:post|camera|mast|pole|near\\s+end))?|(?:from|before|beyond|past|in\\s+front\\s+of)\\s+(?:the\\s+)?(?:post|camera|mast|pole|near\\s+end|here))";
const END = "(?![\\w'])";

/** The forms, tried in this order at each place of the text. */
const FORMS: readonly Form<PathFact>[] = [
  {
    form: new RegExp(`^(?:from|between)\\s+(${NUMBER})\\s*([a-z]*)\\s+(?:to|and|until)\\s+${LENGTH}`, "i"),
    fact: ([, from, fromUnit, to, toUnit]) => {
      const fromM = metres(from!, fromUnit || toUnit!);
      const toM = metres(to!, toUnit!);
      return fromM === null || toM === null ? null : { kind: "span", fromM, toM };
    },
  },
  {
    form: new RegExp(
      `^(?:at|around|about|near)\\s+((?:${NUMBER}\\s*[a-z]*\\s*(?:,\\s*(?:and\\s+)?|\\s+and\\s+(?:at\\s+)?))*${NUMBER}\\s*[a-z]+)(?:\\s+(?:(${FAR_END})|${NEAR_END}))?${END}(?!\\s+(?:high|tall|deep|thick|wide|long|${TREES}|${BUILDINGS}|${RIDGES})${END})`,
      "i",
    ),
    fact: ([, list, far]) => places(list!, far !== undefined),
  },
  {
    form: new RegExp(`^${LENGTH}\\s+(?:(${FAR_END})|${NEAR_END})${END}`, "i"),
    fact: ([, number, unit, far]) => places(`${number} ${unit}`, far !== undefined),
  },
  {
    form: new RegExp(
      `^(?:(height|depth|width)\\s+(?:of\\s+|is\\s+)?)?${LENGTH}(?:\\s+(?:in\\s+)?(high|tall|height|deep|thick|through|depth|wide|long|across|broad|width)${END})?`,
      "i",
    ),
    fact: ([, before, number, unit, after]) => {
      const lengthM = metres(number!, unit!);
      return lengthM === null ? null : { kind: "length", lengthM, role: roleOf(before ?? after ?? "") };
    },
  },
  {
    form: /^(?:(?:in\s+the\s+)?middle|half\s*-?\s*way|midway|centre|center)(?:\s+along)?(?![\w'])/i,
    fact: () => ({ kind: "share", share: 1 / 2 }),
  },
  {
    form: /^(?:a|one)\s+(third|quarter)\s+(?:of\s+the\s+(?:way|path)|along)(?![\w'])/i,
    fact: ([, part]) => ({ kind: "share", share: /third/i.test(part!) ? 1 / 3 : 1 / 4 }),
  },
  {
    form: /^(two|three)\s+(thirds|quarters)\s+(?:of\s+the\s+(?:way|path)|along)(?![\w'])/i,
    fact: ([, count, part]) => ({
      kind: "share",
      share: COUNTS[count!.toLowerCase()]! / (/thirds/i.test(part!) ? 3 : 4),
    }),
  },
  {
    form: new RegExp(
      `^(?:(?:rows?|lines?|stands?|belts?|strips?|groups?|clumps?|avenue)\\s+of\\s+)(${TREES})${END}`,
      "i",
    ),
    fact: ([, noun]) => ({ kind: "thing", obstacle: "trees", noun: noun! }),
  },
  { form: new RegExp(`^(${TREES})${END}`, "i"), fact: ([, noun]) => thing("trees", noun!) },
  { form: new RegExp(`^(${BUILDINGS})${END}`, "i"), fact: ([, noun]) => thing("building", noun!) },
  { form: new RegExp(`^(${RIDGES})${END}`, "i"), fact: ([, noun]) => thing("ridge", noun!) },
  {
    form: new RegExp(
      `^(${Object.keys(COUNTS).join("|")}|\\d+(?=\\s+(?:${TREES}|${BUILDINGS}|${RIDGES})${END}))${END}`,
      "i",
    ),
    fact: ([, word]) => ({ kind: "count", count: COUNTS[word!.toLowerCase()] ?? Number(word) }),
  },
  ...PARTINGS,
  { form: new RegExp(`^${NUMBER}`), fact: ([word]) => ({ kind: "loose-number", word: word! }) },
];

/** The facts of a text in their order. */
export function pathFacts(text: string): readonly PathFact[] {
  const plain = text.normalize("NFKC").replace(/[’′]/g, "'").replace(/[−–]/g, "-");
  return scan(plain, FORMS);
}

function thing(obstacle: ObstacleKind, noun: string): PathFact {
  return { kind: "thing", obstacle, noun };
}

/** "200 m and 350 m", "200 and 350 m": a number without a unit has that of the next one that has. */
function places(list: string, isFromFar: boolean): PathFact | null {
  const found = [...list.matchAll(new RegExp(`(${NUMBER})\\s*([a-z]*)`, "gi"))].filter(
    ([words]) => words !== "",
  );
  const distancesM: number[] = [];
  let unit = "";
  for (const [, number, own] of found.reverse()) {
    unit = own && !/^(?:and|at)$/i.test(own) ? own : unit;
    const distanceM = metres(number!, unit);
    if (distanceM === null) return null;
    distancesM.unshift(distanceM);
  }
  return { kind: "places", distancesM, from: isFromFar ? "far" : "near" };
}

function metres(number: string, unit: string): number | null {
  // "one in the middle" is no inch
  const length = /^in$/i.test(unit) ? undefined : findUnit(unit, "length");
  return length === undefined ? null : Number(number.replace(",", ".")) * length.toBase;
}

function roleOf(word: string): PathRole | null {
  if (/^(?:height|high|tall)$/i.test(word)) return "height";
  if (/^(?:depth|deep|thick|through)$/i.test(word)) return "depth";
  if (/^(?:width|wide|long|across|broad)$/i.test(word)) return "width";
  return null;
}
