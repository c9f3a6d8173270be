/**
 * The hour-by-hour run against what polar field engineers build, and what the whole chain makes of the same posts. The embedded
 * climate is real; it holds nothing north of about 74 degrees, so 76 and 80 N have the made-up sky and air of the fixtures.
 *
 * @source UNAVCO knowledge base article 190, "Remote Station Power Analysis (2007)": least sealed lead-acid Ah for 5 W all year,
 *         moderately cold sites, two and three panels of 85 W (four at 60 N); printed. 12 V is that group's practice. The
 *         page does not say how far its batteries are emptied or how cold they are: here they are new and emptied wholly,
 *         once as cold as the air and once in a box at 15 degrees C.
 */
import { describe, expect, it } from "vitest";
import type { Climate } from "../../../src/core/climate/index.ts";
import { climateAt, climateOfOwn } from "../../../src/core/climate/index.ts";
import { bankTempC, simulateBalance } from "../../../src/core/energy/index.ts";
import { planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { type Design, designOf, type Site, type World } from "../../../src/design/index.ts";
import { grids } from "../../core/climate/grids.ts";
import { placeAt } from "../../core/weather/places.ts";
import { at, changed, given, radio, simulatedWorld, syntheticClimate } from "../../design/fixtures.ts";

const YEARS = 10;
const LOAD_W = 5;

/** Smallest 12 V bank that never leaves the load dark in ten years. */
function leastAh(place: Climate, latitudeDeg: number): (post: Post) => number {
  const weather = weatherYears({ ...place, latitudeDeg, seed: 1, years: YEARS });
  const outputRatio = planeYield({
    weather,
    tiltDeg: 80,
    azimuthDeg: 180,
    horizon: [],
    albedoByMonth: Array.from({ length: 12 }, () => 0.2),
  }).powerWPerRatedW;
  const outside = bankTempC({ ambientTempC: weather.ambientTempC, timeConstantH: 24 });
  return ({ panelW, isHeated }) => {
    const tempC = isHeated ? new Float64Array(outside.length).fill(15) : outside;
    const isDark = (ratedAh: number): boolean =>
      simulateBalance({
        years: YEARS,
        pv: { kind: "mppt", outputRatio, ratedW: panelW },
        bank: { chemistry: "lead-agm", nominalV: 12, ratedAh, healthFrac: 1, tempC },
        controller: { efficiencyFrac: 0.95, maxOutputA: 100, ownW: 0 },
        loads: [
          {
            name: "station",
            priority: 1,
            wattsByHourOfYear: new Float64Array(8760).fill(LOAD_W),
            shedBelowSocFrac: 0,
            returnAboveSocFrac: 0,
          },
        ],
      }).tiers[0]!.darkHoursPerYear > 0.1;
    let [low, high] = [100, 10_000];
    while (high / low > 1.02) {
      const middle = Math.sqrt(low * high);
      if (isDark(middle)) low = middle;
      else high = middle;
    }
    return high;
  };
}
interface Post {
  readonly panelW: number;
  readonly isHeated: boolean;
}

/** 170 W, 255 W. */
const PRINTED_AH = {
  60: [900, 700],
  66: [1100, 1000],
  68: [1300, 1200],
  70: [1500, 1400],
  76: [2100, 2000],
  80: [2300, 2300],
} as const;

describe("least bank of a 5 W station", () => {
  /** How much the third panel saves. */
  const saved = new Map<number, number>();
  const found = new Map<number, number>();

  it.each([
    [60, 25],
    [66, 25],
    [68, 24],
    [70, 25],
  ] as const)(
    "%d N: cold within a factor of 1.6 of the printed; in a warm box at most 15 % above it",
    (latitudeDeg, longitudeDeg) => {
      const ah = leastAh(placeAt(latitudeDeg, longitudeDeg), latitudeDeg);
      const cold = [170, 255].map((panelW) => ah({ panelW, isHeated: false }));
      PRINTED_AH[latitudeDeg].forEach((printed, i) => {
        expect(cold[i]).toBeLessThan(1.6 * printed);
        expect(cold[i]).toBeGreaterThan(printed / 1.2);
        expect(ah({ panelW: i === 0 ? 170 : 255, isHeated: true })).toBeLessThan(1.15 * printed);
      });
      saved.set(latitudeDeg, cold[0]! / cold[1]!);
      found.set(latitudeDeg, cold[0]!);
    },
  );
  it("60 N with four panels: 500 Ah printed", () => {
    const four = leastAh(placeAt(60, 11), 60)({ panelW: 340, isHeated: false });
    expect(four).toBeGreaterThan(500 / 1.3);
    expect(four).toBeLessThan(500 * 1.3);
  });
  it.each([76, 80] as const)(
    "%d N: the printed lies between a warm bank and one at the made-up air's cold",
    (latitudeDeg) => {
      const ah = leastAh(syntheticClimate({ latitudeDeg, elevationM: 10 }) as Climate, latitudeDeg);
      const cold = [170, 255].map((panelW) => ah({ panelW, isHeated: false }));
      PRINTED_AH[latitudeDeg].forEach((printed, i) => {
        expect(cold[i]).toBeGreaterThan(printed);
        expect(cold[i]).toBeLessThan(2 * printed);
        expect(ah({ panelW: i === 0 ? 170 : 255, isHeated: true })).toBeLessThan(printed);
      });
      saved.set(latitudeDeg, cold[0]! / cold[1]!);
      found.set(latitudeDeg, cold[0]!);
    },
  );
  it("grows with latitude, and a third panel saves ever less of it: nothing at 80 N", () => {
    const latitudes = [60, 66, 70, 76, 80];
    for (const [i, latitudeDeg] of latitudes.entries()) {
      if (i > 0) expect(found.get(latitudeDeg)!).toBeGreaterThan(1.1 * found.get(latitudes[i - 1]!)!);
    }
    expect(saved.get(60)!).toBeGreaterThan(1.2);
    for (const latitudeDeg of [66, 70, 76]) {
      expect(saved.get(latitudeDeg)!).toBeGreaterThan(1);
      expect(saved.get(latitudeDeg)!).toBeLessThan(1.15);
    }
    expect(saved.get(80)!).toBeLessThan(1.03);
  });
});

const realWorld: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids, latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg, elevationM }, own) =>
    climateOfOwn({ grids, longitudeDeg, elevationM: elevationM ?? undefined, own }),
  clockMinusSolarH: () => 0,
  simulation: { remember: (_task, _given, work) => work() },
};

/** 4.41 W / 0.98 + 0.5 W of controller = 5.0 W at the battery, straight from a 12 V bank, day and night; no camera. */
const fiveWatts = changed({
  loads: { devices: [{ ...radio, dayW: given(4.41), feed: "dc" }] },
  parts: { radio: given({ feed: "dc", minInputV: 9, maxInputV: 32 }) },
  power: { chemistry: given("agm"), bankV: given(12) },
});
const stationAt = (latitudeDeg: number, longitudeDeg: number, world: World): Design => {
  const site: Site = { label: "", latitudeDeg, longitudeDeg, elevationM: 10, countryCode: null };
  return designOf(at(site, fiveWatts), world);
};
/** Days that the bank's rating is worth. */
const daysOf = (bankAh: number): number => (12 * bankAh) / (24 * LOAD_W);

describe("the whole design of a 5 W station", () => {
  it("60 N: pairs between 300 and 1200 Ah; the printed ones have 500 to 900 Ah at a third to a half of the power", () => {
    const { reliability } = stationAt(60, 25, realWorld);
    expect(reliability!.isReached).toBe(true);
    expect(reliability!.chosenMethod).toBe("simulation");
    expect(reliability!.pairs.length).toBeGreaterThan(1);
    for (const { bankAh, installedW } of reliability!.pairs) {
      expect(bankAh).toBeGreaterThan(300);
      expect(bankAh).toBeLessThan(1200);
      expect(installedW).toBeGreaterThan(340);
      expect(installedW).toBeLessThan(1100);
    }
  });
  it("64 N: more panels than the bright months ask for catch the dim ones, and a bank of months that no array fills in days will do", () => {
    const { reliability } = stationAt(64, 25, realWorld);
    expect(reliability!.isReached).toBe(true);
    const { chosen, handbook } = reliability!;
    expect(chosen.installedW).toBeGreaterThan(2.4 * handbook.installedW);
    // 900 Ah printed for new batteries with 170 W; here old and cold ones, and a fifth more load
    expect(chosen.bankAh).toBeGreaterThan(900);
    expect(chosen.bankAh).toBeLessThan(2700);
  });
  it.each([
    ["66 N", 66, 25],
    ["68 N", 68, 24],
    ["70 N", 70, 25],
  ] as const)(
    "%s: never a dozen days; a stop for the dark, and one more where nothing reaches the hours asked for",
    (_, latitudeDeg, longitudeDeg) => {
      const { reliability, battery, findings } = stationAt(latitudeDeg, longitudeDeg, realWorld);
      for (const pair of [reliability!.handbook, reliability!.chosen, ...reliability!.pairs]) {
        expect(daysOf(pair.bankAh)).toBeGreaterThan(60);
      }
      expect(battery!.bankAh).toBe(reliability!.chosen.bankAh);
      expect(findings.find(({ id }) => id === "sun.dark")!.severity).toBe("stop");
      const missed = findings.find(({ id }) => id === "reliability.missed");
      expect(missed?.severity).toBe(reliability!.isReached ? undefined : "stop");
      expect(reliability!.isReached).toBe(reliability!.pairs.length > 0);
    },
  );
  it("at 66 N behind hills nothing reaches a dark hour a year with twice the demand: it is said, and a stop", () => {
    const hills = Array.from({ length: 36 }, (_, i) => ({ azimuthDeg: 10 * i, elevationDeg: 12 }));
    const asked = changed(
      {
        autonomy: { consequence: given("darkHours"), askedDarkHours: given(1) },
        place: { horizon: given(hills) },
        // two and a half times the handbook's bank does reach it with a fifth to spare: more than that is tried nowhere
        power: { ...fiveWatts.power, marginFrac: given(1) },
      },
      fiveWatts,
    );
    const site: Site = { label: "", latitudeDeg: 66, longitudeDeg: 25, elevationM: 10, countryCode: null };
    const { reliability, findings } = designOf(at(site, asked), realWorld);
    expect(reliability!.pairs).toEqual([]);
    expect(reliability!.isReached).toBe(false);
    expect(reliability!.chosen.darkHours).toBeGreaterThan(1);
    expect(reliability!.chosen.darkHours).toBeLessThan(reliability!.handbook.darkHours);
    expect(reliability!.because).toContain("want of anything better");
    expect(findings.find(({ id }) => id === "reliability.missed")!.severity).toBe("stop");
  });
  it.each([76, 80])("%d N under a made-up sky: months of storage, or a stop", (latitudeDeg) => {
    const { reliability, battery, findings } = stationAt(latitudeDeg, 20, simulatedWorld);
    expect(daysOf(battery!.bankAh)).toBeGreaterThan(150);
    expect(findings.some(({ severity }) => severity === "stop")).toBe(true);
    for (const { bankAh } of reliability!.pairs) expect(daysOf(bankAh)).toBeGreaterThan(150);
  });
});
