/**
 * Which option a sentence means where it is no option's own name: "the barn wall", "a lithium one please", "not rock".
 * One option meant is taken; several, a denial alone or a question back are refused, each with its reason: a wrong guess
 * costs more than asking once more.
 */
import { bare, type ChoiceHeard, type ChoiceOption, folded, placeInList, readChoice } from "./choice.ts";
import { type Clause, clausesOf, type Word } from "./clauses.ts";
import { NUMBER_NAMES } from "./number-words.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, quotable } from "./typed-text.ts";

/** Not an answer but something asked instead of one. */
export interface AskedInstead {
  readonly ok: false;
  readonly command: "unsure" | "why" | "how";
}

/** As {@link readChoice}, with other words round the ones that count. */
export function readChoiceAmongWords(
  text: string,
  options: readonly ChoiceOption[],
): ChoiceHeard | AskedInstead | Refused {
  const whole = readChoice(text, options);
  if (whole.ok || whole.refusal.code !== "not-an-option" || text.length > LONGEST_ANSWER) return whole;
  const typed = quotable(text);
  const clauses = clausesOf(text);
  const asked = QUESTIONS.find(([, pattern]) => pattern.test(words(clauses)));
  if (asked !== undefined && asked[0] !== "other") return { ok: false, command: asked[0] };
  const { meant, denied, isUnsure } = weighed(clauses, options);
  const labels = options.map((option) => option.label);
  if (asked !== undefined && meant.length + denied.length > 0)
    return refused({ code: "asked-back", typed, options: labels });
  const matches = [...meant.map((option) => option.label), ...(isUnsure ? ["not sure"] : [])];
  if (matches.length > 1) return refused({ code: "several-options", typed, matches });
  if (isUnsure && denied.length === 0) return { ok: false, command: "unsure" };
  const [only] = meant;
  if (only !== undefined && !CONDITIONS.test(bare(text))) return { ok: true, id: only.id, heard: only.label };
  return meant.length + denied.length > 0
    ? refused({ code: "no-option-said", typed, options: labels })
    : whole;
}

/** At a list of options nothing begins so that is an answer. "What they do" and "who it is" may be options. */
const QUESTIONS: readonly (readonly ["why" | "how" | "other", RegExp])[] = [
  ["why", /^(?:but |so |and )?(?:why|what for)\b/],
  ["how", /^(?:but |so |and )?how (?:do|can|could|would|should|to|will)\b/],
  [
    "other",
    /^(?:but |so |and |or )?(?:whats|what (?:is|are|does|do|if|would)|which (?:is|are|one|of)|is|are|am i|does|do (?:i|you|we|they)|(?:can|could|should|would|will|shall) (?:i|you|we|they|it|there|a|an|the)|how|when is|where is|who is)\b/,
  ],
];

/** Under a condition nothing is chosen yet. */
const CONDITIONS =
  /\b(?:unless|depends|depending|whether|whichever|if not|only if|or not)\b|\b(?:would|could|wanted)\b.*\bbut\b/;

const words = (clauses: readonly Clause[]): string =>
  clauses.flatMap((clause) => clause.words.map((word) => word.plain)).join(" ");

interface Weighed {
  /** Said, and nowhere denied. */
  readonly meant: readonly ChoiceOption[];
  readonly denied: readonly ChoiceOption[];
  readonly isUnsure: boolean;
}

/** A stretch of words of a clause that counts. */
interface Found {
  readonly at: number;
  readonly what: readonly ChoiceOption[] | "denial" | "unsure";
}

function weighed(clauses: readonly Clause[], options: readonly ChoiceOption[]): Weighed {
  const phrases = phrasesOf(options);
  const found = clauses.map((clause) => foundIn(clause, { phrases, options }));
  const said = found.map((each) => each.flatMap(({ what }) => (typeof what === "string" ? [] : what)));
  const denied = new Set<ChoiceOption>();
  for (const [i, clause] of clauses.entries()) {
    const of = found[i]!;
    for (const { at } of of.filter(({ what }) => what === "denial")) {
      const after = optionsOf(of.filter((each) => each.at > at));
      const before = optionsOf(of.filter((each) => each.at < at));
      // "Lithium, definitely not": words that say nothing of their own deny what stands beside them.
      const beside = clause.words.some((word) => !EMPTY.has(word.plain) && !DENIALS.has(word.plain))
        ? []
        : [said[i - 1] ?? [], said[i + 1] ?? []];
      const [reached = []] = [after, before, ...beside].filter((each) => each.length > 0);
      for (const option of reached) denied.add(option);
    }
  }
  const mentioned = new Set(said.flat());
  return {
    meant: options.filter((option) => mentioned.has(option) && !denied.has(option)),
    denied: [...denied],
    isUnsure: found.some((each) => each.some(({ what }) => what === "unsure")),
  };
}

const optionsOf = (found: readonly Found[]): readonly ChoiceOption[] =>
  found.flatMap(({ what }) => (typeof what === "string" ? [] : what));

type Phrase = { readonly stems: readonly string[]; readonly option: ChoiceOption | null };

function foundIn(
  clause: Clause,
  known: { readonly phrases: readonly Phrase[]; readonly options: readonly ChoiceOption[] },
): readonly Found[] {
  const found: Found[] = [...numberedIn(clause, known.options)];
  const { words: all } = clause;
  for (let at = 0; at < all.length; ) {
    const begun = known.phrases.filter(({ stems }) => stems.every((stem, i) => all[at + i]?.stem === stem));
    const length = Math.max(1, ...begun.map(({ stems }) => stems.length));
    const longest = begun.filter(({ stems }) => stems.length === length);
    if (longest.length > 0) {
      const meant = longest.flatMap(({ option }) => (option === null ? [] : [option]));
      found.push({ at, what: meant.length === 0 ? "unsure" : meant });
    } else if (DENIALS.has(all[at]!.plain)) found.push({ at, what: "denial" });
    at += length;
  }
  return noOf(clause, found, known.options);
}

/** "No, none there": at the head of a clause "no" is the answer where an option is called so, unless it denies another. */
function noOf(clause: Clause, found: readonly Found[], options: readonly ChoiceOption[]): readonly Found[] {
  const at = clause.words.findIndex((word) => !HEDGES.has(word.plain));
  const head = clause.words[at]?.plain ?? "";
  const called = (name: string) =>
    options.find(
      (option) => option.id === name || option.aliases?.some((alias) => alias.toLowerCase() === name),
    );
  const yes = called("yes");
  const no = called("no");
  if (yes !== undefined && /^(?:yes|yep|yeah|yup|aye)$/.test(head)) return [{ at, what: [yes] }, ...found];
  const after = found.filter((each) => each.at > at);
  const isNo =
    /^(?:no|nope|nah)$/.test(head) && found.some((each) => each.at === at && each.what === "denial");
  if (no === undefined || !isNo || optionsOf(after).some((option) => option !== no)) return found;
  return [{ at, what: [no] }, ...after];
}

/** "Probably 2", "option 3 please", "1 or the second one": a number with nothing but hedges between it and the next "or". */
function numberedIn(clause: Clause, options: readonly ChoiceOption[]): readonly Found[] {
  const found: Found[] = [];
  let group: string[] = [];
  const close = (at: number) => {
    const option = numbered(group.join(" "), options);
    if (option !== undefined) found.push({ at: at - 1, what: [option] });
    group = [];
  };
  for (const [at, { plain }] of clause.words.entries()) {
    if (/^(?:or|and)$/.test(plain)) close(at);
    else if (!HEDGES.has(plain)) group.push(plain);
  }
  close(clause.words.length);
  return found;
}

function numbered(text: string, options: readonly ChoiceOption[]): ChoiceOption | undefined {
  // "one" and "two" count things as often as they name places in a list
  if (NUMBER_NAMES.includes(text)) return undefined;
  if (!/^\d+$/.test(text)) return options[placeInList(text) - 1];
  const heard = readChoice(text, options);
  return heard.ok ? options.find((option) => option.id === heard.id) : undefined;
}

/** The words that speak for an option: its names, the head of its label, and what else the flow says of it. */
function phrasesOf(options: readonly ChoiceOption[]): readonly Phrase[] {
  const heads = options.map((option) => folded(option.label.split(/[:,(]/)[0]!).split(" "));
  const own = options.flatMap((option, i) => {
    const others = heads.filter((_, other) => other !== i).flat();
    const single = heads[i]!.filter(
      (word) => !EMPTY.has(word) && !DENIALS.has(word) && !others.includes(word),
    );
    const aliases = (option.aliases ?? []).filter((alias) => !isEmpty(alias));
    const label = /^(?:yes|no)$/i.test(option.label) ? [] : [option.label];
    const names = [...label, ...aliases, ...(option.also?.split(",") ?? []), ...single];
    return names.map((words): Phrase => ({ stems: stemsOf(words), option }));
  });
  const unsure = UNSURE.map((words): Phrase => ({ stems: stemsOf(words), option: null }));
  return [...own, ...unsure].filter(({ stems }) => stems.length > 0);
}

/** "You" and "me" are names of options by themselves, but stand in many sentences. */
const isEmpty = (words: string): boolean =>
  bare(words)
    .split(" ")
    .every((word) => EMPTY.has(word));

const stemsOf = (text: string): readonly string[] =>
  clausesOf(text).flatMap((clause) => clause.words.map((word: Word) => word.stem));

/** Words that say nothing of their own. */
const EMPTY: ReadonlySet<string> = new Set(
  "a an the of to in on at by for with and or from as it its is are was be been this that these those there i im ive id we you he she they me my our your do does will would can could may might shall should must have has had want like know think guess so very really quite definitely certainly absolutely yes no if than then what which who one ones only just some any more all at".split(
    " ",
  ),
);

const HEDGES: ReadonlySet<string> = new Set(
  "i we id ill lets say think guess suppose believe reckon hope probably perhaps maybe possibly likely rather please thanks oh well um hm er ah so then the its it is that would be might may could definitely certainly surely just go for with take pick choose".split(
    " ",
  ),
);

/** What takes back the words beside it. */
const DENIALS: ReadonlySet<string> = new Set(
  "not no nope nah nor never hardly rarely barely seldom scarcely without except neither none nothing nobody isnt arent wasnt werent dont doesnt didnt wont wouldnt cant cannot couldnt shouldnt havent hasnt hadnt unlike avoid excluding hate dislike refuse impossible against wrong".split(
    " ",
  ),
);

const UNSURE: readonly string[] = [
  "not sure",
  "unsure",
  "not certain",
  "dont know",
  "do not know",
  "dont really know",
  "no idea",
  "no clue",
  "cant say",
  "cant tell",
  "hard to say",
  "dunno",
  "idk",
  "havent a clue",
  "you decide",
  "up to you",
  "you choose",
];
