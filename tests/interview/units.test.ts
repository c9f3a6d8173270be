/** The same interview for those who think in feet: what is shown changes, what the design is worked from does not. */
import { expect, test } from "vitest";
import type { Answers, Units } from "../../src/interview/conversation.ts";
import { begin, update, view, walkNow } from "../../src/interview/session.ts";
import { near } from "../helpers/near.ts";
import { smallInterview, talk } from "./small-flow.ts";

const startedIn = (units: Units, answers: Answers = {}) =>
  update(smallInterview, begin({ name: "gate", currency: "EUR", units, answers }), { type: "start" })[0];
const heightIn = (units: Units, answers: Answers) =>
  walkNow(smallInterview, { units, answers }).find(({ id }) => id === "place.height")!;

test("a bare number is taken in the unit shown, and the design sees metres", () => {
  const { state } = talk(startedIn("us"), "hill");
  expect(view(smallInterview, state).prompt).toBe("Height (ft or m)");
  const { answers } = talk(state, "13").state;
  // The foot is 0.3048 m exactly (international yard and pound agreement, 1959).
  near(heightIn("us", answers).own.rule as number, 13 * 0.3048, { within: 1e-9 });
});

test("limits and stand-ins move with the unit", () => {
  const { state } = talk(startedIn("us"), "hill");
  expect(talk(state, "40").state.mode.kind).toBe("confirming");
  expect(talk(state, "30").state.mode.kind).toBe("asking");
  // 4 m are 13.12 ft: a guess that is round in metres is a round one in feet
  expect(talk(state, "not sure").said.at(1)).toMatchObject({ text: expect.stringMatching(/\b13 ft/) });
});

test("answers typed in one unit stand when the other is shown, and come back the same", () => {
  const { answers } = talk(startedIn("metric"), "hill", "4").state;
  const shown = heightIn("us", answers);
  expect(shown.answer).not.toBeNull();
  near(shown.own.rule as number, 4, { within: 1e-9 });
  expect(heightIn("metric", answers).value).toEqual(answers["place.height"]!.value);
});

test("a bare number typed for metres is not shown as feet", () => {
  const { answers } = talk(startedIn("metric"), "hill", "4").state;
  const there = talk(startedIn("us", answers), "change height").state;
  expect(view(smallInterview, there).keeps).toBe("13.1 ft");
  const kept = talk(there, "").state;
  expect(kept.answers).toEqual(answers);
});
