import { render } from "ink-testing-library";
import { expect, test } from "vitest";
import { Chat, type Passage } from "../../src/screen/chat.tsx";
import { liveRows } from "../../src/screen/live.ts";
import { saidRows } from "../../src/screen/page.ts";
import { emptyTyping } from "../../src/screen/typing.ts";
import { tinyDialogue, tinyState } from "../helpers/tiny-dialogue.ts";

const sheet = { columns: 80, rows: 24, isAscii: false };
const passage = (id: number, text: string): Passage => ({
  id,
  rows: saidRows(sheet, { kind: "meaning", text }),
});
const live = (before: string) =>
  liveRows(sheet, tinyDialogue().view(tinyState()), { ...emptyTyping, before }, 0);

test("passages are printed once and in order, the question below them is redrawn", () => {
  const first = [passage(0, "One.")];
  const { lastFrame, rerender } = render(<Chat passages={first} live={live("a")} />);
  rerender(<Chat passages={[...first, passage(1, "Two.")]} live={live("ab")} />);
  rerender(<Chat passages={[...first, passage(1, "Two.")]} live={live("abc")} />);
  expect(lastFrame()).toBe(
    [
      "        So │ One.",
      "        So │ Two.",
      "           │",
      "           │ Place, question 1 of 3",
      "           │ What is the nearest town?",
      "           │ As on a map. Example: Tromsø",
      "    Answer │ Place: abc",
      "           │ why   back   unsure   lists   help   quit",
    ].join("\n"),
  );
});

test("names that the typed line may become stand quietly under it, the first beside the key that takes it", () => {
  const view = tinyDialogue().view(tinyState());
  const suggesting = (before: string, names: readonly string[], columns = 80) =>
    liveRows({ ...sheet, columns }, view, { ...emptyTyping, before }, 0, names);
  const names = ["Tromsø, Troms, Norway", "Tromsdalen, Troms, Norway"];
  const { lastFrame, rerender } = render(<Chat passages={[]} live={suggesting("trom", names)} />);
  const question = [
    "           │",
    "           │ Place, question 1 of 3",
    "           │ What is the nearest town?",
    "           │ As on a map. Example: Tromsø",
  ];
  const commands = "           │ why   back   unsure   lists   help   quit";
  expect(lastFrame()).toBe(
    [
      ...question,
      "    Answer │ Place: trom",
      "       Tab │ Tromsø, Troms, Norway",
      "           │ Tromsdalen, Troms, Norway",
      commands,
    ].join("\n"),
  );
  const { rows, cursor } = suggesting("trom", names);
  expect(rows.slice(cursor.y + 1, cursor.y + 3).flatMap((row) => row.map(({ tone }) => tone))).toEqual(
    Array.from({ length: 6 }, () => "quiet"),
  );
  rerender(<Chat passages={[]} live={suggesting(names[0]!, names.slice(0, 1))} />);
  expect(lastFrame()).toBe([...question, `    Answer │ Place: ${names[0]}`, commands].join("\n"));
  rerender(<Chat passages={[]} live={suggesting("trom", names, 30)} />);
  expect(lastFrame()).toContain("\nTab: Tromsø, Troms, Norway\nTromsdalen, Troms, Norw…\n");
});

test("at the end nothing of the question is left", () => {
  const { lastFrame, rerender } = render(<Chat passages={[passage(0, "One.")]} live={live("a")} />);
  rerender(<Chat passages={[passage(0, "One.")]} live={null} />);
  expect(lastFrame()?.trimEnd()).toBe("        So │ One.");
});
