import { cosDeg, degOfRad, radOfDeg, sinDeg, turnDeg } from "../astronomy/index.ts";

/** Julian date of the epoch of UTC milliseconds, 1970-01-01. */
const UNIX_EPOCH_JD = 2_440_587.5;
const J2000_JD = 2_451_545;
const MS_PER_DAY = 86_400_000;

/** Where the sun stands seen from the centre of the earth. */
export interface Ephemeris {
  readonly declinationDeg: number;
  readonly equationOfTimeMin: number;
  /** Astronomical units. */
  readonly distanceAu: number;
}

/**
 * Low-accuracy solar coordinates; terrestrial time is taken as UTC (a minute moves the sun 0.0007 deg).
 *
 * @accuracy 0.01 deg from 1950 to 2050
 * @source Meeus, Astronomical Algorithms, 2nd edition, chapter 25 (low accuracy) and eq. 28.1; coefficients
 *         from memory, checked against SPA
 */
export function solarEphemeris(utcMs: number): Ephemeris {
  const centuries = (utcMs / MS_PER_DAY + UNIX_EPOCH_JD - J2000_JD) / 36_525;
  const t = centuries;
  const meanLongitudeDeg = turnDeg(280.46646 + t * (36_000.76983 + 0.0003032 * t));
  const anomalyDeg = turnDeg(357.52911 + t * (35_999.05029 - 0.0001537 * t));
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const centreDeg =
    sinDeg(anomalyDeg) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    sinDeg(2 * anomalyDeg) * (0.019993 - 0.000101 * t) +
    sinDeg(3 * anomalyDeg) * 0.000289;
  const nodeDeg = 125.04 - 1934.136 * t;
  const apparentLongitudeDeg = meanLongitudeDeg + centreDeg - 0.00569 - 0.00478 * sinDeg(nodeDeg);
  const obliquityDeg =
    23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60 + 0.00256 * cosDeg(nodeDeg);

  const rightAscensionDeg = degOfRad(
    Math.atan2(cosDeg(obliquityDeg) * sinDeg(apparentLongitudeDeg), cosDeg(apparentLongitudeDeg)),
  );
  const nutationDeg = -0.00478 * sinDeg(nodeDeg);
  const equationOfTimeDeg =
    meanLongitudeDeg - 0.0057183 - rightAscensionDeg + nutationDeg * cosDeg(obliquityDeg);
  return {
    declinationDeg: degOfRad(Math.asin(sinDeg(obliquityDeg) * sinDeg(apparentLongitudeDeg))),
    // the two angles may stand a full turn apart
    equationOfTimeMin: 4 * (turnDeg(equationOfTimeDeg + 180) - 180),
    distanceAu:
      (1.000001018 * (1 - eccentricity ** 2)) /
      (1 + eccentricity * Math.cos(radOfDeg(anomalyDeg + centreDeg))),
  };
}
