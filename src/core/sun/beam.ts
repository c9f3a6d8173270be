import { acosHeldRad, cosDeg, radOfDeg, sinDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";

export interface Plane {
  /** 0 = flat, 90 = upright. */
  readonly tiltDeg: number;
  /** Direction the plane faces, clockwise from true north, 0 to 360. */
  readonly azimuthDeg: number;
}

/** A stretch of hour angle, noon 0, afternoon positive. */
export interface HourSpan {
  readonly fromRad: number;
  readonly toRad: number;
}

/** The circle that the sun draws in a day, seen from a latitude; in sines and cosines, so that a sweep pays once. */
export interface SunCircle {
  readonly sinLatitude: number;
  readonly cosLatitude: number;
  readonly sinDeclination: number;
  readonly cosDeclination: number;
}

export function sunCircle(day: { readonly latitudeDeg: number; readonly declinationDeg: number }): SunCircle {
  return {
    sinLatitude: sinDeg(day.latitudeDeg),
    cosLatitude: cosDeg(day.latitudeDeg),
    sinDeclination: sinDeg(day.declinationDeg),
    cosDeclination: cosDeg(day.declinationDeg),
  };
}

/** The normal of a plane. */
export interface PlaneNormal {
  readonly northward: number;
  readonly eastward: number;
  readonly upward: number;
}

export const LEVEL_NORMAL: PlaneNormal = { northward: 0, eastward: 0, upward: 1 };

export function planeNormal(plane: Plane): PlaneNormal {
  return {
    northward: sinDeg(plane.tiltDeg) * cosDeg(plane.azimuthDeg),
    eastward: sinDeg(plane.tiltDeg) * sinDeg(plane.azimuthDeg),
    upward: cosDeg(plane.tiltDeg),
  };
}

/** The stretch round noon in which the sun stands above a level ring of obstacles. */
export function aboveRing(circle: SunCircle, horizonDeg: number): HourSpan {
  const halfRad = acosHeldRad(
    (sinDeg(horizonDeg) - circle.sinLatitude * circle.sinDeclination) /
      (circle.cosLatitude * circle.cosDeclination),
  );
  return { fromRad: -halfRad, toRad: halfRad };
}

/**
 * Integral over hour angle of the cosine of incidence on a plane, over those parts of the given stretches in which the
 * sun stands in front of it; exact.
 *
 * The cosine is a + b cos(w) + c sin(w) = a + r cos(w - w0) with hour angle w, so it is positive on one stretch round
 * w0. That may meet a given stretch across midnight in polar summer.
 *
 * @param spans  in which the sun is in view, each within -pi to pi
 * @returns rad, 0 or more (1 would be an hour angle of 1 rad with the sun square on the plane)
 */
export function cosineIntegralRad(
  circle: SunCircle,
  { northward, eastward, upward }: PlaneNormal,
  spans: readonly HourSpan[],
): number {
  const { sinLatitude, cosLatitude, sinDeclination, cosDeclination } = circle;
  const a = sinDeclination * (upward * sinLatitude + northward * cosLatitude);
  const b = cosDeclination * (upward * cosLatitude - northward * sinLatitude);
  const c = -cosDeclination * eastward;
  const r = Math.sqrt(b * b + c * c);
  const w0 = Math.atan2(c, b);
  // at the pole a flat plane sees a constant cosine: r is then rounding noise and only a's sign counts
  const facingRad = r < 1e-12 ? (a > 0 ? Math.PI : 0) : acosHeldRad(-a / r);

  let total = 0;
  for (let turn = -1; turn <= 1; turn += 1) {
    const centre = w0 + turn * 2 * Math.PI;
    for (const span of spans) {
      const from = Math.max(centre - facingRad, span.fromRad);
      const to = Math.min(centre + facingRad, span.toRad);
      if (to > from) total += a * (to - from) + r * (Math.sin(to - centre) - Math.sin(from - centre));
    }
  }
  return Math.max(0, total);
}

/**
 * R_b of a day: beam irradiation on a tilted plane over beam irradiation on the level, taking the clearness
 * of the air as constant through the day.
 *
 * For a plane that faces the equator and a free horizon this is Klein's closed form; for other directions and
 * a raised horizon it is the same integral, still exact.
 *
 * @param day.latitudeDeg     -90 to 90
 * @param day.declinationDeg  -24 to 24
 * @param day.tiltDeg         0 to 90
 * @param day.azimuthDeg      0 to 360
 * @param day.horizonDeg      0 to 80, level ring of obstacles that hides the sun from the plane; 0 when left
 *         out
 * @returns ratio, 0 or more; 0 when the sun does not rise
 * @throws RangeFault outside the ranges above
 * @source Klein 1977; Duffie and Beckman eqs. 2.19.3a and 2.19.3b, their general form integrated over the day
 */
export function beamTiltRatio(
  day: Plane & {
    readonly latitudeDeg: number;
    readonly declinationDeg: number;
    readonly horizonDeg?: number;
  },
): number {
  const circle = sunCircle({
    latitudeDeg: within("latitudeDeg", day.latitudeDeg, -90, 90),
    declinationDeg: within("declinationDeg", day.declinationDeg, -24, 24),
  });
  const normal = planeNormal({
    tiltDeg: within("tiltDeg", day.tiltDeg, 0, 90),
    azimuthDeg: within("azimuthDeg", day.azimuthDeg, 0, 360),
  });
  const horizonDeg = within("horizonDeg", day.horizonDeg ?? 0, 0, 80);
  const level = cosineIntegralRad(circle, LEVEL_NORMAL, [aboveRing(circle, 0)]);
  const tilted = cosineIntegralRad(circle, normal, [aboveRing(circle, horizonDeg)]);
  // below this the sun grazes the horizon for minutes: the quotient is noise
  return level < 1e-6 ? 0 : tilted / level;
}

/**
 * Share of an evenly bright sky that a tilted plane sees above a level ring of obstacles.
 *
 * @param view.tiltDeg     0 to 90
 * @param view.horizonDeg  0 to 80
 * @returns fraction; (1 + cos tilt) / 2 with a free horizon
 * @accuracy 1e-4 (midpoint rule in elevation, exact in azimuth)
 * @throws RangeFault outside the ranges above
 * @source Liu and Jordan 1963 for the free horizon; the hidden band worked by hand from the cosine law
 */
export function skyViewFrac(view: { readonly tiltDeg: number; readonly horizonDeg: number }): number {
  const tiltDeg = within("tiltDeg", view.tiltDeg, 0, 90);
  const horizonDeg = within("horizonDeg", view.horizonDeg, 0, 80);
  const steps = 90;
  let hidden = 0;
  for (let i = 0; i < steps && horizonDeg > 0; i += 1) {
    const elevationDeg = ((i + 0.5) / steps) * horizonDeg;
    const p = cosDeg(tiltDeg) * sinDeg(elevationDeg);
    const q = sinDeg(tiltDeg) * cosDeg(elevationDeg);
    const reach = p >= q ? Math.PI : acosHeldRad(-p / q);
    hidden += 2 * (p * reach + q * Math.sin(reach)) * cosDeg(elevationDeg);
  }
  hidden *= radOfDeg(horizonDeg) / steps / Math.PI;
  return Math.max(0, (1 + cosDeg(tiltDeg)) / 2 - hidden);
}
