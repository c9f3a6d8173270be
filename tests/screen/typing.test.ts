import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { noKeysYet, readKeys } from "../../src/screen/keys.ts";
import { completed, edited, emptyTyping, submitted, type Typing } from "../../src/screen/typing.ts";

function typed(keys: string, start: Typing = emptyTyping): Typing {
  let typing = start;
  for (const key of readKeys(noKeysYet, keys)[1]) {
    typing = key.name === "enter" ? submitted(typing)[1] : edited(typing, key);
  }
  return typing;
}
const shown = (typing: Typing): string => `${typing.before}|${typing.after}`;

describe("the line being typed", () => {
  test("the cursor moves by what a person sees as one sign", () => {
    const family = "👩‍👩‍👧";
    expect(shown(typed(`a${family}é\x1b[D\x1b[D`))).toBe(`a|${family}é`);
    expect(shown(typed(`a${family}\x7f`))).toBe("a|");
    expect(shown(typed(`a${family}\x1b[D\x1b[3~`))).toBe("a|");
    expect(shown(typed("e\u0301\x7f"))).toBe("|");
  });

  test("Home, End, and typing in the middle", () => {
    expect(shown(typed("30 ft\x01x\x05y"))).toBe("x30 fty|");
    expect(shown(typed("30 ft\x1b[D\x1b[D\x1b[DX"))).toBe("30X| ft");
  });

  test("Ctrl-U, Ctrl-K and Ctrl-W cut", () => {
    expect(shown(typed("one two\x1b[D\x1b[D\x15"))).toBe("|wo");
    expect(shown(typed("one two\x1b[D\x1b[D\x0b"))).toBe("one t|");
    expect(shown(typed("one two \x17"))).toBe("one |");
    expect(shown(typed("one\x17\x17"))).toBe("|");
  });

  test("Alt and Ctrl with an arrow move by words", () => {
    expect(shown(typed("one two\x1bb"))).toBe("one |two");
    expect(shown(typed("one two\x1b[1;5D\x1b[1;5D\x1b[1;5C"))).toBe("one| two");
  });

  test("Escape clears the line", () => {
    expect(shown(edited(typed("half a thought"), { name: "escape" }))).toBe("|");
  });

  test("Up brings back earlier lines, Down the one being typed", () => {
    const after = typed("12 V\r30 ft\rhal");
    expect(shown(edited(after, { name: "up" }))).toBe("30 ft|");
    expect(shown(typed("\x1b[A\x1b[A\x1b[A", after))).toBe("12 V|");
    expect(shown(typed("\x1b[A\x1b[A\x1b[B\x1b[B", after))).toBe("hal|");
  });

  test("an empty or repeated line is not kept among the earlier ones", () => {
    expect(typed("a\r\r a\ra\ra\r").earlier).toEqual(["a", " a", "a"]);
    expect(typed("a\r\r\ra\r").earlier).toEqual(["a"]);
  });

  test("a suggestion takes the place of the whole line; a Tab without one is a blank", () => {
    expect(shown(completed(typed("rhay\x1b[D\x1b[D"), "Rhayader, Wales"))).toBe("Rhayader, Wales|");
    expect(shown(typed("52.30\t-3.51"))).toBe("52.30 -3.51|");
  });

  test("moving never changes the text", () => {
    const move = fc.constantFrom("left", "right", "wordLeft", "wordRight", "home", "end");
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.array(move), (text, moves) => {
        let typing: Typing = { ...emptyTyping, before: text };
        for (const name of moves) typing = edited(typing, { name } as never);
        expect(typing.before + typing.after).toBe(text);
      }),
    );
  });
});
