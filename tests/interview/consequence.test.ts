import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/design/finding.ts";
import { consequences, designLines } from "../../src/interview/consequence.ts";
import type { Telling } from "../../src/interview/define.ts";

interface Design {
  readonly figures: Readonly<Record<string, number | string | null>>;
  readonly findings: readonly Finding[];
}
const design = (figures: Design["figures"], ...findings: readonly Finding[]): Design => ({
  figures,
  findings,
});
const telling = (id: string, more: Partial<Telling<Design>> = {}): Telling<Design> => ({
  id,
  figure: ({ figures }) => figures[id] ?? null,
  say: ({ figures }, before) => `${id} is ${figures[id]}, was ${before}.`,
  label: id,
  short: ({ figures }) => {
    if (figures[id] === null) throw new Error("a figure that is not known has no short form");
    return `${figures[id]}`;
  },
  ...more,
});
const finding = (id: string, severity: Finding["severity"], change = ""): Finding => ({
  id,
  severity,
  says: `${severity} of ${id}.`,
  change,
  numbers: {},
  topics: [],
});
const interview = (...tellings: readonly Telling<Design>[]) => ({
  tellings,
  findingsOf: (now: Design) => now.findings,
});
const said = (
  tellings: readonly Telling<Design>[],
  before: Design,
  after: Design,
  isRevised = false,
): readonly unknown[] =>
  consequences(
    interview(...tellings),
    { design: before, walked: [] },
    { design: after, walked: [] },
    { isRevised },
  ).map((each) => {
    if (each.kind === "meaning") return each.text;
    if (each.kind === "finding") return `${each.isGone ? "gone: " : ""}${each.finding.says}`;
    return each.kind === "changed" ? each.rows : each;
  });

describe("a figure", () => {
  const a = [telling("a")];
  test("is told when it appears, and not when it cannot be worked any more", () => {
    expect(said(a, design({ a: null }), design({ a: 3 }))).toEqual(["a is 3, was null."]);
    expect(said(a, design({ a: 3 }), design({ a: null }))).toEqual([]);
  });

  test("is told when it moves by more than two in a hundred, up or down", () => {
    expect(said(a, design({ a: 100 }), design({ a: 102 }))).toEqual([]);
    expect(said(a, design({ a: 100 }), design({ a: 102.1 }))).toHaveLength(1);
    expect(said(a, design({ a: -100 }), design({ a: -103 }))).toHaveLength(1);
    expect(said(a, design({ a: 0 }), design({ a: 0.1 }))).toHaveLength(1);
    expect(said(a, design({ a: 0 }), design({ a: 0 }))).toEqual([]);
  });

  test("with a step of its own is told when it moves by more than that", () => {
    const stepped = [telling("a", { step: 5 })];
    expect(said(stepped, design({ a: 10 }), design({ a: 15 }))).toEqual([]);
    expect(said(stepped, design({ a: 10 }), design({ a: 15.1 }))).toHaveLength(1);
  });

  test("in words is told when the words change", () => {
    expect(said(a, design({ a: "MPPT" }), design({ a: "MPPT" }))).toEqual([]);
    expect(said(a, design({ a: "MPPT" }), design({ a: "PWM" }))).toEqual(["a is PWM, was MPPT."]);
  });

  test("no more than three are told, in the order of the list", () => {
    const four = ["d", "c", "b", "a"].map((id) => telling(id));
    expect(said(four, design({}), design({ a: 1, b: 2, c: 3, d: 4 }))).toEqual([
      "d is 4, was null.",
      "c is 3, was null.",
      "b is 2, was null.",
    ]);
  });
});

describe("a revised answer", () => {
  const four = ["d", "c", "b", "a"].map((id) => telling(id));

  test("says all that it moved, before and after", () => {
    const rows = said(four, design({ a: 1, b: 2, c: 3, d: 4 }), design({ a: 2, b: 3, c: 4, d: 5 }), true);
    expect(rows).toEqual([
      [
        { label: "d", before: "4", after: "5" },
        { label: "c", before: "3", after: "4" },
        { label: "b", before: "2", after: "3" },
        { label: "a", before: "1", after: "2" },
      ],
    ]);
  });

  test("says of a figure that came or went that it is not known", () => {
    expect(said(four, design({ a: null, b: 1 }), design({ a: 2, b: null }), true)).toEqual([
      [
        { label: "b", before: "1", after: "not known yet" },
        { label: "a", before: "not known yet", after: "2" },
      ],
    ]);
  });

  test("leaves out what looks the same, and is silent where all does", () => {
    const rounded = [telling("a", { short: () => "about 3" })];
    expect(said(rounded, design({ a: 3 }), design({ a: 3.2 }), true)).toEqual([]);
  });
});

describe("findings", () => {
  const one = finding("one", "stop");
  const two = finding("two", "caution");
  const note = finding("note", "note");
  const three = ["a", "b", "c"].map((id) => telling(id));

  test("stops and cautions are said beyond the three lines, a note only within them", () => {
    const after = design({ a: 1, b: 2, c: 3 }, note, one, two);
    expect(said(three, design({}), after).slice(3)).toEqual(["stop of one.", "caution of two."]);
    expect(said(three, design({}), design({ a: 1 }, note, one))).toEqual([
      "a is 1, was null.",
      "stop of one.",
      "note of note.",
    ]);
  });

  test("that stay are not repeated; that go away are said to, but for notes", () => {
    expect(said([], design({}, one, note), design({}, one, note))).toEqual([]);
    expect(said([], design({}, one, two, note), design({}))).toEqual([
      "gone: stop of one.",
      "gone: caution of two.",
    ]);
  });

  test("that grow graver or milder are said anew", () => {
    expect(said([], design({}, finding("x", "caution")), design({}, finding("x", "stop")))).toEqual([
      "stop of x.",
    ]);
    expect(said([], design({}, finding("x", "stop")), design({}, finding("x", "caution")))).toEqual([
      "caution of x.",
    ]);
  });

  test("a second of the same id is a finding of its own", () => {
    expect(said([], design({}, two), design({}, two, two))).toEqual(["caution of two."]);
    expect(said([], design({}, two, two, two), design({}, two, two))).toEqual(["gone: caution of two."]);
  });
});

test("the design so far: what is known, and the findings with what to change", () => {
  const now = design({ a: 1 }, finding("x", "stop", "Take a larger one."), finding("y", "note"));
  expect(designLines(interview(telling("a"), telling("b")), now)).toEqual([
    "a: 1",
    "Stop: stop of x. Take a larger one.",
    "Note: note of y.",
  ]);
  expect(designLines(interview(telling("a")), design({}))).toEqual([
    "Nothing can be worked out yet: the next answers change that.",
  ]);
});
