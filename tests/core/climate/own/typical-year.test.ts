// Damage to typical-year files; whole ones are held against pvlib in tests/reference/typical-years.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  readEpw,
  readTmy3,
  type TypicalYear,
  type TypicalYearRefusal,
} from "../../../../src/core/climate/index.ts";
import { near } from "../../../helpers/near.ts";
import {
  EPW_HEADER,
  epwRows,
  TMY3_HEADER,
  tmy3Rows,
} from "../../../reference/typical-years/invented-year.ts";

const rows = epwRows();
const epw = (header: readonly string[], body: readonly string[] = rows) => [...header, ...body].join("\n");
const located = (location: string) => epw([location, ...EPW_HEADER.slice(1)]);
/** The rows with one field of some hours changed. */
const changed = (from: number, to: number, column: number, value: string) =>
  rows.map((row, hour) => {
    if (hour < from || hour >= to) return row;
    return row.split(",").with(column, value).join(",");
  });
const leapDay = [
  ...Array.from({ length: 24 }, (_, i) => `1992,2,29,${i + 1},60,${rows[i]!.split(",").slice(5).join(",")}`),
];

function read(text: string): TypicalYear {
  const found = readEpw(text);
  if (found.kind === "refused") throw new Error(found.reason);
  return found;
}

describe("readEpw refuses, with one sentence", () => {
  it.each<[TypicalYearRefusal, string, string, RegExp]>([
    ["not-this-layout", "another file", "Date,GHI\n1,2", /LOCATION/],
    ["not-this-layout", "nothing", "", /LOCATION/],
    ["damaged-header", "no latitude", located("LOCATION,A,-,B,C,1,,9.4,1.0,90"), /latitude is ""/],
    [
      "damaged-header",
      "a latitude beyond the pole",
      located("LOCATION,A,-,B,C,1,152.1,9.4,1.0,90"),
      /latitude is "152.1"/,
    ],
    ["damaged-header", "a cut line", located("LOCATION,A,-,B"), /latitude/],
    [
      "damaged-header",
      "a lost sign of the longitude",
      located("LOCATION,A,-,B,C,1,40,105,-7,1600"),
      /sign lost/,
    ],
    ["damaged-header", "no DATA PERIODS", epw(EPW_HEADER.slice(0, 7)), /DATA PERIODS/],
    ["not-hourly", "half hours", epw(EPW_HEADER.with(7, "DATA PERIODS,1,2,Data,Sunday,1/1,12/31")), /says 2/],
    ["wrong-number-of-rows", "a row short", epw(EPW_HEADER, rows.slice(0, 8759)), /8759/],
    ["wrong-number-of-rows", "no rows", epw(EPW_HEADER, []), /has 0/],
    ["leap-day", "a 29 February", epw(EPW_HEADER, rows.toSpliced(59 * 24, 0, ...leapDay)), /29 February/],
    [
      "leap-day",
      "a 29 February with the year cut to length",
      epw(EPW_HEADER, rows.toSpliced(59 * 24, 0, ...leapDay).slice(0, 8760)),
      /day 29/,
    ],
    [
      "out-of-order",
      "two hours changed about",
      epw(EPW_HEADER, rows.with(5, rows[6]!).with(6, rows[5]!)),
      /Line 14 should be month 1, day 1, hour 6/,
    ],
    ["unreadable-row", "a cut row", epw(EPW_HEADER, rows.with(100, "1991,1,5,5,60,?9")), /Line 109/],
    [
      "unreadable-row",
      "a word for a number",
      epw(EPW_HEADER, changed(7, 8, 13, "n/a")),
      /Line 16: the global irradiance is "n\/a"/,
    ],
    ["impossible-value", "2500 W/m2", epw(EPW_HEADER, changed(12, 13, 13, "2500")), /Line 21: .*2500.*1600/],
    [
      "impossible-value",
      "a temperature in kelvin... of 75",
      epw(EPW_HEADER, changed(12, 13, 6, "75")),
      /temperature is 75/,
    ],
    [
      "too-much-missing",
      "a month without irradiation",
      epw(EPW_HEADER, changed(0, 744, 13, "9999")),
      /irradiation is missing in 746/,
    ],
    [
      "too-much-missing",
      "every noon without temperature",
      epw(
        EPW_HEADER,
        rows.map((row, hour) => (hour % 24 === 12 ? row.split(",").with(6, "99.9").join(",") : row)),
      ),
      /temperature is missing in 366/,
    ],
    [
      "impossible-irradiation",
      "a place in polar night",
      located("LOCATION,A,-,B,C,1,80,9.4,1.0,90"),
      /latitude 80/,
    ],
    ["clock-shifted", "hours told by another clock", located("LOCATION,A,-,B,C,1,52.1,-30,1.0,90"), /9\.0 h/],
  ])("%s: %s", (why, _, text, says) => {
    const found = readEpw(text);
    expect(found).toMatchObject({ kind: "refused", why });
    expect(found.kind === "refused" && found.reason).toMatch(says);
  });
});

describe("readEpw", () => {
  it("fills a hole from the same hour of the days beside it, over New Year too", () => {
    const whole = read(epw(EPW_HEADER));
    const holed = read(epw(EPW_HEADER, changed(12, 13, 13, "9999")));
    expect(holed.filledHours.ghi).toBe(3);
    near(holed.ghiWPerM2[12]!, (whole.ghiWPerM2[36]! + whole.ghiWPerM2[364 * 24 + 12]!) / 2, {
      within: 1e-9,
    });
    const others = [...holed.ghiWPerM2.keys()].filter(
      (hour) => holed.ghiWPerM2[hour] !== whole.ghiWPerM2[hour],
    );
    expect(others).toEqual([12]);
  });

  it("does without direct and diffuse light and wind", () => {
    const bare = rows.map((row) => row.split(",").with(14, "9999").with(15, "999999").with(21, "").join(","));
    expect(read(epw(EPW_HEADER, bare))).toMatchObject({
      dniWPerM2: null,
      dhiWPerM2: null,
      windMPerS: null,
      filledHours: { dni: 8760, dhi: 8760, wind: 8760 },
    });
  });

  it("takes an instrument's night of -3 W/m2 for nothing", () => {
    expect(read(epw(EPW_HEADER, changed(0, 1, 13, "-3"))).ghiWPerM2[0]).toBe(0);
  });

  it("reads a file with a byte order mark, Windows line ends and empty lines behind", () => {
    const text = `\uFEFF${[...EPW_HEADER, ...rows].join("\r\n")}\r\n\r\n`;
    expect(read(text).ghiDailyKWhPerM2ByMonth).toEqual(read(epw(EPW_HEADER)).ghiDailyKWhPerM2ByMonth);
  });

  it("suspects the other hemisphere when the latitude's sign is lost", () => {
    const found = read(located("LOCATION,A,-,B,C,1,-32,9.4,1.0,90"));
    expect(found.checks.map((check) => check.code)).toEqual(["looks-like-other-hemisphere"]);
  });

  it("never throws, wherever the file is cut or a character changed", () => {
    const text = epw(EPW_HEADER.slice(0, 8), rows.slice(0, 30));
    fc.assert(
      fc.property(
        fc.nat({ max: text.length }),
        fc.string({ maxLength: 3 }),
        fc.boolean(),
        (at, put, isCut) => {
          const damaged = isCut ? text.slice(0, at) : text.slice(0, at) + put + text.slice(at + put.length);
          expect(readEpw(damaged).kind).toBe("refused");
          expect(readTmy3(damaged).kind).toBe("refused");
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("readTmy3", () => {
  const tmy3 = (header: readonly string[], body = tmy3Rows()) => [...header, ...body].join("\n");
  it("reads a station's name with a comma and an apostrophe in it", () => {
    const found = readTmy3(tmy3(TMY3_HEADER.with(0, '725090,"MILLER\'S FORD, OLD MILL",MA,1.0,52.1,9.4,6')));
    expect(found).toMatchObject({ kind: "year", station: "MILLER'S FORD, OLD MILL, MA", elevationM: 6 });
  });
  it("finds its columns by name, in any order", () => {
    const turned = tmy3Rows().map((row) => row.split(",").slice(0, 17).toReversed().join(","));
    const names = TMY3_HEADER[1]!.split(",").slice(0, 17).toReversed().join(",");
    const plain = readTmy3(tmy3(TMY3_HEADER));
    const found = readTmy3(tmy3([TMY3_HEADER[0]!, names], turned));
    expect(found).toEqual(plain);
  });
  it.each<[TypicalYearRefusal, string]>([
    ["not-this-layout", "LOCATION,Here\nDESIGN CONDITIONS,0"],
    ["not-this-layout", ""],
    ["damaged-header", tmy3(TMY3_HEADER.with(0, '1,"A",MA,1.0,north,9.4,6'))],
    ["out-of-order", tmy3(TMY3_HEADER, tmy3Rows().toReversed())],
    ["unreadable-row", tmy3(TMY3_HEADER, tmy3Rows().with(3, "yesterday,04:00"))],
    ["wrong-number-of-rows", tmy3(TMY3_HEADER, tmy3Rows().slice(1))],
  ])("refuses: %s", (why, text) => {
    expect(readTmy3(text)).toMatchObject({ kind: "refused", why });
  });
});
