/**
 * Judgement behind the stand-ins that depend on the place: what to assume of snow, frost and wind until somebody looks.
 * All of it errs on the safe side and is common practice without a source, except where said.
 */
import { comparedSources } from "../core/climate/index.ts";
import { indexOfMin } from "../core/numerics/index.ts";

export { PANEL_LOWER_EDGE_M } from "./practice/mounting.ts";

/**
 * Weeks a year to assume that snow lies on a steep panel.
 *
 * @param coldestMonthC  mean of the coldest month
 * @returns weeks, 0 to 8
 * @source common practice, no source
 */
export function snowWeeksAssumed(coldestMonthC: number): number {
  if (coldestMonthC < -10) return 8;
  if (coldestMonthC < -4) return 5;
  if (coldestMonthC < 0) return 3;
  return coldestMonthC < 2 ? 1 : 0;
}

/** Does the place get cold enough that snow on the panel must be asked about? */
export function isSnowLikely(coldestMonthC: number): boolean {
  return snowWeeksAssumed(coldestMonthC) > 0;
}

/**
 * Whether a heater is worth asking about: most cameras are rated to -20 °C or lower without one.
 *
 * @param designColdC  lowest hour of a typical year
 * @source common practice from memory
 */
export function isHeaterLikely(designColdC: number): boolean {
  return designColdC < -20;
}

/**
 * Whether a fan is worth asking about: a closed box stands some 10 to 15 K above the air, devices end at 50 to 60 °C.
 *
 * @param designHotC  highest hour of a typical year
 * @source common practice from memory
 */
export function isFanLikely(designHotC: number): boolean {
  return designHotC > 42;
}

/**
 * Frost depth to assume until the building office has been asked.
 *
 * @param coldestMonthC  mean of the coldest month
 * @returns metres, 0 to 2
 * @source common practice, no source: about 0.3 m where the coldest month just freezes, 0.1 m more for each kelvin below
 */
export function frostDepthAssumedM(coldestMonthC: number): number {
  if (coldestMonthC >= 4) return 0;
  const depthM = coldestMonthC >= 0 ? 0.3 : 0.3 + 0.1 * -coldestMonthC;
  return Math.min(2, Math.round(depthM * 10) / 10);
}

/** Gust to assume until a code map has been read: high for most inland places, low for a hurricane coast. From memory. */
export const gustAssumedMPerS = 50;

/**
 * Whether two sources differ so much in the dullest month that the builder has to say which counts.
 *
 * @param mapGhi  kWh/m2 a day by month
 */
export function mustChooseSun(
  mapGhi: readonly number[],
  own: { readonly ghiDailyKWhPerM2ByMonth: readonly number[] },
): boolean {
  const { agreement } = comparedSources({
    firstGhiDailyKWhPerM2ByMonth: mapGhi,
    secondGhiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    month: indexOfMin(mapGhi),
  });
  return agreement === "choose";
}

/**
 * Light that dirt takes from a panel, by how dirty the place is.
 *
 * @source common practice, no source: 2 to 5 % where rain washes, 10 to 20 % in dry and dusty places
 */
export const SOILING_FRAC = { washed: 0.03, some: 0.05, dusty: 0.15 } as const;

/** How far round the spot somebody has looked for overhead wires, by the answer; the question names the figure. */
export const LOOKED_CLEAR_M = { no: 12, noneFar: 25, yes: 0, notLooked: 0 } as const;

/** Outwards from a wall by the wind it faces, clockwise from true north; null where nobody has looked. */
export const WALL_AZIMUTH_DEG = {
  n: 0,
  ne: 45,
  e: 90,
  se: 135,
  s: 180,
  sw: 225,
  w: 270,
  nw: 315,
  unknown: null,
} as const;

/** Before sunrise and after sunset a camera that runs from dawn to dusk still sees. @source common practice, no source */
export const TWILIGHT_MARGIN_H = 0.5;
