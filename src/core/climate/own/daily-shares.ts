import { mean } from "../../numerics/index.ts";

/** Equally likely daily values that stand for a month, as many as the embedded grid has. */
const SHARES = 16;

/**
 * Distribution of a month's days in the form of Climate.dailyGhiQuantilesByMonth: the days in order of brightness cut
 * into sixteen equal parts, the mean of each over the mean of all. A day that a cut goes through counts on both sides.
 *
 * @param dailyKWhPerM2  of each day, one or more, 0 or more
 * @returns sixteen shares, rising, mean 1; all 1 for a month without light
 */
export function dailyShares(dailyKWhPerM2: readonly number[]): readonly number[] {
  const sorted = [...dailyKWhPerM2].sort((a, b) => a - b);
  const all = mean(sorted);
  if (!(all > 0)) return Array.from({ length: SHARES }, () => 1);
  const width = sorted.length / SHARES;
  return Array.from({ length: SHARES }, (_, share) => {
    const from = share * width;
    let total = 0;
    for (let day = Math.floor(from); day < Math.min(sorted.length, from + width); day += 1) {
      total += sorted[day]! * Math.max(0, Math.min(day + 1, from + width) - Math.max(day, from));
    }
    return total / width / all;
  });
}
