import { within } from "../numerics/index.ts";
import { naturalFrequencyHz, tipDeflectionM, uniformTipDeflectionM } from "./beam.ts";
import { type Tube, type TubeFamily, tubeSection, tubes } from "./section.ts";
import { DIRECTIONALITY } from "./tables.ts";
import {
  ALLOWABLE_STRESS_WIND_FRAC,
  combinedLoad,
  type SiteWind,
  tubeForceCoefficient,
  velocityPressurePa,
  type WindLoad,
  type WindPart,
  windForceN,
  windLoad,
} from "./wind.ts";

export type TubeCriterion = "stress" | "deflection" | "frequency";

/** What a mast must carry. Its own wind is added to that of the parts. */
export interface MastLoad extends SiteWind {
  /** Top above ground, 0.5 to 30. */
  readonly heightM: number;
  /** Everything on the mast that catches wind, none of it higher than heightM. */
  readonly parts: readonly WindPart[];
  /** Of everything on the mast, taken as if at the top: 0 to 500. */
  readonly headMassKg: number;
  /** Share of the yield strength that may be used, 0.3 to 0.9; default 0.6. */
  readonly allowableFrac?: number;
  /** Tip movement over height in the design wind, 0.001 to 0.2; default 1/60. */
  readonly maxDeflectionFrac?: number;
  /** 0 to 10; default 1, below which the gust factor of a rigid structure no longer holds. */
  readonly minFrequencyHz?: number;
  /** Where the steel is known better than by the family's own grade. */
  readonly yieldMPa?: number;
}

/** How one tube serves. */
export interface TubeFit {
  readonly tube: Tube;
  readonly massKg: number;
  /** 0.6 W, tube included. */
  readonly wind: WindLoad;
  readonly stressMPa: number;
  readonly allowableMPa: number;
  /** Stress over what is allowed. */
  readonly stressUseFrac: number;
  readonly tipDeflectionM: number;
  readonly maxDeflectionM: number;
  readonly deflectionUseFrac: number;
  readonly frequencyHz: number;
  readonly failsOn: readonly TubeCriterion[];
}

export type TubePick =
  | (TubeFit & {
      readonly kind: "picked";
      /** What the next slenderer tube fails on; empty when the slenderest serves. */
      readonly decidedBy: readonly TubeCriterion[];
    })
  | { readonly kind: "none-fits"; readonly stoutest: TubeFit };

/**
 * How a given tube, fixed in the ground, serves as a mast: stress, tip movement and sway.
 *
 * @returns MPa, m, Hz under 0.6 of the strength-level wind; the tube's own wind counts with the pressure at its top
 *   (exact below 4.57 m, a little high above)
 * @throws RangeFault outside the ranges of MastLoad, or for a part above the mast's top
 * @source ASCE 7-16 chapter 29 and 2.4.1; 0.6 Fy: AISC 360 allowed more; height/60 and 1 Hz: common practice, no source
 *   (a camera 3 m up then moves 50 mm in the worst gust of decades, and far less on most days)
 */
export function tubeFit(load: MastLoad & { readonly tube: Tube }): TubeFit {
  const { tube, parts, headMassKg, windMPerS, exposure, topographicFactor = 1 } = load;
  const heightM = within("heightM", load.heightM, 0.5, 30);
  const allowableFrac = within("allowableFrac", load.allowableFrac ?? 0.6, 0.3, 0.9);
  const maxDeflectionM = heightM * within("maxDeflectionFrac", load.maxDeflectionFrac ?? 1 / 60, 0.001, 0.2);
  const minFrequencyHz = within("minFrequencyHz", load.minFrequencyHz ?? 1, 0, 10);
  const allowableMPa = allowableFrac * within("yieldMPa", load.yieldMPa ?? tube.yieldMPa, 100, 700);
  within("headMassKg", headMassKg, 0, 500);
  for (const part of parts) within(`heightM of ${part.name}`, part.heightM, 0, heightM);

  const site: SiteWind = { windMPerS, exposure, topographicFactor };
  const { secondMomentMm4, modulusMm3 } = tubeSection({ outerMm: tube.outerMm, wallMm: tube.designWallMm });
  const { massKgPerM } = tubeSection({ outerMm: tube.outerMm, wallMm: tube.wallMm });
  const diameterM = tube.outerMm / 1000;
  const pressurePa = velocityPressurePa({
    ...site,
    heightM,
    directionalityFactor: DIRECTIONALITY.roundTube,
  });
  const forceCoefficient = tubeForceCoefficient({ heightM, diameterM });
  const tubeForceN =
    ALLOWABLE_STRESS_WIND_FRAC * windForceN({ pressurePa, areaM2: heightM * diameterM, forceCoefficient });
  const onParts = windLoad({ ...site, parts }).parts;
  const wind = combinedLoad([
    ...onParts,
    { name: "mast", heightM: heightM / 2, forceN: tubeForceN, momentNm: (tubeForceN * heightM) / 2 },
  ]);
  const stressMPa = (1000 * wind.momentNm) / modulusMm3;
  let tipM = uniformTipDeflectionM({ forceN: tubeForceN, heightM, secondMomentMm4 });
  for (const { forceN, heightM: atM } of onParts) {
    tipM += tipDeflectionM({ forceN, atM, heightM, secondMomentMm4 });
  }
  const massKg = massKgPerM * heightM;
  const frequencyHz = naturalFrequencyHz({ headMassKg, tubeMassKg: massKg, heightM, secondMomentMm4 });
  const failsOn: TubeCriterion[] = [];
  if (stressMPa > allowableMPa) failsOn.push("stress");
  if (tipM > maxDeflectionM) failsOn.push("deflection");
  if (frequencyHz < minFrequencyHz) failsOn.push("frequency");
  return {
    tube,
    massKg,
    wind,
    stressMPa,
    allowableMPa,
    stressUseFrac: stressMPa / allowableMPa,
    tipDeflectionM: tipM,
    maxDeflectionM,
    deflectionUseFrac: tipM / maxDeflectionM,
    frequencyHz,
    failsOn,
  };
}

/**
 * Slenderest standard tube of a family that serves as the mast.
 *
 * @returns the tube with its figures and what decided; "none-fits" with the stoutest one's figures: lower the mast, lower
 *   or shrink the panel, or let an engineer design it
 * @throws RangeFault as tubeFit
 * @source as tubeFit and tubes
 */
export function pickTube(load: MastLoad & { readonly family: TubeFamily }): TubePick {
  const fits = tubes(load.family).map((tube) => tubeFit({ ...load, tube }));
  const first = fits.findIndex(({ failsOn }) => failsOn.length === 0);
  if (first < 0) return { kind: "none-fits", stoutest: fits.at(-1)! };
  return { kind: "picked", ...fits[first]!, decidedBy: fits[first - 1]?.failsOn ?? [] };
}
