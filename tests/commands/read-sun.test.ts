import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { readSun } from "../../src/commands/read-sun.ts";
import { unpackHours, usualLag1 } from "../../src/core/weather/index.ts";
import { near } from "../helpers/near.ts";
import { epwText, tmy3Text } from "../reference/typical-years/invented-year.ts";

const site = { label: "x", latitudeDeg: 52.1, longitudeDeg: 9.4, elevationM: 90, countryCode: "DE" };

function fileOf(name: string, text: string): string {
  const folder = mkdtempSync(join(tmpdir(), "mastwright-sun-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const yearMean = ({ ghiDailyKWhPerM2ByMonth }: { readonly ghiDailyKWhPerM2ByMonth: readonly number[] }) =>
  ghiDailyKWhPerM2ByMonth.reduce((total, value, month) => total + value * DAYS[month]!, 0) / 365;

// What is in the files is held against pvlib in tests/reference/typical-years; here, that it arrives.
test.each([
  ["year.epw", epwText()],
  ["year.csv", tmy3Text()],
])("a file of hours, %s, brings how its days spread and follow each other", (name, text) => {
  const reading = readSun(fileOf(name, text), site, false);
  if (reading.kind !== "figures" || reading.figures === null) throw new Error("not read");
  const { dailyQuantilesByMonth, lag1ByMonth } = reading.figures;
  expect(dailyQuantilesByMonth).toHaveLength(12);
  for (const shares of dailyQuantilesByMonth!) {
    expect(shares).toHaveLength(16);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    near(shares.reduce((total, share) => total + share, 0) / 16, 1, { within: 0.0005 });
    for (const share of shares) expect(share.toString().length).toBeLessThanOrEqual(5);
  }
  expect(lag1ByMonth).toHaveLength(12);
  // The invented days follow each other by chance alone: drawn toward the usual value, what is left lies well under it.
  const usual = usualLag1(0.4);
  expect(lag1ByMonth!.reduce((total, lag1) => total + lag1, 0) / 12).toBeLessThan(usual);
  expect(Math.min(...lag1ByMonth!)).toBeGreaterThanOrEqual(0);
  expect(reading.says).toContain("how dull and bright its days are, and its hours");

  const { hours } = reading.figures;
  expect(hours).toMatchObject({ utcOffsetH: 1 });
  const { ghiWPerM2, tempC } = unpackHours(hours!.packed);
  near(ghiWPerM2.reduce((total, value) => total + value, 0) / 365_000, yearMean(reading.figures), {
    within: 0.005,
  });
  expect(Math.min(...tempC)).toBeLessThan(Math.max(...tempC));
});

test("typed figures bring none of it", () => {
  const reading = readSun("0.6 1.2 2.3 3.7 4.7 5.0 4.8 4.0 2.8 1.5 0.8 0.5", site, false);
  expect(reading).toMatchObject({ figures: { dailyQuantilesByMonth: null, lag1ByMonth: null, hours: null } });
});
