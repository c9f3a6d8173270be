/**
 * Price bands in US dollars, and what a dollar is worth elsewhere. All of this file is from memory (2026), without tax and
 * carriage, and rounded: the builder's own prices go first.
 */
import type { Chemistry, ControllerKind } from "../brief.ts";

export type Band = readonly [lowUsd: number, highUsd: number];

export const PANEL_PER_W: Band = [0.8, 1.3];
/** Blocks of 12 V or 12.8 V; others in proportion to their voltage. */
export const BLOCK_PER_AH: Readonly<Record<Chemistry, Band>> = { agm: [1.8, 3], lifepo4: [2.5, 5] };
const SMALL_CONTROLLER: Readonly<Record<ControllerKind, Band>> = { mppt: [40, 150], pwm: [15, 40] };
/**
 * A charge controller: one band up to 20 A (tracking: 20 A at 100 V), beyond it in proportion to the amperes (tracking: to
 * amperes times input voltage).
 *
 * @param ratedA     0 or more
 * @param maxInputV  0 or more
 * @source from memory
 */
export function controllerBand(controller: {
  readonly kind: ControllerKind;
  readonly ratedA: number;
  readonly maxInputV: number;
}): Band {
  const { kind, ratedA, maxInputV } = controller;
  const factor = Math.max(1, kind === "mppt" ? (ratedA * maxInputV) / (20 * 100) : ratedA / 20);
  const [low, high] = SMALL_CONTROLLER[kind];
  return [low * factor, high * factor];
}
export const POE_SWITCH: Band = [40, 120];
export const CONVERTER: Band = [15, 40];
export const FIXED_CAMERA: Band = [80, 250];
export const TURNING_CAMERA: Band = [200, 600];
export const RADIO_PAIR: Band = [120, 300];
export const CELLULAR_ROUTER: Band = [80, 250];
export const OTHER_DEVICE: Band = [30, 150];
export const RECORDER: Band = [80, 250];
export const BOX: Band = [80, 250];
/** A mast of 4 m; longer ones in proportion. */
export const MAST_PER_M: Band = [10, 35];
export const CONCRETE_PER_BAG: Band = [5, 9];
const PANEL_BRACKET: Band = [40, 120];
const GROUND_FRAME_PER_M2: Band = [40, 90];
/** Ground screws or concrete for a frame, and somebody who says how strong they must be. */
const GROUND_ANCHORS: Band = [150, 500];
/** What carries the panels: a bracket on the mast, or a frame with its anchors. */
export function panelMount(array: { readonly areaM2: number; readonly isOnMast: boolean }): Band {
  if (array.isOnMast) return PANEL_BRACKET;
  const of = (end: 0 | 1) => array.areaM2 * GROUND_FRAME_PER_M2[end] + GROUND_ANCHORS[end];
  return [of(0), of(1)];
}
export const POLE_CLAMPS: Band = [15, 45];
/** By cross-section of one conductor. */
export function wirePerM(areaMm2: number): Band {
  return [0.3 + 0.25 * areaMm2, 0.6 + 0.5 * areaMm2];
}
export const DATA_CABLE_PER_M: Band = [0.6, 1.5];
export const BATTERY_HEATER: Band = [20, 70];
export const FOAM_PER_M2: Band = [8, 20];
export const MAIN_FUSE: Band = [20, 50];
export const SMALL_FUSE: Band = [3, 8];
export const STRING_FUSE: Band = [8, 20];
export const DATA_SURGE: Band = [15, 40];
export const DC_SURGE: Band = [25, 60];
export const EARTH_SET: Band = [25, 60];
export const ISOLATOR: Band = [12, 40];
/** Switches by a voltage that is set, off and on each by its own. */
export const VOLTAGE_RELAY: Band = [10, 40];
/** The same for the current of all loads together. */
export const LOAD_DISCONNECT: Band = [20, 70];
export const SIGN: Band = [5, 20];
export const GLANDS: Band = [15, 30];
export const STORAGE_PER_TB: Band = [25, 45];

/** Units of a currency for one US dollar; a currency that is not here is priced in dollars. */
const UNITS_PER_USD: Readonly<Record<string, number>> = {
  USD: 1,
  EUR: 0.9,
  GBP: 0.77,
  CAD: 1.38,
  AUD: 1.5,
  NZD: 1.7,
  CHF: 0.85,
  SEK: 10,
  NOK: 10.5,
  DKK: 6.7,
  PLN: 3.8,
  CZK: 22,
  HUF: 350,
  RON: 4.5,
  TRY: 40,
  ZAR: 18,
  KES: 129,
  TZS: 2600,
  UGX: 3650,
  NGN: 1500,
  GHS: 12,
  INR: 86,
  PKR: 280,
  BDT: 120,
  LKR: 300,
  NPR: 138,
  JPY: 150,
  CNY: 7.2,
  KRW: 1400,
  TWD: 31,
  HKD: 7.8,
  SGD: 1.3,
  MYR: 4.3,
  THB: 33,
  VND: 26000,
  PHP: 57,
  IDR: 16300,
  BRL: 5.5,
  MXN: 19,
  CLP: 950,
  COP: 4100,
  PEN: 3.7,
  ILS: 3.5,
  AED: 3.67,
  SAR: 3.75,
};

/** The currency that prices are shown in, and its rate; dollars where none is known for the one wished. */
export function priceCurrency(wished: string): { readonly currency: string; readonly unitsPerUsd: number } {
  const unitsPerUsd = UNITS_PER_USD[wished];
  return unitsPerUsd === undefined ? { currency: "USD", unitsPerUsd: 1 } : { currency: wished, unitsPerUsd };
}
