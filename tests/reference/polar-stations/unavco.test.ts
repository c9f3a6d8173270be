// UNAVCO knowledge base article 190, Remote Station Power Analysis (2007): sealed lead-acid ampere-hours for
// 5 W all year (10 Ah a day at 12 V) against latitude, two and three panels of 85 W. Printed values. The
// bank's own numbers, not usable days: the order of magnitude is the test.
import { describe, expect, it } from "vitest";
import { autonomyDaysSuggestion, seasonalDeficit } from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

const TWO_PANELS_AH = [
  [60, 900],
  [62, 900],
  [64, 900],
  [66, 1100],
  [68, 1300],
  [70, 1500],
  [72, 1700],
  [74, 1900],
  [76, 2100],
  [78, 2200],
  [80, 2300],
] as const;

const inTheDark = (latitudeDeg: number): number =>
  autonomyDaysSuggestion({ peakSunHours: 0, availability: 0.99, latitudeDeg }).days;

describe("polar table", () => {
  it.each(TWO_PANELS_AH)("at %d deg and no sun: %d Ah over 10 Ah a day", (latitudeDeg, ah) => {
    near(inTheDark(latitudeDeg), ah / 10, { within: 0.001 });
    near(inTheDark(-latitudeDeg), ah / 10, { within: 0.001 });
  });
  it("order of magnitude: 50 to 90 days at 60 deg, 130 to 150 at 70, 220 to 230 at 80; between rows a straight line", () => {
    for (const [latitudeDeg, least, most] of [
      [60, 50, 90],
      [70, 130, 150],
      [80, 220, 230],
    ] as const) {
      expect(inTheDark(latitudeDeg)).toBeGreaterThanOrEqual(least);
      expect(inTheDark(latitudeDeg)).toBeLessThanOrEqual(most);
    }
    near(inTheDark(67), 120, { within: 0.001 });
  });
  it("never answers a dozen days at 68 deg in a month of half an hour of sun", () => {
    const { days } = autonomyDaysSuggestion({ peakSunHours: 0.5, availability: 0.99, latitudeDeg: 68 });
    expect(days).toBeGreaterThan(60);
  });
});

describe("the season carried by storage has the table's shape", () => {
  // 5 W; clear-sky-like supply that vanishes in the dark months, worked by hand: four dark months (Nov to
  // Feb) of 120 Wh a day
  it("four dark months of 5 W are 120 days", () => {
    const supply = [0, 0, 300, 300, 300, 300, 300, 300, 300, 300, 0, 0];
    const { storageWh, startMonth, months, isYearCovered } = seasonalDeficit({
      dailyWhByMonth: Array.from({ length: 12 }, () => 120),
      dailySupplyWhByMonth: supply,
    });
    near(storageWh / 120, 30 + 31 + 31 + 28, { within: 1e-9 });
    expect({ startMonth, months, isYearCovered }).toEqual({ startMonth: 10, months: 4, isYearCovered: true });
  });
});
