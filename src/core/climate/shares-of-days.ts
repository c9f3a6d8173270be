import { clamp, within } from "../numerics/index.ts";
import { clearnessShares } from "./clearness-shares.ts";
import type { ClimateGrids } from "./grids.ts";
import type { CellShare } from "./lookup.ts";

/**
 * Weight of the generalised curve in a dull and in a clear month: fitted to the days of 19 stations (README, "Days";
 * tests/reference/measured-days), where each region left out in turn asked for 0.73 to 0.81 and 0.05 to 0.28.
 */
const IN_THE_DULL = { clearnessFrac: 0.3, weight: 0.8 };
const IN_THE_CLEAR = { clearnessFrac: 0.6, weight: 0.15 };

/**
 * A month's days at a place of the grid: the reanalysis' own shares, drawn toward those that measured days have for such
 * clearness.
 *
 * A reanalysis knows the dullest sixteenth of a damp winter, but has its next ones too bright and the spread too narrow:
 * its cells are 330 km wide, which may be why. The correction is the more of the generalised curve the duller the month;
 * where the sky is clear the place's own shares say more than the curve.
 *
 * @param gridShares     sixteen, rising, mean 1
 * @param clearnessFrac  of the month, 0 to 1
 * @returns sixteen shares, rising, mean 1
 * @accuracy against measured days between 37 and 54 N, in regions left out of the fit: the first four sixteenths 0.06 (root
 *           mean square; 0.10 before) in damp winters, 0.07 (0.10) in other damp months, 0.09 (as before) at dry and alpine
 *           places. Damp winters are still too narrow by a twelfth, below a clearness of 0.32 with the dullest sixteenth
 *           0.02 to 0.05 too bright; dry and alpine places are too wide by a tenth. Unchecked in the tropics, in the south
 *           and north of 54 N
 * @throws RangeFault outside the range above
 * @source our own fit; the curve: see clearnessShares
 */
export function sharesOfDays(gridShares: readonly number[], clearnessFrac: number): readonly number[] {
  const curve = clearnessShares(clearnessFrac);
  const weight = curveWeight(clearnessFrac);
  return gridShares.map((share, i) => (1 - weight) * share + weight * curve[i]!);
}

function curveWeight(clearnessFrac: number): number {
  const clear =
    (within("clearnessFrac", clearnessFrac, 0, 1) - IN_THE_DULL.clearnessFrac) /
    (IN_THE_CLEAR.clearnessFrac - IN_THE_DULL.clearnessFrac);
  return IN_THE_DULL.weight + (IN_THE_CLEAR.weight - IN_THE_DULL.weight) * clamp(clear, 0, 1);
}

/** What the grid itself has for a month at the cells round a place: sixteen shares, rising, mean 1. */
export function gridShares(
  grids: ClimateGrids,
  month: number,
  cells: readonly CellShare[],
): readonly number[] {
  const { dailyShareSqrt } = grids;
  const count = dailyShareSqrt.planes / 12;
  const size = dailyShareSqrt.rows * dailyShareSqrt.columns;
  const shares = Array.from({ length: count }, (_, q) => {
    const first = (month * count + q) * size;
    let total = 0;
    for (const { cell, share } of cells)
      total += share * (dailyShareSqrt.stored[first + cell]! * dailyShareSqrt.scale) ** 2;
    return total;
  });
  const mean = shares.reduce((total, share) => total + share, 0) / count;
  return shares.map((share) => share / mean);
}
