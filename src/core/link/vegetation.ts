import { within } from "../numerics/index.ts";

/** Depth at which Weissberger's two branches meet, m; they miss each other by up to 0.5 % there. */
const BRANCH_DEPTH_M = 14;

/**
 * Loss through dense, dry trees in leaf that stand IN the path.
 *
 * @param frequencyMHz  230 to 95 000
 * @param depthM        metres of trees along the path, 0 to 400
 * @returns dB
 * @accuracy models of vegetation disagree by 10 to 20 dB, and wet leaves, growth and wind change it by 10 dB or more: do
 *           not plan a link through trees
 * @throws RangeFault outside the ranges above
 * @source Weissberger's modified exponential decay model, 1982, read in an open encyclopedia: 1.33 f^0.284 d^0.588 beyond
 *         14 m, 0.45 f^0.284 d up to it
 * @example treeLossDb({ frequencyMHz: 5800, depthM: 10 })  // 7.4
 */
export function treeLossDb(trees: { readonly frequencyMHz: number; readonly depthM: number }): number {
  const gigahertz = within("frequencyMHz", trees.frequencyMHz, 230, 95_000) / 1000;
  const depthM = within("depthM", trees.depthM, 0, 400);
  return depthM <= BRANCH_DEPTH_M
    ? 0.45 * gigahertz ** 0.284 * depthM
    : 1.33 * gigahertz ** 0.284 * depthM ** 0.588;
}

/**
 * Loss of an antenna that stands inside a wood: it grows with depth towards a maximum, because the wave finds ways round.
 *
 * @param depthM         metres of wood on the path, 0 to 10 000
 * @param gammaDbPerM    specific attenuation for short depths, 0.001 to 10, see {@link woodGammaDbPerM}
 * @param maxDb          the maximum, 1 to 100, see {@link woodMaxDb}
 * @returns dB
 * @accuracy a factor of two: the measured specific attenuation scatters that much
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.833 clause 2.1, Am (1 - exp(-d gamma/Am)), as quoted in open measurement code
 */
export function woodLossDb(wood: {
  readonly depthM: number;
  readonly gammaDbPerM: number;
  readonly maxDb: number;
}): number {
  const maxDb = within("maxDb", wood.maxDb, 1, 100);
  const gammaDbPerM = within("gammaDbPerM", wood.gammaDbPerM, 0.001, 10);
  return maxDb * (1 - Math.exp((-within("depthM", wood.depthM, 0, 10_000) * gammaDbPerM) / maxDb));
}

/** Three points of P.833 figure 2, vertical polarisation, as digitised in open measurement code: MHz, dB/m. */
const GAMMA_POINTS = [
  [30, 0.02],
  [1000, 0.2],
  [30_000, 6],
] as const;

/**
 * Specific attenuation of woodland for vertical polarisation.
 *
 * @param frequencyMHz  30 to 30 000
 * @returns dB/m
 * @accuracy a factor of two
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.833 figure 2, three points joined in log-log
 */
export function woodGammaDbPerM(frequencyMHz: number): number {
  within("frequencyMHz", frequencyMHz, 30, 30_000);
  const [low, high] =
    frequencyMHz <= GAMMA_POINTS[1][0]
      ? [GAMMA_POINTS[0], GAMMA_POINTS[1]]
      : [GAMMA_POINTS[1], GAMMA_POINTS[2]];
  const slope = Math.log(high[1] / low[1]) / Math.log(high[0] / low[0]);
  return low[1] * (frequencyMHz / low[0]) ** slope;
}

/**
 * Maximum loss of woodland with one antenna inside.
 *
 * @param frequencyMHz  100 to 3000
 * @returns dB
 * @accuracy within 3.5 dB of the five measured values of mixed woodland near Saint Petersburg
 * @throws RangeFault outside the range above
 * @source Recommendation ITU-R P.833 clause 2.1, Am = 1.37 f^0.42 (from memory; reproduces that table)
 */
export function woodMaxDb(frequencyMHz: number): number {
  return 1.37 * within("frequencyMHz", frequencyMHz, 100, 3000) ** 0.42;
}
