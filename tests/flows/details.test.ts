/** What "more" tells, held against what must hold of it whatever the weather, and against the handbook's rules. */
import { describe, expect, it } from "vitest";
import { details, tellings } from "../../flows/index.ts";
import { type Design, type Device, designOf } from "../../src/design/index.ts";
import {
  at,
  camera,
  changed,
  given,
  radio,
  simulatedWorld,
  sites,
  syntheticWorld,
} from "../design/fixtures.ts";
import { near, nearRatio } from "../helpers/near.ts";

const lamp: Device = { ...radio, name: "Lamp", kind: "lamp", dayW: given(6), feed: "dc", priority: 1 };
const brief = at(
  sites.colorado,
  changed({
    loads: { devices: [camera, radio, lamp] },
    autonomy: { consequence: given("nuisance"), visitDays: given(0) },
    power: { isTiltChanged: given(true) },
  }),
);
const design = designOf(brief, simulatedWorld);
const textOf = (topicId: string | null, of: Design = design) =>
  details(topicId, of)
    .flatMap(({ title, lines }) => [title, ...lines])
    .join("\n");
const numbersAfter = (text: string, start: string): readonly number[] => {
  const line = text.split("\n").find((each) => each.startsWith(start))!;
  return (line.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
};

describe("more", () => {
  it("tells of the years at autonomy, of the sums at power, of the panels at the place, of all at the end", () => {
    const titles = (topicId: string | null) => details(topicId, design).map(({ title }) => title);
    const [stand, years, sums] = [
      "How the panels stand",
      "Over 30 weather years",
      "The handbook's sums, in short",
    ];
    expect(titles("place")).toEqual([stand]);
    expect(titles("autonomy")).toEqual([years]);
    expect(titles("power")).toEqual([stand, years, sums]);
    expect(titles(null)).toEqual([stand, years, sums]);
    expect(titles("view")).toEqual([]);
  });
  it("has nothing to tell of weather that was not run, nor of a post without a place", () => {
    const titles = (of: Design) => details(null, of).map(({ title }) => title);
    expect(titles(designOf(brief, syntheticWorld))).not.toContain("Over 30 weather years");
    expect(titles(designOf(at(null), simulatedWorld))).toEqual([]);
  });
  it("has dark hours by month that add up to the year's, and the worst year in ten above the mean", () => {
    const text = textOf("autonomy");
    const [mean, worst, duller, careful, allowed] = numbersAfter(text, "Dark hours a year");
    const byMonth = numbersAfter(text, "Dark hours by month");
    expect(mean).toBeGreaterThan(0);
    // two digits each
    nearRatio(
      byMonth.reduce((a, b) => a + b),
      mean!,
      { withinFrac: 0.06 },
    );
    expect(worst).toBeGreaterThan(mean!);
    expect(duller).toBeGreaterThanOrEqual(mean!);
    // a nuisance may be dark 5 % of the year
    expect(allowed).toBe(438);
    expect(careful).toBeLessThanOrEqual(allowed!);
  });
  it("has the usual and the lowest charge of twelve months", () => {
    const charge = numbersAfter(textOf("autonomy"), "Charge by month");
    expect(charge).toHaveLength(24);
    for (let i = 0; i < 24; i += 2) expect(charge[i]).toBeGreaterThanOrEqual(charge[i + 1]!);
  });
  it("has the loss of load of each group, the lamp's the larger", () => {
    const line = textOf("autonomy")
      .split("\n")
      .find((each) => each.startsWith("Not given"))!;
    const [first, second] = line.split(";").map((part) => Number.parseFloat(part.match(/([\d.]+) %/)![1]!));
    expect(line.split(";")[0]).toContain("Lamp");
    expect(line.split(";")[1]).toContain("Camera");
    expect(first).toBeGreaterThan(second!);
  });
  it("has what the rule of the latitude loses, or that it loses nothing, and what a second tilt brings", () => {
    const sun = design.sun!;
    const text = textOf("place");
    expect(text).toContain(`The rule of taking the latitude, 40 degrees,`);
    expect(text).toMatch(
      sun.latitudeLossFrac < 0.005 ? /would do as well here/ : /would lose [\d.]+ % in the worst/,
    );
    expect(text).toContain(`A second tilt of ${Math.round(sun.summerTiltDeg!)} degrees`);
    expect(
      textOf("place", designOf(changed({ power: { isTiltChanged: given(false) } }, brief), syntheticWorld)),
    ).not.toContain("second tilt");
  });
  it("has sums that follow the rules of IEEE 1013 and 1562 from their own figures", () => {
    const text = textOf("power");
    const [
      ,
      dailyWh,
      bankV,
      dailyAh,
      days,
      unadjustedAh,
      depth,
      forDepthAh,
      ,
      dailyDepth,
      forDailyAh,
      forAgeAh,
    ] = numbersAfter(text, "Battery (IEEE 1013)");
    nearRatio(dailyAh!, dailyWh! / bankV!, { withinFrac: 0.006 });
    nearRatio(unadjustedAh!, dailyAh! * days!, { withinFrac: 0.012 });
    nearRatio(forDepthAh!, unadjustedAh! / depth!, { withinFrac: 0.012 });
    nearRatio(forDailyAh!, dailyAh! / dailyDepth!, { withinFrac: 0.012 });
    nearRatio(forAgeAh!, unadjustedAh! / 0.8, { withinFrac: 0.012 });
    const cold = text.split("\n").find((line) => /^[\d.]+ Ah \//.test(line))!;
    const [largestAh, coldFrac, , adjustedAh, margin, requiredAh] = (
      cold.match(/-?\d+(?:\.\d+)?/g) ?? []
    ).map(Number);
    near(largestAh!, Math.max(forDepthAh!, forDailyAh!, forAgeAh!), { within: 1e-9 });
    nearRatio(adjustedAh!, largestAh! / coldFrac!, { withinFrac: 0.012 });
    nearRatio(requiredAh!, adjustedAh! * margin!, { withinFrac: 0.012 });
    const [, wh, ratio, sunHours, arrives, watts] = numbersAfter(text, "Panels (IEEE 1562)");
    nearRatio(watts!, (wh! * ratio!) / (sunHours! * arrives!), { withinFrac: 0.006 });
  });
});

describe("the dark hours that are told", () => {
  const say = (of: Design) => tellings.find(({ id }) => id === "dark")!.say(of, null);
  it("say which of the two figures is held to what was asked", () => {
    expect(say(design)).toContain("The second figure counts: a nuisance allows at most 438.");
    const unsaid = { ...given("nuisance" as const), isAnswered: false };
    expect(say(designOf(changed({ autonomy: { consequence: unsaid } }, brief), simulatedWorld))).toContain(
      "The second figure counts: at most 438 are taken until you say.",
    );
    const inDays = changed({ autonomy: { consequence: given("days") } }, brief);
    expect(say(designOf(inDays, simulatedWorld))).not.toContain("second figure");
  });
});
