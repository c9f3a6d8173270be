// Days of storage against sun hours: two textbook fits to the Sandia curves (Masters ch. 9; Messenger and
// Ventre), both from memory. The table was computed separately from the two fits.
import { describe, expect, it } from "vitest";
import { autonomyDaysSuggestion, recoveryDays } from "../../../src/core/energy/index.ts";
import { near } from "../../helpers/near.ts";

const TABLE = [
  [1.5, 17.58, 6.83, 15.45, 3.86],
  [2.0, 15.74, 6.07, 14.5, 3.62],
  [2.5, 14.05, 5.37, 13.55, 3.38],
  [3.0, 12.51, 4.72, 12.6, 3.14],
  [3.5, 11.12, 4.13, 11.65, 2.9],
  [4.0, 9.88, 3.59, 10.7, 2.66],
  [4.5, 8.79, 3.11, 9.75, 2.42],
  [5.0, 7.85, 2.68, 8.8, 2.18],
  [6.0, 6.42, 1.99, 6.9, 1.7],
] as const;

describe("fits", () => {
  it.each(TABLE)("%d sun hours", (peakSunHours, parabola99, parabola95, line99, line95) => {
    const critical = autonomyDaysSuggestion({ peakSunHours, availability: 0.99, latitudeDeg: 40 });
    near(critical.parabolaDays, parabola99, { within: 0.0051 });
    near(critical.lineDays, line99, { within: 0.0051 });
    near(critical.days, Math.max(parabola99, line99), { within: 0.0051 });
    const other = autonomyDaysSuggestion({ peakSunHours, availability: 0.95, latitudeDeg: 40 });
    near(other.parabolaDays, parabola95, { within: 0.0051 });
    near(other.lineDays, line95, { within: 0.0051 });
    expect(other.basis).toBe("fits");
  });
  it("is held beyond the bottoms of the parabolas, 7.88 and 8.64 sun hours", () => {
    const at = (peakSunHours: number, availability: 0.95 | 0.99): number =>
      autonomyDaysSuggestion({ peakSunHours, availability, latitudeDeg: 20 }).days;
    expect(at(12, 0.99)).toBe(at(7.88, 0.99));
    expect(at(12, 0.95)).toBe(at(8.64, 0.95));
    expect(at(12, 0.95)).toBeGreaterThan(1);
  });
});

describe("recovery, used over surplus", () => {
  it("5 days at a ratio of 1.25 take 20 days, worked by hand", () => {
    near(recoveryDays({ usedWh: 500, dailyLoadWh: 100, arrayToLoadRatio: 1.25 })!, 20, { within: 1e-9 });
  });
  it("an array that only carries the load never refills", () => {
    expect(recoveryDays({ usedWh: 500, dailyLoadWh: 100, arrayToLoadRatio: 1 })).toBeNull();
    expect(recoveryDays({ usedWh: 500, dailyLoadWh: 100, arrayToLoadRatio: 0.6 })).toBeNull();
  });
});
