/** The insulated box of a lithium battery that is kept warm. */
import { insulatedBoxLossWPerK } from "../../core/energy/index.ts";
import { BANK_ROOM_RATIO, BLOCK_L_PER_KWH } from "./mounting.ts";

/** Of the foam round the battery. @source common practice, no source: 30 mm of polystyrene or polyurethane, 0.030 to 0.040 W/mK */
export const FOAM_WALL_M = 0.03;
export const FOAM_W_PER_M_K = 0.035;
/** What the lid's seam, leads and feet lose on top of the walls. @source judgement */
export const SEAMS_RATIO = 1.2;

/**
 * Heat that leaves the battery's box for each kelvin between inside and outside: a foam cube that holds the bank with the room
 * that the mounting gives it.
 *
 * @param bankWh  rated energy of the bank, 0 to 5e8
 * @returns W/K: 0.8 for one block of 12.8 V and 100 Ah, about three times that for five
 * @throws RangeFault outside the range above
 * @source insulatedBoxLossWPerK; 10 litres per kWh of block from memory, twice that as room, foam and seams: see the constants
 */
export function batteryBoxLossWPerK(bankWh: number): number {
  return (
    SEAMS_RATIO *
    insulatedBoxLossWPerK({
      insideM3: insideM3(bankWh),
      wallM: FOAM_WALL_M,
      conductivityWPerMK: FOAM_W_PER_M_K,
    })
  );
}

/**
 * Foam that lines such a box, outside measure.
 *
 * @param bankWh  as above
 * @returns m2
 */
export function batteryBoxFoamM2(bankWh: number): number {
  return 6 * (Math.cbrt(insideM3(bankWh)) + 2 * FOAM_WALL_M) ** 2;
}

const insideM3 = (bankWh: number): number => (BANK_ROOM_RATIO * BLOCK_L_PER_KWH * bankWh) / 1e6;

/** The loss in words, for the notes. */
export const BOX_LOSS_FORMULA = `W per K of a cube that holds ${BANK_ROOM_RATIO * BLOCK_L_PER_KWH} litres for each kWh of bank, ${1000 * FOAM_WALL_M} mm of foam (${FOAM_W_PER_M_K} W per m and K), edges and corners counted, x ${SEAMS_RATIO} for seams and leads`;
