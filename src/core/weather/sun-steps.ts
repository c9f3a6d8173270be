import { within } from "../numerics/index.ts";
import {
  equationOfTimeMin,
  SOLAR_CONSTANT_W_PER_M2,
  spencerDeclinationDeg,
  spencerDistanceFactorRatio,
  sunsetHourAngleDeg,
} from "../sun/index.ts";
import { DAYS_A_YEAR, HOURS_A_YEAR } from "./calendar.ts";

/**
 * What the hours of a year are told by. Solar: noon is when the sun stands highest, every day. Standard: the clock of
 * a zone, without summer time.
 */
export type HourClock =
  | { readonly kind: "solar" }
  | { readonly kind: "standard"; readonly longitudeDeg: number; readonly utcOffsetH: number };

export const SOLAR_CLOCK: HourClock = { kind: "solar" };

/** Looks at the sun within an hour: sunrise and the edge of a hill are seen to ten minutes. */
export const STEPS_AN_HOUR = 6;

/** Direction of the sun through a year, in steps of ten minutes, as a unit vector without refraction. */
export interface SunSteps {
  readonly up: Float64Array;
  readonly east: Float64Array;
  readonly north: Float64Array;
  /** -180 to 180. */
  readonly hourAngleDeg: Float64Array;
  /** By day of the year. */
  readonly extraterrestrialNormalWPerM2: Float64Array;
  readonly sunsetHourAngleDeg: Float64Array;
  readonly declinationDeg: Float64Array;
}

/**
 * @param where.latitudeDeg  -90 to 90
 * @throws RangeFault outside that range, and for a standard clock outside -180..180 longitude or -12..14 hours
 * @accuracy 0.5 deg of declination near the equinoxes, where leap years shift the calendar; no refraction
 * @source Spencer 1971; Duffie and Beckman eqs. 1.5.2, 1.6.5 and 1.6.6 in vector form
 */
export function sunSteps(where: { readonly latitudeDeg: number; readonly clock: HourClock }): SunSteps {
  const latitudeRad = (within("latitudeDeg", where.latitudeDeg, -90, 90) * Math.PI) / 180;
  const sinLatitude = Math.sin(latitudeRad);
  const cosLatitude = Math.cos(latitudeRad);
  const steps: SunSteps = {
    up: new Float64Array(HOURS_A_YEAR * STEPS_AN_HOUR),
    east: new Float64Array(HOURS_A_YEAR * STEPS_AN_HOUR),
    north: new Float64Array(HOURS_A_YEAR * STEPS_AN_HOUR),
    hourAngleDeg: new Float64Array(HOURS_A_YEAR * STEPS_AN_HOUR),
    extraterrestrialNormalWPerM2: new Float64Array(DAYS_A_YEAR),
    sunsetHourAngleDeg: new Float64Array(DAYS_A_YEAR),
    declinationDeg: new Float64Array(DAYS_A_YEAR),
  };
  for (let day = 0; day < DAYS_A_YEAR; day += 1) {
    const declinationDeg = spencerDeclinationDeg(day + 1);
    steps.declinationDeg[day] = declinationDeg;
    steps.sunsetHourAngleDeg[day] = sunsetHourAngleDeg({ latitudeDeg: where.latitudeDeg, declinationDeg });
    steps.extraterrestrialNormalWPerM2[day] = SOLAR_CONSTANT_W_PER_M2 * spencerDistanceFactorRatio(day + 1);
    const sinDeclination = Math.sin((declinationDeg * Math.PI) / 180);
    const cosDeclination = Math.cos((declinationDeg * Math.PI) / 180);
    const shiftH = solarShiftH(where.clock, day + 1);
    for (let step = 0; step < 24 * STEPS_AN_HOUR; step += 1) {
      const solarH = (step + 0.5) / STEPS_AN_HOUR + shiftH;
      const hourAngleDeg = 15 * ((((solarH % 24) + 24) % 24) - 12);
      const hourRad = (hourAngleDeg * Math.PI) / 180;
      const along = cosDeclination * Math.cos(hourRad);
      const at = day * 24 * STEPS_AN_HOUR + step;
      steps.hourAngleDeg[at] = hourAngleDeg;
      steps.up[at] = sinLatitude * sinDeclination + cosLatitude * along;
      steps.east[at] = -cosDeclination * Math.sin(hourRad);
      steps.north[at] = cosLatitude * sinDeclination - sinLatitude * along;
    }
  }
  return steps;
}

/** Solar time minus the clock's. */
function solarShiftH(clock: HourClock, dayOfYear: number): number {
  if (clock.kind === "solar") return 0;
  return (
    within("longitudeDeg", clock.longitudeDeg, -180, 180) / 15 -
    within("utcOffsetH", clock.utcOffsetH, -12, 14) +
    equationOfTimeMin(dayOfYear) / 60
  );
}
