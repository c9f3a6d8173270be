/** Fall of temperature with height, K per metre: 6.5 K/km, the lapse of the standard atmosphere (ISO 2533, from memory). */
export const LAPSE_K_PER_M = 0.0065;

/**
 * How far from the nearest cell with irradiation an answer is still given. Cells are three degrees wide (about 330 km
 * north to south), so this reaches one cell beyond the coast and no farther.
 */
export const IRRADIATION_REACH_KM = 400;

/** The places of which the temperature map says more than ground: see the README for what was measured. */
export const GHI_UNCERTAINTY_FRAC = 0.15;
