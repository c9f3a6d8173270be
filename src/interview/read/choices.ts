import { type ChoiceOption, folded, optionNamed, readChoice } from "./choice.ts";
import { type Refused, refused } from "./refusal.ts";
import { LONGEST_ANSWER, plainText } from "./typed-text.ts";

export interface ChoicesHeard {
  readonly ok: true;
  /** In the order of the list; empty for "none". */
  readonly ids: readonly string[];
  /** Labels, joined with commas; "none". */
  readonly heard: string;
}

type Picked = { readonly ok: true; readonly ids: readonly string[] };

const NONE = /^(?:none|none of (?:them|these|those)|neither|nothing|no|zero|0|-)[.!]?$/i;
const ALL =
  /^(?:all|everything|every one|both)(?: of (?:them|these|those))?(?: (?:but|except|besides|without) (.+))?[.!]?$/i;

/** Several options at once: "1,3", "1 and 3", "2-4", "none", "all", "all but 2". */
export function readChoices(text: string, options: readonly ChoiceOption[]): ChoicesHeard | Refused {
  const plain = plainText(text.slice(0, LONGEST_ANSWER));
  // One label may itself hold a comma or an "and", and one option may be called "none".
  const single = optionNamed(plain, options);
  if (single !== undefined) return heardOf([single.id], options);
  if (NONE.test(plain)) return heardOf([], options);
  const all = ALL.exec(plain);
  if (all === null) {
    const list = readList(plain, options);
    return list.ok ? heardOf(list.ids, options) : list;
  }
  const left: Picked | Refused = all[1] === undefined ? { ok: true, ids: [] } : readList(all[1], options);
  if (!left.ok) return left;
  const ids = options.map((option) => option.id).filter((id) => !left.ids.includes(id));
  return heardOf(ids, options);
}

function readList(text: string, options: readonly ChoiceOption[]): Picked | Refused {
  return joined(
    partsOf(text)
      .filter((part) => folded(part) !== "")
      .map((part) => readPart(part, options)),
  );
}

/** Figures may be parted by spaces alone; words hold spaces. */
function partsOf(text: string): readonly string[] {
  const isFigures = /^(?:\d|[\s,;&+-]|\.\.|and|to)+$/i.test(text);
  if (!isFigures) return text.split(/[,;&+]/);
  const spans = text.replace(/\s*(?:-|\.\.|to)\s*/gi, "-");
  return spans.split(/[\s,;&+]+|and/i);
}

function readPart(part: string, options: readonly ChoiceOption[]): Picked | Refused {
  const words = part.trim().replace(/^and /i, "");
  const span = /^(\d{1,3})-(\d{1,3})$/.exec(words);
  if (span !== null) {
    const from = Math.min(Number(span[1]), Number(span[2]));
    const to = Math.max(Number(span[1]), Number(span[2]));
    if (from >= 1 && to <= options.length) {
      return { ok: true, ids: options.slice(from - 1, to).map((option) => option.id) };
    }
  }
  const whole = readOne(words, options);
  const halves = words.split(/ and /i);
  return whole.ok || halves.length < 2 ? whole : joined(halves.map((half) => readOne(half, options)));
}

function readOne(words: string, options: readonly ChoiceOption[]): Picked | Refused {
  const choice = readChoice(words, options);
  return choice.ok ? { ok: true, ids: [choice.id] } : choice;
}

/** All that was picked, or the first refusal. */
function joined(reads: readonly (Picked | Refused)[]): Picked | Refused {
  const ids: string[] = [];
  for (const read of reads) {
    if (!read.ok) return read;
    ids.push(...read.ids);
  }
  return ids.length > 0 ? { ok: true, ids } : refused({ code: "empty" });
}

function heardOf(ids: readonly string[], options: readonly ChoiceOption[]): ChoicesHeard {
  const picked = options.filter((option) => ids.includes(option.id));
  const heard = picked.map((option) => option.label).join(", ");
  return { ok: true, ids: picked.map((option) => option.id), heard: heard === "" ? "none" : heard };
}
