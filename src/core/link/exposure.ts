import { within } from "../numerics/index.ts";

/** Limit for the general public from 1.5 or 2 GHz up to 100 GHz, over 30 minutes: 1 mW/cm2. */
export const PUBLIC_LIMIT_W_PER_M2 = 10;

/** Nobody should come closer than this for long, whatever the sum says: practice of the FCC for mobile equipment. */
export const CLOSEST_APPROACH_M = 0.2;

/**
 * Factor on the power density for what the ground throws back.
 *
 * @source FCC OET Bulletin 65 edition 97-01: equation 4 (none), 6 (worst case, the field doubles), 7 (1.6 squared)
 */
export const REFLECTION_RATIO = { none: 1, typical: 2.56, worst: 4 } as const;

/**
 * Distance in front of an antenna beyond which the exposure limit is kept.
 *
 * @param eirpDbm          -30 to 120
 * @param limitWPerM2      0.1 to 1000; {@link PUBLIC_LIMIT_W_PER_M2} when absent. Some countries ask less: check
 * @param reflectionRatio  1 to 4, see {@link REFLECTION_RATIO}; worst when absent
 * @returns m, in the beam; stay out of it and further away than {@link CLOSEST_APPROACH_M} while the radio sends
 * @accuracy far-field formula: it overstates the density closer than about 0.6 D^2/lambda to a dish
 * @throws RangeFault outside the ranges above
 * @source FCC OET Bulletin 65 edition 97-01 equations 4, 6, 7 (4 quoted, 6 and 7 from memory); limits 47 CFR 1.1310
 *         table 1 and ICNIRP 2020 (partly from memory)
 * @example exposureDistanceM({ eirpDbm: 36 })  // 0.36
 */
export function exposureDistanceM(antenna: {
  readonly eirpDbm: number;
  readonly limitWPerM2?: number;
  readonly reflectionRatio?: number;
}): number {
  const eirpW = 10 ** (within("eirpDbm", antenna.eirpDbm, -30, 120) / 10 - 3);
  const limit = within("limitWPerM2", antenna.limitWPerM2 ?? PUBLIC_LIMIT_W_PER_M2, 0.1, 1000);
  const ratio = within("reflectionRatio", antenna.reflectionRatio ?? REFLECTION_RATIO.worst, 1, 4);
  return Math.sqrt((ratio * eirpW) / (4 * Math.PI * limit));
}

/**
 * Power density in the beam of an antenna.
 *
 * @param eirpDbm          -30 to 120
 * @param distanceM        0.01 to 1 000 000
 * @param reflectionRatio  1 to 4, see {@link REFLECTION_RATIO}; none when absent
 * @returns W/m2
 * @throws RangeFault outside the ranges above
 * @source FCC OET Bulletin 65 edition 97-01 equations 4, 6, 7
 */
export function powerDensityWPerM2(antenna: {
  readonly eirpDbm: number;
  readonly distanceM: number;
  readonly reflectionRatio?: number;
}): number {
  const eirpW = 10 ** (within("eirpDbm", antenna.eirpDbm, -30, 120) / 10 - 3);
  const distanceM = within("distanceM", antenna.distanceM, 0.01, 1_000_000);
  const ratio = within("reflectionRatio", antenna.reflectionRatio ?? REFLECTION_RATIO.none, 1, 4);
  return (ratio * eirpW) / (4 * Math.PI * distanceM ** 2);
}
