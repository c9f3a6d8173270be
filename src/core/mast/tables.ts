/** Exact conversions for tables that are printed in American units. */
export const M_PER_FT = 0.3048;
export const MM_PER_IN = 25.4;
const M3_PER_FT3 = M_PER_FT ** 3;
/** 47.8803 Pa in a pound per square foot. */
export const KPA_PER_PSF = 0.0478803;

/**
 * Terrain around the mast: power-law exponent and gradient height.
 *
 * @source ASCE 7-10 and 7-16 table 26.9-1 / 26.11-1, from memory; the resulting Kz agree within 0.006 with the printed
 *   table 26.10-1 (also from memory)
 */
export const EXPOSURE_ROWS = {
  /** Houses or trees all round for more than 450 m. */
  B: { alpha: 7, gradientHeightM: 1200 * M_PER_FT },
  /** Open country; the right choice when unsure. */
  C: { alpha: 9.5, gradientHeightM: 900 * M_PER_FT },
  /** Open water, mud or salt flats, ice. */
  D: { alpha: 11.5, gradientHeightM: 700 * M_PER_FT },
} as const;

/**
 * Wind directionality factors.
 *
 * @source ASCE 7-16 table 26.6-1, from memory
 */
export const DIRECTIONALITY = { panel: 0.85, box: 0.9, roundTube: 0.95 } as const;

/**
 * Force coefficient of a flat plate raised on a pole, over its whole face.
 *
 * @source ASCE 7-16 figure 29.3-1 case A, clearance ratio up to 0.16, about square; from memory
 */
export const PANEL_FORCE_COEFFICIENT = 1.8;

/**
 * Force coefficients of upright bodies by height over width: [ratio, coefficient].
 *
 * @source ASCE 7-16 figure 29.4-1, from memory: square with the wind normal to a face; round, slender
 */
export const FORCE_COEFFICIENT_ROWS = {
  box: [
    [1, 1.3],
    [7, 1.4],
    [25, 2.0],
  ],
  roundTube: [
    [1, 0.7],
    [7, 0.8],
    [25, 1.2],
  ],
} as const;

/**
 * Steel pipe by nominal size in inches: outside diameter, schedule 40 wall, schedule 80 wall, all in inches.
 *
 * @source ASME B36.10; 1 to 3 read in table A16-6 of a machine-design textbook (schedule 40), the rest from memory
 */
export const PIPE_ROWS = [
  ["1", 1.315, 0.133, 0.179],
  ["1-1/4", 1.66, 0.14, 0.191],
  ["1-1/2", 1.9, 0.145, 0.2],
  ["2", 2.375, 0.154, 0.218],
  ["2-1/2", 2.875, 0.203, 0.276],
  ["3", 3.5, 0.216, 0.3],
  ["3-1/2", 4, 0.226, 0.318],
  ["4", 4.5, 0.237, 0.337],
  ["5", 5.563, 0.258, 0.375],
  ["6", 6.625, 0.28, 0.432],
] as const;

/** Welded pipe is rolled thin: the share of the nominal wall that design may count. Source: AISC 360 B4.2 */
export const WELDED_WALL_FRAC = 0.93;

/**
 * Cold-formed round structural tube: outside diameter and wall in mm.
 *
 * @source sizes in common sale under EN 10219-2, from memory; geometry only, every property is worked from it
 */
export const METRIC_TUBE_ROWS = [
  [33.7, 2.6],
  [42.4, 2.6],
  [48.3, 3.2],
  [60.3, 3.2],
  [76.1, 3.6],
  [88.9, 4],
  [101.6, 4],
  [114.3, 4.5],
  [139.7, 5],
  [168.3, 5],
] as const;

/**
 * Yield strength and stiffness of steel.
 *
 * @source ASTM A53 grade B 35 ksi, read in one page; EN 10219 S235 from memory; modulus 200 GPa: AISC 360
 */
export const STEEL = {
  a53GradeBYieldMPa: 241,
  s235YieldMPa: 235,
  modulusMPa: 200_000,
  densityKgPerM3: 7850,
} as const;

/**
 * Presumptive soil values: allowable bearing in lb/ft2 and lateral bearing in lb/ft2 per foot of depth.
 *
 * @source IBC 2012 table 1806.2 (identical to IBC 2006 table 1804.2), read in two copies
 */
export const SOIL_ROWS = {
  bedrock: { bearingPsf: 12_000, lateralPsfPerFt: 1200 },
  rock: { bearingPsf: 4000, lateralPsfPerFt: 400 },
  gravel: { bearingPsf: 3000, lateralPsfPerFt: 200 },
  sand: { bearingPsf: 2000, lateralPsfPerFt: 150 },
  clay: { bearingPsf: 1500, lateralPsfPerFt: 100 },
} as const;

/**
 * Concrete that one bag of dry mix makes.
 *
 * @source 80 and 40 lb read in one builder's page, 60 lb in another; 50 lb from memory; 20 and 25 kg worked from the
 *   same dry mix (2136 kg/m3)
 */
export const BAG_ROWS = {
  "80 lb": { yieldM3: 0.6 * M3_PER_FT3, massKg: 36.29 },
  "60 lb": { yieldM3: 0.45 * M3_PER_FT3, massKg: 27.22 },
  "50 lb": { yieldM3: 0.375 * M3_PER_FT3, massKg: 22.68 },
  "40 lb": { yieldM3: 0.3 * M3_PER_FT3, massKg: 18.14 },
  "25 kg": { yieldM3: 25 / 2136, massKg: 25 },
  "20 kg": { yieldM3: 20 / 2136, massKg: 20 },
} as const;

/**
 * Gas made on charge in mA per Ah: while floating, and while boosting (absorption).
 *
 * @source IEC 62485-2 table 1, from memory (partly reproduced by a maker's worked sheet)
 */
export const GASSING_ROWS = {
  "vented-lead-acid": { float: 5, boost: 20 },
  "valve-regulated": { float: 1, boost: 8 },
  "vented-nickel-cadmium": { float: 5, boost: 50 },
} as const;
