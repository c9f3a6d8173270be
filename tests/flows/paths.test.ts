import { describe, expect, it } from "vitest";
import { briefFromAnswers, topics } from "../../flows/index.ts";
import type { SiteFacts } from "../../src/interview/define.ts";
import { checkFlow, type Interview, runScript } from "../../src/interview/index.ts";
import { walkAll } from "../../src/interview/walk.ts";

const mild: SiteFacts = {
  coldestMonthC: 4,
  designColdC: -8,
  designHotC: 29,
  ghiDailyKWhPerM2ByMonth: [0.7, 1.4, 2.5, 3.9, 4.7, 5, 4.8, 4, 2.9, 1.6, 0.8, 0.6],
  absLatitudeDeg: 52,
};
const cold: SiteFacts = { ...mild, coldestMonthC: -12, designColdC: -35 };
const site = {
  label: "Somewhere",
  latitudeDeg: 52,
  longitudeDeg: 0,
  elevationM: 100,
  countryCode: "GB",
};

/** The real flow on a made-up place; what is computed does not matter here. */
const interviewAt = (facts: SiteFacts): Interview<null> => ({
  topics,
  tellings: [],
  siteFacts: () => facts,
  // Any answer but "none" stands for figures far above the map's.
  readSun: (text) => ({
    kind: "figures",
    figures:
      text === "none"
        ? null
        : {
            ghiDailyKWhPerM2ByMonth: Array(12).fill(5),
            meanTempCByMonth: null,
            dailyQuantilesByMonth: null,
            lag1ByMonth: null,
            hours: null,
            source: "a station",
          },
    says: null,
  }),
  readPlace: () => ({ kind: "sites", matches: [{ label: site.label, site }] }),
  readGround: () => ({ kind: "ground", ground: null, says: null }),
  designOf: () => null,
  findingsOf: () => [],
  optionNotes: () => ({}),
  charts: () => [],
  details: () => [],
  outlook: () => ({ lines: [], chart: null }),
});

/** Answers every question that is asked, by id or else with "unsure", until none is left. */
function asked(facts: SiteFacts, answers: Readonly<Record<string, string>>): readonly string[] {
  const typed: Record<string, string> = { ...answers };
  for (let round = 0; round < 100; round++) {
    const run = runScript(interviewAt(facts), { name: "x", currency: "GBP", units: "metric" }, typed);
    expect(run.refused).toEqual([]);
    if (run.missing.length === 0) return run.asked;
    for (const { id } of run.missing) typed[id] = "unsure";
  }
  throw new Error("the interview does not end");
}

const oneCameraOneRadio = { "place.where": "Somewhere", "view.cameras": "1", "link.carrier": "radio" };

describe("the number of questions for one camera and one radio", () => {
  it.each([
    ["a mild place with a clear line", mild, { "link.sight": "clear" }],
    ["a place with snow and frost, trees in the line", cold, { "link.sight": "trees" }],
    ["hours by the clock", mild, { "hours.when": "clock", "link.sight": "clear" }],
  ] as const)("is at most 35: %s", (_what, facts, more) => {
    const ids = asked(facts, { ...oneCameraOneRadio, ...more });
    expect(ids.length).toBeLessThanOrEqual(35);
    expect(ids.length).toBeGreaterThan(24);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("the flow", () => {
  it("has no rule that reads ahead or reads what is not there", () => {
    expect(checkFlow(topics)).toEqual([]);
  });

  it("ends, whichever option is taken at any one choice", () => {
    const choices = topics
      .flatMap((topic) => topic.steps)
      .flatMap((step) => (step.step === "ask" && step.question.kind === "choice" ? [step] : []));
    for (const step of choices)
      for (const option of step.question.kind === "choice" ? step.question.options : []) {
        const ids = asked(cold, { "place.where": "Somewhere", [step.id]: option.id });
        expect(ids.at(-1), `${step.id} = ${option.id}`).toMatch(/^money\./);
      }
  });

  it("reaches every question by some path", () => {
    const everything = {
      "place.where": "Somewhere",
      "view.cameras": "several",
      "view.more.1.kind": "turning",
      "view.more.2.kind": "none",
      "power.chemistry": "lifepo4",
      "loads.heater": "12 W",
      "loads.fan": "2 W",
      "loads.extra.1.kind": "lamp",
      "loads.extra.2.kind": "none",
      "mounting.overhead": "yes",
      "place.fine": "mine",
      "place.sun": "a station",
      "parts.owned.1.kind": "battery",
      "parts.owned.2.kind": "panel",
      "parts.owned.3.kind": "controller",
      "parts.owned.4.kind": "radio",
    };
    const variants = [
      { "hours.when": "clock", "autonomy.consequence": "days", "link.sight": "trees" },
      { "hours.when": "season", "autonomy.consequence": "darkHours", "mounting.support": "existingPole" },
      { "link.carrier": "cellular", "mounting.support": "wall" },
    ];
    const reached = new Set(
      variants
        .flatMap((variant) => asked({ ...cold, designHotC: 45 }, { ...everything, ...variant }))
        .map((id) => id.replace(/^(view\.more|loads\.extra|parts\.owned)\.\d+\./, "each.")),
    );
    const all = topics
      .flatMap((topic) => topic.steps)
      .flatMap((step) => (step.step === "ask" ? [step.id] : step.block.map((part) => part.id)));
    expect(all.filter((id) => !reached.has(id))).toEqual([]);
  });
});

describe("the brief made from answers", () => {
  const briefOf = (answers: Readonly<Record<string, string>>) => {
    const interview = interviewAt(cold);
    const { state } = runScript(interview, { name: "x", currency: "GBP", units: "metric" }, answers);
    const walked = walkAll(topics, state.answers, interview.siteFacts, "metric");
    return briefFromAnswers(topics, walked, { name: "x", currency: "GBP", units: "metric" });
  };

  it("is whole before anything has been answered, every value assumed and every topic open", () => {
    const brief = briefOf({});
    expect(brief.openTopics).toHaveLength(10);
    expect(brief.place.site).toMatchObject({ value: null, origin: "assumed", isAnswered: false });
    expect(brief.loads.devices.map((device) => device.kind)).toEqual(["camera", "radio"]);
  });

  it("takes the cautious end of a range, and keeps both ends and the origin", () => {
    const brief = briefOf({
      "place.where": "Somewhere",
      "place.shade": "1-2 fists",
      "view.distance": "20-30 ft",
    });
    expect(brief.place.horizon).toMatchObject({ value: [{ elevationDeg: 20 }], origin: "estimate" });
    expect(brief.view.scenes[0]!.distanceM.value).toBeCloseTo(30 * 0.3048, 9);
  });

  it("keeps an origin that was said", () => {
    const script = { "place.where": "Somewhere" } as Record<string, string>;
    for (const id of [
      "place.shade",
      "place.dirt",
      "place.snow",
      "view.purpose",
      "view.distance",
      "view.width",
    ])
      script[id] = "unsure";
    for (const id of ["view.cameras", "view.night", "view.smoothness", "view.sound"]) script[id] = "unsure";
    script["loads.camera"] = "4.2 W measured";
    expect(briefOf(script).loads.devices[0]!.dayW).toMatchObject({ value: 4.2, origin: "measured" });
  });

  it("lets a season run over the turn of the year", () => {
    const run = asked(cold, {
      "place.where": "x",
      "hours.when": "season",
      "hours.fromMonth": "nov",
      "hours.toMonth": "feb",
    });
    const script = Object.fromEntries(run.map((id) => [id, "unsure"]));
    const brief = briefOf({
      ...script,
      "place.where": "x",
      "hours.when": "season",
      "hours.fromMonth": "November",
      "hours.toMonth": "feb",
    });
    expect(brief.hours.runsInMonth.value.map(Number)).toEqual([1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1]);
  });
});

describe("overhead wires", () => {
  const mountingOf = (answers: Readonly<Record<string, string>>, units: "metric" | "us" = "metric") => {
    const about = { name: "x", currency: "GBP", units };
    const { state } = runScript(interviewAt(mild), about, answers);
    return briefFromAnswers(
      topics,
      walkAll(topics, state.answers, () => mild, units),
      about,
    ).mounting;
  };
  it.each([
    [{ "mounting.overhead": "no" }, "no", 12],
    [{ "mounting.overhead": "No: I have looked" }, "no", 12],
    [{ "mounting.overhead": "none within 25 m" }, "no", 25],
    [{ "mounting.overhead": "4" }, "no", 25],
    [{ "mounting.overhead": "yes", "mounting.wireDistance": "36 ft" }, "yes", 10.9728],
    [{ "mounting.overhead": "yes", "mounting.wireDistance": "unsure" }, "yes", 0],
    [{ "mounting.overhead": "unsure" }, "notLooked", 0],
  ] as const)("%o: looked out to a distance that the question names", (answers, line, freeM) => {
    const { overheadLine, freeGroundM } = mountingOf(answers);
    expect([overheadLine.value, freeGroundM.value]).toEqual([line, freeM]);
  });
  it.each([
    [{ "mounting.overhead": "none within 40 ft" }, 12],
    [{ "mounting.overhead": "None within 82 ft either: I have looked that far" }, 25],
    [{ "mounting.overhead": "none within 82 ft" }, 25],
    [{ "mounting.overhead": "yes", "mounting.wireDistance": "36" }, 10.9728],
  ] as const)("%o is heard where the question is asked in feet", (answers, freeM) => {
    expect(mountingOf(answers, "us").freeGroundM.value).toBeCloseTo(freeM, 6);
  });
});
