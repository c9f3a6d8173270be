import { cosDeg, sinDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";
import type { SkyPlaneIrradiance } from "./sky-models.ts";

/**
 * Light that passes the glass of a module at an angle, over that at right angles: Fresnel reflection at the front of
 * the pane and absorption in it, by Snell's law.
 *
 * @param pane.incidenceDeg     0 to 180; 0 from 90 on
 * @param pane.refractiveIndex  1.1 to 2; 1.526 when left out
 * @param pane.extinctionPerM   0 to 50; 4 (water-white glass) when left out
 * @param pane.thicknessM       0 to 0.02; 0.002 when left out
 * @returns ratio, 0 to 1: the incidence angle modifier
 * @throws RangeFault outside the ranges above
 * @source De Soto, Klein and Beckman 2006, Solar Energy 80, 78, section 3, with Snell's law the right way round
 *         (sin of refraction = sin of incidence / index; the paper's eq. 14 prints the inverse, as pvlib 0.16.1 notes)
 */
export function glassIncidenceRatio(pane: {
  readonly incidenceDeg: number;
  readonly refractiveIndex?: number;
  readonly extinctionPerM?: number;
  readonly thicknessM?: number;
}): number {
  const incidenceDeg = within("incidenceDeg", pane.incidenceDeg, 0, 180);
  const index = within("refractiveIndex", pane.refractiveIndex ?? 1.526, 1.1, 2);
  const depth =
    within("extinctionPerM", pane.extinctionPerM ?? 4, 0, 50) *
    within("thicknessM", pane.thicknessM ?? 0.002, 0, 0.02);
  if (incidenceDeg >= 90) return 0;
  const cosine = cosDeg(incidenceDeg);
  const sineInside = sinDeg(incidenceDeg) / index;
  const cosineInside = Math.sqrt(1 - sineInside * sineInside);
  const across = ((cosine - index * cosineInside) / (cosine + index * cosineInside)) ** 2;
  const along = ((cosineInside - index * cosine) / (cosineInside + index * cosine)) ** 2;
  const straight = ((index - 1) / (index + 1)) ** 2;
  const passed = (1 - (across + along) / 2) * Math.exp(-depth / cosineInside);
  return passed / ((1 - straight) * Math.exp(-depth));
}

/**
 * The same by a single constant.
 *
 * @param pane.incidenceDeg  0 to 180; 0 from 90 on
 * @param pane.slopeRatio    b0, 0 to 0.2; 0.05 (a single pane) when left out
 * @returns ratio, 0 to 1, held at 0 near grazing light
 * @throws RangeFault outside the ranges above
 * @source Souka and Safwat 1966; ASHRAE Standard 93-77: 1 - b0 (1 / cos - 1)
 */
export function ashraeIncidenceRatio(pane: {
  readonly incidenceDeg: number;
  readonly slopeRatio?: number;
}): number {
  const incidenceDeg = within("incidenceDeg", pane.incidenceDeg, 0, 180);
  const slopeRatio = within("slopeRatio", pane.slopeRatio ?? 0.05, 0, 0.2);
  return incidenceDeg >= 90 ? 0 : Math.max(0, 1 - slopeRatio * (1 / cosDeg(incidenceDeg) - 1));
}

/** Angle of a beam that passes glass as well as light from a wide source does. */
export interface EffectiveIncidence {
  /** For an evenly bright sky. */
  readonly skyDeg: number;
  /** For evenly lit ground. */
  readonly groundDeg: number;
}

/**
 * Incidence that stands for the light of the sky and of the ground on a tilted pane.
 *
 * @param tiltDeg  0 to 90
 * @returns deg
 * @accuracy with glassIncidenceRatio: sky within 0.01, ground within 0.02 of the full integral of light
 * @throws RangeFault outside the range above
 * @source Brandemuehl and Beckman 1980, Solar Energy 24, 511; Duffie and Beckman eqs. 5.4.1 and 5.4.2 (coefficients
 *         from memory)
 */
export function effectiveIncidenceDeg(tiltDeg: number): EffectiveIncidence {
  const tilt = within("tiltDeg", tiltDeg, 0, 90);
  return {
    skyDeg: 59.7 - 0.1388 * tilt + 0.001497 * tilt ** 2,
    groundDeg: 90 - 0.5788 * tilt + 0.002693 * tilt ** 2,
  };
}

/** How a tilted pane weakens light from wide sources; the same in every hour, so worked once for a plane. */
export interface GlassView {
  readonly skyRatio: number;
  readonly groundRatio: number;
}

/**
 * @param tiltDeg  0 to 90
 * @throws RangeFault outside the range above
 * @source glassIncidenceRatio at effectiveIncidenceDeg
 */
export function glassView(tiltDeg: number): GlassView {
  const { skyDeg, groundDeg } = effectiveIncidenceDeg(tiltDeg);
  return {
    skyRatio: glassIncidenceRatio({ incidenceDeg: skyDeg }),
    groundRatio: glassIncidenceRatio({ incidenceDeg: groundDeg }),
  };
}

/**
 * Irradiance that reaches the cells, in terms of light at right angles: the beam and the ring round the sun weakened by
 * their angle, the rest by the pane's view.
 *
 * @param light.incidenceDeg  0 to 180
 * @returns W/m2, to be used in place of the irradiance on the plane where power is worked
 * @throws RangeFault outside the range above
 * @source the parts as Duffie and Beckman section 5.9 weigh them; the horizon band counted with the dome is our choice
 */
export function irradianceThroughGlassWPerM2(
  light: Pick<
    SkyPlaneIrradiance,
    "beamWPerM2" | "circumsolarWPerM2" | "domeWPerM2" | "horizonWPerM2" | "groundWPerM2"
  > &
    GlassView & { readonly incidenceDeg: number },
): number {
  const straight = light.beamWPerM2 + light.circumsolarWPerM2;
  return (
    straight * glassIncidenceRatio({ incidenceDeg: light.incidenceDeg }) +
    (light.domeWPerM2 + light.horizonWPerM2) * light.skyRatio +
    light.groundWPerM2 * light.groundRatio
  );
}
