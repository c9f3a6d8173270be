import { cosDeg, degOfRad, SOLAR_CONSTANT_W_PER_M2, sinDeg, tanDeg, turnDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import { solarEphemeris } from "./ephemeris.ts";

/** From 1950-01-01 to 2100-01-01, for which the ephemeris holds. */
export const FIRST_UTC_MS = -631_152_000_000;
export const LAST_UTC_MS = 4_102_444_800_000;

export interface SunPosition {
  /** From straight up, refraction included: what a sighting gives. */
  readonly zenithDeg: number;
  /** 90 minus zenith. */
  readonly elevationDeg: number;
  /** Without refraction. */
  readonly trueZenithDeg: number;
  /** Clockwise from true north, 0 to 360. */
  readonly azimuthDeg: number;
  readonly declinationDeg: number;
  /** -180 to 180, 0 at true noon, afternoon positive. */
  readonly hourAngleDeg: number;
  readonly equationOfTimeMin: number;
  readonly extraterrestrialNormalWPerM2: number;
}

/** Air of the standard atmosphere by height: the refraction needs no better. */
export function standardPressurePa(elevationM: number): number {
  return 101_325 * (1 - 2.25577e-5 * elevationM) ** 5.25588;
}

/**
 * Direction of the sun at an instant, seen from a place.
 *
 * @param when.utcMs         milliseconds since 1970-01-01 UTC, from 1950 to 2100
 * @param when.latitudeDeg   -90 to 90, north positive
 * @param when.longitudeDeg  -180 to 180, east positive
 * @param when.elevationM    -500 to 9000, only for the air pressure; 0 when left out
 * @param when.pressurePa    30000 to 110000; standard atmosphere at the elevation when left out
 * @param when.tempC         -80 to 60; 12 when left out
 * @accuracy 0.01 deg against SPA from 1950 to 2050, 0.02 deg to 2100; within a degree of the horizon
 *           refraction itself wanders by more
 * @throws RangeFault outside the ranges above
 * @source coordinates see solarEphemeris; parallax and refraction Reda and Andreas 2004, NREL/TP-560-34302,
 *         sections 3.12 and 3.14 (eq. 42)
 */
export function sunPosition(when: {
  readonly utcMs: number;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number;
  readonly pressurePa?: number;
  readonly tempC?: number;
}): SunPosition {
  const utcMs = within("utcMs", when.utcMs, FIRST_UTC_MS, LAST_UTC_MS);
  const latitudeDeg = within("latitudeDeg", when.latitudeDeg, -90, 90);
  const longitudeDeg = within("longitudeDeg", when.longitudeDeg, -180, 180);
  const elevationM = within("elevationM", when.elevationM ?? 0, -500, 9000);
  const pressurePa = within("pressurePa", when.pressurePa ?? standardPressurePa(elevationM), 30_000, 110_000);
  const tempC = within("tempC", when.tempC ?? 12, -80, 60);

  const { declinationDeg, equationOfTimeMin, distanceAu } = solarEphemeris(utcMs);
  const minutesOfDay = (utcMs % 86_400_000) / 60_000;
  const solarAngleDeg = turnDeg((minutesOfDay + equationOfTimeMin) / 4 + longitudeDeg);
  const hourAngleDeg = solarAngleDeg - 180;

  const direction = sunDirection({ latitudeDeg, declinationDeg, hourAngleDeg });
  const geocentricElevationDeg = 90 - direction.zenithDeg;
  const parallaxDeg = (8.794 / 3600 / distanceAu) * cosDeg(geocentricElevationDeg);
  const trueElevationDeg = geocentricElevationDeg - parallaxDeg;
  const elevationDeg = trueElevationDeg + refractionDeg({ trueElevationDeg, pressurePa, tempC });
  return {
    zenithDeg: 90 - elevationDeg,
    elevationDeg,
    trueZenithDeg: 90 - trueElevationDeg,
    azimuthDeg: direction.azimuthDeg,
    declinationDeg,
    hourAngleDeg,
    equationOfTimeMin,
    extraterrestrialNormalWPerM2: SOLAR_CONSTANT_W_PER_M2 / distanceAu ** 2,
  };
}

/**
 * Direction of the sun from declination and hour angle, as handbooks give them for a mean day.
 *
 * @param sky.latitudeDeg     -90 to 90, north positive
 * @param sky.declinationDeg  -24 to 24
 * @param sky.hourAngleDeg    -180 to 180, 0 at noon, afternoon positive
 * @returns zenith without refraction; azimuth clockwise from true north, 0 to 360
 * @throws RangeFault outside the ranges above
 * @source Duffie and Beckman eqs. 1.6.5 and 1.6.6, in vector form
 */
export function sunDirection(sky: {
  readonly latitudeDeg: number;
  readonly declinationDeg: number;
  readonly hourAngleDeg: number;
}): { readonly zenithDeg: number; readonly azimuthDeg: number } {
  const latitudeDeg = within("latitudeDeg", sky.latitudeDeg, -90, 90);
  const declinationDeg = within("declinationDeg", sky.declinationDeg, -24, 24);
  const hourAngleDeg = within("hourAngleDeg", sky.hourAngleDeg, -180, 180);
  const up =
    sinDeg(latitudeDeg) * sinDeg(declinationDeg) +
    cosDeg(latitudeDeg) * cosDeg(declinationDeg) * cosDeg(hourAngleDeg);
  const east = -cosDeg(declinationDeg) * sinDeg(hourAngleDeg);
  const north =
    cosDeg(latitudeDeg) * sinDeg(declinationDeg) -
    sinDeg(latitudeDeg) * cosDeg(declinationDeg) * cosDeg(hourAngleDeg);
  // atan2 instead of an arc cosine: exact also straight overhead and on the horizon
  return {
    zenithDeg: degOfRad(Math.atan2(Math.hypot(east, north), up)),
    azimuthDeg: turnDeg(degOfRad(Math.atan2(east, north))),
  };
}

/** Lift of the sun by the air; 0 once the whole disc is below the horizon. */
function refractionDeg(air: {
  readonly trueElevationDeg: number;
  readonly pressurePa: number;
  readonly tempC: number;
}): number {
  if (air.trueElevationDeg < -0.83337) return 0;
  return (
    ((air.pressurePa / 101_000) * (283 / (273 + air.tempC)) * 1.02) /
    (60 * tanDeg(air.trueElevationDeg + 10.3 / (air.trueElevationDeg + 5.11)))
  );
}

/**
 * Angle between the sun and the normal of a plane.
 *
 * @param plane.zenithDeg      of the sun, 0 to 180
 * @param plane.sunAzimuthDeg  clockwise from true north, 0 to 360
 * @param plane.tiltDeg        0 to 180
 * @param plane.azimuthDeg     clockwise from true north, 0 to 360
 * @returns deg, 0 to 180; above 90 the sun is behind the plane
 * @throws RangeFault outside the ranges above
 * @source Duffie and Beckman eq. 1.6.3
 */
export function incidenceDeg(plane: {
  readonly zenithDeg: number;
  readonly sunAzimuthDeg: number;
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
}): number {
  const zenithDeg = within("zenithDeg", plane.zenithDeg, 0, 180);
  const tiltDeg = within("tiltDeg", plane.tiltDeg, 0, 180);
  const betweenDeg =
    within("sunAzimuthDeg", plane.sunAzimuthDeg, 0, 360) - within("azimuthDeg", plane.azimuthDeg, 0, 360);
  const cosine =
    cosDeg(zenithDeg) * cosDeg(tiltDeg) + sinDeg(zenithDeg) * sinDeg(tiltDeg) * cosDeg(betweenDeg);
  return degOfRad(Math.acos(Math.min(1, Math.max(-1, cosine))));
}
