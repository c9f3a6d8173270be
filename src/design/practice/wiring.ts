/** Lengths, drop limits and surroundings of the wires of a post. */
import type { ConductorFamily } from "../../core/wiring/index.ts";
import { isAmericanTrade } from "./mounting.ts";

/** Of cable for bends, drip loops and entries, on top of the way itself. @source judgement */
export const SLACK_M = 1;

/** Inside the box: controller to bank (bank beside it), bus to switch or converter. @source judgement */
export const BANK_LEAD_M = 1;
export const INSIDE_LEAD_M = 0.5;

/**
 * Largest share of the voltage that may be lost on the way.
 * @source common practice, no source: 2 % panel to controller, 1 % controller to bank (it senses the charge voltage there), 3 % to
 *         the loads (NEC 210.19 informational note)
 */
export const MOST_DROP_FRAC = { panel: 0.02, bank: 0.01, load: 0.03 } as const;

/** Over the hottest hour of the year: wires in a closed box or in the sun on a mast. @source judgement */
export const WIRE_RISE_K = 15;

/** Label of a panel: largest series fuse over its short-circuit current. @source from memory: 15 A for small panels, 20 to 25 A above 10 A */
export function panelLabelFuseA(shortCircuitA: number): number {
  if (shortCircuitA <= 9) return 15;
  return shortCircuitA <= 12 ? 20 : 25;
}

/** Converters draw about this much more for an instant at switch-on: fuses and wires of the loads bear it. @source common practice, no source */
export const INRUSH_RATIO = 2;

/**
 * A fuse over the largest fuse behind it, at least: the one nearest the fault then blows first and the rest stays on.
 * @source common practice, no source
 */
export const SELECTIVITY_RATIO = 1.6;

/** Regulated supply of the DC devices. @source common practice, no source */
export const DEVICE_SUPPLY_V = 12;

/** A converter is bought for this much more than its devices ask at most: one that runs at its limit gets hot. @source common practice, no source */
export const CONVERTER_HEADROOM_RATIO = 1.25;

/** Data cable on the mast: solid bare copper. @source common practice, no source */
export const DATA_CABLE_AWG = 24;

/** Highest class of a common PoE port (30 W at the source). @source IEEE 802.3 type 2 */
export const COMMON_PORT_CLASS = 4;

export function wireFamily(countryCode: string | null): ConductorFamily {
  return isAmericanTrade(countryCode) ? "awg" : "mm2";
}
