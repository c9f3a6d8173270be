import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearnessShares } from "../../../../src/core/climate/clearness-shares.ts";
import {
  type Climate,
  climateAt,
  climateOfOwn,
  comparedSources,
  type OwnFigures,
  withOwnFigures,
} from "../../../../src/core/climate/index.ts";
import { cellsRound } from "../../../../src/core/climate/lookup.ts";
import { dailyShares } from "../../../../src/core/climate/own/daily-shares.ts";
import { gridShares } from "../../../../src/core/climate/shares-of-days.ts";
import { IRRADIATION_REACH_KM } from "../../../../src/core/climate/tables.ts";
import { RangeFault } from "../../../../src/core/numerics/index.ts";
import { near } from "../../../helpers/near.ts";
import { grids } from "../grids.ts";

// NASA SSE 22-year means at 42.075 N 1.821 E, as quoted in doc/lib/pv_energy.rst of github paucoma/MH-Moli
const catalonia = [1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.0, 1.56];
const place = { latitudeDeg: 42.075, longitudeDeg: 1.821 };
const temps = [4, 5, 8, 10, 14, 18, 21, 21, 18, 13, 8, 5];
const own: OwnFigures = {
  latitudeDeg: place.latitudeDeg,
  ghiDailyKWhPerM2ByMonth: catalonia,
  origin: "datasheet",
  source: "NASA SSE",
};

function grid(): Climate {
  const found = climateAt({ grids, ...place });
  if (found.kind === "refused") throw new Error(found.why);
  return found;
}

describe("comparedSources", () => {
  const flat = (value: number) => Array.from({ length: 12 }, () => value);
  const of = (first: number, second: number) =>
    comparedSources({
      firstGhiDailyKWhPerM2ByMonth: flat(first),
      secondGhiDailyKWhPerM2ByMonth: flat(second),
      month: 11,
    });
  // worked by hand: the difference over the lower
  it.each([
    [3, 3.3, 0.1, "agree", "first"],
    [3.31, 3, 0.31 / 3, "caution", "second"],
    [2, 2.5, 0.25, "caution", "first"],
    [2.52, 2, 0.26, "choose", "second"],
    [3, 3, 0, "agree", "first"],
    [0, 0.01, 0.1, "agree", "first"],
    [0, 1, 10, "choose", "first"],
  ] as const)("%f beside %f", (first, second, differenceFrac, agreement, lower) => {
    const got = of(first, second);
    near(got.differenceFrac, differenceFrac, { within: 1e-12 });
    expect(got).toMatchObject({ month: 11, firstKWhPerM2: first, secondKWhPerM2: second, agreement, lower });
  });
  it("looks at the month asked for alone", () => {
    const got = comparedSources({
      firstGhiDailyKWhPerM2ByMonth: flat(3).with(0, 1),
      secondGhiDailyKWhPerM2ByMonth: flat(3),
      month: 5,
    });
    expect(got.agreement).toBe("agree");
    expect(() => of(-1, 2)).toThrow(RangeFault);
    expect(() =>
      comparedSources({
        firstGhiDailyKWhPerM2ByMonth: flat(3),
        secondGhiDailyKWhPerM2ByMonth: [3],
        month: 5,
      }),
    ).toThrow(RangeFault);
  });
});

describe("withOwnFigures", () => {
  it("puts the sun in the grid's place, and leaves the rest", () => {
    const before = grid();
    const after = withOwnFigures(before, own);
    expect(after.ghiDailyKWhPerM2ByMonth).toEqual(catalonia);
    const { ghiDailyKWhPerM2ByMonth, clearnessFracByMonth, ghiUncertaintyFrac, source, ...rest } = after;
    expect(before).toMatchObject(rest);
    expect(source).toEqual({ ...before.source, irradiation: "own figures, published: NASA SSE" });
    // clearness of January there: 1.81 kWh of 13.9 MJ (3.87 kWh; Duffie and Beckman table 1.10 between 40 and 45 N)
    near(clearnessFracByMonth[0]!, 0.467, { within: 0.015 });
    expect(ghiUncertaintyFrac).toBe(0.1);
  });

  it("an estimate is never surer than the map, a stated uncertainty is taken", () => {
    const before = grid();
    const sure = (change: Partial<OwnFigures>) =>
      withOwnFigures(before, { ...own, ...change }).ghiUncertaintyFrac;
    expect(sure({ origin: "estimate" })).toBeGreaterThanOrEqual(Math.max(0.2, before.ghiUncertaintyFrac));
    expect(sure({ origin: "measured" })).toBe(0.08);
    expect(sure({ origin: "measured", ghiUncertaintyFrac: 0.05 })).toBe(0.05);
    const words = (origin: OwnFigures["origin"]) =>
      withOwnFigures(before, { ...own, origin }).source.irradiation;
    expect(words("estimate")).toBe("own figures, an estimate: NASA SSE");
    expect(words("measured")).toBe("own figures, measured: NASA SSE");
  });

  it("temperatures given replace the map's and carry the extremes", () => {
    const after = withOwnFigures(grid(), { ...own, meanTempCByMonth: temps });
    expect(after.meanTempCByMonth).toEqual(temps);
    expect(after.source.temperature).toBe("own figures, published: NASA SSE");
    // by hand: gap 6.56 + 0.348 x 17 = 12.476; record 12.476 x 0.37 + 3.6 = 8.216 lower; hot gap min(7 + 11.9, 14)
    near(after.designColdTempC, 4 - 12.476, { within: 1e-9 });
    near(after.recordColdTempC, 4 - 12.476 - 8.21612, { within: 1e-9 });
    near(after.designHotTempC, 35, { within: 1e-9 });
  });

  it("hours of a typical year are taken as they are: -8 gives a record of -8 - 0.37 x 12 = -12.44", () => {
    const after = withOwnFigures(grid(), {
      ...own,
      meanTempCByMonth: temps,
      lowestTempC: -8,
      highestTempC: 34.5,
    });
    expect(after.designColdTempC).toBe(-8);
    near(after.recordColdTempC, -12.44, { within: 1e-9 });
    expect(after.designHotTempC).toBe(34.5);
  });

  it("refuses what is out of range", () => {
    const before = grid();
    for (const beyond of [
      { ghiDailyKWhPerM2ByMonth: [1] },
      { ghiDailyKWhPerM2ByMonth: catalonia.with(3, -1) },
      { latitudeDeg: 91 },
      { meanTempCByMonth: temps.with(0, -100) },
      { lowestTempC: 30 },
      { ghiUncertaintyFrac: 0 },
    ]) {
      expect(() => withOwnFigures(before, { ...own, ...beyond })).toThrow(RangeFault);
    }
  });
});

describe("days of one's own", () => {
  const shares = [...Array(8).fill(0.5), ...Array(8).fill(1.5)];
  const sharesOf = (dailyGhiQuantilesByMonth: readonly (readonly number[])[]) =>
    withOwnFigures(grid(), { ...own, dailyGhiQuantilesByMonth }).dailyGhiQuantilesByMonth;

  it("take the place of the grid's, which stay where there are none", () => {
    expect(sharesOf(Array(12).fill(shares))).toEqual(Array(12).fill(shares));
    expect(withOwnFigures(grid(), own).dailyGhiQuantilesByMonth).toEqual(grid().dailyGhiQuantilesByMonth);
  });

  it("have a mean of one again where rounding has moved it; a month without light has even days", () => {
    const [first, second] = sharesOf([
      shares.map((share) => 1.01 * share),
      Array(16).fill(0),
      ...Array(10).fill(shares),
    ]);
    first!.forEach((share, i) => {
      near(share, shares[i]!, { within: 1e-12 });
    });
    expect(second).toEqual(Array(16).fill(1));
  });

  it("are twelve months of sixteen", () => {
    for (const wrong of [
      Array(11).fill(shares),
      Array(12).fill(shares.slice(1)),
      Array(12).fill([...shares.slice(1), -0.1]),
    ])
      expect(() => sharesOf(wrong)).toThrow(RangeFault);
  });
});

describe("climateOfOwn", () => {
  it("makes a whole climate at sea, on ice and beyond the grid, with nothing but finite numbers", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -90, max: 90 }),
        fc.integer({ min: -180, max: 180 }),
        fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 12, maxLength: 12 }),
        (latitudeDeg, longitudeDeg, tenths) => {
          const figures = { ...own, latitudeDeg, ghiDailyKWhPerM2ByMonth: tenths.map((tenth) => tenth / 10) };
          const { kind, source, dailyGhiQuantilesByMonth, ...numbers } = climateOfOwn({
            grids,
            longitudeDeg,
            own: figures,
          });
          for (const value of [...Object.values(numbers).flat(), ...dailyGhiQuantilesByMonth.flat()]) {
            expect(Number.isFinite(value)).toBe(true);
          }
          expect(numbers.clearnessFracByMonth.every((frac) => frac >= 0 && frac <= 1)).toBe(true);
          expect(numbers.ghiUncertaintyFrac).toBe(0.1);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("Svalbard, where the grid has no sun: the maps' temperature, the builder's sun", () => {
    expect(climateAt({ grids, latitudeDeg: 78.2, longitudeDeg: 15.6 })).toMatchObject({ kind: "refused" });
    const sun = [0, 0.1, 0.9, 2.9, 4.6, 4.8, 4.1, 2.5, 1.0, 0.2, 0, 0];
    const found = climateOfOwn({
      grids,
      longitudeDeg: 15.6,
      elevationM: 28,
      own: {
        ...own,
        latitudeDeg: 78.2,
        ghiDailyKWhPerM2ByMonth: sun,
        origin: "measured",
        source: "the airfield",
      },
    });
    expect(found.ghiDailyKWhPerM2ByMonth).toEqual(sun);
    expect(found.elevationM).toBe(28);
    // Longyearbyen's February is about -13 and its July about 6 (from memory)
    near(found.meanTempCByMonth[1]!, -13, { within: 4 });
    near(found.meanTempCByMonth[6]!, 6, { within: 3 });
    expect(found.source.irradiation).toBe("own figures, measured: the airfield");
  });

  it("where the grid does answer, it is the same but for the spread of the days", () => {
    const { dailyGhiQuantilesByMonth: _, ...onGrid } = withOwnFigures(grid(), own);
    expect(climateOfOwn({ grids, longitudeDeg: place.longitudeDeg, own })).toMatchObject(onGrid);
  });
});

describe("shares of days", () => {
  it("of sixteen days are the days themselves", () => {
    const days = [16, 1, 15, 2, 14, 3, 13, 4, 12, 5, 11, 6, 10, 7, 9, 8];
    dailyShares(days).forEach((share, i) => {
      near(share, (i + 1) / 8.5, { within: 1e-12 });
    });
  });
  it("rise and have the mean 1 for any month, and are 1 without light", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: 1, maxLength: 31 }), (days) => {
        const shares = dailyShares(days);
        near(shares.reduce((total, share) => total + share, 0) / 16, 1, { within: 1e-9 });
        for (let i = 1; i < 16; i += 1) expect(shares[i]!).toBeGreaterThanOrEqual(shares[i - 1]! - 1e-12);
      }),
    );
    expect(dailyShares([0, 0])).toEqual(Array.from({ length: 16 }, () => 1));
  });

  it("by clearness alone: rising, mean 1, wider in the cloud than under clear sky", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), (thousandth) => {
        const shares = clearnessShares(thousandth / 1000);
        near(shares.reduce((total, share) => total + share, 0) / 16, 1, { within: 1e-9 });
        for (let i = 1; i < 16; i += 1) expect(shares[i]!).toBeGreaterThanOrEqual(shares[i - 1]!);
        expect(shares[0]!).toBeGreaterThan(0);
      }),
    );
    expect(clearnessShares(0.7)[15]! - clearnessShares(0.7)[0]!).toBeLessThan(
      (clearnessShares(0.35)[15]! - clearnessShares(0.35)[0]!) / 2,
    );
    expect(() => clearnessShares(1.1)).toThrow(RangeFault);
  });

  it("by clearness alone lies within 0.13 of the grid's own shares, root mean square between 55 S and 60 N", () => {
    let squares = 0;
    let count = 0;
    for (let lat = -55; lat <= 60; lat += 5) {
      for (let lon = -180; lon < 180; lon += 5) {
        const spot = { latitudeDeg: lat, longitudeDeg: lon };
        const climate = climateAt({ grids, ...spot });
        if (climate.kind === "refused") continue;
        const cells = cellsRound(grids.clearness, { ...spot, reachKm: IRRADIATION_REACH_KM });
        climate.clearnessFracByMonth.forEach((clearnessFrac, month) => {
          const found = clearnessShares(clearnessFrac);
          gridShares(grids, month, cells).forEach((share, i) => {
            squares += (share - found[i]!) ** 2;
            count += 1;
          });
        });
      }
    }
    expect(count).toBeGreaterThan(50_000);
    expect(Math.sqrt(squares / count)).toBeLessThan(0.13);
  });
  // the same equations by a Python run with numpy, means of a hundred looks a share
  it.each([
    [0.25, [0.2314, 0.2966, 0.3658, 0.4397], 2.3736],
    [0.35, [0.1879, 0.2799, 0.3746, 0.4723], 1.968],
    [0.5, [0.2035, 0.3834, 0.5325, 0.66], 1.5068],
    [0.65, [0.4079, 0.6659, 0.7863, 0.8668], 1.2303],
  ] as const)(
    "by clearness alone, at %f, are those of a run written apart from ours",
    (clearness, first, last) => {
      const shares = clearnessShares(clearness);
      first.forEach((share, i) => {
        near(shares[i]!, share, { within: 0.0005 });
      });
      near(shares[15]!, last, { within: 0.0005 });
    },
  );
});
