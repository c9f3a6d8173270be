import { clamp, within } from "../numerics/index.ts";

const SHARES = 16;

/** The dullest day of any month. */
const LEAST_INDEX = 0.05;

/**
 * Distribution of a month's days by its clearness alone, in the form of Climate.dailyGhiQuantilesByMonth: for a place
 * without a grid, and as a part of what a place of the grid gets (sharesOfDays).
 *
 * The days' clearness lies between 0.05 and a largest one that grows with the mean, with an exponential density between
 * the two whose slope gives the mean.
 *
 * @param clearnessFrac  of the month, 0 to 1; below 0.1 and above 0.78 the form at those ends is taken
 * @returns sixteen shares, rising, mean 1
 * @accuracy against the embedded grid's own shares between 55 S and 60 N: single shares 0.12 (root mean square); the
 *           dullest sixteenth on average 0.18 of the mean lower, on the careful side. Against measured days at damp places
 *           the first four are right in winter and 0.05 to 0.10 too low in other months (tests/reference/measured-days)
 * @throws RangeFault outside the range above
 * @source Bendt, Collares-Pereira and Rabl 1981 with the largest index of Hollands and Huget 1983; Duffie and Beckman
 *         section 2.9 (equations from memory)
 */
export function clearnessShares(clearnessFrac: number): readonly number[] {
  const meanIndex = clamp(within("clearnessFrac", clearnessFrac, 0, 1), 0.1, 0.78);
  const mostIndex = 0.6313 + 0.267 * meanIndex - 11.9 * (meanIndex - 0.75) ** 8;
  const width = mostIndex - LEAST_INDEX;
  const slope = slopeOf((meanIndex - LEAST_INDEX) / width);
  const upTo = Array.from({ length: SHARES + 1 }, (_, share) => sumBelow(slope, share / SHARES));
  return Array.from({ length: SHARES }, (_, share) => {
    const meanOfShare = (upTo[share + 1]! - upTo[share]!) * SHARES;
    return (LEAST_INDEX + width * meanOfShare) / meanIndex;
  });
}

/** Of the density exp(slope x) between 0 and 1, the x below which a share of the days lies, summed over shares up to this. */
function sumBelow(slope: number, share: number): number {
  if (Math.abs(slope) < 1e-3) return share ** 2 / 2 + (slope * (share ** 2 / 2 - share ** 3 / 3)) / 2;
  const rise = Math.expm1(slope);
  const at = 1 + share * rise;
  return ((at > 0 ? at * Math.log(at) : 0) - share * rise) / (rise * slope);
}

/** The slope whose density has this mean, by halving; the mean is 1 / (1 - exp(-s)) - 1 / s and rises with s. */
function slopeOf(mean: number): number {
  let low = -100;
  let high = 100;
  for (let i = 0; i < 60; i += 1) {
    const slope = (low + high) / 2;
    const here = Math.abs(slope) < 1e-6 ? 0.5 + slope / 12 : 1 / -Math.expm1(-slope) - 1 / slope;
    if (here < mean) low = slope;
    else high = slope;
  }
  return (low + high) / 2;
}
