/** The two questions about the sky: what stands round the panel, and the builder's own sun figures. */
import { describe, expect, it } from "vitest";
import type { Effect, Interview, State } from "../../src/interview/conversation.ts";
import { horizon, place, sun, topic } from "../../src/interview/define.ts";
import { runScript } from "../../src/interview/script.ts";
import { begin, update, view } from "../../src/interview/session.ts";

const wording = { hint: "Example: 10 deg", why: "It matters.", how: "Look." };
const topics = [
  topic({ id: "place", version: 1, title: "Place", opening: "Where?" })
    .ask("where", place({ ...wording, label: "Place", ask: "Where?", unsure: { use: null, because: "x" } }))
    .ask(
      "own",
      sun({ ...wording, label: "Own sun", ask: "Own figures?", unsure: { use: null, because: "the map" } }),
    )
    .ask(
      "shade",
      horizon({
        ...wording,
        label: "Shade",
        ask: "What stands there?",
        eyeHeightM: 2,
        possible: { min: 0, max: 80 },
        usual: { min: 0, max: 25 },
        unsure: { use: [{ azimuthDeg: 0, elevationDeg: 10 }], because: "one fist all round" },
      }),
    )
    .end(),
];
const site = { label: "Hill", latitudeDeg: 52, longitudeDeg: -3, elevationM: null, countryCode: "GB" };
const figures = {
  ghiDailyKWhPerM2ByMonth: Array(12).fill(2),
  meanTempCByMonth: null,
  dailyQuantilesByMonth: null,
  lag1ByMonth: null,
  hours: null,
  source: "a service",
};
const asked: { text: string; label: string | undefined; isAgreed: boolean }[] = [];
const interview: Interview<null> = {
  topics,
  tellings: [],
  siteFacts: () => null,
  readPlace: (text) => {
    const match = { label: "Hill", site };
    if (text === "reef") return { kind: "doubtful", match, says: "That lies at sea." };
    return { kind: "sites", matches: [match], ...(text === "odd hill" ? { says: "Is a sign lost?" } : {}) };
  },
  readSun: (text, at, isAgreed) => {
    asked.push({ text, label: at?.label, isAgreed });
    if (text === "none") return { kind: "figures", figures: null, says: null };
    if (text !== "fetch") return { kind: "refused", says: "Type none, or fetch." };
    return isAgreed
      ? { kind: "figures", figures, says: "Read." }
      : { kind: "consent", says: "Send the coordinates?" };
  },
  readGround: () => ({ kind: "ground", ground: null, says: null }),
  designOf: () => null,
  findingsOf: () => [],
  optionNotes: () => ({}),
  charts: () => [],
  details: () => [],
  outlook: () => ({ lines: [], chart: null }),
};

interface Played {
  readonly state: State;
  readonly effects: readonly Effect[];
}
function playIn(units: "metric" | "us", ...lines: readonly string[]): Played {
  let state = update(interview, begin({ name: "x", currency: "EUR", units }), { type: "start" })[0];
  let effects: readonly Effect[] = [];
  for (const text of lines) [state, effects] = update(interview, state, { type: "line", text });
  return { state, effects };
}
const play = (...lines: readonly string[]): Played => playIn("metric", ...lines);
const refusal = (effects: readonly Effect[]) =>
  effects.flatMap((effect) =>
    effect.type === "say" && effect.said.kind === "refusal" ? [effect.said.text] : [],
  );
const shade = (text: string) => play("hill", "none", text);
const pointsOf = (state: State) => {
  const value = state.answers["place.shade"]?.value;
  return value?.kind === "horizon" ? value.points : null;
};

describe("what stands round the panel", () => {
  it("is one height all round, or nothing", () => {
    expect(pointsOf(shade("12").state)).toEqual([{ azimuthDeg: 0, elevationDeg: 12 }]);
    expect(pointsOf(shade("0").state)).toEqual([]);
    expect(pointsOf(shade("nothing").state)).toEqual([]);
  });

  it("in fists takes the upper end, for a fist is a rough measure (a fifth more, common practice)", () => {
    expect(pointsOf(shade("2 fists").state)).toEqual([{ azimuthDeg: 0, elevationDeg: 24 }]);
  });

  it("in words has a direction", () => {
    const points = pointsOf(shade("hill to the south, 15 deg high").state)!;
    expect(Math.max(...points.map((point) => point.elevationDeg))).toBe(15);
    // An eighth of the compass about south is 157.5 to 202.5.
    const inTheSouth = points.filter((point) => point.elevationDeg === 15).map((point) => point.azimuthDeg);
    expect(inTheSouth).toEqual([157.5, 202.5]);
  });

  it("in height and distance is seen from the panel, and that is said", () => {
    const heard = ({ effects }: { readonly effects: readonly Effect[] }) => JSON.stringify(effects);
    const hedge = shade("hedge to the south, 2 m high, 6 m away");
    expect(pointsOf(hedge.state)).toEqual([]);
    expect(heard(hedge)).toContain("Seen from the panel, 2 m above the ground: 0 deg at most.");
    const wall = shade("wall to the south, 5 m high, 9 m away");
    // atan((5 - 2) / 9) = 18.43 deg; from the ground it would be 29.05
    expect(Math.max(...pointsOf(wall.state)!.map((point) => point.elevationDeg))).toBeCloseTo(18.43, 1);
    expect(heard(shade("hill to the south, 15 deg high"))).not.toContain("Seen from the panel");
    // 2 m are 6.56 ft
    const inFeet = playIn("us", "hill", "none", "hedge to the south, 6 ft high, 20 ft away");
    expect(heard(inFeet)).toContain("Seen from the panel, 6 ft 6 in above the ground: 0 deg at most.");
  });

  it("in pairs is taken as typed", () => {
    expect(pointsOf(shade("120:5, 180:15").state)).toEqual([
      { azimuthDeg: 120, elevationDeg: 5 },
      { azimuthDeg: 180, elevationDeg: 15 },
    ]);
  });

  it("of the wrong kind or size is refused in one sentence, and nothing is lost", () => {
    const volts = shade("12 V");
    expect(refusal(volts.effects)[0]).toMatch(/^12 V is a voltage\. This asks for an angle/);
    expect(volts.state.cursor).toBe("place.shade");
    expect(refusal(shade("90").effects)[0]).toMatch(/between 0 and 80 deg/);
    expect(refusal(shade("hill to the south").effects)[0]).toMatch(/[.?]$/);
  });

  it("far higher than usual is asked about once more", () => {
    const high = shade("60");
    expect(view(interview, high.state).ask).toMatch(/^60 deg is more than usual here/);
    expect(pointsOf(update(interview, high.state, { type: "line", text: "yes" })[0])).toEqual([
      { azimuthDeg: 0, elevationDeg: 60 },
    ]);
  });

  it("that nobody knows is the stand-in all round", () => {
    const { state } = shade("not sure");
    expect(state.answers["place.shade"]).toMatchObject({
      origin: "assumed",
      value: { points: [{ azimuthDeg: 0, elevationDeg: 10 }] },
    });
  });
});

describe("sun figures of one's own", () => {
  it("are read for the place that was answered, and nothing leaves the machine without a yes", () => {
    asked.length = 0;
    const waiting = play("hill", "fetch").state;
    expect(view(interview, waiting).ask).toBe("Send the coordinates?");
    expect(waiting.answers["place.own"]).toBeUndefined();
    expect(asked.at(-1)).toEqual({ text: "fetch", label: "Hill", isAgreed: false });

    const [refused] = update(interview, waiting, { type: "line", text: "no" });
    expect(view(interview, refused).ask).toBe("Own figures?");
    expect(asked.every(({ isAgreed }) => !isAgreed)).toBe(true);

    const [agreed] = update(interview, waiting, { type: "line", text: "yes" });
    expect(agreed.answers["place.own"]).toMatchObject({ origin: "datasheet", value: { figures } });
  });

  it("asked for by an odd word keep waiting for yes or no", () => {
    const waiting = play("hill", "fetch").state;
    const [still, effects] = update(interview, waiting, { type: "line", text: "perhaps" });
    expect(refusal(effects)).toEqual(["Type yes or no."]);
    expect(still.mode.kind).toBe("consenting");
  });

  it("refused say why, and the question stays", () => {
    const { state, effects } = play("hill", "my cousin's");
    expect(refusal(effects)).toEqual(["Type none, or fetch."]);
    expect(state.cursor).toBe("place.own");
  });
});

describe("a place that is more likely a slip", () => {
  const waiting = () => play("reef").state;

  it("is kept after a yes, or when it is typed again", () => {
    expect(waiting().answers).toEqual({});
    expect(view(interview, waiting()).ask).toBe("That lies at sea. Keep reef?");
    expect(view(interview, waiting()).hint).toBe(
      "Type yes to keep it, no to answer again, or the right place.",
    );
    for (const text of ["yes", "y", "reef", "Keep it"]) {
      const [kept] = update(interview, waiting(), { type: "line", text });
      expect(kept.answers["place.where"], text).toMatchObject({ typed: "reef", value: { site } });
      expect(kept.cursor, text).toBe("place.own");
    }
  });

  it("is asked again after a no, and another place takes its stead", () => {
    const [again] = update(interview, waiting(), { type: "line", text: "no" });
    expect(again.answers).toEqual({});
    expect(view(interview, again).ask).toBe("Where?");
    const [other] = update(interview, waiting(), { type: "line", text: "hill" });
    expect(other.answers["place.where"]?.typed).toBe("hill");
    const [still, effects] = update(interview, waiting(), { type: "line", text: " " });
    expect(refusal(effects)).toEqual(["Type yes to keep it, no to answer again, or the right place."]);
    expect(still.mode.kind).toBe("confirming");
  });

  it("in a file is kept where the file brings sun figures, and refused with that otherwise", () => {
    const about = { name: "x", currency: "EUR" };
    const answerOf = (more: Readonly<Record<string, string>>) =>
      runScript(interview, about, { "place.where": "reef", ...more });
    expect(answerOf({ "place.own": "figures.epw" }).state.answers["place.where"]?.typed).toBe("reef");
    for (const more of [{}, { "place.own": "none" }, { "place.own": " " }])
      expect(answerOf(more).refused).toEqual([
        {
          id: "place.where",
          text: "That lies at sea. Keep reef? A file that keeps it must bring sun figures too.",
        },
      ]);
    const kept = { typed: "valley.epw", value: { kind: "sun", figures }, origin: "datasheet" } as const;
    const recorded = runScript(interview, about, { "place.where": "reef", "place.own": kept });
    expect(Object.keys(recorded.state.answers)).toEqual(["place.where", "place.own"]);
  });
});

it("what is doubtful about a place that is taken is said beside it", () => {
  const said = play("odd hill").effects.flatMap((effect) => (effect.type === "say" ? [effect.said] : []));
  expect(said).toContainEqual({ kind: "meaning", text: "Is a sign lost?" });
});
