/**
 * What stands between a device's label and the battery, and how much more than its mean a device can draw.
 */
import type { DeviceKind } from "../brief.ts";

/**
 * Energy that leaves a DC-to-DC converter (a step-up for a PoE switch, a regulator for a DC device) over what enters.
 * @source common practice from memory: 0.88 to 0.94 at load; the low end
 */
export const CONVERTER_EFFICIENCY_FRAC = 0.88;

/**
 * Drawn by one converter for the DC devices, loaded or not.
 * @source common practice from memory: 0.3 to 1 W
 */
export const CONVERTER_IDLE_W = 0.5;

/**
 * A PoE switch fed from the battery, without what it passes on.
 * @source common practice from memory: 2 to 4 W
 */
export const SWITCH_OWN_W = 3;

/**
 * A plain charge controller; one with a network port draws 2 to 4 W.
 * @source common practice from memory: 0.1 to 1 W
 */
export const CONTROLLER_OWN_W = 0.5;

/** A lithium battery's heater keeps it at this, a little above where it may be charged. @source makers' usual figure, from memory */
export const BATTERY_WARM_C = 5;

/**
 * Where no bank is known yet, its heater is reckoned for one that bears the other draws for so many days, emptied by four fifths.
 * @source judgement: between a post's usual 5 and 14 days
 */
export const STAND_IN_BANK_DAYS = 10;

/**
 * Energy that reaches the load over what leaves the battery, because of the wire between.
 * @source Sandia SAND87-7023 worksheet default, from memory
 */
export const WIRE_EFFICIENCY_FRAC = 0.98;

/**
 * Most that a device draws for seconds to minutes (start, motors, sending), over its mean.
 * @source from memory: a turning camera of 18 W peaks at 40 W, a cellular router of 5 W at 12 W; the rest a fifth more
 */
export function peakRatio(device: { readonly kind: DeviceKind; readonly isTurning: boolean }): number {
  if (device.kind === "cellular router") return 2.4;
  return device.isTurning ? 2.2 : 1.2;
}

/**
 * Widest span of a bank's voltage, from the disconnect to a cold morning's absorption charge.
 * @source worked by hand: 6 lead cells from 1.83 V (disconnect) to 2.58 V (2.40 V at 25 degrees C and 5 mV per K down to
 *         -10 degrees C); twice and four times that for 24 and 48 V
 */
export const BANK_SPAN_V_BY_BANK_V: Readonly<Record<12 | 24 | 48, readonly [number, number]>> = {
  12: [11, 15.5],
  24: [22, 31],
  48: [44, 62],
};
