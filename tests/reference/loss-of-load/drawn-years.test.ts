// Days of battery in years drawn by our weather field for five places, against the typical-year figures of tables.ts. Means are the
// station's own; the spread of days and the temperatures are those of the embedded climate there. Planes by Hay and Davies:
// on the same hours that asks for up to a fifth more days than the tables' even sky (typical-years.test.ts).
//
// Drawn years of Boston are worth up to twice the tables' days. Its dullest winter days are as dull as those of the generalised
// curve of measured days (first test below), while the TMY3 station's light is modelled from cloud cover and knows
// hardly any: in the TMY3 years of Chicago and New York the dullest sixteenth of December is 0.4 to 0.5 of the mean, where
// the curve has 0.19. The tables are the less careful there.
import { describe, expect, it } from "vitest";
import { extraterrestrialDailyKWhPerM2, MEAN_DAY_BY_MONTH } from "../../../src/core/sun/index.ts";
import { planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { placeAt } from "../../core/weather/places.ts";
import { DAYS, daysNeeded, lightOf, lossOfLoad } from "./days-needed.ts";
import { type PlaceName, STATIONS, TYPICAL_DAYS } from "./tables.ts";

const PLACES = Object.keys(STATIONS) as PlaceName[];

const planeOf = (name: PlaceName, years: number): Float64Array => {
  const station = STATIONS[name];
  const weather = weatherYears({
    ...placeAt(station.latitudeDeg, station.longitudeDeg),
    ...station,
    seed: 1,
    years,
  });
  return planeYield({
    weather,
    tiltDeg: Math.abs(station.latitudeDeg) + 15,
    azimuthDeg: 180,
    horizon: [],
    albedoByMonth: DAYS.map(() => 0.2),
  }).poaWPerM2;
};

const printed = (name: PlaceName, arrayRatio: number, lossFrac: number): number =>
  TYPICAL_DAYS.byPlace[name][TYPICAL_DAYS.lossFracs.indexOf(lossFrac as 0)]![
    TYPICAL_DAYS.arrayRatios.indexOf(arrayRatio as 1)
  ]!;

/**
 * The dullest of sixteen equally likely days over the month's mean by the generalised distribution curve.
 * @source Bendt, Collares-Pereira and Rabl 1981, with the largest clearness by Hollands and Huget 1983; from memory
 */
function dullestOfSixteen(clearness: number): number {
  const low = 0.05;
  const high = 0.6313 + 0.267 * clearness - 11.9 * (clearness - 0.75) ** 8;
  const meanFor = (g: number): number =>
    (high * Math.exp(g * high) - low * Math.exp(g * low)) / (Math.exp(g * high) - Math.exp(g * low)) - 1 / g;
  let [less, more] = [-40.001, 40.002];
  for (let i = 0; i < 60; i += 1) {
    const middle = (less + more) / 2;
    if (meanFor(middle) < clearness) less = middle;
    else more = middle;
  }
  const share = 1 / 32;
  return (
    Math.log(Math.exp(less * low) + share * (Math.exp(less * high) - Math.exp(less * low))) / less / clearness
  );
}

it("Boston's dullest winter days are those of the generalised curve within 0.08 of the mean", () => {
  const { latitudeDeg, longitudeDeg } = STATIONS.Boston;
  const { dailyGhiQuantilesByMonth, ghiDailyKWhPerM2ByMonth } = placeAt(latitudeDeg, longitudeDeg);
  for (const month of [0, 10, 11]) {
    const { dayOfYear } = MEAN_DAY_BY_MONTH[month]!;
    const clearness =
      ghiDailyKWhPerM2ByMonth[month]! / extraterrestrialDailyKWhPerM2({ dayOfYear, latitudeDeg });
    const gap = dailyGhiQuantilesByMonth[month]![0]! - dullestOfSixteen(clearness);
    expect(Math.abs(gap)).toBeLessThan(0.08);
  }
});

describe.each(PLACES)(
  "%s, one year at a time, each with the array that its own worst month asks for",
  (name) => {
    const YEARS = 15;
    const years = (): readonly ReturnType<typeof lightOf>[] => {
      const hourly = planeOf(name, YEARS);
      return Array.from({ length: YEARS }, (_, year) =>
        lightOf(hourly.slice(year * 8760, (year + 1) * 8760)),
      );
    };
    // as the tables are made, and so comparable with them; the median year lies within these factors of the printed days
    const FACTOR = { Phoenix: 1.6, Boston: 2.2, Miami: 1.6, Renton: 1.6, "New Delhi": 1.6 } as const;
    it.each([0.05, 0.01])(
      `for a loss of load of %f the median year is within a factor of ${FACTOR[name]}`,
      (lossFrac) => {
        const lights = years();
        for (const arrayRatio of TYPICAL_DAYS.arrayRatios) {
          const days = printed(name, arrayRatio, lossFrac);
          const enough = (of: number): number =>
            lights.filter((light) => lossOfLoad(light, { arrayRatio, days: of }) <= lossFrac).length;
          expect(enough(days * FACTOR[name]), `with ${arrayRatio}`).toBeGreaterThan(YEARS / 2);
          expect(enough(days / 1.6), `with ${arrayRatio}`).toBeLessThan(YEARS / 2);
        }
      },
    );
  },
);

describe("thirty years through", () => {
  const found = new Map<PlaceName, number>();
  it.each(PLACES)("%s: fewer days for a larger array and for more loss, never below the nights", (name) => {
    const light = lightOf(planeOf(name, 30));
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
    // Boston: see the head of this file
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
