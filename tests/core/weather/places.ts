import { type Climate, climateAt } from "../../../src/core/climate/index.ts";
import { grids } from "../climate/grids.ts";

export const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export interface Place extends Climate {
  readonly latitudeDeg: number;
}

/** The embedded climate of a place on land. */
export function placeAt(latitudeDeg: number, longitudeDeg: number): Place {
  const found = climateAt({ grids, latitudeDeg, longitudeDeg });
  if (found.kind === "refused") throw new Error(found.why);
  return { ...found, latitudeDeg };
}

export const boston = placeAt(42.4, -71);
export const zurich = placeAt(47.5, 8.5);
export const phoenix = placeAt(33.4, -112);
export const singapore = placeAt(1.4, 103.9);
export const tromso = placeAt(69.6, 18.9);
export const santiago = placeAt(-33.4, -70.8);

/** Every day of one month of all years, and the day after it, if that is of the same month. */
export function daysOfMonth(daily: Float64Array, month: number): readonly (readonly number[])[] {
  const first = DAYS.slice(0, month).reduce((total, days) => total + days, 0);
  return Array.from({ length: daily.length / 365 }, (_, year) =>
    Array.from(daily.subarray(year * 365 + first, year * 365 + first + DAYS[month]!)),
  );
}
