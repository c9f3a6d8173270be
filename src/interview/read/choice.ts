import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText, quotable } from "./typed-text.ts";

export interface ChoiceOption {
  readonly id: string;
  readonly label: string;
  readonly aliases?: readonly string[];
}

export interface ChoiceHeard {
  readonly ok: true;
  readonly id: string;
  /** The option's label. */
  readonly heard: string;
}

export interface ChoicesHeard {
  readonly ok: true;
  /** In the order of the list; empty for "none". */
  readonly ids: readonly string[];
  /** Labels, joined with commas; "none". */
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
];
const NO: readonly string[] = ["n", "no", "nope", "nah", "nay", "false", "not really", "no way"];
const NUMBER_WORDS: readonly string[] = [
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

/** Each way to match is tried in turn, the surest first; the first that finds anything decides. */
function matchesOf(text: string, wanted: string, options: readonly ChoiceOption[]): readonly ChoiceOption[] {
  const named = options.filter((option) => namesOf(option).includes(wanted));
  const numbered = options[numberOf(text, wanted) - 1];
  if (/^\d/.test(wanted)) {
    // "2" may be the second of the list and also a label's first word: then both are meant, and we ask.
    const worded = options.filter((option) => namesOf(option).some((name) => name.split(" ")[0] === wanted));
    const isNumber = /^\d+$/.test(wanted);
    const all = new Set([...named, ...(isNumber ? worded : []), ...(numbered ? [numbered] : [])]);
    if (all.size > 0) return [...all];
  }
  if (named.length > 0) return named;
  const yesNo = yesNoOf(wanted, options);
  if (yesNo !== undefined) return [yesNo];
  const begun = options.filter((option) => namesOf(option).some((name) => name.startsWith(wanted)));
  if (begun.length > 0) return begun;
  if (numbered !== undefined) return [numbered];
  return options.filter((option) => namesOf(option).some((name) => hasPrefixes(name, wanted)));
}

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

/** Place in the list, from 1; 0 where the text is no number. */
function numberOf(text: string, wanted: string): number {
  const figure = /^(?:(?:option|number|no\.?|nr\.?|choice) )?#?\(?(\d{1,3})[.)]?$/i.exec(plainText(text));
  if (figure !== null) return Number(figure[1]);
  const word = wanted.replace(/^(?:option|number|the) /, "").replace(/ (?:one|option)$/, "");
  return Math.max(NUMBER_WORDS.indexOf(word), ORDINALS.indexOf(word)) + 1;
}

const namesOf = (option: ChoiceOption): readonly string[] =>
  [option.id, option.label, ...(option.aliases ?? [])].map(folded);

/** One spelling for the purpose of comparison: "12 V" and "12v" are the same. */
function folded(text: string): string {
  return plainText(text)
    .toLowerCase()
    .replace(/(?<=\d) (?=[a-z%])/g, "")
    .replace(/'/g, "")
    .replace(/[^\p{L}\p{N}%+<>.-]+/gu, " ")
    .replace(/(?<!\d)[.-]+|[.-]+(?!\d)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
}

/** Several options at once: "1,3", "1 and 3", "2-4", "none", "all", "all but 2". */
export function readChoices(text: string, options: readonly ChoiceOption[]): ChoicesHeard | Refused {
  const plain = plainText(text);
  if (folded(text) === "") return refused({ code: "empty" });
  // One label may itself hold a comma or an "and".
  const single = options.find((option) => namesOf(option).includes(folded(text)));
  if (single !== undefined) return chosen([single.id], options);
  if (/^(?:none|none of (?:them|these|those)|neither|nothing|no|zero|0|-)[.!]?$/i.test(plain))
    return chosen([], options);
  const but =
    /^(?:all|everything|every one|both)(?: of (?:them|these))?(?: (?:but|except|besides|without) (.+))?$/i.exec(
      plain,
    );
  if (but !== null) {
    const all = options.map((option) => option.id);
    if (but[1] === undefined) return chosen(all, options);
    const left = readList(but[1], options);
    return "ok" in left
      ? left
      : chosen(
          all.filter((id) => !left.ids.includes(id)),
          options,
        );
  }
  const list = readList(plain, options);
  return "ok" in list ? list : chosen(list.ids, options);
}

function readList(
  text: string,
  options: readonly ChoiceOption[],
): { readonly ids: readonly string[] } | Refused {
  const isFigures = /^[\d\s.,;&+and-]+$/i.test(text);
  const parts = text
    .split(isFigures ? /(?:\s*(?:[,;&+]|\band\b)\s*|\s+(?!-)(?<!-\s))+/i : /\s*[,;&+]\s*/)
    .filter((part) => part !== "");
  const ids: string[] = [];
  for (const part of parts) {
    const read = readPart(part, options);
    if ("ok" in read) return read;
    ids.push(...read.ids);
  }
  return ids.length > 0 ? { ids } : refused({ code: "empty" });
}

function readPart(
  part: string,
  options: readonly ChoiceOption[],
): { readonly ids: readonly string[] } | Refused {
  const trimmed = part.replace(/^and /i, "");
  const span = /^(\d{1,3})\s*(?:-|\.\.|to)\s*(\d{1,3})$/.exec(trimmed);
  if (span !== null) {
    const [from, to] = [Number(span[1]), Number(span[2])].sort((a, b) => a - b) as [number, number];
    if (from >= 1 && to <= options.length)
      return { ids: options.slice(from - 1, to).map((option) => option.id) };
  }
  const whole = readChoice(trimmed, options);
  if (whole.ok) return { ids: [whole.id] };
  const halves = trimmed.split(/ and /i);
  if (halves.length < 2) return whole;
  const ids: string[] = [];
  for (const half of halves) {
    const read = readChoice(half, options);
    if (!read.ok) return read;
    ids.push(read.id);
  }
  return { ids };
}

function chosen(ids: readonly string[], options: readonly ChoiceOption[]): ChoicesHeard {
  const picked = options.filter((option) => ids.includes(option.id));
  const heard = picked.length === 0 ? "none" : picked.map((option) => option.label).join(", ");
  return { ok: true, ids: picked.map((option) => option.id), heard };
}
