import {
  cooperDeclinationDeg,
  cosDeg,
  distanceFactorRatio,
  MEAN_DAY_BY_MONTH,
  SOLAR_CONSTANT_W_PER_M2,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
  sunsetHourAngleDeg,
} from "../astronomy/index.ts";
import { clamp, within } from "../numerics/index.ts";
import { aboveRing, cosineIntegralRad, LEVEL_NORMAL, type SunCircle, sunCircle } from "./beam.ts";
import { hourlyDiffuseFrac, monthlyDiffuseFrac } from "./diffuse.ts";
import { clearSkyGhiWPerM2 } from "./irradiance.ts";
import { sunDirection } from "./position.ts";

/** One day that stands for a month or a part of it. */
export interface SampleDay {
  readonly declinationDeg: number;
  readonly circle: SunCircle;
  /** Square of mean over actual distance to the sun. */
  readonly distanceRatio: number;
}

/** A month's sun at a latitude, before any weather. */
export interface MonthSun {
  readonly days: readonly SampleDay[];
  /** Sum over the days of the cosine on the level under a free horizon, weighted by distanceRatio. */
  readonly freeRad: number;
  readonly extraterrestrialDailyKWhPerM2: number;
  /** Of the mean day. */
  readonly sunsetHourAngleDeg: number;
  /** The most of the light that may be beam: see clearBeamFrac. */
  readonly clearBeamFrac: number;
}

/** A month on the level, parted into beam and diffuse; nothing here depends on the panel. */
export interface LevelMonth extends MonthSun {
  /** Global over extraterrestrial; 0 without sun. */
  readonly clearnessIndex: number;
  readonly beamDailyKWhPerM2: number;
  readonly diffuseDailyKWhPerM2: number;
}

/**
 * Beyond this latitude one mean day stands badly for its month: every day is taken. The handbook draws the
 * line at 66.5.
 */
const MEAN_DAY_LATITUDE_DEG = 60;

/** A monthly clearness above this is no weather: it is data that do not belong to the place. */
const CLEAREST_MONTH_INDEX = 0.8;

/**
 * Below this sum of cosines (rad) the sun grazes the horizon for minutes: quotients are noise, the month
 * counts as dark.
 */
export const LEAST_SUN_RAD = 1e-6;

/**
 * A month's global irradiation on the level, parted into beam and diffuse.
 *
 * The beam is the smallest of three: what Erbs gives; what he gives for a clearness of 0.8 (more does not
 * belong to the place); and a bound by the share that beam has in a cloudless day of that month. The last
 * bites beyond 55 deg of latitude in winter, where the correlation, made of places with high sun, would turn
 * a handful of light into a bright upright panel.
 *
 * Fairbanks, 64.8 N at tilt 65, without the bound: January 1.7, December 1.0, year 3.5 kWh/m2; with it 0.6,
 * 0.1, 3.3. A published manual has 0.1 to 0.2 in its worst month and 3.3 in the year (from memory).
 *
 * @param at.month                 0 = January
 * @param at.ghiDailyKWhPerM2      0 to 15
 * @param at.latitudeDeg           -90 to 90
 * @source Erbs et al. 1982; the bound by the cloudless day (Haurwitz, split hour by hour by Erbs) is our own
 */
export function levelMonth(at: {
  readonly month: number;
  readonly ghiDailyKWhPerM2: number;
  readonly latitudeDeg: number;
}): LevelMonth {
  return partedMonth(monthSun(at), at.ghiDailyKWhPerM2);
}

/** The part of levelMonth that no weather changes. */
export function monthSun(at: { readonly month: number; readonly latitudeDeg: number }): MonthSun {
  const latitudeDeg = within("latitudeDeg", at.latitudeDeg, -90, 90);
  const days = sampleDays(at.month, latitudeDeg);
  const freeRad = days.reduce(
    (total, { circle, distanceRatio }) =>
      total + distanceRatio * cosineIntegralRad(circle, LEVEL_NORMAL, [aboveRing(circle, 0)]),
    0,
  );
  const hasSun = freeRad >= LEAST_SUN_RAD;
  return {
    days,
    freeRad,
    extraterrestrialDailyKWhPerM2: hasSun
      ? ((24 / (2 * Math.PI)) * SOLAR_CONSTANT_W_PER_M2 * freeRad) / 1000 / days.length
      : 0,
    sunsetHourAngleDeg: sunsetHourAngleDeg({
      latitudeDeg,
      declinationDeg: cooperDeclinationDeg(MEAN_DAY_BY_MONTH[at.month]!.dayOfYear),
    }),
    clearBeamFrac: hasSun ? clearBeamFrac(days, latitudeDeg) : 0,
  };
}

/** The part of levelMonth that the weather makes. */
export function partedMonth(sun: MonthSun, ghiDailyKWhPerM2: number): LevelMonth {
  const globalKWhPerM2 = within("ghiDailyKWhPerM2", ghiDailyKWhPerM2, 0, 15);
  const { extraterrestrialDailyKWhPerM2 } = sun;
  if (extraterrestrialDailyKWhPerM2 === 0) {
    return { ...sun, clearnessIndex: 0, beamDailyKWhPerM2: 0, diffuseDailyKWhPerM2: globalKWhPerM2 };
  }
  const clearnessIndex = globalKWhPerM2 / extraterrestrialDailyKWhPerM2;
  const erbsFrac =
    1 -
    monthlyDiffuseFrac({
      clearnessIndex: clamp(clearnessIndex, 0, CLEAREST_MONTH_INDEX),
      sunsetHourAngleDeg: sun.sunsetHourAngleDeg,
    });
  const beamDailyKWhPerM2 =
    Math.min(globalKWhPerM2, CLEAREST_MONTH_INDEX * extraterrestrialDailyKWhPerM2) *
    Math.min(erbsFrac, sun.clearBeamFrac);
  return {
    ...sun,
    clearnessIndex,
    beamDailyKWhPerM2,
    diffuseDailyKWhPerM2: globalKWhPerM2 - beamDailyKWhPerM2,
  };
}

function sampleDays(month: number, latitudeDeg: number): readonly SampleDay[] {
  const { dayOfYear, firstDayOfYear, days } = MEAN_DAY_BY_MONTH[month]!;
  if (Math.abs(latitudeDeg) <= MEAN_DAY_LATITUDE_DEG) {
    const declinationDeg = cooperDeclinationDeg(dayOfYear);
    const circle = sunCircle({ latitudeDeg, declinationDeg });
    return [{ declinationDeg, circle, distanceRatio: distanceFactorRatio(dayOfYear) }];
  }
  return Array.from({ length: days }, (_, i) => {
    const declinationDeg = spencerDeclinationDeg(firstDayOfYear + i);
    const circle = sunCircle({ latitudeDeg, declinationDeg });
    return { declinationDeg, circle, distanceRatio: spencerDistanceFactorRatio(firstDayOfYear + i) };
  });
}

/**
 * Share of beam in the light of cloudless days on the level, over that of the clearest hour Erbs knows; 0
 * without sun. The quotient keeps the bound off high suns: an hourly mean of clear and broken skies
 * understates the beam of a clear one.
 */
function clearBeamFrac(days: readonly SampleDay[], latitudeDeg: number): number {
  let global = 0;
  let beam = 0;
  for (const { declinationDeg, distanceRatio } of days) {
    // morning mirrors afternoon
    for (let hourAngleDeg = 1.25; hourAngleDeg < 180; hourAngleDeg += 2.5) {
      const { zenithDeg } = sunDirection({ latitudeDeg, declinationDeg, hourAngleDeg });
      if (zenithDeg >= 90) break;
      const clear = clearSkyGhiWPerM2(zenithDeg);
      const clearnessIndex = clear / (SOLAR_CONSTANT_W_PER_M2 * distanceRatio * cosDeg(zenithDeg));
      global += clear;
      beam += clear * (1 - hourlyDiffuseFrac(clearnessIndex));
    }
  }
  return global > 0 ? beam / global / (1 - hourlyDiffuseFrac(1)) : 0;
}
