/** Losses between panel and battery, and how much more the array should give than the load takes. */
import { interpolate } from "../../core/numerics/index.ts";
import type { Brief, Chemistry, ControllerKind } from "../brief.ts";

/** Panel to controller 2 %, controller to battery 1 %: the drop limits that the wires are sized to. @source common practice, no source */
export const WIRING_LOSS_FRAC = 0.03;

/** Mismatch 2 % and nameplate 1 %. @source NREL/TP-6A20-62641, default losses */
export const MISMATCH_LOSS_FRAC = 0.03;

/** @source common practice, no source: tracking controllers 0.94 to 0.98 */
export const MPPT_EFFICIENCY_FRAC = 0.95;

/** Mean voltage of a 12 V bank on charge, where a direct controller holds the panel. @source from memory: 12 to 13.5 V */
export const CHARGING_V_PER_12_V = 13;

/**
 * Of what is put into the bank, what comes out; all energy is taken to pass it.
 * @source lead-acid: Sandia SAND87-7023 worksheet default (ampere-hours, from memory); lithium iron phosphate: common
 *         practice, no source (0.92 to 0.96 in energy, above 0.99 in ampere-hours)
 */
export const BATTERY_EFFICIENCY_FRAC: Readonly<Record<Chemistry, number>> = { agm: 0.9, lifepo4: 0.97 };

/**
 * What the array gives in the design month over what the load takes, before the builder's own margin.
 * @source IEEE 1562, from memory: 1.1 to 1.2 for non-critical loads, 1.3 to 1.4 and more for critical ones; "disaster" at 1.4, a
 *         plain number of days at 1.2 and the line over hours a year in the dark are judgement
 */
export function leastArrayToLoadRatio(autonomy: Brief["autonomy"]): number {
  switch (autonomy.consequence.value) {
    case "nuisance":
      return 1.1;
    case "worry":
      return 1.3;
    case "disaster":
      return 1.4;
    case "days":
      return 1.2;
    case "darkHours":
      return interpolate(
        [
          [Math.log(8.76), 1.4],
          [Math.log(87.6), 1.3],
          [Math.log(438), 1.1],
        ],
        Math.log(Math.max(autonomy.askedDarkHours.value, 1)),
      );
  }
}

/** What a controller wants of the string above the battery's charge voltage. @source from memory: 1 V to keep tracking */
export const CONTROLLER_HEADROOM_V: Readonly<Record<ControllerKind, number>> = { mppt: 1, pwm: 0.5 };

/** Share by which the controller's input must lie above the record cold voltage. @source common practice, no source */
export const INPUT_HEADROOM_FRAC = 0.05;

/** Margin between the charge current and the controller's rating. @source NEC 690.8(B), continuous current */
export const CONTROLLER_CURRENT_FACTOR = 1.25;

/** Two strings in parallel need no string fuse. @source NEC 690.9(A), IEC 62548 6.5: a panel bears one neighbour's current */
export const UNFUSED_STRINGS = 2;

/**
 * Where a polar bank bridges the dark months, dimmer months ask of the array what a month of this sun would; the bank bears the
 * rest of them.
 * @source judgement: some 35 to 50 W of panel for each watt of load, the range in which the polar table of UNAVCO article 190
 *         (170 to 255 W for 5 W) gives its banks
 */
export const DIM_MONTH_KWH_PER_M2 = 1;
