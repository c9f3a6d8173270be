// Days of battery in years drawn by our weather field for five places, against the typical-year figures of tables.ts. Means are the
// station's own; the spread of days and the temperatures are those of the embedded climate there.
//
// One year at a time, as the tables are made, the median of 51 drawn years lies within a factor of 1.6 of the tables at Phoenix,
// Miami, Renton and New Delhi in every cell for 5 % and 1 % of loss. At Boston it does so for 5 % (1.1 to 1.3), and for 1 % with
// arrays of 1.3 times the worst month and more (1.4 to 1.6); with smaller arrays Boston's drawn years ask for 1.7 to 1.9 times the
// tables' days.
//
// That is the light's doing, not the drawing's. Light that is modelled from cloud cover knows hardly a dull day: from November to
// February the dullest sixteenth of TMY3 days (Chicago, New York and nine other damp places), and of the stations of the German test
// reference years of 2010 whose hours are not flagged measured, is 0.32 to 0.55 of the mean. Where days were measured it is 0.16 to
// 0.29 (tests/reference/measured-days), and by the generalised curve 0.19 to 0.23. With the shares of
// days that TMY3 has at Chicago or New York, Boston's drawn years come within the factor, but for a cell at the edge of the table
// each. So the tables are too kind to Boston, and typical years of modelled light to every damp winter.
import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { dailyShares } from "../../../src/core/climate/own/daily-shares.ts";
import { mean } from "../../../src/core/numerics/index.ts";
import { planeYield, type WeatherYears, weatherYears } from "../../../src/core/weather/index.ts";
import { SOLAR_CLOCK, STEPS_AN_HOUR, sunSteps } from "../../../src/core/weather/sun-steps.ts";
import { placeAt } from "../../core/weather/places.ts";
import { nearRatio } from "../../helpers/near.ts";
import { DAYS, daysNeeded, type Light, lightOf } from "./days-needed.ts";
import { type PlaceName, STATIONS, TYPICAL_DAYS } from "./tables.ts";

const PLACES = Object.keys(STATIONS) as PlaceName[];
const ALBEDO = 0.2;
const tiltOf = (name: PlaceName): number => Math.abs(STATIONS[name].latitudeDeg) + 15;

function weatherAt(
  name: PlaceName,
  years: number,
  dailyGhiQuantilesByMonth?: readonly (readonly number[])[],
): WeatherYears {
  const station = STATIONS[name];
  const here = placeAt(station.latitudeDeg, station.longitudeDeg);
  const shares = dailyGhiQuantilesByMonth ?? here.dailyGhiQuantilesByMonth;
  return weatherYears({ ...here, ...station, dailyGhiQuantilesByMonth: shares, seed: 1, years });
}

/** Light on a plane facing south under an even sky, as the tables have it; the sun's height taken through each hour. */
function evenSkyPlane(weather: WeatherYears, tiltDeg: number): Float64Array {
  const sun = sunSteps({ latitudeDeg: weather.latitudeDeg, clock: SOLAR_CLOCK });
  const [cosine, sine] = [Math.cos((tiltDeg * Math.PI) / 180), Math.sin((tiltDeg * Math.PI) / 180)];
  const beamRatio = Float64Array.from({ length: 8760 }, (_, hour) => {
    let [level, plane] = [0, 0];
    for (let step = hour * STEPS_AN_HOUR; step < (hour + 1) * STEPS_AN_HOUR; step += 1) {
      if (sun.up[step]! <= 0) continue;
      level += sun.up[step]!;
      plane += Math.max(0, cosine * sun.up[step]! - sine * sun.north[step]!);
    }
    return level > 0 ? plane / level : 0;
  });
  return weather.ghiWPerM2.map((ghi, hour) => {
    const diffuse = weather.diffuseWPerM2[hour]!;
    const ground = (ghi * ALBEDO * (1 - cosine)) / 2;
    return (ghi - diffuse) * beamRatio[hour % 8760]! + (diffuse * (1 + cosine)) / 2 + ground;
  });
}

/** As daysNeeded, hour by hour without a battery's traits: a tenth of its time. */
function plainDaysNeeded(
  { hourly, worstDailyMean }: Light,
  { arrayRatio, lossFrac }: { readonly arrayRatio: number; readonly lossFrac: number },
): number {
  const load = (1000 * worstDailyMean) / arrayRatio;
  const isEnough = (days: number): boolean => {
    const full = days * load;
    let [charge, lost] = [full, 0];
    for (let hour = 0; hour < 2 * hourly.length; hour += 1) {
      charge = Math.min(full, charge + hourly[hour % hourly.length]! - load / 24);
      if (charge >= 0) continue;
      if (hour >= hourly.length) lost -= charge;
      charge = 0;
    }
    return lost <= (lossFrac + 1e-12) * (hourly.length / 24) * load;
  };
  let [low, high] = [0.2, 60];
  while (high / low > 1.003) {
    const middle = Math.sqrt(low * high);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const YEARS = 51;
const yearsOf = (hourly: Float64Array): readonly Light[] =>
  Array.from({ length: YEARS }, (_, year) => lightOf(hourly.slice(year * 8760, (year + 1) * 8760)));

/** Each year with the array that its own worst month asks for. */
function medianDays(lights: readonly Light[], cell: Parameters<typeof plainDaysNeeded>[1]): number {
  const days = lights.map((light) => plainDaysNeeded(light, cell)).sort((a, b) => a - b);
  return days[(days.length - 1) / 2]!;
}

const printed = (name: PlaceName, arrayRatio: number, lossFrac: number): number =>
  TYPICAL_DAYS.byPlace[name][TYPICAL_DAYS.lossFracs.indexOf(lossFrac as 0)]![
    TYPICAL_DAYS.arrayRatios.indexOf(arrayRatio as 1)
  ]!;

/** Medians over the printed days, by loss and array ratio. */
function ratiosOf(
  name: PlaceName,
  lights: readonly Light[],
): Readonly<Record<"at5" | "at1", readonly number[]>> {
  const at = (lossFrac: number): readonly number[] =>
    TYPICAL_DAYS.arrayRatios.map(
      (arrayRatio) => medianDays(lights, { arrayRatio, lossFrac }) / printed(name, arrayRatio, lossFrac),
    );
  return { at5: at(0.05), at1: at(0.01) };
}

function within16(ratios: readonly number[]): readonly boolean[] {
  return ratios.map((ratio) => ratio < 1.6 && ratio > 1 / 1.6);
}
const EVERY = [true, true, true, true, true];

// the shares of TMY3 days: Chicago's from its hours, New York's by make_vectors.py
const readJson = (path: string) => JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8"));
const newYorkShares: readonly (readonly number[])[] = readJson("vectors/new-york-shares.json").sharesByMonth;
const chicagoShares = ((): readonly (readonly number[])[] => {
  const bytes = inflateSync(
    Buffer.from(readJson("../pvlib/vectors/hourly-years.json").years[0].light, "base64"),
  );
  const hourly = new Uint16Array(bytes.buffer, bytes.byteOffset, 8760);
  let day = 0;
  return DAYS.map((count) =>
    dailyShares(
      Array.from({ length: count }, () => {
        day += 1;
        return hourly.subarray((day - 1) * 24, day * 24).reduce((total, value) => total + value, 0);
      }),
    ),
  );
})();
const WINTER = [10, 11, 0, 1];

it("the dullest winter days of modelled light are brighter than any that were measured, those of Boston's climate are among them", () => {
  const measured: readonly {
    readonly sky: string;
    readonly months: readonly ({ readonly shares: readonly number[] } | null)[];
  }[] = readJson("../measured-days/days.json");
  const dullest = (shares: readonly (readonly number[] | undefined)[]): number =>
    mean(WINTER.flatMap((month) => shares[month]?.[0] ?? []));
  const damp = measured
    .filter(({ sky }) => sky === "damp")
    .map(({ months }) => dullest(months.map((month) => month?.shares)));
  expect(Math.max(...damp)).toBeLessThan(0.3);
  expect(Math.min(...damp)).toBeGreaterThan(0.15);
  expect(dullest(chicagoShares)).toBeGreaterThan(0.5);
  expect(dullest(newYorkShares)).toBeGreaterThan(0.3);
  const { latitudeDeg, longitudeDeg } = STATIONS.Boston;
  const boston = dullest(placeAt(latitudeDeg, longitudeDeg).dailyGhiQuantilesByMonth);
  expect(boston).toBeGreaterThan(0.13);
  expect(boston).toBeLessThan(0.3);
});

describe("one year at a time under an even sky, the median of 51 drawn years over the printed days", () => {
  const found = new Map<PlaceName, number>();
  it.each(PLACES)(
    "%s: within a factor of 1.6 (Boston: but for 1 % with arrays below 1.3), and falling with the array",
    (name) => {
      const lights = yearsOf(evenSkyPlane(weatherAt(name, YEARS), tiltOf(name)));
      const { at5, at1 } = ratiosOf(name, lights);
      found.set(name, at1[2]! * printed(name, 1.3, 0.01));
      expect(within16(at5)).toEqual(EVERY);
      expect(within16(at1)).toEqual(name === "Boston" ? [false, false, true, true, true] : EVERY);
      expect(Math.max(...at1)).toBeLessThan(2.1);
      for (const [ratios, lossFrac] of [
        [at5, 0.05],
        [at1, 0.01],
      ] as const) {
        const days = ratios.map((ratio, i) => ratio * printed(name, TYPICAL_DAYS.arrayRatios[i]!, lossFrac));
        for (let i = 1; i < days.length; i += 1) expect(days[i]!).toBeLessThan(days[i - 1]! * 1.002);
      }
    },
  );

  // the tables themselves change their order: for 1 % Phoenix lies below Miami at 1.0 and above it from 1.1 on; for nothing lost
  // New Delhi lies above Boston at 1.0; for 5 % and 1.3 or more all but Boston and Renton are alike
  it("for 1 % and an array of 1.3 New Delhi needs least, Phoenix and Miami more, Boston and Renton most, as printed", () => {
    const drawn = (name: PlaceName): number => found.get(name)!;
    for (const at of [drawn, (name: PlaceName): number => printed(name, 1.3, 0.01)]) {
      expect(at("New Delhi")).toBeLessThan(Math.min(at("Phoenix"), at("Miami")));
      expect(Math.max(at("Phoenix"), at("Miami"))).toBeLessThan(Math.min(at("Boston"), at("Renton")));
    }
  });

  it("the plain battery is the one of our own balance: the same days within 0.5 %", () => {
    const [light] = yearsOf(evenSkyPlane(weatherAt("Boston", YEARS), tiltOf("Boston")));
    const cell = { arrayRatio: 1.3, lossFrac: 0.01 };
    nearRatio(plainDaysNeeded(light!, cell), daysNeeded(light!, cell), { withinFrac: 0.005 });
  });

  // in two hundred years: Chicago 0.60 with an array of 2, New York 1.67 with one of 1, all else within the factor
  it.each([
    ["Chicago", chicagoShares, [0, 1, 2, 3]],
    ["New York", newYorkShares, [1, 2, 3, 4]],
  ] as const)(
    "Boston with the days of TMY3 light as at %s: within 1.6 but for one cell",
    (_, shares, cells) => {
      const lights = yearsOf(evenSkyPlane(weatherAt("Boston", YEARS, shares), tiltOf("Boston")));
      const { at5, at1 } = ratiosOf("Boston", lights);
      expect(within16(at5)).toEqual(EVERY);
      expect(within16(cells.map((cell) => at1[cell]!))).toEqual(cells.map(() => true));
      for (const ratio of at1) {
        expect(ratio).toBeLessThan(1.75);
        expect(ratio).toBeGreaterThan(1 / 1.75);
      }
    },
  );
});

// planes by Hay and Davies: on the same hours that asks for up to a fifth more days (typical-years.test.ts)
describe("thirty years through", () => {
  const found = new Map<PlaceName, number>();
  it.each(PLACES)("%s: fewer days for a larger array and for more loss, never below the nights", (name) => {
    const light = lightOf(
      planeYield({
        weather: weatherAt(name, 30),
        tiltDeg: tiltOf(name),
        azimuthDeg: 180,
        horizon: [],
        albedoByMonth: DAYS.map(() => ALBEDO),
      }).poaWPerM2,
    );
    const days = (arrayRatio: number, lossFrac: number): number =>
      daysNeeded(light, { arrayRatio, lossFrac });
    const [at13for5, at13for1, at13for0] = [0.05, 0.01, 0].map((lossFrac) => days(1.3, lossFrac)) as [
      number,
      number,
      number,
    ];
    const [at10for1, at20for1] = [days(1, 0.01), days(2, 0.01)];
    found.set(name, at13for1);
    expect(at10for1).toBeGreaterThan(at13for1);
    expect(at13for1).toBeGreaterThan(at20for1);
    expect(at13for5).toBeLessThan(at13for1);
    expect(at13for1).toBeLessThan(at13for0);
    expect(at20for1).toBeGreaterThan(0.45);
    expect(at13for5).toBeGreaterThan(0.45);

    // a typical year has no bad year: nothing lost in thirty years takes more than nothing lost in it
    expect(at13for0).toBeGreaterThan(1.2 * printed(name, 1.3, 0));
    // Boston: see the head of this file; and a bad year of thirty counts here, which no median sees
    const factor = name === "Boston" ? 2.8 : 1.6;
    for (const [own, lossFrac] of [
      [at13for5, 0.05],
      [at13for1, 0.01],
    ] as const) {
      expect(own).toBeLessThan(factor * printed(name, 1.3, lossFrac));
      expect(own).toBeGreaterThan(printed(name, 1.3, lossFrac) / 1.6);
    }
    // the textbook fits ask for 10 to 14 days of the critical class under such a sky (from memory)
    if (name === "Renton") {
      expect(at13for0).toBeGreaterThan(8);
      expect(at13for0).toBeLessThan(17);
    }
  });
  it("New Delhi needs least, Phoenix and Miami more, Boston and Renton most", () => {
    const at = (name: PlaceName): number => found.get(name)!;
    expect(at("New Delhi")).toBeLessThan(Math.min(at("Phoenix"), at("Miami")));
    expect(Math.max(at("Phoenix"), at("Miami"))).toBeLessThan(Math.min(at("Boston"), at("Renton")));
  });
});
