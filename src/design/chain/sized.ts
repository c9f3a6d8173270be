/** Bank and array, and the loads with the bank's own heater: the worksheets' sizes, or those of the pair that the weather years chose. */
import type { Brief } from "../brief.ts";
import type { ChosenPair, Climate, Design, Sun, World } from "../design.ts";
import { type Effort, effortOf, FIRST_EFFORT } from "../practice/reliability.ts";
import { voltageOfPair } from "./battery.ts";
import { loadsStage } from "./loads.ts";
import { chosenPairOf, reliabilityStage } from "./reliability.ts";
import type { Handbook } from "./reliability-pairs.ts";
import { atVoltage, builtFor, handbookOf, type Sky } from "./settled-bank.ts";

export type Sized = Pick<Design, "loads" | "reliability" | "battery" | "array">;

/**
 * A pair much smaller or larger than the worksheets' may suit another voltage of the bank. A first, coarse search says which;
 * the one that counts is made there, and once more should it still end at another.
 *
 * @param sizedLike  a design whose simulated pair is taken over in proportion to the handbook's sizes, instead of running the
 *                   weather years again
 */
export function sizedOf(
  brief: Brief,
  { climate, sun }: { readonly climate: Climate | null; readonly sun: Sun | null },
  world: World,
  sizedLike: Omit<Design, "findings"> | null = null,
): Sized {
  const sky = climate && sun ? { climate, sun } : null;
  const handbook = sky && handbookOf(brief, sky);
  if (sky === null || handbook === null) {
    return { loads: loadsStage(brief, sun, climate), reliability: null, battery: null, array: null };
  }
  if (sizedLike) {
    const chosen = inProportion(handbook, sizedLike);
    const { loads, battery, array } = chosen ? builtFor(brief, handbook, chosen) : handbook;
    return { loads, reliability: null, battery, array };
  }
  const search = (bankV: number, effort: Effort) => searched(brief, { sky, bankV, handbook }, world, effort);
  const firstV = handbook.battery.bankV;
  const effort = effortOf(brief.openTopics);
  if (brief.power.bankV.value !== "choose") return search(firstV, effort).sized;
  const scout = search(firstV, FIRST_EFFORT);
  const found = effort === FIRST_EFFORT && scout.isSuited ? scout : search(scout.suitsV, effort);
  return (found.isSuited ? found : search(found.suitsV, effort)).sized;
}

/** What a search at one voltage comes to, and which voltage would suit that. */
interface Searched {
  readonly sized: Sized;
  readonly suitsV: number;
  readonly isSuited: boolean;
}

/** @param given.handbook  at the voltage of its own choice */
function searched(
  brief: Brief,
  given: { readonly sky: Sky; readonly bankV: number; readonly handbook: Handbook & Sky },
  world: World,
  effort: Effort,
): Searched {
  const { sky, bankV } = given;
  const isOwn = bankV === given.handbook.battery.bankV;
  const handbook = isOwn ? given.handbook : handbookOf(brief, sky, bankV)!;
  const reliability = reliabilityStage(isOwn ? brief : atVoltage(brief, bankV), handbook, world, effort);
  const chosen = chosenPairOf(reliability);
  if (chosen === null) {
    const { loads, battery, array } = handbook;
    return {
      sized: { loads, reliability, battery, array },
      suitsV: given.handbook.battery.bankV,
      isSuited: isOwn,
    };
  }
  const suits = voltageOfPair(brief, handbook.battery, chosen);
  const { loads, battery, array } = builtFor(brief, handbook, chosen);
  return {
    sized: { loads, reliability, battery: battery && { ...battery, bankVReason: suits.bankVReason }, array },
    suitsV: suits.bankV,
    isSuited: suits.bankV === bankV,
  };
}

/**
 * The simulated pair of a design, larger or smaller as the handbook's own sizes are; null where the handbook's was built. The
 * design's own handbook is worked again: what it built has another bank, and that another heat to make up.
 */
function inProportion(handbook: Handbook, design: Omit<Design, "findings">): ChosenPair | null {
  const { brief, climate, sun, reliability, battery } = design;
  if (!battery || !climate || !sun || chosenPairOf(reliability) === null) return null;
  const was = handbookOf(brief, { climate, sun });
  if (was === null || was.array.requiredW <= 0) return null;
  const { wantedAh, wantedW } = reliability!.chosen;
  return {
    wantedW: (wantedW * handbook.array.requiredW) / was.array.requiredW,
    wantedAh:
      (wantedAh * battery.bankNominalV * handbook.loads.largestDailyWh) /
      (handbook.battery.bankNominalV * was.loads.largestDailyWh),
  };
}
