/** The handbook's sums, as an inspector works them by hand: IEEE 1013 for the bank, IEEE 1562 for the array, Sandia beside them. */
import type { ArraySizing, Battery, Climate, Design, Sun } from "../design.ts";
import { arraySums, type MonthSum, monthSums } from "./array-sums.ts";
import { batterySums } from "./battery-sums.ts";
import type { SumLine } from "./line.ts";
import { loadSums } from "./load-sums.ts";
import { type SecondOpinion, secondOpinion } from "./second-opinion.ts";

export { type MonthSum, monthSumText } from "./array-sums.ts";
export { GOVERNING_WORDS, governingAh } from "./battery-sums.ts";
export { handFigure, type SumLine, withUnit } from "./line.ts";

export interface HandbookSums {
  readonly loads: readonly SumLine[];
  readonly battery: readonly SumLine[];
  readonly months: readonly MonthSum[];
  readonly array: readonly SumLine[];
  /** null where months without sun are bridged. */
  readonly secondOpinion: SecondOpinion | null;
}

interface Sized {
  readonly climate: Climate;
  readonly sun: Sun;
  readonly battery: Battery;
  readonly array: ArraySizing;
}

function sizedOf({ climate, sun, battery, array }: Design): Sized | null {
  return climate && sun && battery && array ? { climate, sun, battery, array } : null;
}

/** null where there is no place, and so no sun to work with. */
export function handbookSums(design: Design): HandbookSums | null {
  const sized = sizedOf(design);
  if (sized === null) return null;
  const { brief, loads } = design;
  const { battery, array, sun } = sized;
  const given = { brief, sun, array, dailyWhByMonth: loads.dailyWhByMonth };
  const months = monthSums(given);
  return {
    loads: loadSums(design, sized),
    battery: batterySums(battery, design),
    months,
    array: arraySums(given, months),
    secondOpinion: secondOpinion({ battery, array, sun, months }),
  };
}
