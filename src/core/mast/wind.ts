import { interpolate, sum, within } from "../numerics/index.ts";
import { EXPOSURE_ROWS, FORCE_COEFFICIENT_ROWS, M_PER_FT } from "./tables.ts";

/** B built-up or wooded, C open country (when unsure), D open water or flats. */
export type Exposure = keyof typeof EXPOSURE_ROWS;

/** Share of a strength-level wind that a check against allowable stress uses. Source: ASCE 7-10 and later, 2.4.1 */
export const ALLOWABLE_STRESS_WIND_FRAC = 0.6;

/** Gust factor of a structure that does not sway with the gusts (first frequency at least 1 Hz). Source: ASCE 7-16 26.11 */
export const RIGID_GUST_FACTOR = 0.85;

/**
 * Velocity pressure exposure coefficient: wind pressure at a height over that at 10 m in open country.
 *
 * @param heightM  above ground, 0 to 60; below 15 ft (4.57 m) the value at 15 ft holds
 * @returns ratio
 * @accuracy within 0.006 of the printed table
 * @throws RangeFault outside the range above
 * @source ASCE 7-16 table 26.10-1 note 1
 */
export function exposureCoefficient({
  heightM,
  exposure,
}: {
  readonly heightM: number;
  readonly exposure: Exposure;
}): number {
  within("heightM", heightM, 0, 60);
  const { alpha, gradientHeightM } = EXPOSURE_ROWS[exposure];
  return 2.01 * (Math.max(heightM, 15 * M_PER_FT) / gradientHeightM) ** (2 / alpha);
}

/** Wind at the site, as maps and local offices state it. */
export interface SiteWind {
  /** Strength-level 3-second gust at 10 m in open country, 10 to 100. Older service-level maps must not be mixed in. */
  readonly windMPerS: number;
  readonly exposure: Exposure;
  /** Speed-up over hills and escarpments, 1 to 4; default 1, flat ground. */
  readonly topographicFactor?: number;
}

/**
 * Velocity pressure of the design gust at a height.
 *
 * @param heightM              0 to 60
 * @param directionalityFactor 0.85 to 1; 0.85 for panels, 0.9 boxes, 0.95 round tubes
 * @returns Pa, strength level
 * @accuracy air of 1.225 kg/m3, so a little high for hot or high places
 * @throws RangeFault outside the ranges above or those of SiteWind
 * @source ASCE 7-16 equation 26.10-1 with Ke = 1 (safe); edition 7-22 moves Kd elsewhere with the same force
 */
export function velocityPressurePa({
  windMPerS,
  exposure,
  topographicFactor = 1,
  heightM,
  directionalityFactor,
}: SiteWind & { readonly heightM: number; readonly directionalityFactor: number }): number {
  within("windMPerS", windMPerS, 10, 100);
  within("topographicFactor", topographicFactor, 1, 4);
  within("directionalityFactor", directionalityFactor, 0.85, 1);
  return (
    0.613 *
    exposureCoefficient({ heightM, exposure }) *
    topographicFactor *
    directionalityFactor *
    windMPerS ** 2
  );
}

/**
 * Force coefficient of a slender round tube that stands free.
 *
 * The lower coefficient that the standard grants stout tubes in strong wind is not used: it would let the load fall as
 * the wind rises.
 *
 * @param heightM    of the tube, 0.1 to 60
 * @param diameterM  0.01 to 1
 * @returns ratio, on the area heightM x diameterM
 * @throws RangeFault outside the ranges above
 * @source ASCE 7-16 figure 29.4-1, round, D sqrt(qz) at most 2.5 ft sqrt(lb/ft2) (from memory)
 */
export function tubeForceCoefficient({
  heightM,
  diameterM,
}: {
  readonly heightM: number;
  readonly diameterM: number;
}): number {
  within("heightM", heightM, 0.1, 60);
  within("diameterM", diameterM, 0.01, 1);
  return interpolate(FORCE_COEFFICIENT_ROWS.roundTube, heightM / diameterM);
}

/**
 * Force coefficient of a box with the wind square on its face.
 *
 * @param heightM  0.05 to 5
 * @param widthM   0.05 to 5
 * @returns ratio, on the area heightM x widthM
 * @throws RangeFault outside the ranges above
 * @source ASCE 7-16 figure 29.4-1, square, wind normal to face (from memory)
 */
export function boxForceCoefficient({
  heightM,
  widthM,
}: {
  readonly heightM: number;
  readonly widthM: number;
}): number {
  within("heightM", heightM, 0.05, 5);
  within("widthM", widthM, 0.05, 5);
  return interpolate(FORCE_COEFFICIENT_ROWS.box, heightM / widthM);
}

/** Something that catches wind on the mast. */
export interface WindPart {
  readonly name: string;
  /** Whole face; for a tilted panel too, since its tilt saves nothing at the mast's foot. 0 to 50. */
  readonly areaM2: number;
  /** 0.4 to 3. */
  readonly forceCoefficient: number;
  /** Of its centre above ground, 0 to 60. */
  readonly heightM: number;
  /** 0.85 to 1; default 0.95, safe for all but odd shapes. */
  readonly directionalityFactor?: number;
}

export interface PartForce {
  readonly name: string;
  readonly heightM: number;
  readonly forceN: number;
  readonly momentNm: number;
}

/** What the wind does to everything on the mast together. */
export interface WindLoad {
  readonly parts: readonly PartForce[];
  readonly forceN: number;
  /** At the ground line. */
  readonly momentNm: number;
  /** Height at which the whole force would give the same moment; 0 where there is no force. */
  readonly resultantHeightM: number;
}

/**
 * Force on a body in the wind.
 *
 * @param pressurePa        velocity pressure at its centre, 0 to 20 000
 * @param areaM2            0 to 50
 * @param forceCoefficient  0.4 to 3
 * @param gustFactor        0.85 to 2; default 0.85, for a rigid structure
 * @returns N
 * @throws RangeFault outside the ranges above
 * @source ASCE 7-16 equations 29.3-1 and 29.4-1
 */
export function windForceN({
  pressurePa,
  areaM2,
  forceCoefficient,
  gustFactor = RIGID_GUST_FACTOR,
}: {
  readonly pressurePa: number;
  readonly areaM2: number;
  readonly forceCoefficient: number;
  readonly gustFactor?: number;
}): number {
  within("pressurePa", pressurePa, 0, 20_000);
  within("areaM2", areaM2, 0, 50);
  within("forceCoefficient", forceCoefficient, 0.4, 3);
  within("gustFactor", gustFactor, 0.85, 2);
  return pressurePa * gustFactor * forceCoefficient * areaM2;
}

/**
 * Forces on the parts of a post, and their moment at the ground line.
 *
 * @param loadFrac  0.1 to 1: 0.6 (the default) for checks against allowable stress and soil values, 1 for strength
 * @returns N and Nm
 * @throws RangeFault outside the ranges of velocityPressurePa and windForceN
 * @source ASCE 7-16 chapter 29; 0.6 W: section 2.4.1
 */
export function windLoad({
  parts,
  loadFrac = ALLOWABLE_STRESS_WIND_FRAC,
  ...wind
}: SiteWind & { readonly parts: readonly WindPart[]; readonly loadFrac?: number }): WindLoad {
  within("loadFrac", loadFrac, 0.1, 1);
  return combinedLoad(
    parts.map(({ name, areaM2, forceCoefficient, heightM, directionalityFactor = 0.95 }) => {
      const pressurePa = velocityPressurePa({ ...wind, heightM, directionalityFactor });
      const forceN = loadFrac * windForceN({ pressurePa, areaM2, forceCoefficient });
      return { name, heightM, forceN, momentNm: forceN * heightM };
    }),
  );
}

/** Several forces as one load at the ground line. */
export function combinedLoad(parts: readonly PartForce[]): WindLoad {
  const forceN = sum(parts.map((part) => part.forceN));
  const momentNm = sum(parts.map((part) => part.momentNm));
  return { parts, forceN, momentNm, resultantHeightM: forceN > 0 ? momentNm / forceN : 0 };
}
