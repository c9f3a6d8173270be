import { PassThrough } from "node:stream";
import { describe, expect, test } from "vitest";
import type { State } from "../../src/interview/index.ts";
import { openLines, runPlain } from "../../src/plain/index.ts";
import { tinyDialogue, tinyState } from "../helpers/tiny-dialogue.ts";

async function played(
  typed: string,
  about: { readonly isEchoing?: boolean; readonly isAscii?: boolean; readonly columns?: number } = {},
): Promise<{
  readonly text: string;
  readonly code: number;
  readonly state: State;
  readonly carried: readonly string[];
}> {
  const input = new PassThrough();
  const output = new PassThrough();
  const carried: string[] = [];
  input.end(typed);
  const { code, state } = await runPlain({
    dialogue: tinyDialogue(carried),
    state: tinyState(),
    lines: openLines(input),
    output,
    isEchoing: about.isEchoing ?? true,
    isAscii: about.isAscii ?? false,
    columns: about.columns ?? null,
    interrupted: new AbortController().signal,
  });
  output.end();
  let text = "";
  for await (const chunk of output) text += chunk;
  return { text, code, state, carried };
}

describe("the plain face", () => {
  test("puts each question once, with numbered choices, and says what it heard", async () => {
    const { text, code } = await played("Tromsø\nfixed\n1.2 km\nquit\n");
    expect(code).toBe(0);
    expect(text).toBe(`
Part 1 of 3: Place
Where the post stands.

Place, question 1 of 3. What is the nearest town?
As on a map. Example: Tromsø
why   back   unsure   lists   help   quit
Place: Tromsø
So: Noted Tromsø as answer 1.

Place, question 2 of 3. Is the camera fixed or does it turn?
A fixed one looks one way.
1. fixed
2. turning
Number: fixed
So: Noted fixed as answer 2.

Place, question 3 of 3. How far is the other end?
Example: 1.2 km
Distance (m): 1.2 km
Heard: 1.2 km = 1200 m
So: Noted 1.2 km as answer 3.
Stop: An overhead line is 4 m from the mast.
Move the post.

So far: Place
Battery: 200 Ah at 12 V

Everything is answered.
Type lists, review or quit.
What now: quit
`);
  });

  test("keeps words whole on a terminal of known width", async () => {
    const typed = "Tromsø\nfixed\nwhy\n1.2 km\nquit\n";
    const { text } = await played(typed, { columns: 30 });
    for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(30);
    const words = (of: string): readonly string[] => of.split(/\s+/).filter((word) => word !== "");
    expect(words(text)).toEqual(words((await played(typed)).text));
  });

  test("sends no escape sequence and redraws nothing", async () => {
    const { text } = await played("why\nbad\nTromsø\nback\n\nTromsø\nlists\n");
    expect(text).not.toContain("\x1b");
    expect(text).not.toContain("\r");
  });

  test("after a refusal only the prompt comes again; after an aside the question too", async () => {
    const { text } = await played("bad\nwhy\n");
    expect(text).toContain("Once more: 12 V is a voltage. This asks for a distance.\nPlace: why\n");
    expect(text).toContain("The place sets the sun.\n\nWhat is the nearest town?\nPlace: ");
  });

  test("going back offers the earlier answer", async () => {
    const { text } = await played("Tromsø\nback\n");
    expect(text).toContain("Enter alone keeps: Tromsø\n");
  });

  test("the end of input is an event at every question, and the brief is saved", async () => {
    for (const typed of ["", "Tromsø\n", "Tromsø\nfixed\n", "Tromsø\nfixed"]) {
      const { code, carried } = await played(typed);
      expect(code).toBe(3);
      expect(carried).toContain("save");
    }
    expect((await played("Tromsø\nfixed\n1 km\n")).code).toBe(0);
  });

  test("a last line without its line end counts", async () => {
    expect((await played("Tromsø\nfixed\n1 km")).state.cursor).toBe(null);
  });

  test("without Unicode it writes ASCII only", async () => {
    const { text } = await played("Tromsø\n", { isAscii: true });
    expect(text).toMatch(/^[\x0a\x20-\x7e]*$/);
  });

  test("an interrupt while it waits leaves with 130, saved", async () => {
    const input = new PassThrough();
    const output = new PassThrough();
    const carried: string[] = [];
    const interrupt = new AbortController();
    const run = runPlain({
      dialogue: tinyDialogue(carried),
      state: tinyState(),
      lines: openLines(input),
      output,
      isEchoing: false,
      isAscii: false,
      columns: null,
      interrupted: interrupt.signal,
    });
    input.write("Tromsø\n");
    await new Promise((resolve) => setImmediate(resolve));
    interrupt.abort();
    expect((await run).code).toBe(130);
    expect(carried.at(-2)).toBe("save");
  });
});
