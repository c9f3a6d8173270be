import { within } from "../numerics/index.ts";
import { acosHeldRad, cosDeg, degOfRad, radOfDeg, sinDeg, tanDeg } from "./angle.ts";
import { cooperDeclinationDeg, distanceFactorRatio } from "./declination.ts";
import { SOLAR_CONSTANT_W_PER_M2 } from "./tables.ts";

export interface LatitudeDay {
  /** 1 = 1 January, to 366. */
  readonly dayOfYear: number;
  /** -90 to 90, north positive. */
  readonly latitudeDeg: number;
  /** -24 to 24; Cooper's declination of the day when left out. */
  readonly declinationDeg?: number;
  /** Square of mean over actual distance to the sun, 0.9 to 1.1; distanceFactorRatio of the day when left out. */
  readonly distanceRatio?: number;
}

/**
 * Hour angle of sunset on a level horizon, without refraction.
 *
 * @returns deg; 0 in polar night, 180 in polar day
 * @throws RangeFault outside -90..90 latitude or -24..24 declination
 * @source Duffie and Beckman eq. 1.6.10
 */
export function sunsetHourAngleDeg(where: {
  readonly latitudeDeg: number;
  readonly declinationDeg: number;
}): number {
  const latitudeDeg = within("latitudeDeg", where.latitudeDeg, -90, 90);
  const declinationDeg = within("declinationDeg", where.declinationDeg, -24, 24);
  return degOfRad(acosHeldRad(-tanDeg(latitudeDeg) * tanDeg(declinationDeg)));
}

/**
 * Hours between sunrise and sunset, without refraction.
 *
 * @returns h, 0 to 24
 * @throws RangeFault as sunsetHourAngleDeg
 * @source Duffie and Beckman eq. 1.6.11; FAO-56 eq. 34
 */
export function daylightHours(when: LatitudeDay): number {
  const declinationDeg = when.declinationDeg ?? cooperDeclinationDeg(when.dayOfYear);
  return (2 / 15) * sunsetHourAngleDeg({ latitudeDeg: when.latitudeDeg, declinationDeg });
}

/**
 * Irradiation of one day on a level plane outside the atmosphere.
 *
 * @returns kWh/m2 per day, 0 in polar night, never negative
 * @accuracy with Cooper's declination about 1 % away from the polar circles
 * @throws RangeFault as sunsetHourAngleDeg, for a day of the year outside 1..366 and a distance outside 0.9..1.1
 * @source Duffie and Beckman eq. 1.10.3 (solar constant 1367 W/m2); FAO-56 eq. 21 is the same
 */
export function extraterrestrialDailyKWhPerM2(when: LatitudeDay): number {
  const { dayOfYear, latitudeDeg, declinationDeg = cooperDeclinationDeg(dayOfYear) } = when;
  const sunsetDeg = sunsetHourAngleDeg({ latitudeDeg, declinationDeg });
  return betweenKWhPerM2({ when, declinationDeg, startDeg: -sunsetDeg, endDeg: sunsetDeg });
}

/**
 * Irradiation on a level plane outside the atmosphere between two hour angles (15 deg is an hour; noon is 0,
 * afternoon positive). The part of the span when the sun is down adds nothing.
 *
 * @param when.startHourAngleDeg  -180 to 180
 * @param when.endHourAngleDeg    -180 to 180, not before the start
 * @returns kWh/m2
 * @throws RangeFault outside the ranges above and as extraterrestrialDailyKWhPerM2
 * @source Duffie and Beckman eq. 1.10.4, with the span cut at sunrise and sunset
 */
export function extraterrestrialSpanKWhPerM2(
  when: LatitudeDay & { readonly startHourAngleDeg: number; readonly endHourAngleDeg: number },
): number {
  const declinationDeg = when.declinationDeg ?? cooperDeclinationDeg(when.dayOfYear);
  const sunsetDeg = sunsetHourAngleDeg({ latitudeDeg: when.latitudeDeg, declinationDeg });
  const startDeg = Math.max(within("startHourAngleDeg", when.startHourAngleDeg, -180, 180), -sunsetDeg);
  const endDeg = Math.min(
    within("endHourAngleDeg", when.endHourAngleDeg, when.startHourAngleDeg, 180),
    sunsetDeg,
  );
  return betweenKWhPerM2({ when, declinationDeg, startDeg, endDeg });
}

/** While the sun is up. */
function betweenKWhPerM2(span: {
  readonly when: LatitudeDay;
  readonly declinationDeg: number;
  readonly startDeg: number;
  readonly endDeg: number;
}): number {
  const { when, declinationDeg, startDeg, endDeg } = span;
  if (endDeg <= startDeg) return 0;
  const normalWPerM2 = SOLAR_CONSTANT_W_PER_M2 * distanceRatioOf(when);
  const cosineIntegral =
    cosDeg(when.latitudeDeg) * cosDeg(declinationDeg) * (sinDeg(endDeg) - sinDeg(startDeg)) +
    radOfDeg(endDeg - startDeg) * sinDeg(when.latitudeDeg) * sinDeg(declinationDeg);
  // 24 h / 2 pi turns the integral over hour angle into hours; rounding may leave -1e-17 at the edge of polar
  // night
  return Math.max(0, ((24 / (2 * Math.PI)) * normalWPerM2 * cosineIntegral) / 1000);
}

function distanceRatioOf({ dayOfYear, distanceRatio }: LatitudeDay): number {
  return distanceRatio === undefined
    ? distanceFactorRatio(dayOfYear)
    : within("distanceRatio", distanceRatio, 0.9, 1.1);
}
