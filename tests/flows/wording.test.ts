import { describe, expect, it } from "vitest";
import { tellings, topics } from "../../flows/index.ts";
import { unitOf, unitsOf } from "../../src/core/units/index.ts";
import type { AskStep, Question } from "../../src/interview/define.ts";
import { metricIn } from "../helpers/metric.ts";

const steps: readonly AskStep[] = topics
  .flatMap((topic) => topic.steps)
  .flatMap((step) => (step.step === "ask" ? [step] : step.block));
const inSystem = (units: "metric" | "us") =>
  steps.map((step) => ({ id: step.id, question: units === "us" ? step.inFeet : step.question }));
const questions = [
  ...inSystem("metric"),
  ...inSystem("us").map((each) => ({ ...each, id: `${each.id} in feet` })),
];

/** Words that blame, beg or talk in the machine's own terms. */
const unwelcome = /\b(invalid|illegal|please|sorry|oops|error|parameter|default|configure|null)\b/i;

const texts = (question: Question) => [
  question.label,
  question.ask,
  question.hint,
  question.why,
  question.how,
  question.unsure.because,
  ...(question.kind === "choice" ? question.options.map((option: { label: string }) => option.label) : []),
];

describe("every question", () => {
  it("is found by this test", () => {
    expect(questions.length).toBeGreaterThan(100);
  });

  it.each(questions)(
    "$id asks one thing with one question mark, in one line of a wide terminal",
    ({ question }) => {
      expect(question.ask.match(/\?/g)).toHaveLength(1);
      expect(question.ask.endsWith("?")).toBe(true);
      expect(question.ask.length).toBeLessThanOrEqual(85);
      expect(question.label.length).toBeLessThanOrEqual(36);
      expect(question.hint.length).toBeLessThanOrEqual(150);
      expect(question.hint).not.toContain("?");
    },
  );

  it.each(questions)("$id neither blames nor begs, and ends its sentences", ({ question }) => {
    for (const text of texts(question)) {
      expect(text).not.toMatch(unwelcome);
      expect(text.trim()).toBe(text);
      expect(text.length).toBeGreaterThan(0);
    }
    for (const text of [question.why, question.how]) expect(text).toMatch(/[.?]$/);
    expect(question.unsure.because, "the reason is put behind a colon").not.toMatch(/^[A-Z](?!GM|PPT)|\.$/);
  });

  it.each(inSystem("us"))("$id speaks of feet and pounds to those who think in them", ({ question }) => {
    for (const text of texts(question)) {
      // the metric figure only ever as the second of two
      expect(metricIn(text.replace(/ or [\d.]+ (m|mm|kg)\b/g, ""))).toEqual([]);
      expect(text).not.toMatch(/[[\]|]/);
    }
  });

  it.each(questions)("$id has a stand-in that its own rules accept", ({ question }) => {
    if (question.kind === "quantity") {
      const { possible, usual, unsure } = question;
      expect(possible.min).toBeLessThanOrEqual(usual.min);
      expect(usual.max).toBeLessThanOrEqual(possible.max);
      expect(unsure.use).toBeGreaterThanOrEqual(usual.min);
      expect(unsure.use).toBeLessThanOrEqual(usual.max);
    }
    if (question.kind === "choice")
      expect(question.options.map((option: { id: string }) => option.id)).toContain(question.unsure.use);
  });

  it.each(questions)("$id shows units that the unit table knows for its kind", ({ question }) => {
    if (question.kind !== "quantity") return;
    const known = unitsOf(question.dimension).map((unit) => unit.symbol);
    for (const symbol of [question.unit, question.alsoUnit ?? question.unit]) {
      expect(known).toContain(symbol);
      expect(unitOf(symbol).symbol).toBe(symbol);
    }
  });
});

describe("all topics together", () => {
  it("use each id once and keep the agreed order", () => {
    const ids = topics.flatMap((topic) => topic.steps.map((step) => step.id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(topics.map((topic) => topic.id)).toEqual([
      "place",
      "view",
      "loads",
      "hours",
      "autonomy",
      "power",
      "mounting",
      "link",
      "parts",
      "money",
    ]);
  });
});

describe("what a question is about", () => {
  it("names a telling that exists, where it names one", () => {
    const ids = tellings.map((telling) => telling.id);
    const named = questions.flatMap(({ question }) => (question.shows === undefined ? [] : [question.shows]));
    expect(named.length).toBeGreaterThan(20);
    for (const id of named) expect(ids).toContain(id);
  });
});
