// Two TMY3 years (U.S. Department of Energy, public: Chicago O'Hare 725300 and Golden NREL 724666) and what pvlib 0.16.1
// makes of every hour of them on two planes (Hay and Davies, SPA at mid-hour, albedo 0.2), month by month. The vectors
// stand beside the transposition they were made for.
import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { dailyShares } from "../../../src/core/climate/own/daily-shares.ts";
import { sum } from "../../../src/core/numerics/index.ts";
import { ownWeatherPlace, ownYears, planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

interface Year {
  readonly file: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly utcOffsetH: number;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly planes: readonly {
    readonly tiltDeg: number;
    readonly hayDaviesDailyKWhPerM2ByMonth: readonly number[];
  }[];
  readonly light: string;
}

const found = JSON.parse(
  readFileSync(new URL("../pvlib/vectors/hourly-years.json", import.meta.url), "utf8"),
);
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const twelve = (value: number) => DAYS.map(() => value);

it("pvlib and both stations", () => {
  expect(found.library).toBe("pvlib 0.16.1");
  expect(found.years).toHaveLength(2);
});

describe.each(found.years as readonly Year[])("$file", (year) => {
  const bytes = inflateSync(Buffer.from(year.light, "base64"));
  const numbers = new Uint16Array(bytes.buffer, bytes.byteOffset, 3 * 8760);
  const ghiWPerM2 = Float64Array.from(numbers.subarray(0, 8760));
  const dhiWPerM2 = Float64Array.from(numbers.subarray(2 * 8760));
  const days = Array.from(
    { length: 365 },
    (_, day) => sum(ghiWPerM2.subarray(day * 24, day * 24 + 24)) / 1000,
  );
  const own = {
    ...year,
    ghiWPerM2,
    dhiWPerM2,
    // the file of vectors holds light alone; temperatures do not touch what is compared here
    tempC: new Float64Array(8760).fill(10),
    meanTempCByMonth: twelve(10),
    lowestTempC: -10,
    highestTempC: 30,
    dailyGhiQuantilesByMonth: monthsOf(days).map(dailyShares),
  };
  const drawn = weatherYears({ ...ownWeatherPlace(own), seed: 3, years: 60 });
  const repeated = ownYears({ ...own, years: 1 });

  const compare = (
    weather: typeof drawn,
    plane: Year["planes"][number],
    tolerance: { readonly monthFrac: number; readonly yearFrac: number },
  ): void => {
    const got = dailyByMonth(
      planeYield({ weather, tiltDeg: plane.tiltDeg, azimuthDeg: 180, albedoByMonth: twelve(0.2) }).poaWPerM2,
    );
    const expected = plane.hayDaviesDailyKWhPerM2ByMonth;
    got.forEach((daily, month) => {
      nearRatio(daily, expected[month]!, { withinFrac: tolerance.monthFrac });
    });
    nearRatio(ofYear(got), ofYear(expected), { withinFrac: tolerance.yearFrac });
  };

  it.each(year.planes)("the file's own hours at tilt $tiltDeg: 4 % a month, 1 % the year", (plane) => {
    compare(repeated, plane, { monthFrac: 0.04, yearFrac: 0.01 });
  });

  it.each(year.planes)(
    "without the file's diffuse light at tilt $tiltDeg: 9 % a month, 1.5 % the year",
    (plane) => {
      const split = ownYears({ ...own, dhiWPerM2: null, years: 1 });
      compare(split, plane, { monthFrac: 0.09, yearFrac: 0.015 });
    },
  );

  it.each(year.planes)("sixty drawn years like it at tilt $tiltDeg: 9 % a month, 3 % the year", (plane) => {
    compare(drawn, plane, { monthFrac: 0.09, yearFrac: 0.03 });
  });

  it("drawn years keep the file's months and its share of diffuse light within 0.1", () => {
    const light = dailyByMonth(ghiWPerM2);
    const sky = dailyByMonth(dhiWPerM2);
    const drawnLight = dailyByMonth(drawn.ghiWPerM2);
    const drawnSky = dailyByMonth(drawn.diffuseWPerM2);
    DAYS.forEach((_, month) => {
      nearRatio(drawnLight[month]!, light[month]!, { withinFrac: 0.04 });
      near(drawnSky[month]! / drawnLight[month]!, sky[month]! / light[month]!, { within: 0.1 });
    });
  });

  it("years repeat; the day is what the file has", () => {
    const twice = ownYears(own);
    expect(twice.years).toBe(2);
    expect(Array.from(twice.ghiWPerM2.subarray(8760))).toEqual(Array.from(ghiWPerM2));
    days.forEach((daily, day) => {
      near(twice.dailyGhiKWhPerM2[day]!, daily, { within: 1e-9 });
    });
  });
});

function monthsOf(daily: readonly number[]): readonly (readonly number[])[] {
  let from = 0;
  return DAYS.map((count) => {
    const month = daily.slice(from, from + count);
    from += count;
    return month;
  });
}

function dailyByMonth(wPerM2: Float64Array): readonly number[] {
  const daily = new Array<number>(365).fill(0);
  wPerM2.forEach((value, hour) => {
    daily[Math.floor((hour % 8760) / 24)]! += value / 1000 / (wPerM2.length / 8760);
  });
  return monthsOf(daily).map((month) => sum(month) / month.length);
}

function ofYear(byMonth: readonly number[]): number {
  return byMonth.reduce((total, value, month) => total + value * DAYS[month]!, 0) / 365;
}
