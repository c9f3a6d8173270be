import { hourlyRows } from "./hourly-rows.ts";
import { refused } from "./refusal.ts";
import { type HourlySeries, type TypicalYear, typicalYear, type YearRefused } from "./typical-year.ts";
import { placeOf } from "./year-place.ts";

/** How the column names begin. */
const COLUMN_NAMES: Readonly<Record<HourlySeries, RegExp>> = {
  ghi: /^GHI \(W\/m\^2\)/i,
  dni: /^DNI \(W\/m\^2\)/i,
  dhi: /^DHI \(W\/m\^2\)/i,
  temp: /^Dry-bulb \(C\)/i,
  wind: /^Wspd \(m\/s\)/i,
};

/**
 * A typical year in the open TMY3 layout (comma-separated, one line of station, one of column names, 8760 rows).
 *
 * @param text  of the whole file
 * @returns the year, or one reason why not; a text never throws
 * @source Wilcox and Marion 2008, Users Manual for TMY3 Data Sets, NREL/TP-581-43156 (from memory; columns checked
 *         against pvlib 0.16.1)
 */
export function readTmy3(text: string): TypicalYear | YearRefused {
  const lines = text.split(/\r\n|\n|\r/);
  const names = (lines[1] ?? "").split(",").map((name) => name.trim());
  const columnOf = (form: RegExp): number => names.findIndex((name) => form.test(name));
  const dateColumn = columnOf(/^date/i);
  const timeColumn = columnOf(/^time/i);
  const column = {
    ghi: columnOf(COLUMN_NAMES.ghi),
    dni: columnOf(COLUMN_NAMES.dni),
    dhi: columnOf(COLUMN_NAMES.dhi),
    temp: columnOf(COLUMN_NAMES.temp),
    wind: columnOf(COLUMN_NAMES.wind),
  };
  if (dateColumn < 0 || timeColumn < 0 || column.ghi < 0 || column.temp < 0) {
    return refused(
      "not-this-layout",
      "A TMY3 file names its columns in the second line: Date, Time, GHI (W/m^2), Dry-bulb (C) and more.",
    );
  }
  const first = quotedFields(lines[0]!.replace(/^\uFEFF/, ""));
  const place = placeOf({
    station: [first[1], first[2]].filter(Boolean).join(", "),
    utcOffset: first[3],
    latitude: first[4],
    longitude: first[5],
    elevation: first[6],
  });
  if ("kind" in place) return place;
  const series = hourlyRows(lines, 2, {
    clock: (fields) => {
      const date = /^(\d{1,2})\/(\d{1,2})\/\d{4}$/.exec(fields[dateColumn] ?? "");
      const time = /^(\d{1,2}):00$/.exec(fields[timeColumn] ?? "");
      return date && time ? [Number(date[1]), Number(date[2]), Number(time[1])] : null;
    },
    column,
  });
  return "kind" in series ? series : typicalYear({ layout: "TMY3", place, series });
}

/** Fields of a line in which a name may stand in quotation marks and hold commas. */
function quotedFields(line: string): readonly string[] {
  return Array.from(line.matchAll(/(?:^|,)\s*(?:"([^"]*)"|([^,]*))/g), ([, quoted, bare]) =>
    (quoted ?? bare ?? "").trim(),
  );
}
