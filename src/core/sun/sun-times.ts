import { cosDeg, degOfRad, sinDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import { solarEphemeris } from "./ephemeris.ts";
import { FIRST_UTC_MS, LAST_UTC_MS } from "./position.ts";

/** Sunrise, noon and sunset of one solar day. */
export interface SunTimes {
  /** null when the sun does not cross the horizon that day. */
  readonly sunriseUtcMs: number | null;
  readonly transitUtcMs: number;
  readonly sunsetUtcMs: number | null;
  readonly kind: "rises-and-sets" | "polar-day" | "polar-night";
}

const MS_PER_MIN = 60_000;
const MS_PER_DAY = 86_400_000;

/**
 * The upper limb on the horizon: half a disc of 0.26667 deg and refraction of 0.5667 deg (NREL/TP-560-34302,
 * 3.15).
 */
const RISE_ELEVATION_DEG = -0.8333;

/**
 * Sunrise, transit and sunset of the solar day whose transit lies nearest to an instant, on a level horizon.
 *
 * @param when.utcMs         from 1950 to 2100
 * @param when.latitudeDeg   -90 to 90
 * @param when.longitudeDeg  -180 to 180, east positive
 * @returns UTC milliseconds
 * @accuracy 5 s against SPA below 60 deg latitude; minutes where the sun grazes the horizon
 * @throws RangeFault outside the ranges above
 * @source Meeus chapter 15, iterated with solarEphemeris
 */
export function sunTimes(when: {
  readonly utcMs: number;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}): SunTimes {
  const utcMs = within("utcMs", when.utcMs, FIRST_UTC_MS, LAST_UTC_MS);
  const latitudeDeg = within("latitudeDeg", when.latitudeDeg, -90, 90);
  const meanNoonMs = MS_PER_DAY / 2 - within("longitudeDeg", when.longitudeDeg, -180, 180) * 4 * MS_PER_MIN;
  const day = Math.round((utcMs - meanNoonMs) / MS_PER_DAY);
  const meanTransitMs = day * MS_PER_DAY + meanNoonMs;

  let transitUtcMs = meanTransitMs;
  for (let i = 0; i < 3; i += 1) {
    transitUtcMs = meanTransitMs - solarEphemeris(transitUtcMs).equationOfTimeMin * MS_PER_MIN;
  }

  const crossingUtcMs = (side: -1 | 1): number | SunTimes["kind"] => {
    let atMs = transitUtcMs;
    for (let i = 0; i < 6; i += 1) {
      const { declinationDeg, equationOfTimeMin } = solarEphemeris(atMs);
      const cosine =
        (sinDeg(RISE_ELEVATION_DEG) - sinDeg(latitudeDeg) * sinDeg(declinationDeg)) /
        (cosDeg(latitudeDeg) * cosDeg(declinationDeg));
      if (cosine > 1) return "polar-night";
      if (cosine < -1) return "polar-day";
      const hourAngleDeg = degOfRad(Math.acos(cosine));
      atMs = meanTransitMs - equationOfTimeMin * MS_PER_MIN + side * hourAngleDeg * 4 * MS_PER_MIN;
    }
    return atMs;
  };
  const sunrise = crossingUtcMs(-1);
  const sunset = crossingUtcMs(1);
  if (typeof sunrise === "string")
    return { sunriseUtcMs: null, transitUtcMs, sunsetUtcMs: null, kind: sunrise };
  if (typeof sunset === "string")
    return { sunriseUtcMs: null, transitUtcMs, sunsetUtcMs: null, kind: sunset };
  return { sunriseUtcMs: sunrise, transitUtcMs, sunsetUtcMs: sunset, kind: "rises-and-sets" };
}
