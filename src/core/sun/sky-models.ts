import { cosDeg, radOfDeg, sinDeg } from "../astronomy/index.ts";
import { clamp, within } from "../numerics/index.ts";
import { isotropicPoa, type PlaneIrradiance, relativeAirMassRatio } from "./irradiance.ts";

/** Irradiance on a plane, the light of the sky parted by where in the sky it comes from. */
export interface SkyPlaneIrradiance extends PlaneIrradiance {
  /** Of skyWPerM2, the bright ring round the sun; it strikes the plane as the beam does. */
  readonly circumsolarWPerM2: number;
  /** Of skyWPerM2, the evenly bright dome. */
  readonly domeWPerM2: number;
  /** Of skyWPerM2, the band above the horizon; the Perez model may take light away here. */
  readonly horizonWPerM2: number;
}

/** Light of one hour and how a plane stands to the sun. */
export interface SkyLight {
  /** 0 to 1500. */
  readonly beamNormalWPerM2: number;
  /** On the level, 0 to 1500. */
  readonly diffuseWPerM2: number;
  /** 0 to 2000. */
  readonly ghiWPerM2: number;
  /** Between the sun and the normal of the plane, 0 to 180. */
  readonly incidenceDeg: number;
  /** Of the sun, refraction included, 0 to 180. */
  readonly zenithDeg: number;
  /** 1200 to 1500. */
  readonly extraterrestrialNormalWPerM2: number;
  /** 0 to 180. */
  readonly tiltDeg: number;
  /** 0 to 1. */
  readonly albedo: number;
}

/** Lowest cosine of the zenith that the ring round the sun is divided by: 89 deg. The guard of pvlib 0.16.1. */
const LEAST_RING_COSINE = 0.01745;

/**
 * Irradiance on a plane with a bright ring round the sun, as large as the beam is clear, and an even dome.
 *
 * The ring is divided by the cosine of a zenith of at most 89 deg. The share of the ring is held at 1. With the sun
 * below the horizon (zenith above 90) the sky is taken as even.
 *
 * @throws RangeFault outside the ranges of SkyLight
 * @source Hay and Davies 1980; Duffie and Beckman eqs. 2.16.2 to 2.16.4 without the horizon term
 */
export function hayDaviesPoa(light: SkyLight): SkyPlaneIrradiance {
  return ringedSky(light, 0);
}

/**
 * As hayDaviesPoa, with a band of light above the horizon that grows with the share of beam (HDKR).
 *
 * @throws RangeFault outside the ranges of SkyLight
 * @source Reindl, Beckman and Duffie 1990, Solar Energy 45, 9; Duffie and Beckman eqs. 2.16.5 to 2.16.7. The share of
 *         beam is held between 0 and 1, since a measured triple may not add up
 */
export function hdkrPoa(light: SkyLight): SkyPlaneIrradiance {
  const beamLevel = light.beamNormalWPerM2 * Math.max(0, cosDeg(light.zenithDeg));
  const beamFrac = light.ghiWPerM2 > 0 ? clamp(beamLevel / light.ghiWPerM2, 0, 1) : 0;
  return ringedSky(light, Math.sqrt(beamFrac) * sinDeg(light.tiltDeg / 2) ** 3);
}

function ringedSky(light: SkyLight, horizonOfDomeFrac: number): SkyPlaneIrradiance {
  const even = isotropicPoa(light);
  const zenithDeg = within("zenithDeg", light.zenithDeg, 0, 180);
  const normal = within("extraterrestrialNormalWPerM2", light.extraterrestrialNormalWPerM2, 1200, 1500);
  if (zenithDeg > 90) return evenSky(even);
  const ringFrac = Math.min(1, light.beamNormalWPerM2 / normal);
  const ringRatio = Math.max(0, cosDeg(light.incidenceDeg)) / Math.max(cosDeg(zenithDeg), LEAST_RING_COSINE);
  const domeWPerM2 = even.skyWPerM2 * (1 - ringFrac);
  return withSky(even, {
    circumsolarWPerM2: light.diffuseWPerM2 * ringFrac * ringRatio,
    domeWPerM2,
    horizonWPerM2: domeWPerM2 * horizonOfDomeFrac,
  });
}

/** One bin of sky clearness in the Perez model. */
interface PerezBin {
  /** Clearness below which the bin holds. */
  readonly belowRatio: number;
  /** Brightness of the ring: constant, per unit of sky brightness, per rad of zenith. */
  readonly ring: readonly [number, number, number];
  /** The same of the horizon. */
  readonly horizon: readonly [number, number, number];
}

/** Perez et al. 1990, table 6 (all sites, composite), in the digits of pvlib 0.16.1. */
const PEREZ_BINS: readonly PerezBin[] = [
  { belowRatio: 1.065, ring: [-0.008, 0.588, -0.062], horizon: [-0.06, 0.072, -0.022] },
  { belowRatio: 1.23, ring: [0.13, 0.683, -0.151], horizon: [-0.019, 0.066, -0.029] },
  { belowRatio: 1.5, ring: [0.33, 0.487, -0.221], horizon: [0.055, -0.064, -0.026] },
  { belowRatio: 1.95, ring: [0.568, 0.187, -0.295], horizon: [0.109, -0.152, -0.014] },
  { belowRatio: 2.8, ring: [0.873, -0.392, -0.362], horizon: [0.226, -0.462, 0.001] },
  { belowRatio: 4.5, ring: [1.132, -1.237, -0.412], horizon: [0.288, -0.823, 0.056] },
  { belowRatio: 6.2, ring: [1.06, -1.6, -0.359], horizon: [0.264, -1.127, 0.131] },
  { belowRatio: Number.POSITIVE_INFINITY, ring: [0.678, -0.327, -0.25], horizon: [0.156, -1.377, 0.251] },
];

/** Of the clearness, with the zenith in rad. */
const PEREZ_ZENITH_FACTOR = 1.041;
const PEREZ_LEAST_COSINE = cosDeg(85);

/**
 * Irradiance on a plane by the model of Perez: ring, dome and horizon weighed by the clearness and the brightness of
 * the sky.
 *
 * The path through the air is relativeAirMassRatio of the zenith given; the ring is divided by the cosine of a zenith
 * of at most 85 deg and is never negative; where the parts of the sky add to less than nothing all are 0. With the sun
 * below the horizon (zenith above 90) the sky is taken as even: pvlib gives 0 there.
 *
 * @accuracy 1e-6 against pvlib 0.16.1 above the horizon
 * @throws RangeFault outside the ranges of SkyLight
 * @source Perez, Ineichen, Seals, Michalsky and Stewart 1990, Solar Energy 44, 271
 */
export function perezPoa(light: SkyLight): SkyPlaneIrradiance {
  const even = isotropicPoa(light);
  const zenithDeg = within("zenithDeg", light.zenithDeg, 0, 180);
  const normal = within("extraterrestrialNormalWPerM2", light.extraterrestrialNormalWPerM2, 1200, 1500);
  const diffuse = light.diffuseWPerM2;
  if (zenithDeg > 90 || diffuse === 0) return evenSky(even);
  const zenithRad = radOfDeg(zenithDeg);
  const cube = PEREZ_ZENITH_FACTOR * zenithRad ** 3;
  const clearnessRatio = (1 + light.beamNormalWPerM2 / diffuse + cube) / (1 + cube);
  const brightnessRatio = (diffuse * relativeAirMassRatio(zenithDeg)) / normal;
  const bin = PEREZ_BINS.find(({ belowRatio }) => clearnessRatio < belowRatio) ?? PEREZ_BINS.at(-1)!;
  const weightOf = ([constant, perBrightness, perRad]: PerezBin["ring"]): number =>
    constant + perBrightness * brightnessRatio + perRad * zenithRad;
  const ringFrac = Math.max(0, weightOf(bin.ring));
  const ringRatio = Math.max(0, cosDeg(light.incidenceDeg)) / Math.max(cosDeg(zenithDeg), PEREZ_LEAST_COSINE);
  const parts = {
    circumsolarWPerM2: diffuse * ringFrac * ringRatio,
    domeWPerM2: even.skyWPerM2 * (1 - ringFrac),
    horizonWPerM2: diffuse * weightOf(bin.horizon) * sinDeg(light.tiltDeg),
  };
  return parts.circumsolarWPerM2 + parts.domeWPerM2 + parts.horizonWPerM2 > 0
    ? withSky(even, parts)
    : withSky(even, { circumsolarWPerM2: 0, domeWPerM2: 0, horizonWPerM2: 0 });
}

type SkyParts = Pick<SkyPlaneIrradiance, "circumsolarWPerM2" | "domeWPerM2" | "horizonWPerM2">;

function evenSky(even: PlaneIrradiance): SkyPlaneIrradiance {
  return withSky(even, { circumsolarWPerM2: 0, domeWPerM2: even.skyWPerM2, horizonWPerM2: 0 });
}

function withSky({ beamWPerM2, groundWPerM2 }: PlaneIrradiance, parts: SkyParts): SkyPlaneIrradiance {
  const skyWPerM2 = parts.circumsolarWPerM2 + parts.domeWPerM2 + parts.horizonWPerM2;
  return { poaWPerM2: beamWPerM2 + skyWPerM2 + groundWPerM2, beamWPerM2, skyWPerM2, groundWPerM2, ...parts };
}
