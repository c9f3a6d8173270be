import { describe, expect, it } from "vitest";
import { climateAt, monthlyIrradiation } from "../../../../src/core/climate/index.ts";
import { RangeFault } from "../../../../src/core/numerics/index.ts";
import { near } from "../../../helpers/near.ts";
import { grids } from "../grids.ts";

// NASA SSE 22-year means at 42.075 N, as quoted in doc/lib/pv_energy.rst of github paucoma/MH-Moli
const catalonia = [1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.0, 1.56];
const latitudeDeg = 42.075;
const days = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const mj = catalonia.map((value) => value * 3.6);
const sums = catalonia.map((value, month) => value * days[month]!);
const codes = (own: ReturnType<typeof monthlyIrradiation>) => own.checks.map((check) => check.code);

describe("monthlyIrradiation", () => {
  it.each([
    ["kWh/m2 a day", catalonia],
    ["MJ/m2 a day", mj],
    ["kWh/m2 a month", sums],
  ] as const)("takes %s as what they are", (unit, values) => {
    for (const place of [{ latitudeDeg }, {}]) {
      const own = monthlyIrradiation({ values, unit, ...place });
      expect(own.checks).toEqual([]);
      own.ghiDailyKWhPerM2ByMonth!.forEach((ghi, month) => {
        near(ghi, catalonia[month]!, { within: 1e-12 });
      });
    }
  });

  it("Madison's MJ in Duffie and Beckman's example 2.19.1: 6.44 MJ are 1.789 kWh", () => {
    const madison = [6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74];
    const own = monthlyIrradiation({ values: madison, unit: "MJ/m2 a day", latitudeDeg: 43 });
    near(own.ghiDailyKWhPerM2ByMonth![0]!, 1.7889, { within: 5e-5 });
    expect(codes(monthlyIrradiation({ values: madison, unit: "kWh/m2 a day", latitudeDeg: 43 }))).toContain(
      "looks-like-MJ",
    );
  });

  it("says which unit they look like, whichever was meant", () => {
    for (const place of [{ latitudeDeg }, {}]) {
      const suggested = (values: readonly number[], unit: Parameters<typeof monthlyIrradiation>[0]["unit"]) =>
        monthlyIrradiation({ values, unit, ...place }).checks.flatMap((check) =>
          "suggestedUnit" in check ? [check.suggestedUnit] : [],
        );
      expect(suggested(mj, "kWh/m2 a day")).toEqual(["MJ/m2 a day"]);
      expect(suggested(sums, "kWh/m2 a day")).toEqual(["kWh/m2 a month"]);
      expect(suggested(sums, "MJ/m2 a day")).toEqual(["kWh/m2 a month"]);
      expect(suggested(mj, "kWh/m2 a month")).toContain("MJ/m2 a day");
      expect(suggested(catalonia, "kWh/m2 a month")[0]).toBe("kWh/m2 a day");
    }
    // typed as MJ, daily kWh are a fifth of a real year: only the place tells
    expect(codes(monthlyIrradiation({ values: catalonia, unit: "MJ/m2 a day", latitudeDeg }))).toEqual([
      "looks-like-daily-kWh",
    ]);
  });

  it("tells every month that has more than falls outside the atmosphere, with the limit", () => {
    const values = catalonia.with(11, 9.9).with(0, 15);
    const own = monthlyIrradiation({ values, unit: "kWh/m2 a day", latitudeDeg });
    expect(own.ghiDailyKWhPerM2ByMonth).toBeNull();
    expect(own.checks).toMatchObject([
      { code: "above-extraterrestrial", month: 0, gotKWhPerM2: 15 },
      { code: "above-extraterrestrial", month: 11, gotKWhPerM2: 9.9 },
    ]);
    // Duffie and Beckman table 1.10: 12.9 MJ (between 13.8 at 40 N and 10.7 at 45 N) in December
    const limit = own.checks.flatMap((check) => ("limitKWhPerM2" in check ? [check.limitKWhPerM2] : []))[1]!;
    near(limit, 12.6 / 3.6, { within: 0.15 });
  });

  it("refuses a wrong count, what is no number, and less than nothing", () => {
    const of = (values: readonly number[]) =>
      monthlyIrradiation({ values, unit: "kWh/m2 a day", latitudeDeg });
    expect(of(catalonia.slice(1))).toEqual({
      ghiDailyKWhPerM2ByMonth: null,
      checks: [{ code: "wrong-count", got: 11, wanted: 12 }],
    });
    expect(of(catalonia.with(3, -2).with(4, Number.NaN))).toEqual({
      ghiDailyKWhPerM2ByMonth: null,
      checks: [
        { code: "negative", month: 3, got: -2 },
        { code: "not-a-number", month: 4 },
      ],
    });
    expect(() => monthlyIrradiation({ values: catalonia, unit: "kWh/m2 a day", latitudeDeg: 91 })).toThrow(
      RangeFault,
    );
  });

  it("suspects the other hemisphere, but keeps the figures", () => {
    // scaled, so that winter here bears the summer of there
    const low = catalonia.map((value) => 1.5 + value / 6);
    const own = monthlyIrradiation({ values: low, unit: "kWh/m2 a day", latitudeDeg: -35 });
    expect(codes(own)).toEqual(["looks-like-other-hemisphere"]);
    expect(own.ghiDailyKWhPerM2ByMonth).toEqual(low);
    expect(codes(monthlyIrradiation({ values: low, unit: "kWh/m2 a day", latitudeDeg: 35 }))).toEqual([]);
  });

  it("polar night may be printed as a trace", () => {
    const barrow = [0.02, 0.26, 1.54, 3.45, 4.6, 4.55, 4.38, 2.78, 1.25, 0.5, 0.03, 0];
    expect(monthlyIrradiation({ values: barrow, unit: "kWh/m2 a day", latitudeDeg: 71.29 }).checks).toEqual(
      [],
    );
  });

  it("finds nothing to say about the embedded grid's own figures anywhere, nor in either other unit", () => {
    let places = 0;
    for (let lat = -55; lat <= 78; lat += 2.5) {
      for (let lon = -180; lon < 180; lon += 5) {
        const climate = climateAt({ grids, latitudeDeg: lat, longitudeDeg: lon });
        if (climate.kind === "refused") continue;
        places += 1;
        const daily = climate.ghiDailyKWhPerM2ByMonth;
        const of = (values: readonly number[], unit: Parameters<typeof monthlyIrradiation>[0]["unit"]) =>
          monthlyIrradiation({ values, unit, latitudeDeg: lat }).checks;
        const where = `${lat} ${lon}`;
        expect(of(daily, "kWh/m2 a day"), where).toEqual([]);
        expect(
          of(
            daily.map((value) => value * 3.6),
            "MJ/m2 a day",
          ),
          where,
        ).toEqual([]);
        // and mistaken units are found everywhere
        expect(
          of(
            daily.map((value, month) => value * days[month]!),
            "kWh/m2 a day",
          ).map((check) => check.code),
          where,
        ).toContain("looks-like-monthly-sums");
        expect(
          of(
            daily.map((value) => value * 3.6),
            "kWh/m2 a day",
          ).map((check) => check.code),
          where,
        ).toContain("looks-like-MJ");
      }
    }
    expect(places).toBeGreaterThan(1000);
  });
});
