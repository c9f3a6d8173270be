/** One way in which something may be said, and what it says; null where the words turn out to say nothing. */
export interface Form<Fact> {
  /** Anchored at its beginning: it is tried where the reading stands. */
  readonly form: RegExp;
  readonly fact: (found: readonly string[]) => Fact | null;
}

/** Words that part or deny what stands beside them, whatever is spoken of. */
export type Parting =
  /** A comma, "and" or the like; a full one ends what was described, a light one may. */
  { readonly kind: "break"; readonly isFull: boolean } | { readonly kind: "negation"; readonly word: string };

export const PARTINGS: readonly Form<Parting>[] = [
  {
    form: /^(?:no|not|nothing|none|without|except|but|never)(?![\w'])/i,
    fact: ([word]) => ({ kind: "negation", word: word! }),
  },
  { form: /^(?:[;\n]|\.(?!\d))/, fact: () => ({ kind: "break", isFull: true }) },
  { form: /^(?:,|(?:and|plus|also|then)(?![\w']))/i, fact: () => ({ kind: "break", isFull: false }) },
];

/** A word whole, so that nothing is read out of its middle: no "east" in "feast", no "wall" in "wallpaper". */
const WORD = /^(?:[\p{L}'][\p{L}\p{N}'-]*|.|\n)/u;

/**
 * What a text says, in its order: at each place the forms are tried in theirs, and the first that says something is taken.
 * Words that no form knows are passed over.
 */
export function scan<Fact>(text: string, forms: readonly Form<Fact>[]): readonly Fact[] {
  const facts: Fact[] = [];
  let at = 0;
  reading: while (at < text.length) {
    const rest = text.slice(at);
    for (const { form, fact } of forms) {
      const found = form.exec(rest);
      const read = found === null ? null : fact(found);
      if (found !== null && found[0] !== "" && read !== null) {
        facts.push(read);
        at += found[0].length;
        continue reading;
      }
    }
    at += WORD.exec(rest)?.[0].length ?? 1;
  }
  return facts;
}
