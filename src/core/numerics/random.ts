import { within } from "./fault.ts";

/** A stream of chance that a seed fixes. Each call gives the next number; two streams never share state. */
export interface SeededDraws {
  /** 32 random bits, 0 to 4294967295. */
  readonly bits: () => number;
  /** Evenly spread, above 0 and below 1. */
  readonly uniform: () => number;
  /** From the standard normal distribution. */
  readonly normal: () => number;
}

/** The multiplier 6364136223846793005 in its upper and lower half. */
const MULTIPLIER_HIGH = 0x5851f42d;
const MULTIPLIER_LOW = 0x4c957f2d;

/**
 * Draws that are the same on every machine for the same seed.
 *
 * @param from.seed    whole number, 0 to 4294967295
 * @param from.stream  whole number, 0 to 4294967295: independent streams for one seed; 0 when left out
 * @returns draws; uniform has a resolution of 2^-32, so normal stays within 6.7
 * @throws RangeFault outside the ranges above
 * @source PCG-XSH-RR 64/32: O'Neill 2014, Harvey Mudd College HMC-CS-2014-0905, with the seeding of its minimal C
 *         library; normal by Box and Muller 1958, Annals of Mathematical Statistics 29, 610
 */
export function seededDraws(from: { readonly seed: number; readonly stream?: number }): SeededDraws {
  const seed = within("seed", from.seed, 0, 0xffff_ffff) >>> 0;
  const stream = within("stream", from.stream ?? 0, 0, 0xffff_ffff) >>> 0;
  // the increment is the stream number shifted left by one, plus one
  const incrementHigh = stream >>> 31;
  const incrementLow = ((stream << 1) | 1) >>> 0;
  let high = 0;
  let low = 0;

  const add = (byHigh: number, byLow: number): void => {
    const sumLow = low + byLow;
    high = (high + byHigh + (sumLow > 0xffff_ffff ? 1 : 0)) >>> 0;
    low = sumLow >>> 0;
  };
  const step = (): void => {
    const nextHigh = upperHalf(low, MULTIPLIER_LOW) + Math.imul(low, MULTIPLIER_HIGH);
    high = (nextHigh + Math.imul(high, MULTIPLIER_LOW)) >>> 0;
    low = Math.imul(low, MULTIPLIER_LOW) >>> 0;
    add(incrementHigh, incrementLow);
  };
  step();
  add(0, seed);
  step();

  const bits = (): number => {
    const turn = high >>> 27;
    // ((state >> 18) ^ state) >> 27, its lower 32 bits
    const mixedHigh = (high ^ (high >>> 18)) >>> 0;
    const mixedLow = (low ^ ((low >>> 18) | (high << 14))) >>> 0;
    const word = ((mixedLow >>> 27) | (mixedHigh << 5)) >>> 0;
    step();
    return ((word >>> turn) | (word << (-turn & 31))) >>> 0;
  };
  const uniform = (): number => (bits() + 0.5) / 0x1_0000_0000;
  let spare = Number.NaN;
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { bits, uniform, normal };
}

/** Upper 32 bits of the product of two 32-bit numbers. */
function upperHalf(a: number, b: number): number {
  const aLow = a & 0xffff;
  const aHigh = a >>> 16;
  const bLow = b & 0xffff;
  const bHigh = b >>> 16;
  const middle = aHigh * bLow + ((aLow * bLow) >>> 16);
  const otherMiddle = aLow * bHigh + (middle & 0xffff);
  return aHigh * bHigh + Math.floor(middle / 0x10000) + Math.floor(otherMiddle / 0x10000);
}
