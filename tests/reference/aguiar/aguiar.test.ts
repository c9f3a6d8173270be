// Day-to-day statistics of the clearness index by class of month, worked from the ten transition matrices of Aguiar,
// Collares-Pereira and Conde 1988 (Solar Energy 40, 269) as shipped with the R package solaR (data MTM): stationary
// standard deviation and correlation with the day before. Our days come from another source altogether (the embedded
// grid's sixteenths), so the classes can agree only as climates do.
import { describe, expect, it } from "vitest";
import { climateAt } from "../../../src/core/climate/index.ts";
import { mean } from "../../../src/core/numerics/index.ts";
import { extraterrestrialDailyKWhPerM2, spencerDeclinationDeg } from "../../../src/core/sun/index.ts";
import { measuredLag1ByMonth, usualLag1, weatherYears } from "../../../src/core/weather/index.ts";
import { grids } from "../../core/climate/grids.ts";
import { near } from "../../helpers/near.ts";

const classes = [
  { below: 0.3, meanIndex: 0.241, sd: 0.156, lag1: 0.39 },
  { below: 0.35, meanIndex: 0.334, sd: 0.167, lag1: 0.02 },
  { below: 0.4, meanIndex: 0.374, sd: 0.166, lag1: 0.28 },
  { below: 0.45, meanIndex: 0.429, sd: 0.167, lag1: 0.31 },
  { below: 0.5, meanIndex: 0.476, sd: 0.167, lag1: 0.33 },
  { below: 0.55, meanIndex: 0.526, sd: 0.157, lag1: 0.31 },
  { below: 0.6, meanIndex: 0.575, sd: 0.153, lag1: 0.23 },
  { below: 0.65, meanIndex: 0.62, sd: 0.136, lag1: 0.24 },
  { below: 0.7, meanIndex: 0.668, sd: 0.119, lag1: 0.2 },
  { below: 1, meanIndex: 0.728, sd: 0.073, lag1: 0.25 },
] as const;

/** Latitude and longitude; sea and desert, damp and dry, both hemispheres. */
const places = [
  [47.5, -122.2],
  [44, -123.1],
  [42.4, -71],
  [33.4, -112],
  [36.1, -115.2],
  [39.7, -105.2],
  [30, -95.4],
  [51.5, -0.2],
  [50.8, 4.4],
  [52.5, 13.4],
  [47.5, 8.5],
  [40.4, -3.7],
  [37.4, -6],
  [41.9, 12.5],
  [28.6, 77.1],
  [31.2, 121.3],
  [1.4, 103.9],
  [-33.4, -70.8],
  [-26.2, 28],
  [24.1, 32.9],
] as const;

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const YEARS = 15;

interface Month {
  readonly meanIndex: number;
  readonly sd: number;
}

const months = places.flatMap(([latitudeDeg, longitudeDeg]): readonly Month[] => {
  const climate = climateAt({ grids, latitudeDeg, longitudeDeg });
  if (climate.kind === "refused") throw new Error(climate.why);
  const { dailyGhiKWhPerM2 } = weatherYears({ ...climate, latitudeDeg, seed: 17, years: YEARS });
  let first = 0;
  return DAYS.map((days) => {
    const indices: number[] = [];
    for (let day = first; day < first + days; day += 1) {
      const outside = extraterrestrialDailyKWhPerM2({
        latitudeDeg,
        dayOfYear: day + 1,
        declinationDeg: spencerDeclinationDeg(day + 1),
      });
      for (let year = 0; year < YEARS; year += 1) indices.push(dailyGhiKWhPerM2[year * 365 + day]! / outside);
    }
    first += days;
    const meanIndex = mean(indices);
    return { meanIndex, sd: Math.sqrt(mean(indices.map((index) => (index - meanIndex) ** 2))) };
  });
});

const classOf = (index: number) => classes.findIndex(({ below }) => index <= below);

describe("spread of the daily clearness", () => {
  const bySd = classes.map((_, i) => months.filter((month) => classOf(month.meanIndex) === i));

  it("every class but the outermost has months enough", () => {
    expect(months).toHaveLength(240);
    for (const ofClass of bySd.slice(1, -1)) expect(ofClass.length).toBeGreaterThan(4);
  });

  it.each(classes.slice(1, -1).map((each, i) => [each.below, each.sd, i + 1] as const))(
    "months of a clearness below %f: mean of their standard deviations %f within 0.025 (clearest 0.035)",
    (below, sd, i) => {
      // the grid's deserts are steadier than the stations that the clearest matrices were made of
      near(mean(bySd[i]!.map((month) => month.sd)), sd, { within: below === 0.7 ? 0.035 : 0.025 });
    },
  );

  it("single months lie round their class by a quarter, the clearest differ least", () => {
    const apart = months.map((month) => month.sd / classes[classOf(month.meanIndex)]!.sd - 1);
    expect(Math.sqrt(mean(apart.map((frac) => frac ** 2)))).toBeLessThan(0.25);
    const sdOver = (from: number, to: number) =>
      mean(months.filter(({ meanIndex }) => meanIndex > from && meanIndex <= to).map(({ sd }) => sd));
    expect(sdOver(0.65, 1)).toBeLessThan(0.75 * sdOver(0.4, 0.5));
  });
});

describe("memory from day to day", () => {
  it.each(classes.filter(({ below }) => below !== 0.35))("class below $below: $lag1 within 0.07", (each) => {
    near(usualLag1(each.meanIndex), each.lag1, { within: 0.07 });
  });

  it("all classes together keep Graham and Hollands' 0.29 (from memory)", () => {
    near(mean(classes.filter(({ below }) => below !== 0.35).map((each) => usualLag1(each.meanIndex))), 0.29, {
      within: 0.001,
    });
  });

  it("dull months remember more, and never beyond 0.05 to 0.40", () => {
    expect(usualLag1(0.25)).toBeGreaterThan(usualLag1(0.7));
    for (let index = 0; index <= 1; index += 0.05) {
      expect(usualLag1(index)).toBeGreaterThanOrEqual(0.05);
      expect(usualLag1(index)).toBeLessThanOrEqual(0.4);
    }
  });
});

describe("memory measured in a record", () => {
  const climate = climateAt({ grids, latitudeDeg: 42.4, longitudeDeg: -71 });
  if (climate.kind === "refused") throw new Error(climate.why);
  const outside = Array.from({ length: 365 }, (_, day) =>
    extraterrestrialDailyKWhPerM2({
      latitudeDeg: 42.4,
      dayOfYear: day + 1,
      declinationDeg: spencerDeclinationDeg(day + 1),
    }),
  );
  const measured = (lag1: number, years: number) => {
    const { dailyGhiKWhPerM2 } = weatherYears({
      ...climate,
      latitudeDeg: 42.4,
      seed: 23,
      years,
      lag1ByMonth: DAYS.map(() => lag1),
    });
    return measuredLag1ByMonth({
      clearnessIndexByDay: dailyGhiKWhPerM2.map((daily, i) => daily / outside[i % 365]!),
      clearnessIndexByMonth: climate.clearnessFracByMonth,
    });
  };

  it.each([0, 0.15, 0.3, 0.5])("finds %f again in thirty years, each month within 0.08", (lag1) => {
    const found = measured(lag1, 30);
    for (const of of found) near(of, lag1, { within: 0.08 });
    near(mean(found), lag1, { within: 0.03 });
  });

  it("one year of no memory is drawn toward the usual, but not all the way", () => {
    const found = mean(measured(0, 1));
    expect(found).toBeGreaterThan(0.02);
    expect(found).toBeLessThan(0.2);
  });
});
