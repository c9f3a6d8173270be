import { within } from "../numerics/index.ts";
import { cosDeg, degOfRad, radOfDeg, sinDeg } from "./angle.ts";

/** Angle of the year B used by Spencer's series. */
function yearAngleRad(dayOfYear: number): number {
  return radOfDeg(((within("dayOfYear", dayOfYear, 1, 366.99) - 1) * 360) / 365);
}

/**
 * Declination of the sun by Cooper's single sine, the one the handbook tables use.
 *
 * @param dayOfYear  1 = 1 January, to 366
 * @returns deg, north positive
 * @accuracy up to 1.3 deg wrong near the equinoxes
 * @throws RangeFault outside the range above
 * @source Cooper 1969; Duffie and Beckman eq. 1.6.1a
 */
export function cooperDeclinationDeg(dayOfYear: number): number {
  return 23.45 * sinDeg((360 * (284 + within("dayOfYear", dayOfYear, 1, 366.99))) / 365);
}

/**
 * Declination of the sun by Spencer's Fourier series.
 *
 * @param dayOfYear  1 = 1 January, to 366; a fraction is a time within the day
 * @returns deg, north positive
 * @accuracy 0.04 deg against its own ephemeris; up to 0.5 deg from the calendar near equinoxes, because leap
 *         years shift
 * @throws RangeFault outside the range above
 * @source Spencer 1971; Duffie and Beckman eq. 1.6.1b
 */
export function spencerDeclinationDeg(dayOfYear: number): number {
  const b = yearAngleRad(dayOfYear);
  return degOfRad(
    0.006918 -
      0.399912 * Math.cos(b) +
      0.070257 * Math.sin(b) -
      0.006758 * Math.cos(2 * b) +
      0.000907 * Math.sin(2 * b) -
      0.002697 * Math.cos(3 * b) +
      0.00148 * Math.sin(3 * b),
  );
}

/**
 * Equation of time: true solar time minus mean solar time.
 *
 * @param dayOfYear  1 = 1 January, to 366
 * @returns min
 * @accuracy about 0.6 min (35 s)
 * @throws RangeFault outside the range above
 * @source Spencer 1971; Duffie and Beckman eq. 1.5.3, whose 0.000075 and 0.04089 others print 0.0000075 and
 *         0.040849 (1.5 s)
 */
export function equationOfTimeMin(dayOfYear: number): number {
  const b = yearAngleRad(dayOfYear);
  return (
    229.2 *
    (0.000075 +
      0.001868 * Math.cos(b) -
      0.032077 * Math.sin(b) -
      0.014615 * Math.cos(2 * b) -
      0.04089 * Math.sin(2 * b))
  );
}

/**
 * Square of mean over actual distance to the sun, by the handbook's single cosine.
 *
 * @source Duffie and Beckman eq. 1.4.1a; FAO-56 eq. 23
 */
export function distanceFactorRatio(dayOfYear: number): number {
  return 1 + 0.033 * cosDeg((360 * within("dayOfYear", dayOfYear, 1, 366.99)) / 365);
}

/**
 * Square of mean over actual distance to the sun, by Spencer's series.
 *
 * @source Spencer 1971; Duffie and Beckman eq. 1.4.1b
 */
export function spencerDistanceFactorRatio(dayOfYear: number): number {
  const b = yearAngleRad(dayOfYear);
  return (
    1.00011 +
    0.034221 * Math.cos(b) +
    0.00128 * Math.sin(b) +
    0.000719 * Math.cos(2 * b) +
    0.000077 * Math.sin(2 * b)
  );
}
