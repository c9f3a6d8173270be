import { clamp } from "../numerics/index.ts";
import { clearSkyGhiWPerM2, diffuseHourFrac, globalHourFrac, hourlyDiffuseFrac } from "../sun/index.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR } from "./calendar.ts";
import { STEPS_AN_HOUR, type SunSteps } from "./sun-steps.ts";

/** What every year at a latitude has in common on the level, before any weather. Hours 8760, days 365. */
export interface LevelYear {
  /** Mean of each hour. */
  readonly extraterrestrialWPerM2: Float64Array;
  readonly extraterrestrialDailyKWhPerM2: Float64Array;
  readonly sunsetHourAngleDeg: Float64Array;
  /** Share of a day's global irradiation in each of its hours: adds to 1, or to 0 in polar night. */
  readonly globalHourFrac: Float64Array;
  /** The most of an hour's light that may come straight from the sun. */
  readonly clearBeamFrac: Float64Array;
}

/** A day with less than this outside the atmosphere (0.1 Wh/m2) is night: the sun grazes the horizon for minutes. */
const LEAST_DAY_KWH_PER_M2 = 1e-4;

export function levelYear(steps: SunSteps, latitudeDeg: number): LevelYear {
  const year: LevelYear = {
    extraterrestrialWPerM2: new Float64Array(HOURS_A_YEAR),
    extraterrestrialDailyKWhPerM2: new Float64Array(DAYS_A_YEAR),
    sunsetHourAngleDeg: steps.sunsetHourAngleDeg,
    globalHourFrac: new Float64Array(HOURS_A_YEAR),
    clearBeamFrac: new Float64Array(HOURS_A_YEAR),
  };
  for (let day = 0; day < DAYS_A_YEAR; day += 1) levelDay(year, steps, latitudeDeg, day);
  return year;
}

function levelDay(year: LevelYear, steps: SunSteps, latitudeDeg: number, day: number): void {
  const normal = steps.extraterrestrialNormalWPerM2[day]!;
  const brightness = brightnessRatioOf({
    sunsetHourAngleDeg: steps.sunsetHourAngleDeg[day]!,
    tangents:
      Math.tan((latitudeDeg * Math.PI) / 180) * Math.tan((steps.declinationDeg[day]! * Math.PI) / 180),
  });
  let outside = 0;
  let weights = 0;
  for (let hour = day * 24; hour < day * 24 + 24; hour += 1) {
    let up = 0;
    let weight = 0;
    for (let step = hour * STEPS_AN_HOUR; step < (hour + 1) * STEPS_AN_HOUR; step += 1) {
      if (steps.up[step]! <= 0) continue;
      up += steps.up[step]!;
      weight += steps.up[step]! * brightness(steps.hourAngleDeg[step]!);
    }
    const cosine = up / STEPS_AN_HOUR;
    year.extraterrestrialWPerM2[hour] = normal * cosine;
    year.globalHourFrac[hour] = weight;
    year.clearBeamFrac[hour] = clearBeamFrac(normal, cosine);
    outside += (normal * cosine) / 1000;
    weights += weight;
  }
  const isNight = outside < LEAST_DAY_KWH_PER_M2 || weights <= 0;
  year.extraterrestrialDailyKWhPerM2[day] = isNight ? 0 : outside;
  for (let hour = day * 24; hour < day * 24 + 24; hour += 1) {
    year.globalHourFrac[hour]! *= isNight ? 0 : 1 / weights;
  }
}

/**
 * Brightness of the sky's light by hour angle over that of the sun outside: r_t over r_d of Collares-Pereira and Rabl,
 * a + b cos w. Together with the exact height of the sun this gives hour shares that add to the whole day at any
 * latitude. While the sun does not set the handbook's formula has no sunset angle; there the swing of b shrinks as the
 * sun's height does, to nothing at the pole (our continuation).
 */
function brightnessRatioOf(day: {
  readonly sunsetHourAngleDeg: number;
  readonly tangents: number;
}): (hourAngleDeg: number) => number {
  const sunsetHourAngleDeg = Math.max(1, day.sunsetHourAngleDeg);
  // both are 0 at sunset itself, so the two coefficients are read off at noon and half way
  const ratioAt = (hourAngleDeg: number): number =>
    globalHourFrac({ hourAngleDeg, sunsetHourAngleDeg }) /
    diffuseHourFrac({ hourAngleDeg, sunsetHourAngleDeg });
  const half = sunsetHourAngleDeg / 2;
  const halfCosine = Math.cos((half * Math.PI) / 180);
  const b = (ratioAt(0) - ratioAt(half)) / (1 - halfCosine);
  const a = ratioAt(0) - b;
  const swing = b * (day.tangents > 1 ? 1 / day.tangents : 1);
  return (hourAngleDeg) => Math.max(0, a + swing * Math.cos((hourAngleDeg * Math.PI) / 180));
}

/**
 * Share of beam in the cloudless light of an hour, over that of the clearest hour that Erbs knows: the bound that the
 * monthly method uses, hour by hour. Without it a correlation made of high suns turns a handful of winter light at
 * 60 deg of latitude into a bright upright panel.
 */
function clearBeamFrac(normalWPerM2: number, cosine: number): number {
  if (cosine <= 0) return 0;
  const zenithDeg = (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;
  const index = clearSkyGhiWPerM2(zenithDeg) / (normalWPerM2 * cosine);
  return clamp((1 - hourlyDiffuseFrac(index)) / (1 - hourlyDiffuseFrac(1)), 0, 1);
}
