/** The questions about a line between two places: its length or its other end, what stands along it, its ground. */
import { describe, expect, it } from "vitest";
import { checkFlow } from "../../src/interview/check-flow.ts";
import type { Effect, GroundReading, Interview, Line, State } from "../../src/interview/conversation.ts";
import { ground, obstacles, place, quantity, topic } from "../../src/interview/define.ts";
import { begin, update } from "../../src/interview/session.ts";
import { reviewRows } from "../../src/interview/shown.ts";
import { walkNow } from "../../src/interview/state.ts";
import { fits } from "../../src/interview/value.ts";

const wording = { hint: "Example: 400 m", why: "It matters.", how: "Look." };
const topics = [
  topic({ id: "place", version: 1, title: "Place", opening: "Where?" })
    .ask("where", place({ ...wording, label: "Place", ask: "Where?", unsure: { use: null, because: "x" } }))
    .end(),
  topic({ id: "link", version: 1, title: "Link", opening: "Now the link." })
    .ask(
      "distance",
      quantity({
        ...wording,
        label: "Distance",
        ask: "How far?",
        dimension: "length",
        unit: "m",
        alsoUnit: "ft",
        alsoSpot: true,
        possible: { min: 1, max: 40_000 },
        usual: { min: 5, max: 5000 },
        lean: "high",
        unsure: { use: 1000, because: "far" },
      }),
    )
    .ask(
      "between",
      obstacles({
        ...wording,
        along: "link.distance",
        label: "In between",
        ask: "What stands between?",
        unsure: { use: "trees 10 m high half way", because: "usual" },
      }),
    )
    .ask(
      "ground",
      ground({
        unit: "m",
        alsoUnit: "ft",
        ...wording,
        along: "link.distance",
        label: "Ground",
        ask: "And the ground?",
        unsure: { use: null, because: "level" },
      }),
    )
    .end(),
];
const lines: Line[] = [];
const level: GroundReading = { kind: "ground", ground: null, says: null };
const interview: Interview<null> = {
  topics,
  tellings: [],
  siteFacts: () => null,
  readPlace: (text) => {
    const [latitudeDeg, longitudeDeg] = text.split(",").map(Number);
    const label = text;
    const spot = text.includes(",") ? { latitudeDeg: latitudeDeg!, longitudeDeg: longitudeDeg! } : null;
    const site = {
      label,
      ...(spot ?? { latitudeDeg: 52, longitudeDeg: -3.5 }),
      elevationM: null,
      countryCode: "GB",
    };
    return { kind: "sites", matches: [{ label, site }] };
  },
  readSun: () => ({ kind: "figures", figures: null, says: null }),
  readGround: (text, line) => {
    lines.push(line);
    return text === "level" ? level : { kind: "refused", says: "Type level." };
  },
  designOf: () => null,
  findingsOf: () => [],
  optionNotes: () => ({}),
  charts: () => [],
  details: () => [],
  outlook: () => ({ lines: [], chart: null }),
};

function play(...typed: readonly string[]): { readonly state: State; readonly effects: readonly Effect[] } {
  let state = update(interview, begin({ name: "x", currency: "EUR" }), { type: "start" })[0];
  let effects: readonly Effect[] = [];
  for (const text of typed) [state, effects] = update(interview, state, { type: "line", text });
  return { state, effects };
}
const said = (effects: readonly Effect[], kind: "refusal" | "meaning") =>
  effects.flatMap((effect) => (effect.type === "say" && effect.said.kind === kind ? [effect.said.text] : []));

describe("the other end by its coordinates", () => {
  it("gives the length and the bearing", () => {
    const { state, effects } = play("52, -3.5", "52.01, -3.5");
    const value = state.answers["link.distance"]!.value;
    // 0.01 degrees of a meridian near 52 N: 1112.6 m on WGS 84 (111.26 km a degree, from memory of tables)
    expect(value.kind === "quantity" && value.best).toBeCloseTo(1112.6, 0);
    expect(value).toMatchObject({ spot: { latitudeDeg: 52.01, longitudeDeg: -3.5 } });
    expect(said(effects, "meaning")[0]).toMatch(
      /1110 m from the post, at a bearing of 0 deg from true north/,
    );
    expect(state.answers["link.distance"]!.origin).toBe("measured");
  });
  it("is shown as it was typed, not as a length that a changed place would belie", () => {
    const { state } = play("52, -3.5", "52.01, -3.5");
    expect(reviewRows(walkNow(interview, state))[1]!.answer).toBe("52.01, -3.5");
  });
  it("needs coordinates of the post too", () => {
    const { state, effects } = play("Builth", "52.01, -3.5");
    expect(said(effects, "refusal")[0]).toMatch(/only Builth is known. Type the distance, or change place/);
    expect(state.answers["link.distance"]).toBeUndefined();
  });
  it.each([
    ["52, -3.5", /the two ends are in one place/],
    ["53, -3.5", /must be between 1 and 40000 m|is above that/],
    ["-400 m", /must be between/],
    ["0", /must be between/],
    ["1,500", /two ways/],
    ["900 km", /must be between/],
  ])("is refused in one sentence where it cannot be: %s", (typed, why) => {
    const { state, effects } = play("52, -3.5", typed);
    expect(said(effects, "refusal")).toHaveLength(1);
    expect(said(effects, "refusal")[0]).toMatch(why);
    expect(state.answers["link.distance"]).toBeUndefined();
  });
  it("leaves plain lengths as they were", () => {
    const { state } = play("52, -3.5", "0.9 km");
    expect(state.answers["link.distance"]!.value).toMatchObject({ best: 900 });
    expect(state.answers["link.distance"]!.value).not.toHaveProperty("spot");
  });
});

describe("what stands along it", () => {
  it("is said back as it was understood, nearest first", () => {
    const { state, effects } = play(
      "x",
      "800 m",
      "row of trees 12 m high and 20 m deep half way, barn 7 m high at 300 m",
    );
    expect(said(effects, "meaning")[0]).toBe(
      "Understood: barn 7 m high, 300 m from the post; trees 12 m high, 20 m deep, 400 m from the post.",
    );
    expect(state.answers["link.between"]!.value).toEqual({
      kind: "obstacles",
      words: "row of trees 12 m high and 20 m deep half way, barn 7 m high at 300 m",
    });
  });
  it("may be nothing", () => {
    const { effects } = play("x", "800 m", "nothing");
    expect(said(effects, "meaning")[0]).toBe("Understood: nothing stands between.");
  });
  it.each([
    ["barn 7 m high at 900 m", /900 m lies beyond the far end, which is 800 m away/],
    ["barn -7 m high at 300 m", /not above the ground/],
    ["barn at 300 m", /How high/],
    ["barn 7 m high", /How far from the post/],
    ["barn 7 m high at -30 m", /behind the post/],
    ["7 m at 300 m", /What is it/],
  ])("is refused in one sentence where it cannot be: %s", (typed, why) => {
    const { state, effects } = play("x", "800 m", typed);
    expect(said(effects, "refusal")).toHaveLength(1);
    expect(said(effects, "refusal")[0]).toMatch(why);
    expect(state.answers["link.between"]).toBeUndefined();
  });
  it("has a stand-in in words", () => {
    const { effects } = play("x", "800 m", "not sure");
    expect(said(effects, "meaning")[0]).toContain("trees 10 m high half way");
  });
});

describe("its ground", () => {
  it("is read along the line as it is, between both ends where they are known", () => {
    play("52, -3.5", "52.01, -3.5", "nothing", "level");
    expect(lines.at(-1)!.lengthM).toBeCloseTo(1112.6, 0);
    expect(lines.at(-1)).toMatchObject({ near: { latitudeDeg: 52 }, far: { latitudeDeg: 52.01 } });
    play("x", "800 m", "nothing", "level");
    expect(lines.at(-1)).toEqual({ lengthM: 800, units: "metric", near: null, far: null });
  });
  it("kept in a file must run outwards from the post", () => {
    const question = walkNow(interview, play("x", "800 m", "nothing").state).at(-1)!.question;
    const kept = (...distancesM: readonly number[]) =>
      fits(question, {
        kind: "ground",
        ground: {
          profile: distancesM.map((distanceFromNearM) => ({ distanceFromNearM, groundM: 1 })),
          source: "x",
        },
      });
    expect([kept(0, 400, 800), kept(0, 800, 400), kept(10, 800), kept(0)]).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});

describe("a flow", () => {
  it("asks the length before what stands along it", () => {
    const astray = topic({ id: "link", version: 1, title: "Link", opening: "Now." })
      .ask(
        "between",
        obstacles({
          ...wording,
          along: "link.distance",
          label: "In between",
          ask: "What?",
          unsure: { use: "", because: "x" },
        }),
      )
      .end();
    expect(checkFlow(topics)).toEqual([]);
    expect(checkFlow([astray])[0]).toContain('about the length "link.distance"');
  });
});
