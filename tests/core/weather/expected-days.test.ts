import { describe, expect, it } from "vitest";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { expectedDays, planeYield, weatherYears } from "../../../src/core/weather/index.ts";
import { near } from "../../helpers/near.ts";
import { boston, tromso } from "./places.ts";

const hoursOf = (values: Float64Array, day: number) => Array.from(values.subarray(day * 24, day * 24 + 24));

describe("days of which only the irradiation is expected", () => {
  it.each([
    [17, "January"],
    [162, "June"],
  ])("have the hours that the drawn years give such a day: day %i, in %s", (dayOfYear) => {
    const years = 3;
    const drawn = weatherYears({ ...boston, seed: 9, years });
    const days = Array.from({ length: years }, (_, year) => year * 365 + dayOfYear - 1);
    const expected = expectedDays({
      latitudeDeg: boston.latitudeDeg,
      dayOfYear,
      dailyGhiKWhPerM2: days.map((day) => drawn.dailyGhiKWhPerM2[day]!),
      tempC: 5,
    });
    for (const day of days) {
      expect(hoursOf(expected.ghiWPerM2, day)).toEqual(hoursOf(drawn.ghiWPerM2, day));
      expect(hoursOf(expected.diffuseWPerM2, day)).toEqual(hoursOf(drawn.diffuseWPerM2, day));
    }
  });

  it("add up to what was expected, and gain less from the tilt the duller they are", () => {
    const dailyGhiKWhPerM2 = [0, 0.5, 1.5, 2.5];
    const day = { latitudeDeg: boston.latitudeDeg, dayOfYear: 17, tempC: 0 };
    const weather = expectedDays({ ...day, dailyGhiKWhPerM2 });
    const { poaWPerM2 } = planeYield({
      weather,
      tiltDeg: 60,
      azimuthDeg: 180,
      albedoByMonth: Array.from({ length: 12 }, () => 0.2),
    });
    const sums = (values: Float64Array) =>
      dailyGhiKWhPerM2.map((_, i) => hoursOf(values, i * 365 + 16).reduce((a, b) => a + b, 0) / 1000);
    sums(weather.ghiWPerM2).forEach((sum, i) => {
      near(sum, dailyGhiKWhPerM2[i]!, { within: 1e-9 });
    });
    const [, dull, middling, bright] = sums(poaWPerM2).map((poa, i) => poa / dailyGhiKWhPerM2[i]!);
    expect(dull!).toBeLessThan(middling!);
    expect(middling!).toBeLessThan(bright!);
  });

  it("are dark in polar night, and refuse what is no day", () => {
    const day = { latitudeDeg: tromso.latitudeDeg, dayOfYear: 355, tempC: -5, dailyGhiKWhPerM2: [1] };
    expect(Math.max(...expectedDays(day).ghiWPerM2)).toBe(0);
    expect(() => expectedDays({ ...day, dayOfYear: 366 })).toThrow(RangeFault);
    expect(() => expectedDays({ ...day, dailyGhiKWhPerM2: [] })).toThrow(RangeFault);
    expect(() => expectedDays({ ...day, dailyGhiKWhPerM2: [16] })).toThrow(RangeFault);
  });
});
