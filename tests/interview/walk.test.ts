import { describe, expect, test } from "vitest";
import type { Answer, Answers, StoredValue } from "../../src/interview/conversation.ts";
import { choice, type Topic, topic } from "../../src/interview/define.ts";
import { designNow } from "../../src/interview/session.ts";
import {
  firstUnanswered,
  labelOf,
  nextQuestion,
  previousQuestion,
  topicsOpen,
  walk,
} from "../../src/interview/walk.ts";
import { smallInterview, started } from "./small-flow.ts";

const answer = (value: StoredValue, origin: Answer["origin"] = "estimate"): Answer => ({
  typed: "typed",
  value,
  origin,
});
const watts = (best: number, high = best): Answer =>
  answer({ kind: "quantity", low: best, best, high, unit: "W" });
const option = (id: string): Answer => answer({ kind: "choice", option: id });
const at = (latitudeDeg: number): Answer =>
  answer({
    kind: "place",
    site: { label: "x", latitudeDeg, longitudeDeg: 0, elevationM: null, countryCode: null },
  });
const unsure = answer({ kind: "choice", option: "whatever" }, "assumed");

const walked = (answers: Answers) => walk(smallInterview.topics, answers, smallInterview.siteFacts);
const ids = (answers: Answers) => walked(answers).map((each) => each.id);
const valueAt = (answers: Answers, id: string) => walked(answers).find((each) => each.id === id)?.value;

describe("what is asked", () => {
  test("without an answer: what the stand-ins call for, and the first of the block", () => {
    expect(ids({})).toEqual([
      "place.where",
      "place.height",
      "loads.camera",
      "loads.night",
      "loads.infrared",
      "loads.extra.1.kind",
      "hours.span",
    ]);
  });

  test("an answer hides what it makes needless; the hidden answer is kept and counts again later", () => {
    const answers = { "loads.infrared": watts(7), "loads.night": option("none") };
    expect(ids(answers)).not.toContain("loads.infrared");
    expect(valueAt({ ...answers, "loads.night": option("infrared") }, "loads.infrared")).toMatchObject({
      best: 7,
    });
  });

  test("a rule on the site's facts looks at the place that was answered", () => {
    expect(ids({ "place.where": at(65) })).toContain("hours.snow");
    expect(ids({ "place.where": at(50) })).not.toContain("hours.snow");
    expect(valueAt({ "place.where": at(65) }, "hours.snow")).toMatchObject({ best: 6 });
  });
});

describe("values", () => {
  test("an unanswered question has its stand-in, and a computed one goes before the fixed one", () => {
    expect(valueAt({}, "loads.camera")).toEqual({ kind: "quantity", low: 5, best: 5, high: 5, unit: "W" });
    expect(valueAt({}, "loads.infrared")).toMatchObject({ best: 2.5 });
  });

  test("a rule is handed the end of a range that the question leans to", () => {
    expect(valueAt({ "loads.camera": watts(6, 9) }, "loads.infrared")).toMatchObject({ best: 4.5 });
  });

  test("an assumed answer follows the present stand-in", () => {
    const answers = { "loads.infrared": unsure };
    expect(valueAt(answers, "loads.infrared")).toMatchObject({ best: 2.5 });
    expect(valueAt({ ...answers, "loads.camera": watts(10) }, "loads.infrared")).toMatchObject({ best: 5 });
    const row = walked(answers).find((each) => each.id === "loads.infrared")!;
    expect(row.answer).toMatchObject({ typed: "typed", origin: "assumed", value: { best: 2.5 } });
  });

  test.each([
    ["of another kind", option("none")],
    ["in another unit", answer({ kind: "quantity", low: 5, best: 5, high: 5, unit: "kW" })],
    ["outside what is possible", watts(61)],
    ["not a number", watts(Number.NaN)],
    ["with its ends crossed", answer({ kind: "quantity", low: 9, best: 5, high: 7, unit: "W" })],
  ])("a kept answer %s counts as none", (_what, kept) => {
    const row = walked({ "loads.camera": kept }).find((each) => each.id === "loads.camera")!;
    expect(row.answer).toBeNull();
    expect(row.value).toMatchObject({ best: 5 });
  });

  test("an option that no longer exists, half a lamp and a 25th hour count as none", () => {
    const answers = {
      "loads.night": option("moonlight"),
      "loads.extra.1.kind": option("lamp"),
      "loads.extra.1.count": answer({ kind: "quantity", low: 1.5, best: 1.5, high: 1.5, unit: "" }),
      "hours.span": answer({ kind: "clock", fromMin: 0, toMin: 1500 }),
    };
    const open = walked(answers).filter((each) => each.answer === null);
    expect(open.map((each) => each.id)).toEqual(
      expect.arrayContaining(["loads.night", "loads.extra.1.count", "hours.span"]),
    );
  });

  test("a name that every object has is not taken for an answer", () => {
    expect(walked({}).every((each) => each.answer === null)).toBe(true);
    expect(ids(JSON.parse('{"__proto__": null}'))).toEqual(ids({}));
  });
});

describe("a repeated block", () => {
  const lamp = { "loads.extra.1.kind": option("lamp") };
  const inBlock = (answers: Answers) => ids(answers).filter((id) => id.startsWith("loads.extra"));

  test("asks its other questions of what was named, then whether there is another", () => {
    expect(inBlock(lamp)).toEqual([
      "loads.extra.1.kind",
      "loads.extra.1.power",
      "loads.extra.1.count",
      "loads.extra.2.kind",
    ]);
    expect(inBlock({ "loads.extra.1.kind": option("sensor") })).not.toContain("loads.extra.1.count");
  });

  test("ends with none, with unsure, and after as many as there may be", () => {
    expect(inBlock({ "loads.extra.1.kind": option("none") })).toEqual(["loads.extra.1.kind"]);
    expect(inBlock({ "loads.extra.1.kind": unsure })).toEqual(["loads.extra.1.kind"]);
    const three = Object.fromEntries([1, 2, 3].map((n) => [`loads.extra.${n}.kind`, option("sensor")]));
    expect(inBlock(three).at(-1)).toBe("loads.extra.3.power");
  });

  test("each instance reads its own answers", () => {
    const answers = { ...lamp, "loads.extra.2.kind": option("sensor") };
    expect(valueAt(answers, "loads.extra.1.power")).toMatchObject({ best: 8 });
    expect(valueAt(answers, "loads.extra.2.power")).toMatchObject({ best: 1 });
  });

  test("later rules see one record for each that was named", () => {
    const two = { ...lamp, "loads.extra.2.kind": option("sensor") };
    expect(ids(two)).not.toContain("hours.snow");
    expect(ids({ ...two, "loads.extra.3.kind": option("lamp") })).toContain("hours.snow");
  });

  test("later instances wait behind a none and come back with it", () => {
    const answers = { ...lamp, "loads.extra.2.kind": option("sensor"), "loads.extra.3.kind": option("none") };
    const ended = { ...answers, "loads.extra.1.kind": option("none") };
    expect(inBlock(ended)).toEqual(["loads.extra.1.kind"]);
    expect(inBlock({ ...ended, ...lamp })).toEqual(inBlock(answers));
  });

  test("instances are told apart by number in their labels", () => {
    const labels = walked(lamp).map(labelOf);
    expect(labels).toContain("Other device 2");
    expect(labels).toContain("Camera");
  });
});

describe("corners that the small flow has not", () => {
  const yesNo = choice({
    label: "Label",
    ask: "Which?",
    hint: "Look.",
    why: "It matters.",
    how: "Look.",
    options: [
      { id: "none", label: "No" },
      { id: "some", label: "Some" },
    ],
    unsure: { use: "none", because: "x" },
  });
  const about = { id: "parts", version: 1, title: "Parts", opening: "Now the parts." } as const;

  test("rules see the stand-in of a hidden question, not the answer it once had", () => {
    const parts = topic(about)
      .ask("has", yesNo)
      .ask("kind", yesNo, (given) => ({ when: given(["parts.has"], (has) => has === "some") }))
      .ask("after", yesNo, (given) => ({ when: given(["parts.kind"], (kind) => kind === "some") }))
      .end();
    const shown = (has: string) =>
      walk([parts], { "parts.has": option(has), "parts.kind": option("some") }, () => null).map(
        ({ id }) => id,
      );
    expect(shown("some")).toEqual(["parts.has", "parts.kind", "parts.after"]);
    expect(shown("none")).toEqual(["parts.has"]);
  });

  test("a rule that reads inside a block from outside, or ahead, is a slip of ours and says which", () => {
    const sound = topic(about)
      .repeat("owned", { atMost: 2 }, (part) => part.ask("kind", yesNo))
      .end();
    const reads = (id: string): Topic => ({
      ...sound,
      steps: [
        ...sound.steps,
        {
          step: "ask",
          id: "parts.after",
          question: yesNo,
          inFeet: yesNo,
          rules: { when: { reads: [id], work: () => true } },
        },
      ],
    });
    for (const id of ["each.kind", "parts.later"])
      expect(() => walk([reads(id)], {}, () => null)).toThrow(
        `a rule reads "${id}", which is not asked before it`,
      );
  });

  test("a block whose next instance is only suggested is asked, but not gone beyond", () => {
    const parts = topic(about)
      .repeat("owned", { atMost: 4 }, (part) =>
        part
          .ask("kind", yesNo, (given) => ({ suggest: given([], () => ({ use: "some", because: "x" })) }))
          .ask("more", yesNo),
      )
      .ask("after", yesNo, (given) => ({ when: given(["parts.owned"], (owned) => owned.length === 1) }))
      .end();
    expect(walk([parts], {}, () => null).map(({ id }) => id)).toEqual([
      "parts.owned.1.kind",
      "parts.owned.1.more",
      "parts.after",
    ]);
  });

  test("a block that is not called for is empty, and one whose first question is hidden ends", () => {
    const parts = (isBlock: boolean, isFirst: boolean) =>
      topic(about)
        .ask("has", yesNo)
        .repeat("owned", { atMost: 4, when: (given) => given([], () => isBlock) }, (part) =>
          part.ask("kind", yesNo, (given) => ({ when: given([], () => isFirst) })).ask("more", yesNo),
        )
        .ask("after", yesNo, (given) => ({ when: given(["parts.owned"], (owned) => owned.length === 0) }))
        .end();
    const answers = { "parts.owned.1.kind": option("some") };
    for (const [isBlock, isFirst] of [
      [false, true],
      [true, false],
    ] as const)
      expect(walk([parts(isBlock, isFirst)], answers, () => null).map(({ id }) => id)).toEqual([
        "parts.has",
        "parts.after",
      ]);
    expect(walk([parts(true, true)], answers, () => null).map(({ id }) => id)).toContain(
      "parts.owned.2.kind",
    );
  });
});

test("neighbours, the first open question and the open topics", () => {
  const answers = { "place.where": at(50), "loads.camera": watts(5) };
  const now = walked(answers);
  expect(nextQuestion(now, "place.where")?.id).toBe("place.height");
  expect(nextQuestion(now, "hours.span")).toBeNull();
  expect(nextQuestion(now, "not.walked")).toBeNull();
  expect(previousQuestion(now, "place.where")).toBeNull();
  expect(previousQuestion(now, null)?.id).toBe("hours.span");
  expect(firstUnanswered(now)?.id).toBe("place.height");
  expect(topicsOpen(now)).toEqual(["place", "loads", "hours"]);
  expect(topicsOpen(walked({ ...answers, "place.height": unsure }))).toEqual(["loads", "hours"]);
});

test("a stand-in that is no number is a slip of ours and says which", () => {
  const camera = smallInterview.topics[1]!;
  const broken = {
    ...camera,
    steps: [
      {
        ...camera.steps[0]!,
        rules: { suggest: { reads: [], work: () => ({ use: Number.NaN, because: "" }) } },
      },
    ],
  };
  // biome-ignore lint/suspicious/noExplicitAny: a flow that the types would refuse
  expect(() => walk([broken as any], {}, () => null)).toThrow('the stand-in of "Camera" came out as NaN');
});

test("the design is worked from the walk", () => {
  expect(
    designNow(smallInterview, started({ "loads.camera": watts(9), "loads.night": option("none") })),
  ).toEqual({
    watts: 9,
    dailyWh: null,
    supply: "small",
    snowWeeks: 0,
  });
});
