import { within } from "../numerics/index.ts";

/** Speed of light in vacuum, m/s: exact by the definition of the metre (SI). */
export const LIGHT_M_PER_S = 299_792_458;

/**
 * Wavelength in vacuum.
 *
 * @param frequencyMHz  30 to 300 000
 * @returns m
 * @accuracy exact; air shortens it by 0.03 %
 * @throws RangeFault outside the range above
 * @source definition, speed of light exact by the SI
 */
export function wavelengthM(frequencyMHz: number): number {
  return LIGHT_M_PER_S / (within("frequencyMHz", frequencyMHz, 30, 300_000) * 1e6);
}

/**
 * Loss between two isotropic antennas in free space.
 *
 * @param distanceM     1 to 1 000 000
 * @param frequencyMHz  30 to 300 000
 * @returns dB, positive; 0.048 dB above the constant 32.4 that the Recommendation prints rounded. Meaningless closer
 *          than the antennas' far field
 * @accuracy exact for free space
 * @throws RangeFault outside the ranges above
 * @source Recommendation ITU-R P.525, free-space basic transmission loss, 20 log10(4 pi d / lambda)
 * @example freeSpaceLossDb({ distanceM: 1000, frequencyMHz: 5800 })  // 107.72
 */
export function freeSpaceLossDb(path: { readonly distanceM: number; readonly frequencyMHz: number }): number {
  const distanceM = within("distanceM", path.distanceM, 1, 1_000_000);
  const loss = 20 * Math.log10((4 * Math.PI * distanceM) / wavelengthM(path.frequencyMHz));
  // a few wavelengths away at the lowest frequencies the formula would promise a gain
  return Math.max(0, loss);
}
