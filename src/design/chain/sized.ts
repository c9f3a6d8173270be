/** Bank and array: the worksheets' sizes, or those of the pair that the weather years chose. */
import type { Brief } from "../brief.ts";
import type { ChosenPair, Climate, Design, Loads, Sun, World } from "../design.ts";
import { type Effort, effortOf, FIRST_EFFORT } from "../practice/reliability.ts";
import { arrayStage } from "./array.ts";
import { batteryStage, voltageOfPair } from "./battery.ts";
import { chosenPairOf, reliabilityStage } from "./reliability.ts";
import type { Handbook } from "./reliability-pairs.ts";

type Given = { readonly climate: Climate | null; readonly sun: Sun | null; readonly loads: Loads };
export type Sized = Pick<Design, "reliability" | "battery" | "array">;

/**
 * A pair much smaller or larger than the worksheets' may suit another voltage of the bank. A first, coarse search says which;
 * the one that counts is made there, and once more should it still end at another.
 *
 * @param sizedLike  a design whose simulated pair is taken over in proportion to the handbook's sizes, instead of running the
 *                   weather years again
 */
export function sizedOf(
  brief: Brief,
  given: Given,
  world: World,
  sizedLike: Omit<Design, "findings"> | null = null,
): Sized {
  const handbook = handbookOf(brief, given);
  if (handbook === null) return { reliability: null, battery: null, array: null };
  if (sizedLike) {
    const chosen = inProportion(handbook, sizedLike);
    const { battery, array } = chosen ? built(brief, given, chosen) : handbook;
    return { reliability: null, battery, array };
  }
  const search = (at: Brief, effort: Effort) => searched(brief, { ...given, at }, world, effort);
  const effort = effortOf(brief.openTopics);
  if (brief.power.bankV.value !== "choose") return search(brief, effort).sized;
  const at = (bankV: number): Brief => (bankV === handbook.battery.bankV ? brief : atVoltage(brief, bankV));
  const scout = search(brief, FIRST_EFFORT);
  const found = effort === FIRST_EFFORT && scout.isSuited ? scout : search(at(scout.bankV), effort);
  return (found.isSuited ? found : search(at(found.bankV), effort)).sized;
}

/** The brief with a bank of this voltage: for asking "what if" without a search for another one. */
export const atVoltage = (brief: Brief, bankV: number): Brief => ({
  ...brief,
  power: { ...brief.power, bankV: { ...brief.power.bankV, value: bankV as 12 | 24 | 48 } },
});

/** What a search at one voltage comes to, and which voltage would suit that. */
interface Searched {
  readonly sized: Sized;
  readonly bankV: number;
  readonly isSuited: boolean;
}

/** @param given.at  the brief with the voltage at which is searched; `brief` leaves it open where the builder did */
function searched(
  brief: Brief,
  given: Given & { readonly at: Brief },
  world: World,
  effort: Effort,
): Searched {
  const { climate, sun, loads, at } = given;
  const handbook = handbookOf(at, given)!;
  const reliability = reliabilityStage(at, handbook, world, effort);
  const chosen = chosenPairOf(reliability);
  if (chosen === null) {
    const { bankV } = handbookOf(brief, given)!.battery;
    const { battery, array } = handbook;
    return { sized: { reliability, battery, array }, bankV, isSuited: bankV === battery.bankV };
  }
  const { bankV, bankVReason } = voltageOfPair(brief, handbook.battery, chosen);
  const { battery, array } = built(at, { climate, sun, loads }, chosen);
  return {
    sized: { reliability, battery: battery && { ...battery, bankVReason }, array },
    bankV,
    isSuited: bankV === handbook.battery.bankV,
  };
}

function built(brief: Brief, { climate, sun, loads }: Given, chosen: ChosenPair) {
  const battery = batteryStage(brief, climate, sun, loads, chosen);
  return { battery, array: arrayStage(brief, climate, sun, loads, battery, chosen) };
}

/** The simulated pair of a design, larger or smaller as the handbook's own sizes are; null where the handbook's was built. */
function inProportion(handbook: Handbook, design: Omit<Design, "findings">): ChosenPair | null {
  const { reliability, battery, array, loads } = design;
  if (!battery || !array || chosenPairOf(reliability) === null || array.requiredW <= 0) return null;
  const { wantedAh, wantedW } = reliability!.chosen;
  return {
    wantedW: (wantedW * handbook.array.requiredW) / array.requiredW,
    wantedAh:
      (wantedAh * battery.bankNominalV * handbook.loads.largestDailyWh) /
      (handbook.battery.bankNominalV * loads.largestDailyWh),
  };
}

/** Both sizes by the worksheets: what the simulation starts from, and the design itself where nothing better is chosen. */
function handbookOf(brief: Brief, given: Given): (Handbook & { readonly sun: Sun }) | null {
  const { climate, sun, loads } = given;
  const battery = batteryStage(brief, climate, sun, loads);
  const array = arrayStage(brief, climate, sun, loads, battery);
  return climate && sun && battery && array ? { climate, sun, loads, battery, array } : null;
}
