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

test("at the end nothing of the question is left", () => {
  const { lastFrame, rerender } = render(<Chat passages={[passage(0, "One.")]} live={live("a")} />);
  rerender(<Chat passages={[passage(0, "One.")]} live={null} />);
  expect(lastFrame()?.trimEnd()).toBe("        So │ One.");
});
