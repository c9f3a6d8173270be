import { refused } from "./refusal.ts";
import { DAYS_BY_MONTH, HOURS_A_YEAR, type HourlySeries, type YearRefused } from "./typical-year.ts";

/** Where a layout keeps what. */
export interface RowLayout {
  /** Month 1 to 12, day of the month, hour 1 to 24 (the hour that ends then); null where the row does not say. */
  readonly clock: (fields: readonly string[]) => readonly [month: number, day: number, hour: number] | null;
  readonly column: Readonly<Record<HourlySeries, number>>;
}

const SERIES = ["ghi", "dni", "dhi", "temp", "wind"] as const satisfies readonly HourlySeries[];

/**
 * Codes that stand for "missing" in EPW (irradiance 9999, temperature 99.9, wind 999), TMY3 (-9900) and files made from
 * other archives (999999, 99): nothing real lies there.
 */
const IS_MISSING: Readonly<Record<HourlySeries, (value: number) => boolean>> = {
  ghi: (value) => value >= 9999 || value <= -999,
  dni: (value) => value >= 9999 || value <= -999,
  dhi: (value) => value >= 9999 || value <= -999,
  temp: (value) => value >= 99.9 || value <= -99.9,
  wind: (value) => value >= 99 || value <= -99,
};

/** What a station can have measured: hourly irradiance under broken cloud, the coldest and the hottest air on record. */
const POSSIBLE: Readonly<Record<HourlySeries, readonly [min: number, max: number]>> = {
  ghi: [-20, 1600],
  dni: [-20, 1500],
  dhi: [-20, 1200],
  temp: [-90, 60],
  wind: [0, 90],
};

const NAMES: Readonly<Record<HourlySeries, string>> = {
  ghi: "global irradiance",
  dni: "direct irradiance",
  dhi: "diffuse irradiance",
  temp: "air temperature",
  wind: "wind speed",
};

/**
 * The rows of a year of hours, in order.
 *
 * @param lines      of the whole file
 * @param firstLine  index of the first row of data
 * @returns values by hour, NaN where missing; irradiance a little below nothing is nothing
 */
export function hourlyRows(
  lines: readonly string[],
  firstLine: number,
  layout: RowLayout,
): Readonly<Record<HourlySeries, Float64Array>> | YearRefused {
  const rows = lines.slice(firstLine);
  while (rows.length > 0 && rows.at(-1)!.trim() === "") rows.pop();
  const fieldsOf = (row: string): readonly string[] => row.split(",").map((field) => field.trim());
  if (rows.length !== HOURS_A_YEAR) {
    const hasLeapDay = rows.some((row) => {
      const [month, day] = layout.clock(fieldsOf(row)) ?? [0, 0];
      return month === 2 && day === 29;
    });
    return hasLeapDay
      ? refused(
          "leap-day",
          "The file has a 29 February: a typical year has 365 days. Take those 24 rows out.",
        )
      : refused("wrong-number-of-rows", `The file has ${rows.length} hours; a typical year has 8760.`);
  }
  const series: Record<HourlySeries, Float64Array> = {
    ghi: new Float64Array(HOURS_A_YEAR),
    dni: new Float64Array(HOURS_A_YEAR),
    dhi: new Float64Array(HOURS_A_YEAR),
    temp: new Float64Array(HOURS_A_YEAR),
    wind: new Float64Array(HOURS_A_YEAR),
  };
  let hourOfYear = 0;
  for (const [i, days] of DAYS_BY_MONTH.entries()) {
    for (let day = 1; day <= days; day += 1) {
      for (let hour = 1; hour <= 24; hour += 1) {
        const line = firstLine + hourOfYear + 1;
        const fields = fieldsOf(rows[hourOfYear]!);
        const clock = layout.clock(fields);
        if (clock === null) return refused("unreadable-row", `Line ${line} has no month, day and hour.`);
        if (clock[0] !== i + 1 || clock[1] !== day || clock[2] !== hour) {
          return refused(
            clock[0] === 2 && clock[1] === 29 ? "leap-day" : "out-of-order",
            `Line ${line} should be month ${i + 1}, day ${day}, hour ${hour} and is month ${clock[0]}, day ${clock[1]}, hour ${clock[2]}.`,
          );
        }
        for (const name of SERIES) {
          const value = fieldValue(fields, layout.column[name], name);
          if (typeof value !== "number")
            return refused(value.why, `Line ${line}: the ${NAMES[name]} ${value.says}.`);
          series[name][hourOfYear] = value;
        }
        hourOfYear += 1;
      }
    }
  }
  return series;
}

function fieldValue(
  fields: readonly string[],
  column: number,
  name: HourlySeries,
): number | { readonly why: "unreadable-row" | "impossible-value"; readonly says: string } {
  const field = fields[column];
  if (column < 0 || field === "") return Number.NaN;
  if (field === undefined) return { why: "unreadable-row", says: "is cut off" };
  const value = Number(field);
  if (!Number.isFinite(value))
    return { why: "unreadable-row", says: `is "${field.slice(0, 20)}", no number` };
  if (IS_MISSING[name](value)) return Number.NaN;
  const [min, max] = POSSIBLE[name];
  if (value < min || value > max) {
    return { why: "impossible-value", says: `is ${value}, possible are ${min} to ${max}` };
  }
  return min < 0 && name !== "temp" ? Math.max(0, value) : value;
}
