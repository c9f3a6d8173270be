import { clamp, interpolate, within } from "../numerics/index.ts";
import { POLAR_STORAGE_DAYS_BY_LATITUDE_DEG } from "./tables.ts";

/**
 * Share of the year in which the load is fed: 0.95 for what may fail now and then, 0.99 for what must not.
 */
export type Availability = 0.95 | 0.99;

export interface AutonomyDays {
  /**
   * Days of storage before any allowance for temperature or age: usable days by the fits; the polar table, towards
   * which the bridge leads, gives rated capacity over daily load and does not say how deep it is used.
   */
  readonly days: number;
  /** What the number rests on. */
  readonly basis: "fits" | "between-fits-and-polar";
  /** The two textbook fits at the sun hours used (held within 1.5 and the bottom of the parabola). */
  readonly parabolaDays: number;
  readonly lineDays: number;
  /** Days of the polar station table at the latitude; null while the fits serve. */
  readonly polarDays: number | null;
}

/** Below this many sun hours neither fit was made. */
const LEAST_FITTED_SUN_HOURS = 1.5;

/** Fits to the Sandia storage curves; P peak sun hours. The parabolas turn up again beyond their bottoms. */
const FITS = {
  0.99: { parabola: [24, -4.73, 0.3], bottomAtHours: 7.88, line: [18.3, -1.9] },
  0.95: { parabola: [9.43, -1.9, 0.11], bottomAtHours: 8.64, line: [4.58, -0.48] },
} as const;

/**
 * Days of storage to plan for, from the sun hours of the design month.
 *
 * At 1.5 sun hours and more: the larger of two published fits to the Sandia curves. Below, where neither
 * holds, a straight line in sun hours from the fits at 1.5 to the polar station table at 0 (our own bridge;
 * the table begins at 60 deg, and that row serves lower latitudes). Polar stations need months, not days.
 *
 * @param site.peakSunHours  of the design month in the plane of the array, 0 to 15
 * @param site.latitudeDeg   -90 to 90
 * @accuracy the fits differ from each other by up to 3 days; the polar table goes in whole batteries
 * @throws RangeFault outside the ranges above
 * @source Masters, Renewable and Efficient Electric Power Systems, ch. 9; Messenger and Ventre, Photovoltaic
 *         Systems Engineering (both from memory); UNAVCO article 190 (2007); availability classes Wenham et
 *         al., Applied Photovoltaics 7.2
 */
export function autonomyDaysSuggestion(site: {
  readonly peakSunHours: number;
  readonly availability: Availability;
  readonly latitudeDeg: number;
}): AutonomyDays {
  const sunHours = within("peakSunHours", site.peakSunHours, 0, 15);
  const latitudeDeg = Math.abs(within("latitudeDeg", site.latitudeDeg, -90, 90));
  const { parabola, bottomAtHours, line } = FITS[site.availability];
  const held = clamp(sunHours, LEAST_FITTED_SUN_HOURS, bottomAtHours);
  const parabolaDays = parabola[0] + parabola[1] * held + parabola[2] * held ** 2;
  const lineDays = line[0] + line[1] * held;
  const fitDays = Math.max(parabolaDays, lineDays);
  if (sunHours >= LEAST_FITTED_SUN_HOURS) {
    return { days: fitDays, basis: "fits", parabolaDays, lineDays, polarDays: null };
  }
  const polarDays = interpolate(POLAR_STORAGE_DAYS_BY_LATITUDE_DEG, latitudeDeg);
  const darkFrac = 1 - sunHours / LEAST_FITTED_SUN_HOURS;
  const days = fitDays + darkFrac * (polarDays - fitDays);
  return { days, basis: "between-fits-and-polar", parabolaDays, lineDays, polarDays };
}

/**
 * Days in which the array refills what the bank gave, while it carries the load.
 *
 * @param plant.usedWh            0 or more
 * @param plant.dailyLoadWh       above 0
 * @param plant.arrayToLoadRatio  what the array really gives in that month over the load, 0 to 20
 * @returns days (10 to 14 at most is good practice); null when the array gives no more than the load takes
 * @throws RangeFault outside the ranges above
 * @source days = used / ((CA - 1) x load): common practice, as the recovery test of IEC 62124 (from memory)
 */
export function recoveryDays(plant: {
  readonly usedWh: number;
  readonly dailyLoadWh: number;
  readonly arrayToLoadRatio: number;
}): number | null {
  const surplusWh =
    (within("arrayToLoadRatio", plant.arrayToLoadRatio, 0, 20) - 1) *
    within("dailyLoadWh", plant.dailyLoadWh, 0.001, 1e7);
  // a surplus of a millionth would give an honest but meaningless age
  if (surplusWh <= 1e-6 * plant.dailyLoadWh) return null;
  return within("usedWh", plant.usedWh, 0, 1e9) / surplusWh;
}
