import { describe, expect, it } from "vitest";
import { type ComingSky, designOf, outlookOf, type PostOutlook } from "../../src/design/index.ts";
import { chartColumns } from "../../src/interview/conversation.ts";
import { asciiText } from "../../src/plain/index.ts";
import { outlookWords } from "../../src/report/index.ts";
import { changed, given, syntheticWorld } from "../design/fixtures.ts";
import { metricIn } from "../helpers/metric.ts";

/** An outlook made by hand, to be said. */
const outlook: PostOutlook = {
  kind: "outlook",
  month: 10,
  hourNow: 21,
  days: [
    { sky: "rain", ghiKWhPerM2: 0.41 },
    { sky: "rain", ghiKWhPerM2: 0.41 },
    { sky: "figure", ghiKWhPerM2: 2 },
  ],
  socFrac: 0.6,
  reading: null,
  tiers: [
    {
      name: "extras",
      devices: "Lamp",
      carriesPicture: false,
      hoursUntilShed: 0,
      hoursUntilBack: null,
      shedAtSocFrac: 0.3,
      backAtSocFrac: 0.62,
      isOffNow: true,
      isTakenAsOn: false,
    },
    {
      name: "picture",
      devices: "Camera, Radio",
      carriesPicture: true,
      hoursUntilShed: 6.9,
      hoursUntilBack: 38.2,
      shedAtSocFrac: 0.2,
      backAtSocFrac: 0.5,
      isOffNow: false,
      isTakenAsOn: false,
    },
  ],
  lowestSocFrac: 0.19,
  hoursUntilLowest: 8,
  recovery: { usualSocFrac: null, hoursUntilUsual: null, fullSocFrac: 0.95, hoursUntilFull: 0 },
  contradiction: null,
  socFracByHour: Array.from({ length: 52 }, (_, hour) => (hour === 8 ? 0.19 : 0.6 - hour / 200)),
  healthFrac: 0.9,
  bankTempC: -0.3,
  isTooColdToCharge: false,
};
const picture = (more: Partial<PostOutlook["tiers"][number]>): PostOutlook => ({
  ...outlook,
  tiers: [{ ...outlook.tiers[1]!, ...more }],
});
const said = (about: PostOutlook) => outlookWords(about, "metric").lines;

describe("what is said of the days to come", () => {
  it("each tier with its hours, the day and the clock", () => {
    // 21 h + 6.9 h is 4 o'clock of the next day; 21 h + 38 h is 11 o'clock of the third
    expect(said(outlook).slice(0, 2)).toEqual([
      "What is shed first (Lamp) is off now and does not come back within these days.",
      "The picture, with all that it needs, goes off in about 7 hours (day 2, towards 04:00) and is back in about 38 hours (day 3, towards 11:00).",
    ]);
  });
  it("in feet and pounds: degrees Fahrenheit", () => {
    // -0.3 C is 31.5 F, and 0 C is 32 F
    const text = outlookWords({ ...outlook, isTooColdToCharge: true }, "us").lines.join(" ");
    expect(text).toContain("At 32 °F this battery takes no charge");
    expect(text).toContain("holds it above 32 °F does");
    expect(metricIn(text)).toEqual([]);
    expect(metricIn(said(outlook).join(" "))).not.toEqual([]);
  });
  it("what stays on, and what goes at once", () => {
    expect(said(picture({ hoursUntilShed: null, hoursUntilBack: null }))[0]).toMatch(
      /stays on through these 3 days\.$/,
    );
    const today = { ...picture({ hoursUntilShed: null }), days: outlook.days.slice(0, 1) };
    expect(said(today)[0]).toMatch(/stays on for the rest of today\.$/);
    expect(said(picture({ hoursUntilShed: 0.3 }))[0]).toMatch(/goes off within the hour \(day 1/);
    expect(said(picture({ hoursUntilShed: 1.2 }))[0]).toMatch(/goes off in about an hour \(day 1/);
  });
  it("what a post without a camera is there for", () => {
    expect(said(picture({ carriesPicture: false, devices: "Radio" }))[0]).toMatch(
      /^What the post is there for \(Radio\) goes off in about 7 hours/,
    );
  });
  it("each kind of day once, and what else was taken", () => {
    expect(said(outlook).at(-1)).toMatch(
      /November, in kWh\/m2 a day on the level: rain 0\.4, given 2\.0; a battery at 0 °C with 90 %/,
    );
  });
  it("the lowest charge, the last one, and where the loads go off", () => {
    expect(outlookWords(outlook, "metric").chart.words).toBe(
      "60 % now, lowest in about 8 hours (day 2, towards 05:00) at 19 %, 35 % when day 3 ends. The last loads go off at 20 %, to spare the battery, and come back at 50 %.",
    );
    const high = { ...outlook, lowestSocFrac: 0.35, hoursUntilLowest: 0 };
    expect(outlookWords(high, "metric").chart.words).toMatch(
      /^60 % now, never lower, .* would go off at 20 % and come back at 50 %\.$/,
    );
    const off = { ...outlook, tiers: outlook.tiers.map((tier) => ({ ...tier, isOffNow: true })) };
    expect(outlookWords(off, "metric").chart.words).toMatch(
      /The last loads are off and come back at 50 %\.$/,
    );
  });
  it("a picture that is off now, and comes back before or after it is next wanted", () => {
    expect(said(picture({ isOffNow: true, hoursUntilShed: 3, hoursUntilBack: 5 }))[0]).toMatch(
      /is off now and is back in about 5 hours/,
    );
    expect(said(picture({ isOffNow: true, hoursUntilShed: null, hoursUntilBack: null }))[0]).toMatch(
      /is off now, and has power again before it next needs it\.$/,
    );
  });
  it("what was taken where the charge leaves it open, and how to say the other", () => {
    const taken = said(picture({ isTakenAsOn: true })).filter((line) => line.includes("taken to be on"));
    expect(taken).toEqual([
      'Between 20 % and 50 % of charge the picture, with all that it needs, may be on, or still off after a dull spell, and was taken to be on: if it is off, say "60 % and off", then the days.',
    ]);
    const [lamp, camera] = outlook.tiers;
    const both = {
      ...outlook,
      tiers: [
        { ...lamp!, isTakenAsOn: true },
        { ...camera!, isTakenAsOn: true },
      ],
    };
    expect(
      said(both)
        .join(" ")
        .match(/taken to be on/g),
    ).toHaveLength(1);
    const early = { ...outlook, tiers: [{ ...lamp!, isTakenAsOn: true }, camera!] };
    expect(said(early).join(" ")).toContain('"60 % and extras off"');
    expect(said(outlook).join(" ")).not.toContain("taken to be");
  });
  it("that what was said does not go with the charge", () => {
    const about = (contradiction: PostOutlook["contradiction"]) =>
      said({ ...outlook, contradiction }).join(" ");
    expect(about("off though charged")).toMatch(/At 60 % the controller should have the loads on: .*fuse/);
    expect(about("on though empty")).toMatch(/At 60 % the controller should have let the loads go/);
  });
  it("when the battery is well again", () => {
    const about = (recovery: Partial<PostOutlook["recovery"]>) =>
      said({ ...outlook, recovery: { ...outlook.recovery, ...recovery } }).find((line) =>
        line.startsWith("The battery"),
      );
    expect(about({ usualSocFrac: 0.82, hoursUntilUsual: 14, hoursUntilFull: 39 })).toBe(
      "The battery is back at its usual charge for November (82 %) in about 14 hours (day 2, towards 11:00) and as good as full (95 %) in about 39 hours (day 3, towards 12:00).",
    );
    expect(about({ usualSocFrac: 0.82, hoursUntilUsual: 14, hoursUntilFull: null })).toMatch(
      /towards 11:00\), but not as good as full \(95 %\) within these days\.$/,
    );
    expect(about({ usualSocFrac: 0.82, hoursUntilUsual: null, hoursUntilFull: null })).toBe(
      "The battery does not come back to its usual charge for November (82 %) within these days.",
    );
    expect(about({ hoursUntilFull: 39 })).toBe(
      "The battery is as good as full (95 %) in about 39 hours (day 3, towards 12:00).",
    );
    expect(about({ hoursUntilFull: null })).toBe(
      "The battery is not as good as full (95 %) within these days.",
    );
    expect(about({ hoursUntilFull: 0 })).toBeUndefined();
  });
  it("that a bank takes no charge in frost", () => {
    expect(said(outlook).join(" ")).not.toMatch(/takes no charge/);
    expect(said({ ...outlook, isTooColdToCharge: true }).join(" ")).toMatch(
      /At 0 °C this battery takes no charge/,
    );
  });
  it("how little a voltage says, and the low end of it", () => {
    const tiersAtLowest = [{ ...outlook.tiers[1]!, hoursUntilShed: 2, hoursUntilBack: 40 }];
    const reading = {
      restV: 13.2,
      chemistry: "lifepo4" as const,
      lowestSocFrac: 0.34,
      highestSocFrac: 0.68,
      isBlind: true,
      tiersAtLowest,
    };
    const lines = said({ ...outlook, reading });
    expect(lines[2]).toMatch(
      /^13\.2 V at rest is read as 60 % of charge, and can mean 34 % to 68 %\. .*next to nothing/,
    );
    expect(lines[3]).toMatch(
      /^If it is 34 %, the picture, with all that it needs, goes off in about 2 hours/,
    );
    const lead = said({ ...outlook, reading: { ...reading, chemistry: "agm", isBlind: false } });
    expect(lead[2]).toMatch(/best before sunrise\.$/);
  });
});

describe("the drawing", () => {
  const design = designOf(changed({ view: { night: given("none") } }), syntheticWorld);
  const drawn = (days: readonly ComingSky[], hourNow: number) => {
    const answer = outlookOf(design, { month: 11, hourNow, charge: { by: "share", socFrac: 0.7 }, days });
    if (answer.kind === "withheld") throw new Error(answer.because);
    return outlookWords(answer, "metric").chart.lines;
  };
  const rain = (days: number): readonly ComingSky[] => Array.from({ length: days }, () => ({ kind: "rain" }));

  it.each([1, 2, 3, 5, 10, 30])(
    "of %i days takes 46 columns at most, and is plain ASCII when asked",
    (days) => {
      for (const hourNow of [0, 13, 23])
        for (const line of drawn(rain(days), hourNow)) {
          expect(line.length).toBeLessThanOrEqual(chartColumns);
          expect(asciiText(line)).not.toMatch(/\?/);
        }
    },
  );
  it("has a mark for every midnight, and falls without sun", () => {
    const lines = drawn(rain(3), 14);
    // 14 h to the end of the third day: three midnights, the last at the end
    expect(lines.at(-2)!.match(/┴/g)).toHaveLength(3);
    const heights = Array.from(lines[4]!.slice(7), (sign) => sign === "█");
    expect(heights[0]).toBe(true);
    expect(
      drawn([...rain(12)], 14)[3]!
        .slice(7)
        .trimEnd().length,
    ).toBeLessThan(39);
  });
});
