// Typical-year files of an invented place, read by ours and by pvlib (version in each vector; made by make_vectors.py).
// The text is written anew here and is pvlib's byte for byte, by its SHA-256. Means, the distribution of days and the
// filling of holes are pandas' and numpy's own arithmetic; twelve digits are kept.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readEpw, readTmy3, type TypicalYear } from "../../../src/core/climate/index.ts";
import { near } from "../../helpers/near.ts";
import { epwText, tmy3Text } from "./invented-year.ts";

interface Vector {
  readonly library: string;
  readonly sha256: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly utcOffsetH: number;
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  readonly meanTempCByMonth: readonly number[];
  readonly lowestTempC: number;
  readonly highestTempC: number;
  readonly dailyGhiQuantilesByMonth: readonly (readonly number[])[];
  readonly hours: readonly (readonly [number, number, number, number, number, number])[];
}

describe.each([
  ["epw", epwText(), readEpw],
  ["tmy3", tmy3Text(), readTmy3],
] as const)("%s", (name, text, read) => {
  const vector: Vector = JSON.parse(readFileSync(new URL(`vectors/${name}.json`, import.meta.url), "utf8"));
  const found = read(text);
  if (found.kind === "refused") throw new Error(found.reason);
  const year: TypicalYear = found;

  it("is the very file that pvlib read", () => {
    expect(vector.library).toBe("pvlib 0.16.1");
    expect(createHash("sha256").update(text).digest("hex")).toBe(vector.sha256);
  });

  it("has the same place", () => {
    expect(year).toMatchObject({
      layout: name.toUpperCase(),
      latitudeDeg: vector.latitudeDeg,
      longitudeDeg: vector.longitudeDeg,
      elevationM: vector.elevationM,
      utcOffsetH: vector.utcOffsetH,
    });
    expect(year.station).toMatch(/^invented hollow, n(o)?w/i);
  });

  it("has the same hours, holes filled alike", () => {
    expect(vector.hours.length).toBeGreaterThan(90);
    expect(year.filledHours).toEqual({ ghi: 2, dni: 0, dhi: 0, temp: 1, wind: 1 });
    for (const [hour, ghi, dni, dhi, tempC, windMPerS] of vector.hours) {
      near(year.ghiWPerM2[hour]!, ghi, { within: 1e-9 });
      near(year.dniWPerM2![hour]!, dni, { within: 1e-9 });
      near(year.dhiWPerM2![hour]!, dhi, { within: 1e-9 });
      near(year.tempC[hour]!, tempC, { within: 1e-9 });
      near(year.windMPerS![hour]!, windMPerS, { within: 1e-9 });
    }
  });

  it("has the same months and extremes", () => {
    vector.ghiDailyKWhPerM2ByMonth.forEach((ghi, month) => {
      near(year.ghiDailyKWhPerM2ByMonth[month]!, ghi, { within: 1e-10 });
    });
    vector.meanTempCByMonth.forEach((tempC, month) => {
      near(year.meanTempCByMonth[month]!, tempC, { within: 1e-10 });
    });
    expect(year.lowestTempC).toBe(vector.lowestTempC);
    expect(year.highestTempC).toBe(vector.highestTempC);
    expect(year.checks).toEqual([]);
  });

  it("has the same distribution of days", () => {
    vector.dailyGhiQuantilesByMonth.forEach((shares, month) => {
      expect(year.dailyGhiQuantilesByMonth[month]).toHaveLength(16);
      shares.forEach((share, i) => {
        near(year.dailyGhiQuantilesByMonth[month]![i]!, share, { within: 1e-10 });
      });
    });
  });
});
