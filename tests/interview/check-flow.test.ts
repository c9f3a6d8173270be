/** Flows that the types of define.ts let through, or that were put together by hand: each breach is planted. */
import { expect, test } from "vitest";
import { checkFlow } from "../../src/interview/check-flow.ts";
import type { AskStep, Question, RepeatStep, Step, Topic } from "../../src/interview/define.ts";
import { smallInterview } from "./small-flow.ts";

const wording = { label: "Label", ask: "Which?", hint: "Look.", why: "It matters.", how: "Measure." };
const option = (...ids: readonly string[]): Question => ({
  ...wording,
  kind: "choice",
  options: ids.map((id) => ({ id, label: id })),
  unsure: { use: ids[0]!, because: "x" },
});
const ask = (id: string, question: Question = option("none", "lamp")): AskStep => ({
  step: "ask",
  id,
  question,
  inFeet: question,
  rules: {},
});
const repeat = (block: readonly AskStep[], atMost = 2): RepeatStep => ({
  step: "repeat",
  id: "loads.extra",
  atMost,
  rules: {},
  block,
});
const days = (unsure: number, usual: { min: number; max: number }): Question => ({
  ...wording,
  kind: "quantity",
  dimension: "duration",
  unit: "days",
  lean: "high",
  possible: { min: 1, max: 9 },
  usual,
  unsure: { use: unsure, because: "x" },
});
const loads = (...steps: readonly Step[]): Topic => ({
  id: "loads",
  version: 1,
  title: "Loads",
  opening: "Now the power.",
  steps,
});

test("a sound flow has no breach", () => {
  expect(checkFlow(smallInterview.topics)).toEqual([]);
});

test.each<[string, readonly Topic[], string]>([
  ["a topic twice", [loads(), loads()], "the topic loads stands twice"],
  ["an id of another topic", [loads(ask("view.kind"))], "view.kind does not belong to the topic loads"],
  [
    "a stand-in out of range",
    [loads(ask("loads.x", days(12, { min: 2, max: 3 })))],
    "loads.x: its stand-in is no possible answer to it",
  ],
  [
    "usual beyond possible",
    [loads(ask("loads.x", days(2, { min: 0, max: 3 })))],
    "loads.x: what is usual is not within what is possible",
  ],
  ["a choice of one", [loads(ask("loads.x", option("a")))], "loads.x: a choice needs two options"],
  ["an option twice", [loads(ask("loads.x", option("a", "a")))], "loads.x: an option stands twice"],
  [
    "a block that cannot end",
    [loads(repeat([ask("each.kind", option("a", "b"))]))],
    'loads.extra: its first question has no option "none"',
  ],
  [
    "a block that unsure goes on with",
    [loads(repeat([ask("each.kind", option("lamp", "none"))]))],
    "loads.extra: unsure does not end it",
  ],
  [
    "a block that begins with a quantity",
    [loads(repeat([ask("each.x", days(2, { min: 1, max: 3 }))]))],
    "loads.extra: its block does not begin with a choice",
  ],
  ["an empty block", [loads(repeat([]))], "loads.extra: its block does not begin with a choice"],
  ["a block asked no times", [loads(repeat([ask("each.kind")], 0))], "loads.extra: it is asked no times"],
  [
    "a rule of a block that reads what comes later",
    [loads({ ...repeat([ask("each.kind")]), rules: { when: { reads: ["loads.later"], work: () => true } } })],
    'loads.extra reads "loads.later", which is not asked before it',
  ],
])("%s", (_what, topics, breach) => {
  expect(checkFlow(topics)).toContain(breach);
});
