import { cosDeg, radOfDeg, sinDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";

interface HourOfDay {
  /** Middle of the hour, -180 to 180; noon 0, 15 deg an hour. */
  readonly hourAngleDeg: number;
  /** 1 to 180, of the day. */
  readonly sunsetHourAngleDeg: number;
}

/**
 * r_t: share of a day's global irradiation that falls in one hour, on long average.
 *
 * @returns fraction, 0 with the sun down; the shares of a day add to 1 within 0.03 below 55 deg latitude
 * @throws RangeFault outside the ranges of HourOfDay
 * @source Collares-Pereira and Rabl 1979; Duffie and Beckman eq. 2.13.1 and 2.13.2 (coefficients from memory)
 */
export function globalHourFrac(hour: HourOfDay): number {
  const { sunsetHourAngleDeg } = hour;
  const diffuse = diffuseHourFrac(hour);
  const a = 0.409 + 0.5016 * sinDeg(sunsetHourAngleDeg - 60);
  const b = 0.6609 - 0.4767 * sinDeg(sunsetHourAngleDeg - 60);
  // for the shortest days the two terms may cross: never below nothing
  return diffuse * Math.max(0, a + b * cosDeg(hour.hourAngleDeg));
}

/**
 * r_d: share of a day's diffuse irradiation that falls in one hour, on long average; also the share of the
 * extraterrestrial.
 *
 * @returns fraction, 0 with the sun down
 * @throws RangeFault outside the ranges of HourOfDay
 * @source Liu and Jordan 1960; Duffie and Beckman eq. 2.13.4
 */
export function diffuseHourFrac(hour: HourOfDay): number {
  const hourAngleDeg = within("hourAngleDeg", hour.hourAngleDeg, -180, 180);
  const sunsetDeg = within("sunsetHourAngleDeg", hour.sunsetHourAngleDeg, 1, 180);
  if (Math.abs(hourAngleDeg) >= sunsetDeg) return 0;
  return (
    ((Math.PI / 24) * (cosDeg(hourAngleDeg) - cosDeg(sunsetDeg))) /
    (sinDeg(sunsetDeg) - radOfDeg(sunsetDeg) * cosDeg(sunsetDeg))
  );
}
