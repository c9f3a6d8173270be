import { clamp, interpolate, within } from "../numerics/index.ts";
import {
  glassIncidenceRatio,
  glassView,
  type HorizonProfile,
  horizonLoss,
  type Plane,
} from "../sun/index.ts";
import { HOURS_A_YEAR } from "./calendar.ts";
import { STEPS_AN_HOUR, type SunSteps } from "./sun-steps.ts";

/** A plane and what stands round it. */
export interface PlaneSite extends Plane {
  readonly latitudeDeg: number;
  /** Level ring of obstacles, 0 to 80; 0 when left out. */
  readonly horizonDeg?: number | undefined;
  /** The same direction by direction; where both are given, the higher. */
  readonly horizon?: HorizonProfile | undefined;
}

/**
 * How a plane takes light, hour by hour of a year and the same every year: factors on the irradiance of the level.
 * Lists have 8760 entries; 0 with the sun down.
 */
export interface PlaneYear {
  /** Beam on the plane over beam on the open level. */
  readonly beamRatio: Float64Array;
  /** The same behind the glass. */
  readonly glassBeamRatio: Float64Array;
  /** Beam on the ground over beam on the open level: 1 where nothing stands round. */
  readonly groundBeamRatio: Float64Array;
  /** Share of an even sky that the plane sees, and the ground before it. */
  readonly skyFrac: number;
  readonly groundSkyFrac: number;
  /** Share of the ground's light that the plane sees. */
  readonly groundFrac: number;
  /** What glass leaves of the light of sky and ground. */
  readonly skyGlassRatio: number;
  readonly groundGlassRatio: number;
}

/**
 * @throws RangeFault for a tilt outside 0..90 or an azimuth outside 0..360, and as HorizonPoint
 * @source cosine of incidence as Duffie and Beckman eq. 1.6.3, in vector form, mean over six looks an hour
 */
export function planeYear(steps: SunSteps, site: PlaneSite): PlaneYear {
  const tiltRad = (within("tiltDeg", site.tiltDeg, 0, 90) * Math.PI) / 180;
  const azimuthRad = (within("azimuthDeg", site.azimuthDeg, 0, 360) * Math.PI) / 180;
  const up = Math.cos(tiltRad);
  const east = Math.sin(tiltRad) * Math.sin(azimuthRad);
  const north = Math.sin(tiltRad) * Math.cos(azimuthRad);
  const isLit = litTest(site);
  const beamRatio = new Float64Array(HOURS_A_YEAR);
  const glassBeamRatio = new Float64Array(HOURS_A_YEAR);
  const groundBeamRatio = new Float64Array(HOURS_A_YEAR);
  for (let hour = 0; hour < HOURS_A_YEAR; hour += 1) {
    let level = 0;
    let ground = 0;
    let plane = 0;
    let glass = 0;
    for (let step = hour * STEPS_AN_HOUR; step < (hour + 1) * STEPS_AN_HOUR; step += 1) {
      const sunUp = steps.up[step]!;
      if (sunUp <= 0) continue;
      level += sunUp;
      const sunEast = steps.east[step]!;
      const sunNorth = steps.north[step]!;
      if (!isLit(sunUp, sunEast, sunNorth)) continue;
      ground += sunUp;
      const cosine = up * sunUp + east * sunEast + north * sunNorth;
      if (cosine <= 0) continue;
      plane += cosine;
      glass += cosine * glassRatioOf(cosine);
    }
    if (level > 0) {
      beamRatio[hour] = plane / level;
      glassBeamRatio[hour] = glass / level;
      groundBeamRatio[hour] = ground / level;
    }
  }
  const { skyRatio, groundRatio } = glassView(site.tiltDeg);
  return {
    beamRatio,
    glassBeamRatio,
    groundBeamRatio,
    skyFrac: ((1 + up) / 2) * (1 - hiddenSkyFrac(site)),
    groundSkyFrac: 1 - hiddenSkyFrac({ ...site, tiltDeg: 0 }),
    groundFrac: (1 - up) / 2,
    skyGlassRatio: skyRatio,
    groundGlassRatio: groundRatio,
  };
}

/** Glass is looked up by cosine of incidence in steps of 1/500: its curve is smooth but at grazing light. */
const GLASS_STEPS = 500;
const GLASS_RATIOS: Readonly<Float64Array> = Float64Array.from({ length: GLASS_STEPS + 1 }, (_, i) =>
  glassIncidenceRatio({ incidenceDeg: (Math.acos(i / GLASS_STEPS) * 180) / Math.PI }),
);

function glassRatioOf(cosine: number): number {
  const place = Math.min(1, cosine) * GLASS_STEPS;
  const from = Math.min(GLASS_STEPS - 1, Math.floor(place));
  return GLASS_RATIOS[from]! + (GLASS_RATIOS[from + 1]! - GLASS_RATIOS[from]!) * (place - from);
}

function hasHorizon(site: PlaneSite): boolean {
  return (site.horizonDeg ?? 0) > 0 || (site.horizon ?? []).length > 0;
}

function hiddenSkyFrac(site: PlaneSite): number {
  if (!hasHorizon(site)) return 0;
  const dark = Array.from({ length: 12 }, () => 0);
  return clamp(
    horizonLoss({
      // the sky's loss is a matter of the plane and its surroundings alone
      latitudeDeg: 0,
      tiltDeg: site.tiltDeg,
      azimuthDeg: site.azimuthDeg,
      ghiDailyKWhPerM2ByMonth: dark,
      albedoByMonth: dark,
      horizonDeg: site.horizonDeg ?? 0,
      horizon: site.horizon ?? [],
    }).diffuseLossFrac,
    0,
    1,
  );
}

/** Whether the sun, as a unit vector, stands above what is round the plane. */
function litTest(site: PlaneSite): (up: number, east: number, north: number) => boolean {
  if (!hasHorizon(site)) return () => true;
  const ringDeg = site.horizonDeg ?? 0;
  const points = (site.horizon ?? [])
    .map(({ azimuthDeg, elevationDeg }) => [azimuthDeg, elevationDeg] as const)
    .sort((a, b) => a[0] - b[0]);
  const first = points[0];
  const last = points.at(-1);
  const round =
    first === undefined || last === undefined
      ? [[0, ringDeg] as const]
      : [[last[0] - 360, last[1]] as const, ...points, [first[0] + 360, first[1]] as const];
  // half degrees of azimuth: a look every ten minutes moves the sun by more
  const elevationSines = Float64Array.from({ length: 720 }, (_, i) =>
    Math.sin((Math.max(ringDeg, interpolate(round, (i + 0.5) / 2)) * Math.PI) / 180),
  );
  return (up, east, north) => {
    const turn = (Math.atan2(east, north) * 360) / Math.PI;
    return up >= elevationSines[Math.floor(turn < 0 ? turn + 720 : turn) % 720]!;
  };
}
