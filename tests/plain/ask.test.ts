import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { lineAsker } from "../../src/plain/ask.ts";
import { openLines } from "../../src/plain/index.ts";

function askerFor(typed: string) {
  const input = new PassThrough();
  const output = new PassThrough();
  input.end(typed);
  const asker = lineAsker({
    lines: openLines(input),
    output,
    isAscii: false,
    interrupted: new AbortController().signal,
  });
  return { asker, written: () => String(output.read() ?? "") };
}

const choices = [
  { value: "a", label: "Hill gate" },
  { value: "b", label: "Boat ramp" },
];

test("a choice is taken by its number or its words, and asked again otherwise", async () => {
  const byNumber = askerFor("7\n2\n");
  expect(await byNumber.asker.choose("Which brief?", choices)).toBe("b");
  expect(byNumber.written()).toBe(
    "Which brief?\n1. Hill gate\n2. Boat ramp\nNumber: Type a number from 1 to 2.\nNumber: ",
  );
  expect(await askerFor("hill GATE\n").asker.choose("Which brief?", choices)).toBe("a");
});

test("words that stand in one choice only mean it; a number never does", async () => {
  const posts = [
    { value: "a", label: "Go on with hill gate (5 answers)" },
    { value: "b", label: "Go on with boat ramp (2 answers)" },
  ];
  expect(await askerFor("boat\n").asker.choose("Which?", posts)).toBe("b");
  const unclear = askerFor("go on\n5\n0\n1\n");
  expect(await unclear.asker.choose("Which?", posts)).toBe("a");
  expect(unclear.written().match(/Type a number from 1 to 2\./g)).toHaveLength(3);
});

test("Enter takes the suggested choice, which is said; without one it takes none", async () => {
  const suggesting = askerFor("\n");
  expect(await suggesting.asker.choose("Which?", choices, "b")).toBe("b");
  expect(suggesting.written()).toMatch(/\nNumber\. Enter alone takes 2\. $/);
  expect(await askerFor("\n1\n").asker.choose("Which?", choices)).toBe("a");
});

test("Enter takes the suggestion, and a refused text is asked for again with the reason", async () => {
  const about = {
    suggested: "my post",
    refuses: (text: string) => (text === "taken" ? "There is one already." : null),
  };
  expect(await askerFor("\n").asker.text("What is it called?", about)).toBe("my post");
  expect(await askerFor("taken\nboat\n").asker.text("What is it called?", about)).toBe("boat");
});

test("a confirmation wants yes or no", async () => {
  expect(await askerFor("\nperhaps\nyes\n").asker.confirm("Remove it?")).toBe(true);
  expect(await askerFor("n\n").asker.confirm("Remove it?")).toBe(false);
});

test("the end of input is told apart from any answer", async () => {
  expect(await askerFor("").asker.choose("Which?", choices)).toBe(null);
  expect(await askerFor("").asker.text("Name?", { suggested: "x", refuses: () => null })).toBe(null);
  expect(await askerFor("").asker.confirm("Remove it?")).toBe(null);
});

test("lines typed ahead reach the questions in order", async () => {
  const { asker } = askerFor("2\nboat\nyes\n");
  expect(await asker.choose("Which?", choices)).toBe("b");
  expect(await asker.text("Name?", { suggested: "", refuses: () => null })).toBe("boat");
  expect(await asker.confirm("Sure?")).toBe(true);
});
