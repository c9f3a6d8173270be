/**
 * Sizes in which panels and battery blocks are sold. All of this file is from memory (2026) and typical; a part's own data
 * sheet always wins.
 */
import type { Chemistry } from "../brief.ts";

export interface SoldPanel {
  readonly ratedW: number;
  /** At the maximum power point and open, 25 degrees C. */
  readonly maxPowerV: number;
  readonly openCircuitV: number;
}

/** @source from memory: 36-cell panels up to 200 W, 54 to 72 cells (cut in halves or not) above */
export const SOLD_PANELS: readonly SoldPanel[] = [
  ...[20, 30, 50, 80, 100, 120, 150, 175, 200].map((ratedW) => ({ ratedW, maxPowerV: 19, openCircuitV: 23 })),
  { ratedW: 250, maxPowerV: 31, openCircuitV: 37.5 },
  { ratedW: 300, maxPowerV: 32.5, openCircuitV: 39.5 },
  { ratedW: 350, maxPowerV: 34, openCircuitV: 41 },
  { ratedW: 400, maxPowerV: 31, openCircuitV: 37.2 },
  { ratedW: 450, maxPowerV: 41.5, openCircuitV: 49.5 },
];

/** A panel of the builder's own, of which only the rating and the open-circuit voltage are known. Ratio from memory. */
export const MAX_POWER_OVER_OPEN_V = 0.83;

/** @source from memory: maximum-power current over short-circuit current of crystalline silicon, 0.93 to 0.95 */
export const MAX_POWER_OVER_SHORT_A = 0.94;

/** @source from memory: about 200 W and 10 to 12 kg per square metre, glass and frame */
export const PANEL_W_PER_M2 = 200;
export const PANEL_KG_PER_M2 = 12;

/** @source from memory: crystalline silicon, per K above 25 degrees C: power -0.0035, open-circuit voltage -0.003 */
export const POWER_PER_K = -0.0035;
export const OPEN_CIRCUIT_PER_K = -0.003;

/** @source from memory: cell temperature at 800 W/m2, 20 degrees C and 1 m/s, as printed on most data sheets */
export const NOCT_C = 45;

export interface SoldBlock {
  readonly capacityAh: number;
  readonly weightKg: number;
}

/** @source from memory: 12 V absorbed-glass-mat blocks at the 20-hour rate, 12.8 V lithium iron phosphate blocks */
export const SOLD_BLOCKS: Readonly<Record<Chemistry, readonly SoldBlock[]>> = {
  agm: blocks(
    [7, 2.2],
    [9, 2.6],
    [12, 3.7],
    [18, 5.4],
    [22, 6.5],
    [26, 8.5],
    [35, 10.5],
    [45, 14],
    [55, 17],
    [75, 23],
    [100, 30],
    [120, 35],
    [150, 43],
    [200, 60],
  ),
  lifepo4: blocks([6, 0.9], [10, 1.4], [12, 1.6], [20, 2.7], [30, 3.8], [50, 6.2], [100, 11.5], [200, 22]),
};

/** Nominal voltage of one such block. */
export const BLOCK_V: Readonly<Record<Chemistry, number>> = { agm: 12, lifepo4: 12.8 };

/** @source from memory: weight of lead-acid and lithium iron phosphate per Wh, for a block of the builder's own */
export const KG_PER_WH: Readonly<Record<Chemistry, number>> = { agm: 0.025, lifepo4: 0.0095 };

/** @source from memory: sizes in which controllers are sold */
export const CONTROLLER_INPUT_V = [50, 75, 100, 150] as const;
export const CONTROLLER_A = [10, 15, 20, 30, 40, 50, 60] as const;

function blocks(...rows: readonly (readonly [number, number])[]): readonly SoldBlock[] {
  return rows.map(([capacityAh, weightKg]) => ({ capacityAh, weightKg }));
}
