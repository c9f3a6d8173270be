/** How long a bank must last alone, how deep it may go, and at which voltage it stands. */
import type { Chemistry as CellChemistry } from "../../core/energy/index.ts";
import { clamp, interpolate } from "../../core/numerics/index.ts";
import type { Brief, Chemistry } from "../brief.ts";

/** The kinds a builder can choose, by the names of the battery field. */
export const CELL_CHEMISTRY = { agm: "lead-agm", lifepo4: "lifepo4" } as const satisfies Readonly<
  Record<Chemistry, CellChemistry>
>;

/**
 * Deepest discharge in the rare dull spell, and on an ordinary day.
 * @source IEEE 1013, from memory: 0.8 for deep-cycle blocks, daily 0.15 to 0.25; lithium iron phosphate 0.8 both: common practice,
 *         no source
 */
export const PERMITTED_DOD_FRAC: Readonly<Record<Chemistry, number>> = { agm: 0.8, lifepo4: 0.8 };
export const PERMITTED_DAILY_DOD_FRAC: Readonly<Record<Chemistry, number>> = { agm: 0.2, lifepo4: 0.8 };

/** A bank that must be kept shallower than this by frost is no bank. @source judgement */
export const LEAST_USEFUL_DOD_FRAC = 0.2;

/** Capacity left when the bank is replaced. @source IEEE 1013 and IEEE 1188, from memory */
export const END_OF_LIFE_FRAC = 0.8;

/** On top of the governing capacity. @source IEEE 1013, from memory: 10 to 25 %; the low end, for the fits are cautious */
export const BATTERY_MARGIN_FRAC = 0.1;

/**
 * A boxed bank of tens of kilos follows the mean of the day, not its coldest hour: half of a usual daily swing.
 * @source judgement
 */
export const BANK_LAG_K = 5;

/** 12 V up to this array and charge current, 24 V up to the second array, 48 V beyond. @source common practice, no source */
export const LARGEST_ARRAY_AT_12_V_W = 200;
export const LARGEST_CHARGE_AT_12_V_A = 20;
export const LARGEST_ARRAY_AT_24_V_W = 1400;

/** Strings of blocks in parallel share the current unevenly. @source IEEE 1013 clause 8.2, number from memory */
export const MOST_STRINGS = 4;

/** Hours a year in the dark that each class of consequence stands for. @source IEEE and Sandia classes 95 % and 99 %; 99.9 % judgement */
export const DARK_HOURS = { nuisance: 438, worry: 87.6, disaster: 8.76 } as const;

/** Never fewer days than these, whatever the sun. @source judgement after IEEE 1013 (5 to 7 and 7 to 14 days) and usual posts */
const LEAST_DAYS = { nuisance: 3, worry: 5, disaster: 7 } as const;

/**
 * The 99 % fits know nothing of an array a third larger than the load; where the design month has 3 kWh/m2 and more, ten
 * days are held enough. Towards 1.5 kWh/m2, where the fits end, the cap gives way to them.
 * @source judgement after usual posts (5 to 10 days) and IEEE 1013 (7 to 14 for critical loads or poor sun)
 */
const CAP_DAYS = 10;
const CAP_FROM_SUN_HOURS = 3;
const FITS_END_SUN_HOURS = 1.5;

/** A disaster may happen a tenth as often as a worry. @source judgement: half as many days again */
const DISASTER_RATIO = 1.5;

/**
 * The polar station table gives rated capacity over daily load; about this share of it was meant to be used.
 * @source judgement: the table's page does not say how far its batteries are emptied
 */
export const POLAR_USABLE_FRAC = 0.8;

/** However long nobody can come by, the bank is not sized beyond this for their sake. @source judgement */
export const MOST_VISIT_DAYS = 14;

/** Days of the textbook fits for the two availability classes, and that for 99 % at 1.5 sun hours. */
export interface FittedDays {
  readonly at95: number;
  readonly at99: number;
  readonly at99WhereFitsEnd: number;
  readonly sunHours: number;
}

/**
 * Days of autonomy for a share of the year that may be dark: through the class points 5 %, 1 % and 0.1 %, straight over the
 * logarithm of the share.
 * @source the two fits for 95 % and 99 %; the rest judgement, see the constants of this file
 */
export function daysForDarkHours(fitted: FittedDays, darkHours: number): number {
  const capDays = interpolate(
    [
      [FITS_END_SUN_HOURS, Math.max(CAP_DAYS, fitted.at99WhereFitsEnd)],
      [CAP_FROM_SUN_HOURS, CAP_DAYS],
    ],
    fitted.sunHours,
  );
  const worry = Math.min(fitted.at99, capDays);
  const points: readonly (readonly [number, number])[] = [
    [Math.log(DARK_HOURS.disaster), Math.max(LEAST_DAYS.disaster, DISASTER_RATIO * worry)],
    [Math.log(DARK_HOURS.worry), Math.max(LEAST_DAYS.worry, worry)],
    [Math.log(DARK_HOURS.nuisance), Math.max(LEAST_DAYS.nuisance, fitted.at95)],
  ];
  return interpolate(points, Math.log(clamp(darkHours, 1, 8760)));
}

/** Hours a year that the builder lets the post be dark; null where they named days instead. */
export function allowedDarkHours(autonomy: Brief["autonomy"]): number | null {
  const consequence = autonomy.consequence.value;
  if (consequence === "days") return null;
  return consequence === "darkHours" ? autonomy.askedDarkHours.value : DARK_HOURS[consequence];
}
