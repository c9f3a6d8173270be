import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean, RangeFault, sum } from "../../../src/core/numerics/index.ts";
import { extraterrestrialDailyKWhPerM2, spencerDeclinationDeg } from "../../../src/core/sun/index.ts";
import {
  usualLag1,
  type WeatherPlace,
  weatherYears,
  yearlySpreadFracByMonth,
} from "../../../src/core/weather/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";
import {
  boston,
  DAYS,
  daysOfMonth,
  type Place,
  phoenix,
  santiago,
  singapore,
  tromso,
  zurich,
} from "./places.ts";

const sites: readonly (readonly [string, Place])[] = [
  ["Boston", boston],
  ["Zurich", zurich],
  ["Phoenix", phoenix],
  ["Singapore", singapore],
  ["Santiago", santiago],
];
const YEARS = 100;
const drawn = new Map(sites.map(([name, site]) => [name, weatherYears({ ...site, seed: 11, years: YEARS })]));

// What the generator is asked for is its own input; what comes out is measured here by other means.
describe.each(sites)("%s, 100 years", (name, site) => {
  const weather = drawn.get(name)!;
  const spread = yearlySpreadFracByMonth(weather);

  it("each month has its mean within 1 % and what chance leaves", () => {
    const ratios = DAYS.map((_, month) => {
      const found = mean(daysOfMonth(weather.dailyGhiKWhPerM2, month).map((days) => mean(days)));
      const ratio = found / site.ghiDailyKWhPerM2ByMonth[month]!;
      near(ratio, 1, { within: Math.max(0.01, (3.5 * spread[month]!) / Math.sqrt(YEARS)) });
      return ratio;
    });
    near(mean(ratios), 1, { within: 0.01 });
  });

  it("the days have the month's sixteen values", () => {
    let apart = 0;
    DAYS.forEach((_, month) => {
      const days = daysOfMonth(weather.dailyGhiKWhPerM2, month)
        .flat()
        .sort((a, b) => a - b);
      const all = mean(days);
      site.dailyGhiQuantilesByMonth[month]!.forEach((wanted, i) => {
        const from = Math.round((i * days.length) / 16);
        const found = mean(days.slice(from, Math.round(((i + 1) * days.length) / 16))) / all;
        near(found, wanted, { within: 0.08 });
        apart += Math.abs(found - wanted) / 192;
      });
    });
    expect(apart).toBeLessThan(0.015);
  });

  it("a day is like the day before by the month's correlation, as normal scores", () => {
    DAYS.forEach((_, month) => {
      // as clearness: the days' own growth through the month is no memory
      const years = daysOfMonth(
        weather.dailyGhiKWhPerM2.map((daily, i) => daily / outsideKWhPerM2(site.latitudeDeg, (i % 365) + 1)),
        month,
      );
      const first = years.flatMap((days) => days.slice(0, -1));
      const second = years.flatMap((days) => days.slice(1));
      // of two normal values, from the correlation of their ranks (Pearson 1907)
      const lag1 = 2 * Math.sin((Math.PI / 6) * correlation(ranks(first), ranks(second)));
      near(lag1, usualLag1(site.clearnessFracByMonth[month]!), { within: 0.07 });
    });
  });

  it("months differ from year to year as days and their memory let them", () => {
    spread.forEach((frac) => {
      expect(frac).toBeGreaterThan(0.015);
      expect(frac).toBeLessThan(0.16);
    });
  });

  it("air: monthly means, and the extreme hours of a year on average at the design values", () => {
    const lows: number[] = [];
    const highs: number[] = [];
    const means = new Float64Array(365);
    for (let year = 0; year < YEARS; year += 1) {
      let low = Infinity;
      let high = -Infinity;
      for (let hour = 0; hour < 8760; hour += 1) {
        const tempC = weather.ambientTempC[year * 8760 + hour]!;
        low = Math.min(low, tempC);
        high = Math.max(high, tempC);
        means[Math.floor(hour / 24)]! += tempC / 24 / YEARS;
      }
      lows.push(low);
      highs.push(high);
    }
    DAYS.forEach((_, month) => {
      near(mean(daysOfMonth(means, month)[0]!), site.meanTempCByMonth[month]!, { within: 0.5 });
    });
    near(mean(lows), site.designColdTempC, { within: 0.8 });
    near(mean(highs), site.designHotTempC, { within: 0.8 });
  });
});

it("Boston, 300 years of ten seeds: months within two standard errors, the year within 0.5 %", () => {
  const months = DAYS.map(() => 0);
  for (let run = 0; run < 10; run += 1) {
    const { dailyGhiKWhPerM2 } = weatherYears({ ...boston, seed: 100 + run, years: 30 });
    DAYS.forEach((_, month) => {
      months[month]! += mean(daysOfMonth(dailyGhiKWhPerM2, month).flat()) / 10;
    });
  }
  // the largest standard error of 300 years is 0.7 %
  months.forEach((found, month) => {
    nearRatio(found, boston.ghiDailyKWhPerM2ByMonth[month]!, { withinFrac: 0.015 });
  });
  nearRatio(sum(months), sum(boston.ghiDailyKWhPerM2ByMonth), { withinFrac: 0.005 });
});

// Common figure: monthly means differ by 8 to 12 % from year to year in mid latitudes (from memory). Days and memory
// alone give that in the dull half of the year, which sizes a battery, and less in the bright half.
it("in the dull half of the year mid latitudes have most of the usual yearly spread", () => {
  for (const name of ["Boston", "Zurich"]) {
    const spread = yearlySpreadFracByMonth(drawn.get(name)!);
    const dull = mean([9, 10, 11, 0, 1, 2].map((month) => spread[month]!));
    expect(dull).toBeGreaterThan(0.08);
    expect(dull).toBeLessThan(0.12);
  }
});

it("the same seed gives the same years, another seed others, more years the same first ones", () => {
  const one = weatherYears({ ...boston, seed: 5, years: 2 });
  const same = weatherYears({ ...boston, seed: 5, years: 3 });
  const other = weatherYears({ ...boston, seed: 6, years: 2 });
  expect(Array.from(same.ghiWPerM2.subarray(0, 2 * 8760))).toEqual(Array.from(one.ghiWPerM2));
  near(same.ambientTempC[8759]!, one.ambientTempC[8759]!, { within: 0 });
  expect(other.dailyGhiKWhPerM2[0]).not.toBe(one.dailyGhiKWhPerM2[0]);
  expect(other.ambientTempC[0]).not.toBe(one.ambientTempC[0]);
  expect(weatherYears({ ...boston, seed: 5 }).years).toBe(30);
});

describe("the hours of a day", () => {
  const weather = drawn.get("Boston")!;

  it("add to the day, lie between sunrise and sunset, mirror each other round noon", () => {
    for (let day = 0; day < 365; day += 1) {
      const hours = weather.ghiWPerM2.subarray(day * 24, day * 24 + 24);
      nearRatio(sum(hours) / 1000, weather.dailyGhiKWhPerM2[day]!, { withinFrac: 1e-9 });
      expect(hours[0]).toBe(0);
      near(hours[8]!, hours[15]!, { within: 1e-6 });
      expect(hours[11]).toBeGreaterThan(hours[9]!);
    }
  });

  it("no day passes what comes from outside", () => {
    weather.dailyGhiKWhPerM2.subarray(0, 20 * 365).forEach((daily, i) => {
      expect(daily).toBeLessThan(0.9 * outsideKWhPerM2(42.4, (i % 365) + 1));
    });
  });
});

describe("beyond the polar circle", () => {
  const weather = weatherYears({ ...tromso, seed: 1, years: 2 });

  it("the polar night is dark, not a hole", () => {
    const night = weather.ghiWPerM2.subarray(350 * 24, 360 * 24);
    expect(night.every((ghi) => ghi === 0)).toBe(true);
    expect(weather.ambientTempC.subarray(350 * 24, 360 * 24).every(Number.isFinite)).toBe(true);
  });

  it("the midnight sun shines at midnight, least of the day", () => {
    const day = weather.ghiWPerM2.subarray(171 * 24, 172 * 24);
    expect(Math.min(...day)).toBeGreaterThan(0);
    expect(day[0]).toBe(Math.min(...day));
  });

  it("at the pole all hours of a day are alike", () => {
    const pole = weatherYears({ ...tromso, latitudeDeg: 90, seed: 1, years: 1 });
    const day = pole.ghiWPerM2.subarray(171 * 24, 172 * 24);
    nearRatio(Math.max(...day), Math.min(...day), { withinFrac: 0.01 });
  });
});

it("any place, any months: finite, never negative, never more from the sky than in all", () => {
  const months = (min: number, max: number) =>
    fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(
      fc.record({
        latitudeDeg: fc.oneof(
          fc.double({ min: -90, max: 90, noNaN: true }),
          fc.constantFrom(-90, -66.56, 0, 66.56, 90),
        ),
        ghiDailyKWhPerM2ByMonth: months(0, 12),
        dailyGhiQuantilesByMonth: fc.array(
          fc.array(fc.double({ min: 0, max: 4, noNaN: true }), { minLength: 16, maxLength: 16 }),
          { minLength: 12, maxLength: 12 },
        ),
        meanTempCByMonth: months(-40, 40),
        designColdTempC: fc.double({ min: -60, max: 20, noNaN: true }),
        designHotTempC: fc.double({ min: 0, max: 50, noNaN: true }),
        seed: fc.nat(),
      }),
      (place) => {
        const weather = weatherYears({ ...place, years: 1 });
        return weather.ghiWPerM2.every((ghi, hour) => {
          const diffuse = weather.diffuseWPerM2[hour]!;
          return (
            ghi >= 0 &&
            ghi < 1600 &&
            diffuse >= 0 &&
            diffuse <= ghi &&
            Number.isFinite(weather.ambientTempC[hour])
          );
        });
      },
    ),
    { numRuns: 20 },
  );
});

describe("refusals", () => {
  const refused: readonly (readonly [string, Partial<WeatherPlace & { years: number; seed: number }>])[] = [
    ["a latitude beyond the pole", { latitudeDeg: 91 }],
    ["eleven months", { ghiDailyKWhPerM2ByMonth: boston.ghiDailyKWhPerM2ByMonth.slice(1) }],
    ["fifteen shares", { dailyGhiQuantilesByMonth: boston.dailyGhiQuantilesByMonth.map((q) => q.slice(1)) }],
    ["a correlation of 1", { lag1ByMonth: Array.from({ length: 12 }, () => 1) }],
    ["no years", { years: 0 }],
    ["a negative seed", { seed: -1 }],
  ];
  it.each(refused)("%s", (_, wrong) => {
    expect(() => weatherYears({ ...boston, seed: 1, years: 1, ...wrong })).toThrow(RangeFault);
  });
});

function outsideKWhPerM2(latitudeDeg: number, dayOfYear: number): number {
  const declinationDeg = spencerDeclinationDeg(dayOfYear);
  return extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg, declinationDeg });
}

function ranks(values: readonly number[]): Float64Array {
  const order = values.map((_, i) => i).sort((a, b) => values[a]! - values[b]!);
  const places = new Float64Array(values.length);
  order.forEach((i, place) => {
    places[i] = place;
  });
  return places;
}

function correlation(x: Float64Array, y: Float64Array): number {
  const meanX = sum(x) / x.length;
  const meanY = sum(y) / y.length;
  let xy = 0;
  let xx = 0;
  let yy = 0;
  x.forEach((value, i) => {
    xy += (value - meanX) * (y[i]! - meanY);
    xx += (value - meanX) ** 2;
    yy += (y[i]! - meanY) ** 2;
  });
  return xy / Math.sqrt(xx * yy);
}
