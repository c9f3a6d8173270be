import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flushKeys, type Key, noKeysYet, readKeys } from "../../src/screen/keys.ts";

function keysOf(...chunks: readonly string[]): readonly Key[] {
  let reading = noKeysYet;
  const keys: Key[] = [];
  for (const chunk of chunks) {
    const [next, read] = readKeys(reading, chunk);
    reading = next;
    keys.push(...read);
  }
  return keys;
}
/** Neighbouring texts joined: where a chunk is cut must make no other difference. */
function joined(keys: readonly Key[]): readonly string[] {
  const names: string[] = [];
  for (const key of keys) {
    if (key.name !== "text") names.push(`<${key.name}>`);
    else if (names.length > 0 && !names.at(-1)!.startsWith("<")) names[names.length - 1] += key.text;
    else names.push(key.text);
  }
  return names;
}

// Sequences: ECMA-48 control sequences as xterm sends them ("XTerm Control Sequences", PC-style function keys and
// bracketed paste), from memory.
describe("keys", () => {
  test("Tab is a key, alone and in the middle of a chunk", () => {
    expect(joined(keysOf("rhay\t\r"))).toEqual(["rhay", "<tab>", "<enter>"]);
  });

  test("text and Enter in one chunk are two keys", () => {
    expect(joined(keysOf("12 V\r"))).toEqual(["12 V", "<enter>"]);
    expect(joined(keysOf("12 V\r24 V\n1\r\n"))).toEqual([
      "12 V",
      "<enter>",
      "24 V",
      "<enter>",
      "1",
      "<enter>",
    ]);
  });

  test("Backspace and Delete are different keys", () => {
    expect(joined(keysOf("\x7f\b\x1b[3~"))).toEqual(["<backspace>", "<backspace>", "<delete>"]);
  });

  test("both spellings of the arrows, Home and End", () => {
    expect(joined(keysOf("\x1b[A\x1bOA\x1b[B\x1b[C\x1b[D"))).toEqual([
      "<up>",
      "<up>",
      "<down>",
      "<right>",
      "<left>",
    ]);
    expect(joined(keysOf("\x1b[H\x1b[1~\x1bOF\x1b[4~\x01\x05"))).toEqual([
      "<home>",
      "<home>",
      "<end>",
      "<end>",
      "<home>",
      "<end>",
    ]);
  });

  test("a paste with line ends and tabs becomes one line, a blank for each, and submits nothing", () => {
    expect(joined(keysOf("\x1b[200~30 ft\r\nand\tmore\n\x1b[201~"))).toEqual(["30 ft  and more "]);
    expect(joined(keysOf("\x1b[200~30\x1b[20", "1~\r"))).toEqual(["30", "<enter>"]);
  });

  test("a lone Escape is the key only when nothing follows", () => {
    const [reading, keys] = readKeys(noKeysYet, "\x1b");
    expect(keys).toEqual([]);
    expect(flushKeys(reading)).toEqual([noKeysYet, [{ name: "escape" }]]);
    expect(joined(keysOf("\x1b", "[A"))).toEqual(["<up>"]);
  });

  test("an unknown sequence and a stray control character are dropped, the text around them kept", () => {
    expect(joined(keysOf("a\x1b[15~b\x1b[?62;4cc\x00d"))).toEqual(["abcd"]);
  });

  test("Ctrl-C and Ctrl-D", () => {
    expect(joined(keysOf("x\x03\x04"))).toEqual(["x", "<interrupt>", "<endOfInput>"]);
  });

  test("however a stream is cut into chunks, the keys are the same", () => {
    const part = fc.constantFrom(
      "30 ft",
      "é😀ñ",
      "\r",
      "\x7f",
      "\x1b[A",
      "\x1bOF",
      "\x1b[3~",
      "\x1b[200~a\r\nb\x1b[201~",
      "\x03",
      "\x1b[1;5D",
      "\x17",
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), fc.array(fc.nat(40), { maxLength: 6 }), (parts, cuts) => {
        const stream = Array.from(parts.join(""));
        const chunks: string[] = [];
        let rest = stream;
        for (const cut of cuts) {
          chunks.push(rest.slice(0, cut).join(""));
          rest = rest.slice(cut);
        }
        chunks.push(rest.join(""));
        // A line end may fall between two chunks only as a whole: terminals send Enter as one byte.
        expect(joined(keysOf(...chunks.filter((chunk) => chunk !== "")))).toEqual(
          joined(keysOf(stream.join(""))),
        );
      }),
    );
  });
});
