import { within } from "../numerics/index.ts";

/** A block (one case, one or more cells) that can be bought. */
export interface BlockSize {
  /** Nominal: 2, 6, 12, 12.8 ... */
  readonly blockV: number;
  readonly capacityAh: number;
  readonly massKg: number;
}

export interface BankLayout {
  readonly block: BlockSize;
  readonly series: number;
  readonly parallel: number;
  readonly blocks: number;
  readonly bankAh: number;
  readonly totalMassKg: number;
  /** Capacity beyond what was asked, over what was asked; 0 when nothing was asked. */
  readonly overshootFrac: number;
  /**
   * What chose this size among those offered: `one-fits` only one size fits voltage and mass; `block-mass` a
   * heavier block was barred that would have needed fewer strings; `fewest-strings`; `least-overshoot` among
   * sizes with as few strings.
   */
  readonly decidedBy: "one-fits" | "block-mass" | "fewest-strings" | "least-overshoot";
  /** More strings in parallel than asked for, because no size that may be lifted does with fewer. */
  readonly exceedsMaxParallel: boolean;
}

/**
 * Strings in parallel share current unevenly: keep to this many (IEEE 1013 clause 8.2, number from memory).
 */
const MAX_PARALLEL = 4;

/**
 * Nominal voltages that differ by no more than this still make the bank voltage (12.8 V blocks on a 24 V
 * system).
 */
const VOLTAGE_SLACK_FRAC = 0.1;

/**
 * Whole blocks for a bank: as many in series as the bank voltage asks, as many strings as the capacity asks,
 * rounded up. The fewest strings win, then the least capacity beyond what was asked, then the least mass.
 *
 * @param bank.requiredAh   0 or more, at the bank voltage; at least one string is laid out
 * @param bank.bankV        nominal, 2 to 1000
 * @param bank.sizes        what can be bought
 * @param bank.maxBlockKg   heaviest single block that may be lifted; no limit when left out
 * @param bank.maxParallel  1 to 100; 4 when left out
 * @returns the layout, or null when no size fits the voltage and the mass
 * @throws RangeFault outside the ranges above
 * @source IEEE 1013 clauses 7 and 8.2 (rules from memory); the order of preference is our own
 */
export function layoutBank(bank: {
  readonly requiredAh: number;
  readonly bankV: number;
  readonly sizes: readonly BlockSize[];
  readonly maxBlockKg?: number;
  readonly maxParallel?: number;
}): BankLayout | null {
  const requiredAh = within("requiredAh", bank.requiredAh, 0, 1e7);
  const bankV = within("bankV", bank.bankV, 2, 1000);
  const maxBlockKg = within("maxBlockKg", bank.maxBlockKg ?? 1e6, 0, 1e6);
  const maxParallel = within("maxParallel", bank.maxParallel ?? MAX_PARALLEL, 1, 100);

  const laidOut = bank.sizes
    .map((block) => {
      const blockV = within("blockV", block.blockV, 1, 1000);
      const capacityAh = within("capacityAh", block.capacityAh, 0.1, 1e5);
      const series = Math.max(1, Math.round(bankV / blockV));
      // the quotient of equal decimals may exceed a whole number by rounding: 675 Ah of 225 Ah blocks is 3
      // strings
      const parallel = Math.max(1, Math.ceil(requiredAh / capacityAh - 1e-9));
      return { block, series, parallel, bankAh: parallel * capacityAh, blocks: series * parallel };
    })
    .filter(({ block, series }) => Math.abs((series * block.blockV) / bankV - 1) <= VOLTAGE_SLACK_FRAC)
    .sort(
      (a, b) =>
        a.parallel - b.parallel ||
        a.bankAh - b.bankAh ||
        a.blocks * a.block.massKg - b.blocks * b.block.massKg,
    );
  const liftable = laidOut.filter(({ block }) => block.massKg <= maxBlockKg);
  const best = liftable[0];
  if (!best) return null;

  const decidedBy =
    laidOut[0]!.parallel < best.parallel
      ? "block-mass"
      : liftable.length === 1
        ? "one-fits"
        : liftable[1]!.parallel === best.parallel
          ? "least-overshoot"
          : "fewest-strings";
  return {
    ...best,
    totalMassKg: best.blocks * best.block.massKg,
    overshootFrac: requiredAh > 0 ? best.bankAh / requiredAh - 1 : 0,
    decidedBy,
    exceedsMaxParallel: best.parallel > maxParallel,
  };
}
