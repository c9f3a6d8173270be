import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Climate, climateAt } from "../../../src/core/climate/index.ts";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";
import { grids } from "./grids.ts";

const latitude = fc.double({ min: -90, max: 90, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });
/** Mostly land, so that answers are tested and not only refusals. */
const onLand = fc.oneof(
  fc.record({
    latitudeDeg: fc.double({ min: 30, max: 66, noNaN: true }),
    longitudeDeg: fc.double({ min: -10, max: 140, noNaN: true }),
  }),
  fc.record({
    latitudeDeg: fc.double({ min: -34, max: 30, noNaN: true }),
    longitudeDeg: fc.double({ min: 12, max: 40, noNaN: true }),
  }),
  fc.record({
    latitudeDeg: fc.double({ min: -54, max: 9, noNaN: true }),
    longitudeDeg: fc.double({ min: -75, max: -40, noNaN: true }),
  }),
  fc.record({
    latitudeDeg: fc.double({ min: 25, max: 73, noNaN: true }),
    longitudeDeg: fc.double({ min: -168, max: -60, noNaN: true }),
  }),
);

function climate(latitudeDeg: number, longitudeDeg: number, elevationM?: number): Climate {
  const found = climateAt({ grids, latitudeDeg, longitudeDeg, elevationM });
  if (found.kind === "refused") throw new Error(`refused: ${found.why}`);
  return found;
}

function refusal(latitudeDeg: number, longitudeDeg: number): string {
  const found = climateAt({ grids, latitudeDeg, longitudeDeg });
  return found.kind === "refused" ? found.why : "answered";
}

describe("climateAt", () => {
  it("answers every point of the earth with whole climate or a refusal, never with a hole", () => {
    fc.assert(
      fc.property(fc.oneof(fc.record({ latitudeDeg: latitude, longitudeDeg: longitude }), onLand), (spot) => {
        const found = climateAt({ grids, ...spot });
        if (found.kind === "refused") return ["at-sea", "outside-grid", "on-ice"].includes(found.why);
        const { kind, source, dailyGhiQuantilesByMonth, ...numbers } = found;
        const all = [...Object.values(numbers).flat(), ...dailyGhiQuantilesByMonth.flat()];
        return all.every(Number.isFinite);
      }),
      { numRuns: 3000 },
    );
  });

  it("stays within what is physically possible", () => {
    fc.assert(
      fc.property(onLand, (spot) => {
        const found = climateAt({ grids, ...spot });
        if (found.kind === "refused") return true;
        const { clearnessFracByMonth, meanTempCByMonth } = found;
        return (
          clearnessFracByMonth.every((frac) => frac > 0.1 && frac < 0.85) &&
          found.ghiDailyKWhPerM2ByMonth.every((ghi) => ghi >= 0 && ghi < 10) &&
          found.ghiUncertaintyFrac > 0.06 &&
          found.ghiUncertaintyFrac <= 0.5 &&
          found.recordColdTempC < found.designColdTempC &&
          found.designColdTempC < Math.min(...meanTempCByMonth) &&
          found.designHotTempC > Math.max(...meanTempCByMonth) &&
          found.rainRate001MmPerH >= 0 &&
          found.rainRate001MmPerH < 170 &&
          found.refractivityGradientPerKm < 0 &&
          found.terrainRoughnessM >= 0
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("gives sixteen daily shares for each month, rising, with the mean 1", () => {
    fc.assert(
      fc.property(onLand, (spot) => {
        const found = climateAt({ grids, ...spot });
        if (found.kind === "refused") return;
        for (const shares of found.dailyGhiQuantilesByMonth) {
          expect(shares.length).toBe(16);
          near(shares.reduce((total, share) => total + share, 0) / 16, 1, { within: 1e-9 });
          for (let i = 1; i < 16; i++) expect(shares[i]!).toBeGreaterThanOrEqual(shares[i - 1]! - 1e-9);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("does not jump between neighbours 100 m apart", () => {
    fc.assert(
      fc.property(onLand, (spot) => {
        const here = climateAt({ grids, ...spot });
        const there = climateAt({
          grids,
          latitudeDeg: spot.latitudeDeg + 0.001,
          longitudeDeg: spot.longitudeDeg + 0.001,
        });
        if (here.kind === "refused" || there.kind === "refused") return;
        for (const month of [0, 5, 11]) {
          const step = Math.abs(here.ghiDailyKWhPerM2ByMonth[month]! - there.ghiDailyKWhPerM2ByMonth[month]!);
          expect(step, `${JSON.stringify(spot)} month ${month}`).toBeLessThan(0.02);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it("is the same on both sides of the date line and at both its names", () => {
    const west = climate(-16.8, 180);
    const east = climate(-16.8, -180);
    expect(west.ghiDailyKWhPerM2ByMonth).toEqual(east.ghiDailyKWhPerM2ByMonth);
    const almost = climate(-16.8, 179.9999);
    near(almost.ghiDailyKWhPerM2ByMonth[0]!, west.ghiDailyKWhPerM2ByMonth[0]!, { within: 0.001 });
    near(almost.meanTempCByMonth[0]!, west.meanTempCByMonth[0]!, { within: 0.01 });
  });

  it("cools by 6.5 K for each kilometre that the site stands higher", () => {
    const low = climate(46.5, 8, 500);
    const high = climate(46.5, 8, 2500);
    near(low.meanTempCByMonth[6]! - high.meanTempCByMonth[6]!, 13, { within: 1e-9 });
    expect(high.elevationM).toBe(2500);
    expect(climate(46.5, 8).elevationM).toBe(climate(46.5, 8).groundElevationM);
  });

  it("refuses the open sea: the mistake of a lost sign or of swapped coordinates", () => {
    expect(refusal(52.4, -30)).toBe("at-sea");
    expect(refusal(-52.4, 3.2)).toBe("at-sea");
    expect(refusal(85, 20)).toBe("at-sea");
  });

  it("refuses permanent ice, but not the coast of Greenland nor a high summit elsewhere", () => {
    expect(refusal(72, -40)).toBe("on-ice");
    expect(refusal(-75, 0)).toBe("on-ice");
    expect(refusal(64.18, -51.7)).toBe("answered");
    expect(refusal(45.83, 6.86)).toBe("answered");
  });

  it("refuses land so far north that no irradiation data reach it", () => {
    expect(refusal(78.2, 15.6)).toBe("outside-grid");
  });

  it("says when the irradiation of an island is only an estimate, and how much surer it is where there are data", () => {
    const island = climate(32.3, -64.8);
    expect(island.source.irradiation).toMatch(/estimated/);
    expect(island.ghiUncertaintyFrac).toBeGreaterThan(0.17);
    const mainland = climate(51.3, 9.5);
    expect(mainland.source.irradiation).toMatch(/MERRA-2/);
    expect(mainland.ghiUncertaintyFrac).toBeLessThan(0.16);
  });

  it("has summer in January south of the equator", () => {
    const south = climate(-33.9, 151.2);
    expect(south.ghiDailyKWhPerM2ByMonth[0]!).toBeGreaterThan(2 * south.ghiDailyKWhPerM2ByMonth[5]!);
    expect(south.meanTempCByMonth[0]!).toBeGreaterThan(south.meanTempCByMonth[6]! + 8);
  });

  it("has no sun in polar night, and no division by it", () => {
    const night = climate(71.29, -156.77);
    expect(night.ghiDailyKWhPerM2ByMonth[11]!).toBeLessThan(0.02);
    nearRatio(night.ghiDailyKWhPerM2ByMonth[5]!, 4.8, { withinFrac: 0.2 });
  });

  it("throws RangeFault for what is no place on earth", () => {
    expect(() => climate(90.01, 0)).toThrow(RangeFault);
    expect(() => climate(0, -180.01)).toThrow(RangeFault);
    expect(() => climate(Number.NaN, 0)).toThrow(RangeFault);
    expect(() => climate(46.5, 8, 9001)).toThrow(RangeFault);
    expect(() => climateAt({ grids, latitudeDeg: 52.4, longitudeDeg: -30, elevationM: Number.NaN })).toThrow(
      RangeFault,
    );
  });
});
