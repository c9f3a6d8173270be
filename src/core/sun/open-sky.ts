import { cosDeg, degOfRad, radOfDeg, sinDeg, turnDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import {
  aboveRing,
  cosineIntegralRad,
  type HourSpan,
  LEVEL_NORMAL,
  type Plane,
  type SunCircle,
  skyViewFrac,
} from "./beam.ts";
import { type HorizonProfile, type Skyline, skylineOf } from "./horizon.ts";
import type { MonthSun, SampleDay } from "./level-month.ts";

/** What stands round the panel; without either the sky is open. */
export interface Surroundings {
  /**
   * Level ring of obstacles round the panel (hills, trees), elevation 0 to 80; 0 when left out. It hides the
   * beam below it and that band of the sky, and itself sends nothing back.
   */
  readonly horizonDeg?: number;
  /** The same direction by direction; where a ring is given too, the higher of the two. */
  readonly horizon?: HorizonProfile;
}

/** What the surroundings leave of sun and sky: the same for every plane, so that a sweep pays for it once. */
export interface OpenSky {
  readonly months: readonly {
    readonly days: readonly (SampleDay & { readonly litSpans: readonly HourSpan[] })[];
    /** As MonthSun.freeRad, but of the sun in view. */
    readonly litRad: number;
  }[];
  /** Share of an evenly bright sky that a plane sees. */
  readonly skyFrac: (plane: Plane) => number;
  /** The same of the ground in front of the plane. */
  readonly levelSkyFrac: number;
}

/**
 * @throws RangeFault outside the ranges of Surroundings
 * @accuracy sunrise and sunset behind a profile to 1e-5 deg of hour angle; a gap or a pole that the sun passes in less
 *           than four minutes may go unseen. Share of the sky 1e-3
 */
export function openSky(levels: readonly MonthSun[], around: Surroundings): OpenSky {
  const ringDeg = within("horizonDeg", around.horizonDeg ?? 0, 0, 80);
  const skyline = skylineOf(around.horizon ?? [], ringDeg);
  const isRing = skyline.lowestDeg === skyline.highestDeg && skyline.lowestDeg <= 80;
  const skyFrac = isRing ? aboveRingFrac(skyline.lowestDeg) : skyFracOver(skyline);
  return {
    months: levels.map((level) => {
      const days = level.days.map((day) => ({
        ...day,
        litSpans: isRing ? [aboveRing(day.circle, skyline.lowestDeg)] : litSpans(day.circle, skyline),
      }));
      const litRad = days.reduce(
        (total, { circle, distanceRatio, litSpans }) =>
          total + distanceRatio * cosineIntegralRad(circle, LEVEL_NORMAL, litSpans),
        0,
      );
      return { days, litRad };
    }),
    skyFrac,
    levelSkyFrac: isRing ? cosDeg(skyline.lowestDeg) ** 2 : skyFrac({ tiltDeg: 0, azimuthDeg: 0 }),
  };
}

function aboveRingFrac(horizonDeg: number): OpenSky["skyFrac"] {
  return ({ tiltDeg }) => skyViewFrac({ tiltDeg, horizonDeg });
}

/** Hour angle between two looks at the skyline. */
const LOOK_STEP_RAD = Math.PI / 180;

/** Halvings between a look with the sun in view and one without: 1 deg to 1e-6 deg. */
const HALVINGS = 20;

/**
 * Stretches of a day in which the sun stands above a skyline. Looks are spread evenly from sunrise to sunset over a
 * level horizon, then every change is narrowed by halving; so a higher skyline can only shorten what is found.
 */
function litSpans(circle: SunCircle, skyline: Skyline): readonly HourSpan[] {
  const { sinLatitude, cosLatitude, sinDeclination, cosDeclination } = circle;
  const sinLowest = sinDeg(skyline.lowestDeg);
  const sinHighest = sinDeg(skyline.highestDeg);
  const isLit = (hourRad: number): boolean => {
    const along = cosDeclination * Math.cos(hourRad);
    const up = sinLatitude * sinDeclination + cosLatitude * along;
    if (up >= sinHighest) return true;
    if (up < sinLowest) return false;
    const east = -cosDeclination * Math.sin(hourRad);
    const north = cosLatitude * sinDeclination - sinLatitude * along;
    return up >= sinDeg(skyline.elevationDeg(turnDeg(degOfRad(Math.atan2(east, north)))));
  };
  const changeRad = (litRad: number, hiddenRad: number): number => {
    let lit = litRad;
    let hidden = hiddenRad;
    for (let i = 0; i < HALVINGS; i += 1) {
      const middle = (lit + hidden) / 2;
      if (isLit(middle)) lit = middle;
      else hidden = middle;
    }
    return lit;
  };

  const { toRad: setRad } = aboveRing(circle, 0);
  const spans: HourSpan[] = [];
  const looks = setRad > 0 ? Math.max(8, Math.ceil((2 * setRad) / LOOK_STEP_RAD)) : 0;
  let beforeRad = -setRad;
  let wasLit = looks > 0 && isLit(beforeRad);
  let fromRad = beforeRad;
  for (let i = 1; i <= looks; i += 1) {
    const hourRad = setRad * ((2 * i - looks) / looks);
    const lit = isLit(hourRad);
    if (lit && !wasLit) fromRad = changeRad(hourRad, beforeRad);
    if (!lit && wasLit) spans.push({ fromRad, toRad: changeRad(beforeRad, hourRad) });
    beforeRad = hourRad;
    wasLit = lit;
  }
  if (wasLit) spans.push({ fromRad, toRad: setRad });
  return spans;
}

/** Directions in which the hidden part of the sky is added up. */
const DIRECTIONS = 360;

/**
 * Share of an evenly bright sky above a skyline that a plane sees: exact in elevation, summed over directions.
 *
 * With tilt t and a direction d away from the plane's, the cosine of incidence at elevation e is
 * cos t sin e + sin t cos d cos e; times cos e (the sky narrows upward), its integral from e up is
 * cos t cos2 e / 2 + sin t cos d (pi/2 - e - sin e cos e) / 2.
 */
function skyFracOver(skyline: Skyline): OpenSky["skyFrac"] {
  const directions = Array.from({ length: DIRECTIONS }, (_, i) => {
    const azimuthDeg = ((i + 0.5) * 360) / DIRECTIONS;
    const hiddenRad = radOfDeg(skyline.elevationDeg(azimuthDeg));
    return { azimuthDeg, hiddenRad, above: aboveElevation(hiddenRad) };
  });
  return ({ tiltDeg, azimuthDeg }) => {
    const upward = cosDeg(tiltDeg);
    const outward = sinDeg(tiltDeg);
    let total = 0;
    for (const direction of directions) {
      const toward = outward * cosDeg(direction.azimuthDeg - azimuthDeg);
      // behind the plane its own back hides the low sky: up to where the cosine turns positive
      const backRad = toward < 0 ? Math.atan2(-toward, upward) : 0;
      const above = backRad > direction.hiddenRad ? aboveElevation(backRad) : direction.above;
      total += upward * above.upward + toward * above.outward;
    }
    return Math.max(0, (2 * total) / DIRECTIONS);
  };
}

/** The two integrals above an elevation, from there to the zenith. */
function aboveElevation(elevationRad: number): { readonly upward: number; readonly outward: number } {
  const sin = Math.sin(elevationRad);
  const cos = Math.cos(elevationRad);
  return { upward: (cos * cos) / 2, outward: (Math.PI / 2 - elevationRad - sin * cos) / 2 };
}
