import type { Effect, Event, Said, State, View } from "../../src/interview/index.ts";
import type { Dialogue } from "../../src/plain/index.ts";

/**
 * A three-question conversation without an engine, for tests of the faces alone: it takes any text, refuses "bad",
 * knows why, back, crash, lists and quit, and says one thing of every kind along the way.
 */
const questions = [
  {
    id: "place.name",
    ask: "What is the nearest town?",
    hint: "As on a map. Example: Tromsø",
    prompt: "Place",
    options: [],
  },
  {
    id: "view.kind",
    ask: "Is the camera fixed or does it turn?",
    hint: "A fixed one looks one way.",
    prompt: "Number",
    options: ["fixed", "turning"],
  },
  {
    id: "link.distance",
    ask: "How far is the other end?",
    hint: "Example: 1.2 km",
    prompt: "Distance (m)",
    options: [],
  },
] as const;

const say = (said: Said): Effect => ({ type: "say", said });

export function tinyState(name = "hill-gate"): State {
  return {
    name,
    currency: "EUR",
    units: "metric",
    answers: {},
    cursor: questions[0].id,
    returnTo: null,
    mode: { kind: "asking" },
    opened: [],
    closed: [],
    drawn: {},
    past: [],
  };
}

function update(state: State, event: Event): readonly [State, readonly Effect[]] {
  const index = questions.findIndex(({ id }) => id === state.cursor);
  switch (event.type) {
    case "start":
      return [
        state,
        [say({ kind: "topicOpened", title: "Place", opening: "Where the post stands.", number: 1, of: 3 })],
      ];
    case "end":
      return [state, [{ type: "save" }, { type: "leave", code: state.cursor === null ? 0 : 3 }]];
    case "interrupt":
      return [state, [{ type: "save" }, { type: "leave", code: 130 }]];
    case "record":
      return [state, []];
    case "line":
      break;
  }
  const text = event.text.trim();
  if (text === "crash") throw new Error("planted");
  if (text === "quit") return [state, [{ type: "save" }, { type: "leave", code: 0 }]];
  if (text === "lists") return [state, [{ type: "lists" }]];
  if (text === "bad" || text === "")
    return [state, [say({ kind: "refusal", text: "12 V is a voltage. This asks for a distance." })]];
  if (text === "why")
    return [state, [say({ kind: "aside", title: "Why we ask", lines: ["The place sets the sun."] })]];
  if (text === "back") return [{ ...state, cursor: questions[Math.max(0, index - 1)]!.id }, []];
  const question = questions[index];
  if (question === undefined) return [state, [say({ kind: "refusal", text: "Everything is answered." })]];
  const next: State = {
    ...state,
    cursor: questions[index + 1]?.id ?? null,
    answers: {
      ...state.answers,
      [question.id]: { typed: text, value: { kind: "choice", option: text }, origin: "estimate" },
    },
  };
  const effects: Effect[] = [
    { type: "save" },
    say({ kind: "answered", ask: question.ask, typed: text, heard: index === 2 ? `${text} = 1200 m` : null }),
    say({ kind: "meaning", text: `Noted ${text} as answer ${index + 1}.` }),
  ];
  if (next.cursor === null) {
    effects.push(
      say({
        kind: "finding",
        isGone: false,
        finding: {
          id: "mast.overhead",
          severity: "stop",
          says: "An overhead line is 4 m from the mast.",
          change: "Move the post.",
          numbers: { distanceM: 4 },
          topics: [],
        },
      }),
      say({ kind: "topicClosed", title: "Place", rows: [{ label: "Battery", value: "200 Ah at 12 V" }] }),
    );
  }
  return [next, effects];
}

function view(state: State): View {
  const index = questions.findIndex(({ id }) => id === state.cursor);
  const question = questions[index];
  const commands = "why   back   unsure   lists   help   quit";
  if (question === undefined) {
    return {
      isFinished: true,
      position: "",
      ask: "Everything is answered.",
      hint: "Type lists, review or quit.",
      options: [],
      prompt: "What now",
      keeps: null,
      suggests: null,
      commands,
    };
  }
  return {
    isFinished: false,
    position: `Place, question ${index + 1} of 3`,
    ask: question.ask,
    hint: question.hint,
    options: question.options.map((label, at) => ({ number: at + 1, label })),
    prompt: question.prompt,
    keeps: state.answers[question.id]?.typed ?? null,
    suggests: index === 0 ? "places" : null,
    commands,
  };
}

/** The tiny conversation; `carried` collects the types of the effects that the face handed over. */
export function tinyDialogue(carried: string[] = []): Dialogue {
  return {
    update,
    view,
    carryOut: (effect) => {
      carried.push(effect.type);
      return effect.type === "lists"
        ? [{ kind: "aside", title: "Lists", lines: ["Written to hill-gate.html"] }]
        : [];
    },
  };
}
