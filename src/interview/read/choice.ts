import { findUnit } from "../../core/units/index.ts";
import { NUMBER_NAMES } from "./number-words.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

export interface ChoiceOption {
  readonly id: string;
  readonly label: string;
  readonly aliases?: readonly string[];
  /** What else speaks for it inside a sentence, with commas. */
  readonly also?: string;
}

export interface ChoiceHeard {
  readonly ok: true;
  readonly id: string;
  /** The option's label. */
  readonly heard: string;
}

const YES: readonly string[] = [
  "y",
  "yes",
  "yep",
  "yeah",
  "yup",
  "ya",
  "sure",
  "ok",
  "okay",
  "aye",
  "true",
  "correct",
  "of course",
  "absolutely",
  "definitely",
  "certainly",
];
const NO: readonly string[] = [
  "n",
  "no",
  "nope",
  "nah",
  "nay",
  "false",
  "not really",
  "no way",
  "never",
  "of course not",
  "certainly not",
  "definitely not",
  "absolutely not",
  "rather not",
  "id rather not",
  "better not",
];
const ORDINALS: readonly string[] = [
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
];

/** The option a text picks: by its number in the list, id, label, alias, or the beginning of its words. */
export function readChoice(text: string, options: readonly ChoiceOption[]): ChoiceHeard | Refused {
  const wanted = folded(text);
  if (wanted === "") return refused({ code: "empty" });
  const matches = text.length > LONGEST_ANSWER ? [] : matchesOf(text, wanted, options);
  if (matches.length === 1) return { ok: true, id: matches[0]!.id, heard: matches[0]!.label };
  const typed = quotable(text);
  return refused(
    matches.length === 0
      ? { code: "not-an-option", typed, options: options.map((option) => option.label) }
      : { code: "several-options", typed, matches: matches.map((option) => option.label) },
  );
}

/** The option whose whole id, label or alias a text is. */
export function optionNamed(text: string, options: readonly ChoiceOption[]): ChoiceOption | undefined {
  const wanted = folded(text);
  return wanted === "" ? undefined : options.find((option) => namesOf(option).includes(wanted));
}

/** Each way to match is tried in turn, the surest first; the first that finds anything decides. */
function matchesOf(text: string, wanted: string, options: readonly ChoiceOption[]): readonly ChoiceOption[] {
  const named = options.filter((option) => namesOf(option).includes(wanted));
  const numbered = options[numberOf(text, wanted) - 1];
  if (/^\d/.test(wanted)) {
    // "2" may be the second of the list and also a label's first word: then both are meant, and we ask.
    // An alias is not shown: "4" means the fourth, and not the "4g" that nobody has read.
    const worded = options.filter(({ id, label }) =>
      [id, label].some((name) => beginsWithNumber(folded(name), wanted)),
    );
    const isNumber = /^\d+$/.test(wanted);
    const all = new Set([...named, ...(isNumber ? worded : []), ...(numbered ? [numbered] : [])]);
    if (all.size > 0) return options.filter((option) => all.has(option));
  }
  if (named.length > 0) return named;
  const yesNo = yesNoOf(wanted, options);
  if (yesNo !== undefined) return [yesNo];
  const begun = options.filter((option) => namesOf(option).some((name) => name.startsWith(wanted)));
  if (begun.length > 0) return begun;
  if (numbered !== undefined) return [numbered];
  return options.filter((option) => namesOf(option).some((name) => hasPrefixes(name, wanted)));
}

const beginsWithNumber = (name: string, figures: string): boolean =>
  name.startsWith(figures) && !/^[\d.,]/.test(name.slice(figures.length));

/** Every typed word begins a word of the name, in the same order. */
function hasPrefixes(name: string, wanted: string): boolean {
  const words = name.split(" ");
  let at = 0;
  for (const prefix of wanted.split(" ")) {
    while (at < words.length && !words[at]!.startsWith(prefix)) at++;
    if (at === words.length) return false;
    at++;
  }
  return true;
}

function yesNoOf(wanted: string, options: readonly ChoiceOption[]): ChoiceOption | undefined {
  const yes = options.find((option) => option.id === "yes");
  const no = options.find((option) => option.id === "no");
  if (yes === undefined || no === undefined) return undefined;
  if (YES.includes(wanted)) return yes;
  return NO.includes(wanted) ? no : undefined;
}

/** The place in a list that a text names, from 1: "2", "option 2", "the second one"; 0 where it names none. */
export const placeInList = (text: string): number => numberOf(text, folded(text));

/** Place in the list, from 1; 0 where the text is no number. */
function numberOf(text: string, wanted: string): number {
  const figure = /^(?:(?:option|number|no\.?|nr\.?|choice) )?#?\(?(\d{1,3})[.)]?$/i.exec(plainText(text));
  if (figure !== null) return Number(figure[1]);
  const word = wanted.replace(/^(?:option|number|the) /, "").replace(/ (?:one|option)$/, "");
  return Math.max(0, NUMBER_NAMES.indexOf(word), ORDINALS.indexOf(word) + 1);
}

/** Id, label and aliases, as `folded` spells them. */
const namesOf = (option: ChoiceOption): readonly string[] =>
  [option.id, option.label, ...(option.aliases ?? [])].map(folded);

const unitSymbol = (word: string): string => (findUnit(word)?.symbol || word).toLowerCase();

/** One spelling for the purpose of comparison: "12 V", "12v" and "12 volts" are the same. */
export const folded = (text: string): string =>
  bare(
    plainText(text).replace(
      /(\d) ?([a-z%]+)(?![a-z])/gi,
      (_, digit: string, word: string) => digit + unitSymbol(word.toLowerCase()),
    ),
  );

/** Small letters and figures, parted by single spaces. */
export function bare(text: string): string {
  return plainText(text)
    .toLowerCase()
    .replace(/'/g, "")
    .replace(/[^\p{L}\p{N}%+<>.-]+/gu, " ")
    .replace(/(?<!\d)[.-]+|[.-]+(?!\d)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}
