import { within } from "../numerics/index.ts";
import { STEEL } from "./tables.ts";

/** A tube that stands fixed in the ground. */
export interface Cantilever {
  /** Free height above ground, 0.1 to 60. */
  readonly heightM: number;
  readonly secondMomentMm4: number;
}

/** Bending stiffness E I in N m2. */
function stiffnessNm2(secondMomentMm4: number): number {
  within("secondMomentMm4", secondMomentMm4, 1, 1e12);
  return STEEL.modulusMPa * secondMomentMm4 * 1e-6;
}

/**
 * How far the top of a fixed steel tube moves under one sideways force.
 *
 * @param forceN   0 to 1 000 000
 * @param atM      height of the force, 0 to heightM
 * @returns m
 * @accuracy small deflections, ground that does not yield
 * @throws RangeFault outside the ranges above
 * @source elementary beam theory: P a2 (3 L - a) / 6 E I
 */
export function tipDeflectionM({
  forceN,
  atM,
  heightM,
  secondMomentMm4,
}: Cantilever & { readonly forceN: number; readonly atM: number }): number {
  within("forceN", forceN, 0, 1e6);
  within("heightM", heightM, 0.1, 60);
  within("atM", atM, 0, heightM);
  return (forceN * atM ** 2 * (3 * heightM - atM)) / (6 * stiffnessNm2(secondMomentMm4));
}

/**
 * How far the top of a fixed steel tube moves under a force spread evenly over its height.
 *
 * @param forceN  the whole force, 0 to 1 000 000
 * @returns m
 * @accuracy as tipDeflectionM
 * @throws RangeFault outside the ranges above
 * @source elementary beam theory: w L4 / 8 E I
 */
export function uniformTipDeflectionM({
  forceN,
  heightM,
  secondMomentMm4,
}: Cantilever & { readonly forceN: number }): number {
  within("forceN", forceN, 0, 1e6);
  within("heightM", heightM, 0.1, 60);
  return (forceN * heightM ** 3) / (8 * stiffnessNm2(secondMomentMm4));
}

/**
 * First natural frequency of a fixed steel tube with a mass at its top.
 *
 * @param headMassKg  0 to 1000
 * @param tubeMassKg  above ground, 0.1 to 5000
 * @returns Hz
 * @accuracy within 2 % for a rigid footing; soil makes it lower
 * @throws RangeFault outside the ranges above
 * @source Rayleigh's method: (1 / 2 pi) sqrt(3 E I / (m + 0.24 M) L3), from memory
 */
export function naturalFrequencyHz({
  headMassKg,
  tubeMassKg,
  heightM,
  secondMomentMm4,
}: Cantilever & { readonly headMassKg: number; readonly tubeMassKg: number }): number {
  within("headMassKg", headMassKg, 0, 1000);
  within("tubeMassKg", tubeMassKg, 0.1, 5000);
  within("heightM", heightM, 0.1, 60);
  const movingKg = headMassKg + 0.24 * tubeMassKg;
  return Math.sqrt((3 * stiffnessNm2(secondMomentMm4)) / (movingKg * heightM ** 3)) / (2 * Math.PI);
}
