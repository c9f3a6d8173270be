import { hourlyRows, type RowLayout } from "./hourly-rows.ts";
import { refused } from "./refusal.ts";
import { type TypicalYear, typicalYear, type YearRefused } from "./typical-year.ts";
import { placeOf } from "./year-place.ts";

/** The header ends with this line, the eighth by the layout. */
const LAST_HEADER = "DATA PERIODS";
const LONGEST_HEADER_LINES = 40;

const ROW: RowLayout = {
  clock: (fields) => {
    const [month, day, hour] = fields.slice(1, 4).map(Number);
    return fields.length > 21 ? [month!, day!, hour!] : null;
  },
  column: { ghi: 13, dni: 14, dhi: 15, temp: 6, wind: 21 },
};

/**
 * A typical year in the open EPW layout (EnergyPlus weather, comma-separated, 8 header lines, 8760 rows of 35 fields).
 *
 * @param text  of the whole file
 * @returns the year, or one reason why not; a text never throws
 * @source Auxiliary Programs of EnergyPlus, "EnergyPlus Weather File (EPW) Data Dictionary" (from memory; columns checked
 *         against pvlib 0.16.1)
 */
export function readEpw(text: string): TypicalYear | YearRefused {
  const lines = text.split(/\r\n|\n|\r/);
  const first = lines[0]!
    .replace(/^\uFEFF/, "")
    .split(",")
    .map((field) => field.trim());
  if (first[0]!.toUpperCase() !== "LOCATION") {
    return refused("not-this-layout", "An EPW file begins with LOCATION.");
  }
  const place = placeOf({
    station: [first[1], first[2], first[3]].filter((name) => name && name !== "-").join(", "),
    latitude: first[6],
    longitude: first[7],
    utcOffset: first[8],
    elevation: first[9],
  });
  if ("kind" in place) return place;
  const lastHeader = lines.findIndex(
    (line, i) => i < LONGEST_HEADER_LINES && line.toUpperCase().startsWith(LAST_HEADER),
  );
  if (lastHeader < 0) return refused("damaged-header", `The header lacks its last line, ${LAST_HEADER}.`);
  const perHour = lines[lastHeader]!.split(",")[2]?.trim();
  if (Number(perHour) !== 1) {
    return refused(
      "not-hourly",
      `The header says ${perHour || "nothing"} for records in an hour; read is one.`,
    );
  }
  const series = hourlyRows(lines, lastHeader + 1, ROW);
  return "kind" in series ? series : typicalYear({ layout: "EPW", place, series });
}
