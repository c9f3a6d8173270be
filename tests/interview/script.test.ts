import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/interview/conversation.ts";
import { nearestOf } from "../../src/interview/nearest.ts";
import { runScript } from "../../src/interview/script.ts";
import { view } from "../../src/interview/session.ts";
import { smallInterview, started, straight, talk } from "./small-flow.ts";

const about = { name: "gate", currency: "EUR" };
const run = (typedById: Readonly<Record<string, string | Answer>>) =>
  runScript(smallInterview, about, typedById);
const full = {
  "hours.span": "6:00 to 18:00",
  "loads.camera": "5 W",
  "loads.night": "1",
  "loads.extra.1.kind": "1",
  "place.height": "4 m",
  "place.where": "hill",
};

test("a file in any order gives the answers and the end of a conversation", () => {
  const { state, asked, missing, refused, unused } = run(full);
  const chat = talk(started(), ...straight).state;
  expect(state.answers).toEqual(chat.answers);
  expect(view(smallInterview, state)).toEqual(view(smallInterview, chat));
  expect(asked).toEqual([
    "place.where",
    "place.height",
    "loads.camera",
    "loads.night",
    "loads.extra.1.kind",
    "hours.span",
  ]);
  expect({ missing, refused, unused }).toEqual({ missing: [], refused: [], unused: [] });
});

test("what is missing is listed with its question, and its stand-in counts", () => {
  const { state, missing, asked } = run({ "place.where": "hill", "loads.night": "  " });
  expect(missing.map(({ id }) => id)).toEqual([
    "place.height",
    "loads.camera",
    "loads.night",
    "loads.infrared",
    "loads.extra.1.kind",
    "hours.span",
  ]);
  expect(missing[0]).toEqual({ id: "place.height", ask: "How high is the mast?" });
  expect(asked).toHaveLength(7);
  expect(state.cursor).toBe("place.height");
  expect(Object.keys(state.answers)).toEqual(["place.where"]);
});

test("a question that a later answer calls for is asked too", () => {
  expect(run({ ...full, "place.where": "fell", "hours.snow": "3" }).asked).toContain("hours.snow");
});

test("blocks are answered by number; what the others do not call for is listed as unused", () => {
  const { state, unused } = run({
    ...full,
    "loads.extra.1.kind": "lamp",
    "loads.extra.1.power": "8 W",
    "loads.extra.1.count": "2",
    "loads.extra.2.kind": "none",
    "loads.extra.3.kind": "lamp",
    "loads.infrared": "3 W",
  });
  expect(state.cursor).toBeNull();
  expect(unused).toEqual(["loads.extra.3.kind", "loads.infrared"]);
});

test("records are taken as they are, not sure takes the stand-in, an unusual figure is meant", () => {
  const camera: Answer = {
    typed: "from last year's file",
    value: { kind: "quantity", low: 6, best: 7, high: 8, unit: "W" },
    origin: "measured",
  };
  const { state, refused } = run({
    ...full,
    "loads.camera": camera,
    "place.height": "40 ft",
    "hours.span": "not sure",
  });
  expect(refused).toEqual([]);
  expect(state.answers["loads.camera"]).toEqual(camera);
  expect(state.answers["place.height"]?.value).toMatchObject({ best: 12.192 });
  expect(state.answers["hours.span"]).toMatchObject({ typed: "unsure", origin: "assumed" });
});

describe("refused, with the id and a sentence", () => {
  const refusedOf = (typedById: Readonly<Record<string, string | Answer>>) => {
    const { refused, missing, state } = run({ ...full, ...typedById });
    for (const { id } of refused) expect(state.answers[id]).toBeUndefined();
    expect(missing).toEqual([]);
    return refused;
  };
  const record: Answer = { typed: "x", value: { kind: "choice", option: "none" }, origin: "estimate" };

  test.each<[string, string | Answer, string]>([
    ["loads.camera", "12 V", "12 V is a voltage. This asks for a power, for example 5 W."],
    [
      "place.where",
      "Newport",
      '"Newport" can be Newport, Wales, GB; Newport, Shropshire, GB. Write the one that is meant, or its latitude and longitude.',
    ],
    ["place.where", "Nowhere", 'I could not find "Nowhere".'],
    ["loads.camera", record, "This answer does not fit its question. Write it as it would be typed."],
    [
      "hours.span",
      "back",
      '"back" is a command, not an answer. Put it in quotation marks to answer with it.',
    ],
    ["loads.nigth", "1", 'There is no question "loads.nigth". The nearest is "loads.night".'],
    [
      "loads.extra.4.kind",
      "lamp",
      'There is no question "loads.extra.4.kind". The nearest is "loads.extra.1.kind".',
    ],
  ])("%s: %s", (id, entry, text) => {
    expect(refusedOf({ [id]: entry })).toEqual([{ id, text }]);
  });

  test("a very long id is not quoted whole", () => {
    const [refusal] = refusedOf({ [`loads.camera${"x".repeat(500)}`]: "1" });
    expect(refusal?.text.length).toBeLessThan(140);
  });
});

test("an option's id or words are never a command", () => {
  expect(run({ ...full, "loads.night": "stop" }).state.answers["loads.night"]).toEqual({
    typed: "stop",
    value: { kind: "choice", option: "stop" },
    origin: "estimate",
  });
});

test("the nearest word", () => {
  expect(nearestOf("hours.wintre", ["hours.span", "hours.winter", "power.winter"])).toBe("hours.winter");
  expect(nearestOf("HOURS.SPAN", ["hours.snow", "hours.span"])).toBe("hours.span");
  expect(nearestOf("x", [])).toBeNull();
});

test("a question in place of an answer is refused in words", () => {
  expect(run({ ...full, "loads.night": "why people" }).refused).toEqual([
    {
      id: "loads.night",
      text: '"why people" is a command, not an answer. Put it in quotation marks to answer with it.',
    },
  ]);
});
