import { within } from "../numerics/index.ts";
import { wavelengthM } from "./free-space.ts";

/**
 * Gain of a dish.
 *
 * @param diameterM       0.05 to 10
 * @param frequencyMHz    300 to 300 000
 * @param efficiencyFrac  0.3 to 0.8; 0.55 when absent, a cautious middle
 * @returns dBi
 * @accuracy the unknown efficiency is worth about 0.5 dB; ITU-R F.699 takes 0.597
 * @throws RangeFault outside the ranges above
 * @source aperture formula 10 log10(eta (pi D/lambda)^2), from memory
 */
export function dishGainDbi(dish: {
  readonly diameterM: number;
  readonly frequencyMHz: number;
  readonly efficiencyFrac?: number;
}): number {
  const diameterM = within("diameterM", dish.diameterM, 0.05, 10);
  const efficiencyFrac = within("efficiencyFrac", dish.efficiencyFrac ?? 0.55, 0.3, 0.8);
  const waves = diameterM / wavelengthM(within("frequencyMHz", dish.frequencyMHz, 300, 300_000));
  return 10 * Math.log10(efficiencyFrac * (Math.PI * waves) ** 2);
}

/**
 * Full width between the half-power points of a dish's beam.
 *
 * @param diameterM     0.05 to 10
 * @param frequencyMHz  300 to 300 000
 * @returns degrees, at most 180
 * @accuracy about 10 %: depends on how the feed lights the dish
 * @throws RangeFault outside the ranges above
 * @source 70 lambda/D, common practice, from memory
 */
export function dishBeamwidthDeg(dish: {
  readonly diameterM: number;
  readonly frequencyMHz: number;
}): number {
  const diameterM = within("diameterM", dish.diameterM, 0.05, 10);
  const waveM = wavelengthM(within("frequencyMHz", dish.frequencyMHz, 300, 300_000));
  return Math.min(180, (70 * waveM) / diameterM);
}

/**
 * Half-power width of a beam when only the gain is known, round beam.
 *
 * @param gainDbi  6 to 60
 * @returns degrees, full width
 * @accuracy about 15 %
 * @throws RangeFault outside the range above
 * @source gain = 29 500 / (azimuth x elevation width), the middle of 27 000 to 32 000 for real antennas; from memory
 */
export function beamwidthFromGainDeg(gainDbi: number): number {
  return Math.sqrt(29_500 / 10 ** (within("gainDbi", gainDbi, 6, 60) / 10));
}

/**
 * Loss of an antenna that looks past the other end. Losses of both ends add.
 *
 * @param offAxisDeg    angle between the beam's middle and the other end, -180 to 180
 * @param beamwidthDeg  FULL width between the half-power points, 0.05 to 180
 * @returns dB, held at 25: beyond about one full width side lobes decide and the parabola means nothing
 * @throws RangeFault outside the ranges above
 * @source main lobe of Recommendations ITU-R F.699 and F.1336, 12 (theta/theta3)^2, from memory; the hold is judgement
 */
export function misalignmentLossDb(aim: {
  readonly offAxisDeg: number;
  readonly beamwidthDeg: number;
}): number {
  const ratio =
    within("offAxisDeg", aim.offAxisDeg, -180, 180) / within("beamwidthDeg", aim.beamwidthDeg, 0.05, 180);
  return Math.min(25, 12 * ratio ** 2);
}

/**
 * Twist or lean of the mast that costs no more than a given loss.
 *
 * @param lossDb        0 to 12 at this end; 1 dB is a common allowance
 * @param beamwidthDeg  full width between the half-power points, 0.05 to 180
 * @returns degrees either way
 * @throws RangeFault outside the ranges above
 * @source inverse of {@link misalignmentLossDb}
 */
export function permittedLeanDeg(aim: { readonly lossDb: number; readonly beamwidthDeg: number }): number {
  return (
    within("beamwidthDeg", aim.beamwidthDeg, 0.05, 180) * Math.sqrt(within("lossDb", aim.lossDb, 0, 12) / 12)
  );
}

/** What crossed polarisation costs a real antenna at most, dB: 20 to 30, the lower taken (from memory). */
const CROSS_POLAR_DB = 20;

/**
 * Loss between two linearly polarised antennas turned against each other.
 *
 * @param twistDeg  -90 to 90
 * @returns dB, held at 20: real antennas leak
 * @throws RangeFault outside the range above
 * @source -20 log10(cos), definition; the hold from memory
 */
export function polarisationLossDb(twistDeg: number): number {
  const cosine = Math.cos((within("twistDeg", twistDeg, -90, 90) * Math.PI) / 180);
  return cosine <= 10 ** (-CROSS_POLAR_DB / 20) ? CROSS_POLAR_DB : -20 * Math.log10(cosine);
}

/**
 * Half-power width in elevation of an antenna that sees a sector or all round: how far below or above its horizon a
 * post may stand.
 *
 * @param gainDbi          3 to 25
 * @param sectorWidthDeg   half-power width in azimuth, 10 to 180; absent: all round
 * @returns degrees, full width, at most 180
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R F.1336 (from memory): 107.6 x 10^(-G/10) all round, 31 000 x 10^(-G/10)/sector
 */
export function elevationBeamwidthDeg(antenna: {
  readonly gainDbi: number;
  readonly sectorWidthDeg?: number;
}): number {
  const shrink = 10 ** (-within("gainDbi", antenna.gainDbi, 3, 25) / 10);
  if (antenna.sectorWidthDeg === undefined) return 107.6 * shrink;
  return Math.min(180, (31_000 * shrink) / within("sectorWidthDeg", antenna.sectorWidthDeg, 10, 180));
}

/**
 * Distance at which the far field of an antenna begins; the link formulas hold beyond it.
 *
 * @param diameterM     largest dimension, 0.01 to 10
 * @param frequencyMHz  300 to 300 000
 * @returns m
 * @throws RangeFault outside the ranges above
 * @source 2 D^2/lambda, common practice, from memory
 */
export function farFieldM(antenna: { readonly diameterM: number; readonly frequencyMHz: number }): number {
  const diameterM = within("diameterM", antenna.diameterM, 0.01, 10);
  return (2 * diameterM ** 2) / wavelengthM(within("frequencyMHz", antenna.frequencyMHz, 300, 300_000));
}
