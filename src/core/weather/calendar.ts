import { within } from "../numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../sun/index.ts";

/** No year here has a 29 February. */
export const DAYS_A_YEAR = 365;
export const HOURS_A_YEAR = 8760;

/** Month (0 = January) of each day of the year. */
export const MONTH_OF_DAY: Readonly<Uint8Array> = Uint8Array.from(
  MEAN_DAY_BY_MONTH.flatMap(({ days }, month) => Array.from({ length: days }, () => month)),
);

/** Mean over the days of each month of a value that each day of the year has. */
export function meanByMonth(valueByDay: ArrayLike<number>): readonly number[] {
  return MEAN_DAY_BY_MONTH.map(({ firstDayOfYear, days }) => {
    let total = 0;
    for (let day = firstDayOfYear - 1; day < firstDayOfYear - 1 + days; day += 1) total += valueByDay[day]!;
    return total / days;
  });
}

/**
 * A list by month, every value checked.
 *
 * @throws RangeFault for a list without twelve entries or a value outside the range
 */
export function twelveWithin(
  name: string,
  values: readonly number[],
  min: number,
  max: number,
): readonly number[] {
  within(`months of ${name}`, values.length, 12, 12);
  return values.map((value) => within(name, value, min, max));
}
