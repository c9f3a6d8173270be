import { describe, expect, it } from "vitest";
import { monthlyPoa } from "../../src/core/sun/index.ts";
import { looksLikeFigures, readMonthlyFigures } from "../../src/interview/monthly-figures.ts";

const site = { label: "Boston", latitudeDeg: 42.37, longitudeDeg: -71.02, elevationM: 6, countryCode: "US" };
// Boston, typical year TMY3, kWh/m2 a day: printed values.
const boston = [1.79, 2.78, 3.61, 4.51, 5.57, 5.76, 6.07, 5.35, 4.26, 2.98, 2.01, 1.53];
const ghi = (text: string) => {
  const read = readMonthlyFigures(text, site);
  return read.kind === "figures" ? read.figures!.ghiDailyKWhPerM2ByMonth : read.says;
};

describe("twelve typed figures", () => {
  it.each([
    ["with spaces", boston.join(" ")],
    ["with commas", boston.join(", ")],
    ["with decimal commas", boston.map((value) => String(value).replace(".", ",")).join("; ")],
    ["with their unit", `${boston.join(" ")} kWh/m2 a day`],
    ["in MJ, 3.6 of them a kWh", `${boston.map((value) => (value * 3.6).toFixed(4)).join(" ")} MJ/m2`],
  ])("are read %s", (_how, text) => {
    const read = ghi(text);
    expect(read).toHaveLength(12);
    for (const [month, value] of boston.entries())
      expect((read as readonly number[])[month]).toBeCloseTo(value, 3);
  });

  it("as sums of a month are divided by its days", () => {
    const sums = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].map((days, i) =>
      (days * boston[i]!).toFixed(3),
    );
    expect((ghi(`${sums.join(" ")} kWh/m2 a month`) as readonly number[])[11]).toBeCloseTo(1.53, 4);
  });

  it("on a tilt are taken back to the level, so that the tilt gives them again", () => {
    const tilted = {
      latitudeDeg: site.latitudeDeg,
      tiltDeg: 42,
      azimuthDeg: 180,
      albedoByMonth: Array(12).fill(0.2),
    };
    const poa = monthlyPoa({ ghiDailyKWhPerM2ByMonth: boston, ...tilted }).poaDailyKWhPerM2ByMonth;
    const read = ghi(`${poa.map((value) => value.toFixed(5)).join(" ")} on 42 deg`) as readonly number[];
    for (const [month, value] of boston.entries()) expect(read[month]).toBeCloseTo(value, 2);
  });

  it("that cannot be are refused with the month or the likely unit", () => {
    expect(ghi("1 2 3")).toBe("Twelve figures are needed, January first; 3 were typed.");
    expect(ghi(boston.map((value) => value * 3.6).join(" "))).toMatch(/MJ|more than arrives outside the air/);
    expect(ghi(boston.with(3, -1).join(" "))).toMatch(/^April is -1/);
    expect(ghi([...boston.slice(6), ...boston.slice(0, 6)].join(" "))).toMatch(
      /January comes first|outside the air/,
    );
  });

  it("are told from a name", () => {
    expect(looksLikeFigures("boston.epw")).toBe(false);
    expect(looksLikeFigures("1.2 3.4 5.6")).toBe(true);
  });
});
