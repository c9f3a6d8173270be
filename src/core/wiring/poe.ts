import { within } from "../numerics/index.ts";
import { awgAreaMm2, copperOhmPerKm, copperResistanceRatio } from "./copper.ts";
import { type ConstantPowerDrop, constantPowerDrop } from "./drop.ts";
import { POE_ROWS } from "./tables.ts";

/** One class of standard power over Ethernet. */
export interface PoeClass {
  readonly poeClass: number;
  /** Type 1 and 2 use two pairs, 3 and 4 use four. */
  readonly poeType: number;
  readonly pairs: 2 | 4;
  readonly sourceW: number;
  /** What is left at the device after the longest channel. */
  readonly deviceW: number;
  readonly minSourceV: number;
  readonly maxSourceV: number;
  readonly minDeviceV: number;
  /** Of the longest channel, both ways. */
  readonly loopOhm: number;
}

/** Classes 1 to 8, weakest first; class 0 promises the same as class 3. */
export const POE_CLASSES: readonly PoeClass[] = POE_ROWS.map(
  ([poeClass, poeType, pairs, sourceW, deviceW, minSourceV, maxSourceV, minDeviceV, loopOhm]) => ({
    poeClass,
    poeType,
    pairs,
    sourceW,
    deviceW,
    minSourceV,
    maxSourceV,
    minDeviceV,
    loopOhm,
  }),
);

/** Longest copper Ethernet channel, cords included. Source: ISO/IEC 11801, TIA-568, from memory. */
export const ETHERNET_CHANNEL_M = 100;

export type PoeClassPick =
  | ({ readonly kind: "class" } & PoeClass)
  | { readonly kind: "none-fits"; readonly maxDeviceW: number };

/**
 * Weakest class that powers a device at the end of a full-length cable.
 *
 * @param deviceW  most the device draws, 0 to 1000
 * @throws RangeFault outside the range above
 * @source IEEE 802.3-2018 clause 33, 802.3bt-2018 clause 145
 */
export function classFor(deviceW: number): PoeClassPick {
  within("deviceW", deviceW, 0, 1000);
  const found = POE_CLASSES.find((row) => row.deviceW >= deviceW);
  return found ? { kind: "class", ...found } : { kind: "none-fits", maxDeviceW: POE_CLASSES.at(-1)!.deviceW };
}

/** Permitted resistance of a 24 AWG data conductor over its nominal one. */
const CABLE_ALLOWANCE = 93.8 / copperOhmPerKm({ areaMm2: awgAreaMm2(24), conductorTempC: 20 });

/**
 * Loop resistance of the powered pairs of a data cable, out on half the conductors and back on the others.
 *
 * @param lengthM  0.1 to 300
 * @param pairs    2 (one pair each way) or 4 (two pairs each way)
 * @param awg      gauge of the solid bare copper conductors, 22 to 28
 * @param tempC    of the cable; in the sun well above the air; -60 to 90
 * @returns ohm
 * @accuracy the permitted maximum, about 11 % above nominal wire; copper-clad aluminium is half as much again
 * @throws RangeFault outside the ranges above
 * @source TIA-568 / ASTM D4566: 9.38 ohm per 100 m of one 24 AWG conductor at 20 degrees C (from memory); other gauges
 *   by the same allowance over nominal (our extension)
 */
export function poeLoopOhm({
  lengthM,
  pairs,
  awg,
  tempC,
}: {
  readonly lengthM: number;
  readonly pairs: 2 | 4;
  readonly awg: number;
  readonly tempC: number;
}): number {
  within("lengthM", lengthM, 0.1, 300);
  within("awg", awg, 22, 28);
  within("tempC", tempC, -60, 90);
  const conductorOhm =
    (CABLE_ALLOWANCE *
      copperOhmPerKm({ areaMm2: awgAreaMm2(awg), conductorTempC: 20 }) *
      copperResistanceRatio(tempC) *
      lengthM) /
    1000;
  // Two conductors side by side each way for two pairs, four for four pairs; there and back.
  return (2 * conductorOhm) / pairs;
}

/**
 * Voltage and loss at a device fed through a data cable, standard or passive.
 *
 * @param sourceV  at the feeding end, at its lowest; 5 to 60
 * @param deviceW  0 to 200
 * @returns as constantPowerDrop: `loadV` is the voltage at the device
 * @throws RangeFault outside the ranges above and those of poeLoopOhm
 * @source IEEE 802.3 channel model; see constantPowerDrop and poeLoopOhm
 */
export function poeAtDevice({
  sourceV,
  deviceW,
  lengthM,
  pairs,
  awg,
  tempC,
}: {
  readonly sourceV: number;
  readonly deviceW: number;
  readonly lengthM: number;
  readonly pairs: 2 | 4;
  readonly awg: number;
  readonly tempC: number;
}): ConstantPowerDrop & { readonly loopOhm: number } {
  within("sourceV", sourceV, 5, 60);
  within("deviceW", deviceW, 0, 200);
  const loopOhm = poeLoopOhm({ lengthM, pairs, awg, tempC });
  return { ...constantPowerDrop({ sourceV, loadW: deviceW, loopOhm }), loopOhm };
}
