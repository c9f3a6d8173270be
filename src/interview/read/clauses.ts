/** A sentence as clauses of words, spelt for the purpose of comparison. */

import { findUnit } from "../../core/units/index.ts";
import { bare } from "./choice.ts";
import { plainText } from "./typed-text.ts";

export interface Word {
  readonly plain: string;
  /** Without the s of a plural: "walls" is compared as "wall". */
  readonly stem: string;
}

export interface Clause {
  readonly words: readonly Word[];
}

/** Turns that would be read wrong word by word. */
const TURNS: readonly (readonly [RegExp, string])[] = [
  [/\bno[ -]one\b/g, "nobody"],
  [/\bno (?:doubt|problem|question|worries|hurry)\b/g, " "],
  [/\bnot (?:only|just|merely)\b/g, "only"],
  [/\bnothing (?:but|except)\b/g, "only"],
  [/\b(?:anything|anywhere|everything|all) but\b/g, "except"],
  [/\b(?:no way|no chance|by no means)\b/g, "not"],
  [/\b(?:out of the question|ruled out)\b/g, "impossible"],
  [/\btoo (?=[a-z])/g, "wrong "],
  [/\b(?:rather than|instead of|other than|apart from|as opposed to)\b/g, "except"],
];

/** Signs and words at which one thing said ends and another begins. "802.3" and "1,5" are one word each. */
const BREAKS = /[;!?()]|[,:.](?!\d)|(?<!\d)[,:.]| - |\b(?:but|instead|however|though|although)\b/;

export function clausesOf(text: string): readonly Clause[] {
  let plain = plainText(text).toLowerCase().replace(/'/g, "");
  for (const [turn, words] of TURNS) plain = plain.replace(turn, words);
  return plain
    .split(BREAKS)
    .map((part) => withUnits(bare(part)))
    .filter((part) => part !== "")
    .map((part) => ({ words: part.split(" ").map((word) => ({ plain: word, stem: stemOf(word) })) }));
}

const stemOf = (word: string): string =>
  /[a-z]{3}s$/.test(word) && !/ss$/.test(word) ? word.slice(0, -1) : word;

/** "12 volts" as one word, "12v"; but "1 in the middle" and "2 a second" are no inch and no ampere. */
const withUnits = (text: string): string =>
  text.replace(/(?<![^ ])(\d[\d.]*) ?([a-z]+)(?![^ ])/g, (all, number: string, word: string) => {
    const unit = /^(?:a|at|in|as)$/.test(word) ? undefined : findUnit(word);
    return unit === undefined ? all : number + unit.symbol.toLowerCase();
  });
