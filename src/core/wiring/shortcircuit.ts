import { within } from "../numerics/index.ts";
import { type FuseFamily, fuseKind } from "./fuse.ts";

/**
 * Fault current that a battery bank drives through a dead short.
 *
 * @param blockV             open-circuit voltage of one block, 1 to 100
 * @param blockOhm           internal resistance of one block, 0.0001 to 1
 * @param blocksInSeries     1 to 100
 * @param stringsInParallel  1 to 100
 * @param leadOhm            of everything between the bank's terminals and the fault, 0 to 1
 * @returns A; parallel strings add, blocks in series do not
 * @accuracy the usual estimate; measured peaks lie within about 20 % of it (common practice, no source)
 * @throws RangeFault outside the ranges above
 * @source open-circuit voltage over total resistance; IEEE 946 (from memory) takes the same view
 */
export function shortCircuitA({
  blockV,
  blockOhm,
  blocksInSeries,
  stringsInParallel,
  leadOhm,
}: {
  readonly blockV: number;
  readonly blockOhm: number;
  readonly blocksInSeries: number;
  readonly stringsInParallel: number;
  readonly leadOhm: number;
}): number {
  within("blockV", blockV, 1, 100);
  within("blockOhm", blockOhm, 1e-4, 1);
  within("blocksInSeries", blocksInSeries, 1, 100);
  within("stringsInParallel", stringsInParallel, 1, 100);
  within("leadOhm", leadOhm, 0, 1);
  return (blockV * blocksInSeries) / ((blockOhm * blocksInSeries) / stringsInParallel + leadOhm);
}

/** Chemistry as far as fault current goes. */
export type BankChemistry = "lead-acid" | "lithium";

/**
 * Stand-in for the fault current at a bank's terminals where the maker states no internal resistance.
 *
 * @param capacityAh  of all parallel strings together, 1 to 10 000
 * @returns A; deliberately high
 * @accuracy order of magnitude; use the maker's figure where there is one
 * @throws RangeFault outside the range above
 * @source lead-acid: ten times the one-minute rate (IEEE 946, from memory) at about 4 A per Ah for high-rate cells
 *   (from memory). lithium: 3.2 V over 0.5 milliohm for a bare 100 Ah iron-phosphate cell (from memory)
 */
export function typicalShortCircuitA({
  capacityAh,
  chemistry,
}: {
  readonly capacityAh: number;
  readonly chemistry: BankChemistry;
}): number {
  within("capacityAh", capacityAh, 1, 10_000);
  return capacityAh * (chemistry === "lithium" ? 64 : 40);
}

/** What the fuse at the battery must be able to break. */
export interface InterruptingAdvice {
  /** Kinds whose usual interrupting and voltage ratings suffice, weakest first. */
  readonly families: readonly FuseFamily[];
  /** The rule for those who cannot judge: a class T fuse, or its equal, at the battery. */
  readonly useClassT: boolean;
}

const FUSES_BY_INTERRUPTING: readonly FuseFamily[] = ["blade", "strip", "gpv", "class-t"];

/**
 * Kinds of fuse that can safely break a bank's fault current. A fuse of too low an interrupting rating bursts.
 *
 * @param prospectiveA  fault current where the fuse sits, 0 to 1 000 000
 * @param maxChargeV    highest charging voltage of the bank, 1 to 1500
 * @param capacityAh    of the bank, 1 to 10 000
 * @throws RangeFault outside the ranges above
 * @source class T above about 50 Ah of lithium or 100 Ah of lead-acid: common practice, no source; a 20 kA fuse for banks
 *   up to 1000 Ah: Sandia suggested practices for stand-alone systems; usual ratings of each kind: see fuseKind
 */
export function interruptingAdvice({
  prospectiveA,
  maxChargeV,
  capacityAh,
  chemistry,
}: {
  readonly prospectiveA: number;
  readonly maxChargeV: number;
  readonly capacityAh: number;
  readonly chemistry: BankChemistry;
}): InterruptingAdvice {
  within("prospectiveA", prospectiveA, 0, 1e6);
  within("maxChargeV", maxChargeV, 1, 1500);
  within("capacityAh", capacityAh, 1, 10_000);
  const families = FUSES_BY_INTERRUPTING.filter((family) => {
    const { interruptingA, maxDcV } = fuseKind(family);
    return interruptingA >= prospectiveA && maxDcV >= maxChargeV;
  });
  return { families, useClassT: capacityAh > (chemistry === "lithium" ? 50 : 100) };
}
