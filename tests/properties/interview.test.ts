/** Laws of the conversation over a small flow with every kind of question and rule. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answers, Effect, State } from "../../src/interview/conversation.ts";
import { runScript } from "../../src/interview/script.ts";
import { begin, update, view, walkNow } from "../../src/interview/session.ts";
import { smallInterview, started, talk } from "../interview/small-flow.ts";

const about = { name: "gate", currency: "EUR" };
const walkedOf = (state: State) =>
  walkNow(smallInterview, state).map(({ id, answer, value }) => ({ id, answer, value }));
const cursorOf = (state: State) => {
  const walked = walkNow(smallInterview, state);
  return walked.find(({ id }) => id === state.cursor) ?? null;
};

/** Lines that answer a question at once, whatever else is answered. */
const linesFor: Readonly<Record<string, readonly string[]>> = {
  where: ["hill", "fell", "not sure"],
  height: ["4 m", "13 ft", "3-5 m", "about 4 m", "not sure"],
  camera: ["5 W", "10 W measured", "at least 4 W", "4-6", "not sure"],
  night: ["1", "infrared", "stop", "not sure"],
  infrared: ["3 W", "6 W label", "not sure"],
  kind: ["none", "lamp", "sensor", "not sure"],
  power: ["8 W", "under 5 W", "not sure"],
  count: ["1", "2", "1 to 4", "not sure"],
  span: ["6:00 to 18:00", "all day", "6pm to 6am", "not sure"],
  snow: ["3 weeks", "10 days", "not sure"],
};
const lineFor = (id: string, pick: number): string => {
  const lines = linesFor[id.slice(id.lastIndexOf(".") + 1)]!;
  return lines[pick % lines.length]!;
};

type Picks = (id: string) => number;
const picks: fc.Arbitrary<Picks> = fc.func<[string], number>(fc.nat({ max: 11 }));

/** Every state from here to the end, each question at the cursor answered in turn. */
function statesOn(from: State, pick: Picks): readonly State[] {
  const states = [from];
  for (let state = from; state.cursor !== null; states.push(state)) {
    if (states.length > 60) throw new Error(`no end in sight at ${state.cursor}`);
    state = talk(state, lineFor(state.cursor, pick(state.cursor))).state;
  }
  return states;
}
const answeredOn = (from: State, pick: Picks): State => statesOn(from, pick).at(-1)!;

const saved = (answers: Answers): Answers => JSON.parse(JSON.stringify(answers)) as Answers;

describe("revising", () => {
  test("and revising back gives the same walk", () => {
    fc.assert(
      fc.property(picks, picks, fc.nat(), (pick, other, which) => {
        const end = answeredOn(started(), pick);
        const walked = walkedOf(end);
        const { id } = walked[which % walked.length]!;
        const there = talk(end, `change ${id}`, lineFor(id, other(id))).state;
        const backAgain = talk(there, `change ${id}`, lineFor(id, pick(id))).state;
        expect(walkedOf(backAgain)).toEqual(walked);
      }),
    );
  });

  test("in any order gives the walk of answering straight", () => {
    fc.assert(
      fc.property(
        picks,
        picks,
        fc.array(fc.nat(), { minLength: 20, maxLength: 20 }),
        (wanted, first, order) => {
          const straight = walkedOf(answeredOn(started(), wanted));
          let state = answeredOn(started(), first);
          // A question may only come up once another is as wanted, so the shuffled round is made more than once.
          const shuffled = straight
            .map(({ id }, index) => ({ id, key: order[index % order.length]! }))
            .sort((a, b) => a.key - b.key);
          for (let round = 0; round < straight.length; round++)
            for (const { id } of shuffled)
              if (walkedOf(state).some((each) => each.id === id))
                state = talk(state, `change ${id}`, lineFor(id, wanted(id))).state;
          expect(walkedOf(state)).toEqual(straight);
        },
      ),
      { numRuns: 40 },
    );
  });

  test("and undoing gives back the answers, as many times as there were answers", () => {
    fc.assert(
      fc.property(picks, fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 8 }), (pick, changes) => {
        let state = answeredOn(started(), pick);
        const before = state.answers;
        let taken = 0;
        for (const [which, choice] of changes) {
          const walked = walkedOf(state);
          const { id } = walked[which % walked.length]!;
          const after = talk(state, `change ${id}`, lineFor(id, choice)).state;
          taken += after.past.length - state.past.length;
          state = after;
        }
        for (let n = 0; n < taken; n++) state = talk(state, "undo").state;
        expect(state.answers).toEqual(before);
      }),
    );
  });
});

test("saving and resuming at any point gives the same next question", () => {
  fc.assert(
    fc.property(picks, (pick) => {
      for (const state of statesOn(started(), pick)) {
        const [resumed] = update(smallInterview, begin({ ...about, answers: saved(state.answers) }), {
          type: "start",
        });
        expect(view(smallInterview, resumed)).toEqual(view(smallInterview, state));
        expect(walkedOf(resumed)).toEqual(walkedOf(state));
      }
    }),
  );
});

test("a file of the same lines asks the same questions and gives the same answers as a conversation", () => {
  fc.assert(
    fc.property(picks, (pick) => {
      const states = statesOn(started(), pick);
      const asked = states.flatMap(({ cursor }) => (cursor === null ? [] : [cursor]));
      const lines = Object.fromEntries(asked.map((id) => [id, lineFor(id, pick(id))]));
      const state = states.at(-1)!;
      const run = runScript(smallInterview, about, lines);
      expect(run.asked).toEqual(asked);
      expect(run.state.answers).toEqual(state.answers);
      expect(run.missing).toEqual([]);
      expect(run.refused).toEqual([]);
      // The records that a conversation saved are a file of answers too.
      expect(runScript(smallInterview, about, saved(state.answers)).state.answers).toEqual(state.answers);
    }),
  );
});

test("every option of every choice, in every combination, reaches the end", () => {
  const taken = new Set<string>();
  let ends = 0;
  const follow = (state: State, turns: number): void => {
    expect(turns).toBeLessThan(25);
    const shown = view(smallInterview, state);
    if (shown.isFinished) {
      ends++;
      return;
    }
    const isChoice = cursorOf(state)!.question.kind === "choice";
    const lines = isChoice ? shown.options.map(({ number }) => String(number)) : ["not sure"];
    for (const text of lines) {
      const next = talk(state, text).state;
      expect(next.answers[state.cursor!]).toBeDefined();
      taken.add(`${state.cursor} ${text}`);
      follow(next, turns + 1);
    }
  };
  follow(started(), 0);
  // Three ways to see at night; blocks of none, one, two or three devices of two kinds: 1 + 2 + 4 + 8.
  expect(ends).toBe(3 * 15);
  expect(taken).toContain("loads.extra.3.kind 3");
});

describe("any line at all", () => {
  const commands = ["back", "undo", "review", "why", "how", "help", "more", "lists", "save", "yes", "no", ""];
  const changes = [
    "change 1",
    "change 3",
    "change 99",
    "change camera",
    "change loads",
    "change",
    "Newport",
    "2",
  ];
  const odd = [
    "40 ft",
    "60 W",
    "at least 50 W",
    "1,500",
    "'",
    '"',
    "__proto__",
    "\u0000",
    "½",
    "-1",
    "1e999",
  ];
  const anyLine = fc.oneof(
    fc.constantFrom(...commands, ...changes, ...odd),
    fc.constantFrom(...Object.values(linesFor).flat()),
    fc.string({ unit: "binary", maxLength: 300 }),
  );

  const answersOf = (state: State) => JSON.stringify(state.answers);
  const isSaved = (effects: readonly Effect[]) => effects.some((effect) => effect.type === "save");

  function holds(state: State): void {
    const walked = walkNow(smallInterview, state);
    const cursor = walked.find(({ id }) => id === state.cursor);
    if (state.cursor === null) expect(walked.filter(({ answer }) => answer === null)).toEqual([]);
    else expect(cursor).toBeDefined();
    if (state.mode.kind === "confirming") expect(["quantity", "place"]).toContain(cursor?.question.kind);
    if (state.mode.kind === "choosingPlace") expect(cursor?.question.kind).toBe("place");
    if (state.returnTo !== null) expect(state.returnTo).not.toBe(state.cursor);
    expect(state.past.length).toBeLessThanOrEqual(50);
    expect(new Set(state.opened).size).toBe(state.opened.length);
    expect(new Set(state.closed).size).toBe(state.closed.length);
  }

  test("throws nowhere, keeps the invariants, and whatever changes the answers saves them", () => {
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 30 }), (lines) => {
        let state = started();
        for (const text of lines) {
          const [next, effects] = update(smallInterview, state, { type: "line", text });
          holds(next);
          expect(view(smallInterview, next).ask).not.toBe("");
          if (answersOf(next) !== answersOf(state)) expect(isSaved(effects)).toBe(true);
          state = next;
        }
      }),
      { numRuns: 300 },
    );
  });

  test("leaves something that can be saved and resumed", () => {
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 30 }), (lines) => {
        const { state } = talk(started(), ...lines);
        const [resumed] = update(smallInterview, begin({ ...about, answers: saved(state.answers) }), {
          type: "start",
        });
        expect(walkedOf(resumed)).toEqual(walkedOf(state));
      }),
    );
  });
});
