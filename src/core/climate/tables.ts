/** Fall of temperature with height, K per metre: 6.5 K/km, the lapse of the standard atmosphere (ISO 2533, from memory). */
export const LAPSE_K_PER_M = 0.0065;

/**
 * How far from the nearest cell with irradiation an answer is still given. Cells are three degrees wide (about 330 km
 * north to south), so this reaches one cell beyond the coast and no farther.
 */
export const IRRADIATION_REACH_KM = 400;

/**
 * Lowest hour of a typical year below the coldest month's mean: 6.6 K and 0.35 K for each kelvin between the coldest and
 * the hottest month. Fitted by make/fit_extremes.py to 55 stations (tests/reference/climate-stations).
 */
export const COLD_GAP_K = 6.56;
export const COLD_GAP_PER_RANGE = 0.348;
/** The widest range among those stations but two of the far north; beyond it the gap no longer grows. */
export const COLD_WIDEST_RANGE_K = 33;
/** Standard deviation of what the fit leaves. */
export const COLD_RESIDUAL_K = 3.6;

/**
 * A lowest hour in twenty years lies below the typical year's by 1.87 standard deviations of the yearly lowest hours
 * (Gumbel's distribution, n = 20, as in ASHRAE's handbook of fundamentals, from memory); that deviation is about a fifth
 * of the gap (from memory of some places: 0.17 to 0.25). The residual of the fit is taken off as well, because a string
 * that exceeds a controller's voltage on one morning destroys it.
 */
export const RECORD_SHARE_OF_GAP = 0.37;

/**
 * Highest hour of a typical year above the hottest month's mean: 14 K in 20 stations outside the tropics (standard
 * deviation 2.2 K); less where the year hardly ranges (7 K at Singapore, from memory).
 */
export const HOT_LARGEST_GAP_K = 14;
export const HOT_GAP_K = 7;
export const HOT_GAP_PER_RANGE = 0.7;
