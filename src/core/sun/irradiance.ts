import { cosDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import { hourlyDiffuseFrac } from "./diffuse.ts";

/**
 * Optical path through the air relative to straight up.
 *
 * @param apparentZenithDeg  0 to 90, refraction included
 * @returns ratio, 1 overhead, about 38 at the horizon
 * @accuracy 0.5 % of its own table
 * @throws RangeFault outside the range above
 * @source Kasten and Young 1989, Applied Optics 28, 4735, eq. 3
 */
export function relativeAirMassRatio(apparentZenithDeg: number): number {
  const zenithDeg = within("apparentZenithDeg", apparentZenithDeg, 0, 90);
  return 1 / (cosDeg(zenithDeg) + 0.50572 * (96.07995 - zenithDeg) ** -1.6364);
}

/**
 * Global horizontal irradiance under a cloudless sky, by the sun's height alone.
 *
 * @param apparentZenithDeg  0 to 180
 * @returns W/m2; 0 with the sun down
 * @accuracy 5 to 10 % at sea level; turbidity and height are not seen
 * @throws RangeFault outside the range above
 * @source Haurwitz 1945 and 1946, with the constants 1098 W/m2 and 0.059 in common use (pvlib 0.16.1)
 */
export function clearSkyGhiWPerM2(apparentZenithDeg: number): number {
  const cosine = cosDeg(within("apparentZenithDeg", apparentZenithDeg, 0, 180));
  return cosine > 0 ? 1098 * cosine * Math.exp(-0.059 / cosine) : 0;
}

/** Irradiance parted into what comes straight from the sun and what comes from the sky. */
export interface SplitIrradiance {
  /** On the level. */
  readonly diffuseWPerM2: number;
  /** Square to the sun. */
  readonly beamNormalWPerM2: number;
  readonly clearnessIndex: number;
}

/**
 * Lower than this the beam cannot be told from the level: a cosine of 0.065 (86.3 deg) bounds the clearness
 * index.
 */
const LEAST_COSINE = 0.065;
const LOWEST_BEAM_ZENITH_DEG = 87;

/**
 * Global irradiance of an hour split by its clearness index. Near the horizon the index is formed with a
 * cosine of at least 0.065 and held at 1; beyond 87 deg of zenith all is diffuse.
 *
 * @param hour.ghiWPerM2                     0 to 2000
 * @param hour.zenithDeg                     of the sun without refraction, middle of the hour, 0 to 180
 * @param hour.extraterrestrialNormalWPerM2  1200 to 1500
 * @throws RangeFault outside the ranges above
 * @source Erbs, Klein and Duffie 1982; the guards near the horizon are those of pvlib 0.16.1
 */
export function splitIrradiance(hour: {
  readonly ghiWPerM2: number;
  readonly zenithDeg: number;
  readonly extraterrestrialNormalWPerM2: number;
}): SplitIrradiance {
  const ghi = within("ghiWPerM2", hour.ghiWPerM2, 0, 2000);
  const zenithDeg = within("zenithDeg", hour.zenithDeg, 0, 180);
  const normal = within("extraterrestrialNormalWPerM2", hour.extraterrestrialNormalWPerM2, 1200, 1500);
  const clearnessIndex = Math.min(1, ghi / (normal * Math.max(cosDeg(zenithDeg), LEAST_COSINE)));
  if (zenithDeg > LOWEST_BEAM_ZENITH_DEG) return { diffuseWPerM2: ghi, beamNormalWPerM2: 0, clearnessIndex };
  const diffuseWPerM2 = ghi * hourlyDiffuseFrac(clearnessIndex);
  return { diffuseWPerM2, beamNormalWPerM2: (ghi - diffuseWPerM2) / cosDeg(zenithDeg), clearnessIndex };
}

/** Irradiance on a plane, by where it comes from. */
export interface PlaneIrradiance {
  readonly poaWPerM2: number;
  readonly beamWPerM2: number;
  readonly skyWPerM2: number;
  readonly groundWPerM2: number;
}

/**
 * Irradiance on a tilted plane under an evenly bright sky and a free horizon.
 *
 * @param light.beamNormalWPerM2  0 to 1500
 * @param light.diffuseWPerM2     0 to 1500, on the level
 * @param light.ghiWPerM2         0 to 2000
 * @param light.incidenceDeg      0 to 180
 * @param light.tiltDeg           0 to 180
 * @param light.albedo            0 to 1
 * @throws RangeFault outside the ranges above
 * @source Liu and Jordan 1963; Duffie and Beckman eq. 2.15.1
 */
export function isotropicPoa(light: {
  readonly beamNormalWPerM2: number;
  readonly diffuseWPerM2: number;
  readonly ghiWPerM2: number;
  readonly incidenceDeg: number;
  readonly tiltDeg: number;
  readonly albedo: number;
}): PlaneIrradiance {
  const tiltCosine = cosDeg(within("tiltDeg", light.tiltDeg, 0, 180));
  const beamWPerM2 =
    within("beamNormalWPerM2", light.beamNormalWPerM2, 0, 1500) *
    Math.max(0, cosDeg(within("incidenceDeg", light.incidenceDeg, 0, 180)));
  const skyWPerM2 = (within("diffuseWPerM2", light.diffuseWPerM2, 0, 1500) * (1 + tiltCosine)) / 2;
  const groundWPerM2 =
    (within("ghiWPerM2", light.ghiWPerM2, 0, 2000) *
      within("albedo", light.albedo, 0, 1) *
      (1 - tiltCosine)) /
    2;
  return { poaWPerM2: beamWPerM2 + skyWPerM2 + groundWPerM2, beamWPerM2, skyWPerM2, groundWPerM2 };
}
