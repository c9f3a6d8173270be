import type { Brief } from "../brief.ts";
import type { ChosenPair, Climate, Design, Loads, StageName, Sun, Withheld, World } from "../design.ts";
import { arrayStage } from "./array.ts";
import { batteryStage, voltageOfPair } from "./battery.ts";
import { climateRefusal, climateStage } from "./climate.ts";
import { linkStage } from "./link.ts";
import { loadsStage } from "./loads.ts";
import { moneyStage } from "./money.ts";
import { mountingStage } from "./mounting.ts";
import { provisionalStages } from "./order.ts";
import { partsStage } from "./parts.ts";
import { chosenPairOf, reliabilityStage } from "./reliability.ts";
import type { Handbook } from "./reliability-pairs.ts";
import { sunStage } from "./sun.ts";
import { viewStage } from "./view.ts";
import { wiringStage } from "./wiring.ts";

/** Every stage of a design, in order; what one must know of it is found afterwards. */
export function chainOf(brief: Brief, world: World): Omit<Design, "findings"> {
  const climate = climateStage(brief, world);
  return chainUnder(
    brief,
    { climate, sun: sunStage(brief, climate, world), refusal: climateRefusal(brief, world) },
    world,
  );
}

/** Stages that are known already, so that they need not be worked again. */
interface Above {
  readonly climate: Climate | null;
  readonly sun: Sun | null;
  readonly refusal: string | null;
}

/**
 * The stages below a sun that is known already: for asking "what if" about answers that do not move it.
 *
 * @param sizedLike  a design whose simulated pair is taken over in proportion to the handbook's sizes, instead of running the
 *                   weather years again
 */
export function chainUnder(
  brief: Brief,
  above: Above,
  world: World,
  sizedLike: Omit<Design, "findings"> | null = null,
): Omit<Design, "findings"> {
  const { climate, sun } = above;
  const loads = loadsStage(brief, sun, climate);
  const { reliability, battery, array } = sizedOf(brief, { climate, sun, loads }, world, sizedLike);
  const view = viewStage(brief);
  const link = linkStage(brief, climate, view);
  const mounting = mountingStage(brief, sun, loads, battery, array, link);
  const wiring = wiringStage(brief, climate, loads, battery, array, mounting);
  const parts = partsStage(brief, { climate, loads, battery, array, view, link, mounting, wiring });
  const money = moneyStage(brief, parts);
  return {
    schemaVersion: 1,
    name: brief.name,
    brief,
    climate,
    sun,
    loads,
    reliability,
    battery,
    array,
    view,
    link,
    mounting,
    wiring,
    parts,
    money,
    provisional: provisionalStages(brief, { hasClimate: climate !== null }),
    withheld: withheldOf(brief, above.refusal),
  };
}

/**
 * Bank and array: the worksheets', or the simulated pair where that is built. A pair much smaller or larger than the worksheets'
 * may suit another voltage of the bank: it is then sought anew at that one.
 */
function sizedOf(
  brief: Brief,
  given: { readonly climate: Climate | null; readonly sun: Sun | null; readonly loads: Loads },
  world: World,
  sizedLike: Omit<Design, "findings"> | null,
): Pick<Design, "reliability" | "battery" | "array"> {
  const { climate, sun, loads } = given;
  const handbook = handbookOf(brief, given);
  if (handbook === null) return { reliability: null, battery: null, array: null };
  const built = (of: Brief, chosen: ChosenPair) => {
    const battery = batteryStage(of, climate, sun, loads, chosen);
    return { battery, array: arrayStage(of, climate, sun, loads, battery, chosen) };
  };
  if (sizedLike) {
    const chosen = inProportion(handbook, sizedLike);
    const { battery, array } = chosen ? built(brief, chosen) : handbook;
    return { reliability: null, battery, array };
  }
  const reliability = reliabilityStage(brief, handbook, world);
  const chosen = chosenPairOf(reliability);
  if (!chosen) return { reliability, battery: handbook.battery, array: handbook.array };
  const { bankV, bankVReason } = voltageOfPair(brief, handbook.battery, chosen);
  if (bankV === handbook.battery.bankV) return { reliability, ...built(brief, chosen) };
  const at: Brief = {
    ...brief,
    power: { ...brief.power, bankV: { ...brief.power.bankV, value: bankV as 12 | 24 | 48 } },
  };
  const other = handbookOf(at, given)!;
  const again = reliabilityStage(at, other, world);
  const pair = chosenPairOf(again);
  if (!pair) return { reliability, ...built(brief, chosen) };
  const { battery, array } = built(at, pair);
  return { reliability: again, battery: battery && { ...battery, bankVReason }, array };
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
function handbookOf(
  brief: Brief,
  given: { readonly climate: Climate | null; readonly sun: Sun | null; readonly loads: Loads },
): (Handbook & { readonly sun: Sun }) | null {
  const { climate, sun, loads } = given;
  const battery = batteryStage(brief, climate, sun, loads);
  const array = arrayStage(brief, climate, sun, loads, battery);
  return climate && sun && battery && array ? { climate, sun, loads, battery, array } : null;
}

/** Stages that rest on the climate and have nothing to stand in for it. */
const NEEDS_CLIMATE: readonly StageName[] = ["climate", "sun", "reliability", "battery", "array", "wiring"];

function withheldOf(brief: Brief, because: string | null): readonly Withheld[] {
  const withheld: Withheld[] = because === null ? [] : NEEDS_CLIMATE.map((stage) => ({ stage, because }));
  if (brief.link.carrier.value === "none") {
    withheld.push({ stage: "link", because: "the picture stays at the post" });
  }
  return withheld;
}
