import { describe, expect, it } from "vitest";
import { packHours } from "../../../src/core/weather/index.ts";
import type { Brief, TrustedSun } from "../../../src/design/brief.ts";
import { climateStage } from "../../../src/design/chain/climate.ts";
import { postWeather } from "../../../src/design/chain/reliability-weather.ts";
import { designOf, type World } from "../../../src/design/index.ts";
import { near } from "../../helpers/near.ts";
import { changed, given, syntheticWorld, typicalBrief } from "../fixtures.ts";

const map = climateStage(typicalBrief, syntheticWorld)!.ghiDailyKWhPerM2ByMonth;
const own = (share: number, trusted: TrustedSun = "lower"): Brief =>
  changed({
    place: {
      ownSun: given({
        ghiDailyKWhPerM2ByMonth: map.map((value) => share * value),
        meanTempCByMonth: null,
        dailyQuantilesByMonth: null,
        lag1ByMonth: null,
        hours: null,
        source: "a station",
      }),
      trustedSun: given(trusted),
    },
  });
const stage = (brief: Brief) => climateStage(brief, syntheticWorld)!;

describe("two sources of sun", () => {
  it("the lower counts, and the other stands beside it", () => {
    expect(stage(own(0.8)).sunSource).toContain("a station");
    expect(stage(own(0.8)).otherGhiDailyKWhPerM2ByMonth).toEqual(map);
    expect(stage(own(1.2)).sunSource).not.toContain("a station");
    expect(stage(own(1.2)).ghiDailyKWhPerM2ByMonth).toEqual(map);
  });

  it("the builder's word goes before that", () => {
    expect(stage(own(1.2, "own")).sunSource).toContain("a station");
    expect(stage(own(0.8, "map")).ghiDailyKWhPerM2ByMonth).toEqual(map);
  });

  it("with one source there is none beside it", () => {
    expect(stage(typicalBrief).otherGhiDailyKWhPerM2ByMonth).toBeNull();
  });

  it("less sun never asks for a smaller array", () => {
    const needW = (brief: Brief) => designOf(brief, syntheticWorld).array!.requiredW;
    expect(needW(own(0.8))).toBeGreaterThan(needW(typicalBrief));
    expect(needW(own(1.2))).toBeCloseTo(needW(typicalBrief), 6);
  });
});

describe("the coldest hour of a file", () => {
  const bitterC = stage(typicalBrief).designColdTempC - 12;
  const withColdest = (coldestC: number): Brief => {
    const tempC = new Float64Array(8760).fill(5);
    tempC[300] = coldestC;
    const brief = own(0.8);
    const value = {
      ...brief.place.ownSun.value!,
      meanTempCByMonth: stage(typicalBrief).meanTempCByMonth,
      hours: {
        latitudeDeg: 40,
        longitudeDeg: -105,
        utcOffsetH: -7,
        packed: packHours({ ghiWPerM2: new Float64Array(8760), dhiWPerM2: null, tempC }),
      },
    };
    return { ...brief, place: { ...brief.place, ownSun: { ...brief.place.ownSun, value } } };
  };

  it("counts where it is colder than the map's, and the record goes below it", () => {
    const cold = stage(withColdest(bitterC));
    near(cold.designColdTempC, bitterC, { within: 0.051 });
    expect(cold.recordColdTempC).toBeLessThan(bitterC);
    expect(stage(withColdest(4)).designColdTempC).toBe(stage(typicalBrief).designColdTempC);
  });
});

describe("how dull and bright days spread", () => {
  const shares = [...Array(8).fill(0.5), ...Array(8).fill(1.5)];
  const withDays = (brief: Brief): Brief => {
    const { ownSun } = brief.place;
    const value = {
      ...ownSun.value!,
      dailyQuantilesByMonth: Array(12).fill(shares),
      lag1ByMonth: Array(12).fill(0.8),
    };
    return { ...brief, place: { ...brief.place, ownSun: { ...ownSun, value } } };
  };
  const mapShares = stage(typicalBrief).dailyGhiQuantilesByMonth;

  it("goes with the source that counts", () => {
    expect(stage(withDays(own(0.8))).dailyGhiQuantilesByMonth).toEqual(Array(12).fill(shares));
    expect(stage(withDays(own(1.2))).dailyGhiQuantilesByMonth).toEqual(mapShares);
    expect(stage(withDays(own(0.8, "map"))).dailyGhiQuantilesByMonth).toEqual(mapShares);
    expect(stage(withDays(own(1.2, "own"))).dailyGhiQuantilesByMonth).toEqual(Array(12).fill(shares));
  });

  it("goes with how the days follow each other", () => {
    expect(stage(withDays(own(0.8))).lag1ByMonth).toEqual(Array(12).fill(0.8));
    expect(stage(withDays(own(1.2))).lag1ByMonth).toBeNull();
    expect(stage(own(0.8)).lag1ByMonth).toBeNull();
    expect(stage(typicalBrief).lag1ByMonth).toBeNull();
  });

  it("reaches the simulated years: days that follow each other do so there", () => {
    const brief = withDays(own(0.8));
    const climate = stage(brief);
    const { sun } = designOf(brief, syntheticWorld);
    const followed = (lag1ByMonth: readonly number[] | null): number => {
      const { outputRatio } = postWeather(
        brief,
        { climate: { ...climate, lag1ByMonth }, sun: sun!, isDirect: false, years: 30 },
        (_task, _given, work) => work(),
      );
      // Julys alone: within them the sun is the same from day to day.
      const julys = Array.from({ length: 10 }, (_, year) =>
        Array.from({ length: 31 }, (_, day) => {
          const from = year * 8760 + (181 + day) * 24;
          return outputRatio.slice(from, from + 24).reduce((total, ratio) => total + ratio, 0);
        }),
      );
      const all = julys.flat();
      const middle = all.reduce((total, value) => total + value, 0) / all.length;
      const products = julys.flatMap((days) =>
        days.slice(1).map((next, i) => (next - middle) * (days[i]! - middle)),
      );
      const variance = all.reduce((total, value) => total + (value - middle) ** 2, 0) / all.length;
      return products.reduce((total, value) => total + value, 0) / products.length / variance;
    };
    // These days are of two kinds only: normal scores that follow by 0.8 agree in sign so that the days follow by
    // 2 asin(0.8) / pi = 0.59 (the arcsine law of two signs).
    near(followed(climate.lag1ByMonth), 0.59, { within: 0.12 });
    expect(followed(null)).toBeLessThan(0.4);
  });

  it("stays the map's where one's own figures have no days", () => {
    expect(stage(own(0.8)).dailyGhiQuantilesByMonth).toEqual(mapShares);
  });
});

describe("where the map holds nothing", () => {
  const sea: World = { ...syntheticWorld, climateAt: () => ({ kind: "refused", why: "outside-grid" }) };

  it("the builder's own figures do", () => {
    expect(climateStage(typicalBrief, sea)).toBeNull();
    const design = designOf(own(0.9), sea);
    expect(design.climate?.ghiDailyKWhPerM2ByMonth).toEqual(map.map((value) => 0.9 * value));
    expect(design.array?.requiredW).toBeGreaterThan(0);
    expect(design.findings.map(({ id }) => id)).not.toContain("place.unknown");
  });
});
