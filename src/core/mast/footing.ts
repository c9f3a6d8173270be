import { within } from "../numerics/index.ts";
import { BAG_ROWS, KPA_PER_PSF, M_PER_FT, SOIL_ROWS } from "./tables.ts";

/** Soils with a presumptive strength, from strongest: mud, peat, organic silt and fill have none. */
export type Soil = keyof typeof SOIL_ROWS;

export interface SoilStrength {
  readonly bearingKPa: number;
  /** Allowable sideways pressure gained with each metre of depth. */
  readonly lateralKPaPerM: number;
}

/**
 * Presumptive allowable strength of a soil.
 *
 * @returns kPa, and kPa per m of depth
 * @source IBC 2012 table 1806.2
 */
export function soilStrength(soil: Soil): SoilStrength {
  const { bearingPsf, lateralPsfPerFt } = SOIL_ROWS[soil];
  return {
    bearingKPa: bearingPsf * KPA_PER_PSF,
    lateralKPaPerM: (lateralPsfPerFt * KPA_PER_PSF) / M_PER_FT,
  };
}

/** Depth beyond which the rule's soil pressure grows no more. Source: IBC 1807.3.2.1 */
export const EMBEDMENT_CAP_M = 12 * M_PER_FT;

/**
 * Depth that a post needs for a given allowable soil pressure: one pass of the rule.
 *
 * @param forceN      sideways, 0 to 1 000 000
 * @param heightM     of the force above the ground, 0 to 60
 * @param diameterM   of the footing, 0.05 to 3
 * @param lateralKPa  allowable pressure at a third of the depth, 0.01 to 10 000
 * @returns m
 * @throws RangeFault outside the ranges above
 * @source IBC 1807.3.2.1, equation 18-1, not constrained at the ground
 */
export function embedmentAtPressureM({
  forceN,
  heightM,
  diameterM,
  lateralKPa,
}: {
  readonly forceN: number;
  readonly heightM: number;
  readonly diameterM: number;
  readonly lateralKPa: number;
}): number {
  within("forceN", forceN, 0, 1e6);
  within("heightM", heightM, 0, 60);
  within("diameterM", diameterM, 0.05, 3);
  within("lateralKPa", lateralKPa, 0.01, 10_000);
  const aM = (2.34 * forceN) / 1000 / (lateralKPa * diameterM);
  // Multiplied out, so that no force gives no depth instead of 0/0.
  return 0.5 * (aM + Math.sqrt(aM ** 2 + 4.36 * heightM * aM));
}

/** What the ground must hold. */
export interface FootingLoad {
  /** Sideways wind at 0.6 W, 0 to 100 000. */
  readonly forceN: number;
  /** Height above ground at which it acts (moment over force), 0 to 60. */
  readonly resultantHeightM: number;
  /** Of the concrete, 0.1 to 2. */
  readonly diameterM: number;
  /** From soilStrength, or a soil report: 5 to 400. */
  readonly lateralKPaPerM: number;
  /** Twice the soil value, for an isolated post that may shift 12 mm at the ground in a storm; default false. */
  readonly acceptsShift?: boolean;
  /** Ground that freezes, 0 to 3. */
  readonly frostDepthM: number;
  /** Loose or dug-over soil on top, 0 to 1. */
  readonly looseTopM: number;
}

export interface Embedment {
  /** "redesign": deeper than the rule holds for; a wider footing, a lower mast, or an engineer. */
  readonly kind: "depth" | "redesign";
  /** By the rule, in soil that counts. */
  readonly soundDepthM: number;
  /** Top layer that is given no strength: the deeper of frost and loose soil. */
  readonly uncountedTopM: number;
  /** Hole to dig: both together. */
  readonly depthM: number;
  /** Allowable pressure at a third of soundDepthM. */
  readonly lateralKPa: number;
}

/**
 * Depth of a post's footing against wind.
 *
 * The allowable pressure grows with the depth sought (to the cap), so the depth is found by halving an interval.
 * Frozen-and-thawed or loose soil on top carries nothing: its thickness is added to the hole and to the lever of the
 * wind.
 *
 * @returns m; kind "redesign" where the rule's depth passes 12 ft (3.66 m)
 * @accuracy the rule is for stiff posts in undisturbed soil; the interval is closed to 0.1 mm
 * @throws RangeFault outside the ranges of FootingLoad
 * @source IBC 1807.3.2.1 and table 1806.2; doubling: 1806.3.4 (from memory); the uncounted top: common practice, no source
 */
export function embedment({
  forceN,
  resultantHeightM,
  diameterM,
  lateralKPaPerM,
  acceptsShift = false,
  frostDepthM,
  looseTopM,
}: FootingLoad): Embedment {
  within("forceN", forceN, 0, 100_000);
  within("resultantHeightM", resultantHeightM, 0, 50);
  within("diameterM", diameterM, 0.1, 2);
  within("lateralKPaPerM", lateralKPaPerM, 5, 400);
  const uncountedTopM = Math.max(
    within("frostDepthM", frostDepthM, 0, 3),
    within("looseTopM", looseTopM, 0, 1),
  );
  const heightM = resultantHeightM + uncountedTopM;
  const rateKPaPerM = lateralKPaPerM * (acceptsShift ? 2 : 1);
  const pressureKPa = (depthM: number): number => (rateKPaPerM * Math.min(depthM, EMBEDMENT_CAP_M)) / 3;
  const needM = (depthM: number): number =>
    embedmentAtPressureM({ forceN, heightM, diameterM, lateralKPa: pressureKPa(depthM) });
  // The need falls as the depth grows, so there is one crossing. 0.01 m keeps the pressure above zero.
  let lowM = 0.01;
  let highM = 1000;
  while (highM - lowM > 1e-4) {
    const midM = (lowM + highM) / 2;
    if (needM(midM) > midM) lowM = midM;
    else highM = midM;
  }
  return {
    kind: highM <= EMBEDMENT_CAP_M ? "depth" : "redesign",
    soundDepthM: highM,
    uncountedTopM,
    depthM: highM + uncountedTopM,
    lateralKPa: pressureKPa(highM),
  };
}

/**
 * The old rule of thumb for a post's depth: a tenth of its length and two feet. To be shown beside the sum, never
 * instead of it.
 *
 * @param postLengthM  whole post, 1 to 30
 * @returns m
 * @throws RangeFault outside the range above
 * @source common practice, no source
 */
export function ruleOfThumbDepthM(postLengthM: number): number {
  return 0.1 * within("postLengthM", postLengthM, 1, 30) + 2 * M_PER_FT;
}

/** Bags that dry concrete mix is sold in. */
export type ConcreteBag = keyof typeof BAG_ROWS;

export interface Concrete {
  /** Hole less post, without waste. */
  readonly volumeM3: number;
  /** Rounded up, waste included. */
  readonly bags: number;
  readonly bagMassKg: number;
  readonly dryMassKg: number;
}

/**
 * Concrete for a round footing, and the bags to buy.
 *
 * @param diameterM     of the hole, 0.1 to 2
 * @param depthM        of the concrete, 0.1 to 10
 * @param postOuterMm   0 where the post is bolted on top, up to 500
 * @param wasteFrac     0 to 0.5; default 0.1, for an uneven hole
 * @throws RangeFault outside the ranges above, or for a post wider than the hole
 * @source bag yields: see the table; 10 % waste: common practice, no source
 */
export function concrete({
  diameterM,
  depthM,
  postOuterMm,
  bag,
  wasteFrac = 0.1,
}: {
  readonly diameterM: number;
  readonly depthM: number;
  readonly postOuterMm: number;
  readonly bag: ConcreteBag;
  readonly wasteFrac?: number;
}): Concrete {
  within("diameterM", diameterM, 0.1, 2);
  within("depthM", depthM, 0.1, 10);
  within("postOuterMm", postOuterMm, 0, Math.min(500, 1000 * diameterM));
  within("wasteFrac", wasteFrac, 0, 0.5);
  const volumeM3 = (Math.PI / 4) * (diameterM ** 2 - (postOuterMm / 1000) ** 2) * depthM;
  const { yieldM3, massKg } = BAG_ROWS[bag];
  const bags = Math.ceil((volumeM3 * (1 + wasteFrac)) / yieldM3);
  return { volumeM3, bags, bagMassKg: massKg, dryMassKg: bags * massKg };
}
