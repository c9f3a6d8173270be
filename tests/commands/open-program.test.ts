import { describe, expect, test } from "vitest";
import { openProgram } from "../../src/commands/open-program.ts";
import { type BriefFile, type FileAnswer, readBriefText } from "../../src/store/index.ts";
import { metricIn } from "../helpers/metric.ts";

const program = openProgram();
const fileWith = (
  answers: Readonly<Record<string, FileAnswer>>,
  more: Partial<BriefFile> = {},
): BriefFile => ({
  schemaVersion: 1,
  name: "hill gate",
  currency: "EUR",
  units: "metric",
  topicVersions: { ...program.topicVersions },
  answers: { ...answers },
  ...more,
});
const byHand = {
  "place.where": "52.30, -3.51",
  "view.distance": "30 ft",
  "hours.when": "Between two times of day",
  "hours.clock": "6:30 to 18:00",
};

describe("a brief from a file", () => {
  test("what was read is the same when it is saved and read again", () => {
    const first = program.open(fileWith(byHand));
    expect(first.refused).toEqual([]);
    expect(Object.keys(first.state.answers).sort()).toEqual(Object.keys(byHand).sort());
    const again = program.open(fileWith(first.state.answers));
    expect(again.state).toEqual(first.state);
    expect(again.missing).toEqual(first.missing);
    expect(program.designOf(again.state)).toEqual(program.designOf(first.state));
  });

  test("answers that the others do not call for now are kept, and count again when they do", () => {
    const { answers } = program.open(fileWith(byHand)).state;
    const always = program.open(fileWith({ ...answers, "hours.when": "Always, day and night" }));
    expect(always.state.answers["hours.clock"]).toEqual(answers["hours.clock"]);
    const back = program.open(
      fileWith({ ...always.state.answers, "hours.when": "Between two times of day" }),
    );
    expect(back.missing.map(({ id }) => id)).not.toContain("hours.clock");
    const typedOnly = program.open(fileWith({ ...byHand, "hours.when": "Always, day and night" }));
    expect(typedOnly.untouched).toEqual({ "hours.clock": "6:30 to 18:00" });
  });

  test("of the time when one thing in between had three questions is read in words", () => {
    const metres = (value: number) => ({
      typed: `${value} m`,
      value: { kind: "quantity" as const, low: value, best: value, high: value, unit: "m" },
      origin: "estimate" as const,
    });
    const old = {
      ...byHand,
      "link.carrier": "radio",
      "link.distance": metres(450),
      "link.sight": "trees",
      "link.obstacleTop": metres(6),
      "link.obstacleDepth": metres(10),
    };
    const opened = program.open(fileWith(old, { topicVersions: { ...program.topicVersions, link: 1 } }));
    expect(opened.refused).toEqual([]);
    expect(opened.untouched).toEqual({});
    expect(opened.state.answers["link.between"]).toMatchObject({
      typed: "trees 6 m high and 10 m deep half way",
    });
    expect(program.designOf(opened.state).link?.path?.obstacles).toEqual([
      { noun: "trees", kind: "trees", heightM: 6, fromNearM: 225, depthM: 10 },
    ]);
  });

  test("coordinates of the far end, words and ground are the same when saved and read again", () => {
    const first = program.open(
      fileWith({
        ...byHand,
        "place.fine": "mine",
        "link.carrier": "radio",
        "link.distance": "52.305, -3.50",
        "link.sight": "buildings",
        "link.between": "barn 7 m high at 300 m",
        "link.ground": "0 100, 400 103, 880.3 101",
      }),
    );
    expect(first.refused).toEqual([]);
    const saved = JSON.parse(JSON.stringify(fileWith(first.state.answers)));
    const reread = readBriefText(JSON.stringify(saved));
    if (reread.kind !== "brief") throw new Error(JSON.stringify(reread));
    const again = program.open(reread.file);
    expect(again.state).toEqual(first.state);
    const { path } = program.designOf(again.state).link!;
    expect(path!.bearingDeg).toBeCloseTo(50.8, 1);
    expect(path!.groundSource).toBe("typed by the builder");
    expect(path!.unread).toBeNull();
  });

  test("a bare number is feet and pounds where the brief says so, and saved so", () => {
    const bare = { "view.distance": "30", "power.lift": "40", "loads.camera": "5" };
    const us = program.open(fileWith(bare, { units: "us" }));
    expect(us.refused).toEqual([]);
    const { answers } = us.state;
    expect(us.state.units).toBe("us");
    expect(answers["view.distance"]?.value).toMatchObject({ best: 30, unit: "ft" });
    expect(answers["power.lift"]?.value).toMatchObject({ best: 40, unit: "lb" });
    // A question that knows one unit only is asked in that.
    expect(answers["loads.camera"]?.value).toMatchObject({ best: 5, unit: "W" });
    const again = program.open(fileWith(answers, { units: "us" }));
    expect(again.state).toEqual(us.state);
    // 1 ft = 0.3048 m and 1 lb = 0.45359237 kg exactly (NIST SP 811, appendix B.8).
    const said = program.open(
      fileWith({ ...bare, "view.distance": "9.144 m", "power.lift": "18.1436948 kg" }),
    );
    const worked = (of: typeof us) => {
      const { units, ...brief } = program.designOf(of.state).brief;
      // what goes to feet and back is the same to eleven digits
      return JSON.parse(
        JSON.stringify(brief, (_key, value) =>
          typeof value === "number" ? Number(value.toPrecision(10)) : value,
        ),
      );
    };
    expect(worked(us)).toEqual(worked(said));
    expect(worked(us)).not.toEqual(worked(program.open(fileWith(bare))));
    const told = (of: typeof us) => JSON.stringify(program.shortFacts(program.designOf(of.state)));
    expect(told(us)).toMatch(/\d points\/ft.*\d ft"/);
    expect(metricIn(told(us))).toEqual([]);
    expect(metricIn(told(said))).not.toEqual([]);
  });

  test("what cannot be read is named with the reason, and stays as it is", () => {
    const { refused, untouched, missing } = program.open(
      fileWith({ ...byHand, "view.distance": "12 V", "view.hue": "red" }),
    );
    expect(refused.map(({ id }) => id).sort()).toEqual(["view.distance", "view.hue"]);
    expect(refused.find(({ id }) => id === "view.distance")?.says).toContain("12 V is a voltage");
    expect(untouched).toEqual({ "view.distance": "12 V", "view.hue": "red" });
    expect(missing.map(({ id }) => id)).not.toContain("view.distance");
  });

  test("an answer to a topic that has changed since is read anew from what was typed", () => {
    const stored: FileAnswer = {
      typed: "30 ft",
      value: { kind: "quantity", low: 99, best: 99, high: 99, unit: "m" },
      origin: "estimate",
    };
    const distanceIn = (viewVersion: number): unknown => {
      const topicVersions = { ...program.topicVersions, view: viewVersion };
      return program.open(fileWith({ ...byHand, "view.distance": stored }, { topicVersions })).state.answers[
        "view.distance"
      ]?.value;
    };
    expect(distanceIn(program.topicVersions.view!)).toMatchObject({ best: 99 });
    // 1 ft = 0.3048 m exactly (international foot, NIST SP 811 appendix B.8).
    expect(distanceIn(0)).toMatchObject({ best: 9.144, unit: "m" });
  });

  test("a saved answer that does not fit its question counts as not understood", () => {
    const misfit: FileAnswer = {
      typed: "x",
      value: { kind: "choice", option: "nonsense" },
      origin: "estimate",
    };
    expect(program.open(fileWith({ "view.distance": misfit })).refused.map(({ id }) => id)).toEqual([
      "view.distance",
    ]);
  });
});

describe("what is said of a design", () => {
  test("the same answers give the same design, worked once", () => {
    const { state } = program.open(fileWith(byHand));
    expect(program.designOf(state)).toBe(program.designOf({ ...state }));
    const other = program.open(fileWith({ ...byHand, "view.distance": "40 ft" })).state;
    expect(program.designOf(other)).not.toBe(program.designOf(state));
  });

  test("every sheet says whose post it is and holds no broken figure", () => {
    const { state } = program.open(fileWith(byHand));
    for (const format of ["text", "md", "html", "csv", "json"] as const) {
      const sheet = program.sheet(state, format);
      if (format !== "csv") expect(sheet, format).toContain("hill gate");
      expect(sheet, format).not.toMatch(/undefined|\bNaN\b|\[object|Infinity/);
    }
  });

  test("a brief without a single answer is sized too", () => {
    const { state, missing } = program.open(fileWith({}));
    expect(missing.length).toBeGreaterThan(20);
    expect(program.shortFacts(program.designOf(state)).length).toBeGreaterThan(0);
    expect(program.sheet(state, "text")).not.toMatch(/undefined|\bNaN\b|Infinity/);
  });

  test("a drawing stays within its columns", () => {
    const { state } = program.open(fileWith(byHand));
    for (const columns of [30, 36, 48]) {
      for (const line of program.drawPost(state, { columns, isAscii: true }) ?? []) {
        expect(line.length).toBeLessThanOrEqual(columns);
      }
    }
  });
});

test("what the handbook and the weather years are is said where the words first come up, and only there", () => {
  let state = program.open(fileWith({})).state;
  const said: string[] = [];
  for (const line of ["52.30, -3.51", "you", "two fists", "washed by rain"]) {
    const [after, effects] = program.update(state, { type: "line", text: line });
    state = after;
    for (const effect of effects)
      if (effect.type === "say" && effect.said.kind === "meaning") said.push(effect.said.text);
  }
  const naming = said.filter((text) => /handbook|weather years/.test(text));
  expect(naming.length).toBeGreaterThan(1);
  expect(naming[0]).toMatch(
    /the handbook's, the trade's sums by hand .* weather years of your place, gone through/,
  );
  expect(naming.slice(1).join("")).not.toContain("sums by hand");
});
