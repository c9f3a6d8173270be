/** A number found at a place in the text. */
export interface NumberFound {
  readonly value: number;
  /** Where the text goes on. */
  readonly next: number;
  /** "half", "1/4": a part of one, which in a share means 50 %, 25 %. */
  readonly isPart: boolean;
  /** "a", "an": a number only if a unit follows. */
  readonly isArticle: boolean;
  /** Set where one comma before three digits can be read two ways; `value` is then the first of them. */
  readonly comma?: { readonly typed: string; readonly asThousands: number; readonly asDecimal: number };
}

/** Zero to nineteen, each at its own place. */
export const NUMBER_NAMES: readonly string[] = [
  "zero",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
  "thirteen",
  "fourteen",
  "fifteen",
  "sixteen",
  "seventeen",
  "eighteen",
  "nineteen",
];
const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"] as const;

const ONES_PATTERN = [...NUMBER_NAMES].reverse().join("|");
const SMALL = `(?:(${TENS.join("|")})(?:[ -](${NUMBER_NAMES.slice(1, 10).join("|")}))?|(${ONES_PATTERN}))`;
const END = "(?![a-z])";
const AND_PART = `(?: and (?:(?:a )?(half|quarter|third)|(three)[ -]quarters))?`;

const CARDINAL = new RegExp(`^${SMALL}${END}${AND_PART}`, "i");
const HUNDREDS = new RegExp(`^(?:(a|${ONES_PATTERN}) )?hundred${END}(?:(?: and)? ${SMALL}${END})?`, "i");
const DOZEN = new RegExp(`^(?:(a|half a|half|${ONES_PATTERN}) )?dozen${END}`, "i");
const OF_A = "(?: of)?(?: an?(?= ))?";

/** Words for a number of their own, with what they stand for. */
const FIXED: readonly { readonly pattern: RegExp; readonly value: number; readonly isPart?: true }[] = [
  { pattern: new RegExp(`^(?:none|nothing|nil|nought)${END}`, "i"), value: 0 },
  { pattern: new RegExp(`^(?:a )?(?:couple|pair)${END}(?: of)?`, "i"), value: 2 },
  { pattern: new RegExp(`^(?:a |one )?half${END}${OF_A}`, "i"), value: 1 / 2, isPart: true },
  { pattern: new RegExp(`^(?:a |one )?quarter${END}${OF_A}`, "i"), value: 1 / 4, isPart: true },
  { pattern: new RegExp(`^(?:a |one )?third${END}${OF_A}`, "i"), value: 1 / 3, isPart: true },
  { pattern: new RegExp(`^three[ -]quarters?${END}${OF_A}`, "i"), value: 3 / 4, isPart: true },
  { pattern: new RegExp(`^two[ -]thirds?${END}${OF_A}`, "i"), value: 2 / 3, isPart: true },
];
const PARTS: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3, three: 3 / 4 };

/** The number in words with which a text begins: up to a few hundred, parts of one, dozens. */
export function readNumberWords(rest: string): NumberFound | undefined {
  const found = { isPart: false, isArticle: false };
  const dozen = DOZEN.exec(rest);
  if (dozen !== null) return { ...found, value: 12 * timesOf(dozen[1]), next: dozen[0].length };
  const hundreds = HUNDREDS.exec(rest);
  if (hundreds !== null) {
    const value = 100 * timesOf(hundreds[1]) + smallOf(hundreds.slice(2, 5));
    return { ...found, value, next: hundreds[0].length };
  }
  for (const { pattern, value, isPart } of FIXED) {
    const match = pattern.exec(rest);
    if (match !== null) return { ...found, value, isPart: isPart ?? false, next: match[0].length };
  }
  const cardinal = CARDINAL.exec(rest);
  if (cardinal !== null) {
    const part = (cardinal[4] ?? cardinal[5])?.toLowerCase();
    const value = smallOf(cardinal.slice(1, 4)) + (part === undefined ? 0 : PARTS[part]!);
    return { ...found, value, next: cardinal[0].length };
  }
  const article = /^an?(?= )/i.exec(rest);
  return article === null ? undefined : { ...found, value: 1, isArticle: true, next: article[0].length };
}

function smallOf(words: readonly (string | undefined)[]): number {
  const [tens, afterTens, ones] = words.map((word) => word?.toLowerCase());
  const tensValue = tens === undefined ? 0 : 20 + 10 * (TENS as readonly string[]).indexOf(tens);
  return tensValue + onesValue(afterTens) + onesValue(ones);
}

const onesValue = (word: string | undefined): number => (word === undefined ? 0 : NUMBER_NAMES.indexOf(word));

function timesOf(word: string | undefined): number {
  const times = word?.toLowerCase();
  if (times === undefined || times === "a") return 1;
  return times.startsWith("half") ? 1 / 2 : onesValue(times);
}
