/**
 * What a terminal sends, as keys. Invariants:
 *
 * 1. A chunk may hold anything: half a sequence, many keys, text and its Enter together. No key is lost.
 * 2. Between the marks of a bracketed paste nothing is a key: line ends and tabs become spaces, nothing is submitted.
 * 3. A lone Escape at the end of a chunk may be the beginning of a sequence: it is kept pending, and `flushKeys` makes
 *    it the Escape key when nothing has followed.
 *
 * Ink has a reader of its own; in the version for Node 20 it cannot tell Backspace from Delete, loses an Enter that
 * comes in one chunk with text, and lets the marks of a paste through as text.
 */

export type Key =
  | { readonly name: "text"; readonly text: string }
  | {
      readonly name:
        | "enter"
        | "backspace"
        | "delete"
        | "left"
        | "right"
        | "wordLeft"
        | "wordRight"
        | "home"
        | "end"
        | "up"
        | "down"
        | "pageUp"
        | "pageDown"
        | "escape"
        | "tab"
        | "cutBefore"
        | "cutAfter"
        | "cutWord"
        | "interrupt"
        | "endOfInput";
    };
type KeyName = Exclude<Key["name"], "text">;

export interface KeyReading {
  /** What may be the beginning of a sequence. */
  readonly pending: string;
  readonly isPasting: boolean;
}

export const noKeysYet: KeyReading = { pending: "", isPasting: false };

const controlKeys: Readonly<Record<string, KeyName>> = {
  "\x01": "home",
  "\x02": "left",
  "\x03": "interrupt",
  "\x04": "endOfInput",
  "\x05": "end",
  "\x06": "right",
  "\x08": "backspace",
  "\x09": "tab",
  "\x0b": "cutAfter",
  "\x0e": "down",
  "\x10": "up",
  "\x15": "cutBefore",
  "\x17": "cutWord",
  "\x7f": "backspace",
};

/** Final part of a control sequence, after "ESC [" or "ESC O". */
const sequenceKeys: Readonly<Record<string, KeyName>> = {
  A: "up",
  B: "down",
  C: "right",
  D: "left",
  H: "home",
  F: "end",
  "1~": "home",
  "7~": "home",
  "4~": "end",
  "8~": "end",
  "3~": "delete",
  "5~": "pageUp",
  "6~": "pageDown",
  "1;5C": "wordRight",
  "1;3C": "wordRight",
  "1;5D": "wordLeft",
  "1;3D": "wordLeft",
};

const metaKeys: Readonly<Record<string, KeyName>> = {
  b: "wordLeft",
  f: "wordRight",
  "\x7f": "cutWord",
  "\x08": "cutWord",
};

const pasteBegins = "\x1b[200~";
const pasteEnds = "\x1b[201~";
const wholeSequence = /^\x1b(?:\[([\x30-\x3f]*[\x20-\x2f]*[\x40-\x7e])|O([\x40-\x7e]))/;
const begunSequence = /^\x1b(?:\[[\x30-\x3f]*[\x20-\x2f]*|O)?$/;

function pastedKeys(text: string): readonly Key[] {
  const line = text.replace(/[\r\n\t]/g, " ").replace(/[\x00-\x1f\x7f-\x9f]/g, "");
  return line === "" ? [] : [{ name: "text", text: line }];
}

/** How much of a text's end may be the beginning of `mark`. */
function begunMark(text: string, mark: string): number {
  for (let length = Math.min(mark.length - 1, text.length); length > 0; length--) {
    if (text.endsWith(mark.slice(0, length))) return length;
  }
  return 0;
}

/** Reads one chunk; the reading that comes back is handed in with the next. */
export function readKeys(reading: KeyReading, chunk: string): readonly [KeyReading, readonly Key[]] {
  let rest = reading.pending + chunk;
  let isPasting = reading.isPasting;
  const keys: Key[] = [];
  while (rest !== "") {
    if (isPasting) {
      const end = rest.indexOf(pasteEnds);
      const kept = end === -1 ? rest.length - begunMark(rest, pasteEnds) : end;
      keys.push(...pastedKeys(rest.slice(0, kept)));
      if (end === -1) return [{ pending: rest.slice(kept), isPasting }, keys];
      rest = rest.slice(end + pasteEnds.length);
      isPasting = false;
      continue;
    }
    if (rest.startsWith(pasteBegins)) {
      rest = rest.slice(pasteBegins.length);
      isPasting = true;
      continue;
    }
    if (rest.startsWith("\x1b")) {
      if (begunSequence.test(rest)) return [{ pending: rest, isPasting }, keys];
      const sequence = wholeSequence.exec(rest);
      if (sequence) {
        const name = sequenceKeys[sequence[1] ?? sequence[2] ?? ""];
        if (name !== undefined) keys.push({ name });
        rest = rest.slice(sequence[0].length);
        continue;
      }
      const name = metaKeys[rest[1] ?? ""];
      keys.push({ name: name ?? "escape" });
      rest = rest.slice(name === undefined ? 1 : 2);
      continue;
    }
    const lineEnd = /^(?:\r\n|\r|\n)/.exec(rest);
    if (lineEnd) {
      keys.push({ name: "enter" });
      rest = rest.slice(lineEnd[0].length);
      continue;
    }
    const text = /^[^\x00-\x1f\x7f-\x9f]+/.exec(rest);
    if (text) {
      keys.push({ name: "text", text: text[0] });
      rest = rest.slice(text[0].length);
      continue;
    }
    const name = controlKeys[rest[0]!];
    if (name !== undefined) keys.push({ name });
    rest = rest.slice(1);
  }
  return [{ pending: "", isPasting }, keys];
}

/** Nothing has followed what was pending: a lone Escape is the key, half a sequence is dropped. */
export function flushKeys(reading: KeyReading): readonly [KeyReading, readonly Key[]] {
  if (reading.isPasting) return [reading, []];
  const keys: readonly Key[] = reading.pending === "\x1b" ? [{ name: "escape" }] : [];
  return [noKeysYet, keys];
}
