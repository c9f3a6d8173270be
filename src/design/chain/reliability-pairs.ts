/** Arrays and banks that could be bought for this post, each in order of size. */
import { chargeCurrentBoundsA } from "../../core/energy/index.ts";
import type { Brief } from "../brief.ts";
import type { ArraySizing, Battery, Climate, Loads } from "../design.ts";
import { MPPT_EFFICIENCY_FRAC } from "../practice/array.ts";
import { CELL_CHEMISTRY, END_OF_LIFE_FRAC, MOST_VISIT_DAYS } from "../practice/battery.ts";
import { LARGEST_ARRAY_ON_MAST_M2 } from "../practice/mounting.ts";
import * as prices from "../practice/prices.ts";
import {
  ARRAY_STEP_RATIO_WHERE_BRIDGED,
  type Effort,
  LEAST_SIMULATED_DAYS,
  MOST_ARRAY_RATIO_WHERE_BRIDGED,
  MOST_BANK_RATIO,
  MOST_BANK_RATIO_WHERE_BRIDGED,
  MOST_SIMULATED_DAYS,
} from "../practice/reliability.ts";
import { BLOCK_V, MAX_POWER_OVER_SHORT_A, PANEL_W_PER_M2 } from "../practice/sold.ts";
import { stringsOf } from "./array.ts";
import { layOut } from "./battery-layout.ts";

/** What the handbook has sized, in its own words. */
export interface Handbook {
  readonly climate: Climate;
  readonly loads: Loads;
  readonly battery: Battery;
  readonly array: ArraySizing;
}

export interface ArrayCandidate {
  readonly wantedW: number;
  readonly panels: number;
  readonly panelW: number;
  readonly installedW: number;
  readonly inParallel: number;
  /** Of one string, at maximum power. */
  readonly stringA: number;
  readonly chargeA: number;
  readonly areaM2: number;
}

export interface BankCandidate {
  readonly wantedAh: number;
  readonly blocks: number;
  readonly blockAh: number;
  readonly bankAh: number;
  readonly bankKg: number;
}

/** By installed power, each once. */
export function arrayCandidates(brief: Brief, handbook: Handbook, effort: Effort): readonly ArrayCandidate[] {
  const { array, battery } = handbook;
  const [least, most] = effort.arrayRatios;
  const ratios = [
    ...rising(least, most, effort.arrayStepRatio),
    ...(battery.bridgesDarkMonths
      ? rising(most, MOST_ARRAY_RATIO_WHERE_BRIDGED, ARRAY_STEP_RATIO_WHERE_BRIDGED)
      : []),
  ];
  const wanted = [...ratios.map((ratio) => ratio * array.requiredW), array.wantedW].filter((w) => w > 0);
  return unique(
    wanted.map((wantedW) => arrayCandidate(brief, handbook, wantedW)),
    ({ installedW }) => installedW,
  );
}

export function arrayCandidate(brief: Brief, handbook: Handbook, wantedW: number): ArrayCandidate {
  const { climate, battery, array } = handbook;
  const { controller } = array;
  const { panel, inSeries, inParallel } = stringsOf(brief, {
    requiredW: wantedW,
    climate,
    battery,
    controller,
  });
  const panels = inSeries * inParallel;
  const installedW = panels * panel.ratedW;
  const stringA = panel.ratedW / panel.maxPowerV;
  return {
    wantedW,
    panels,
    panelW: panel.ratedW,
    installedW,
    inParallel,
    stringA,
    chargeA:
      controller === "mppt"
        ? (installedW * MPPT_EFFICIENCY_FRAC) / battery.bankNominalV
        : (stringA / MAX_POWER_OVER_SHORT_A) * inParallel,
    areaM2: installedW / PANEL_W_PER_M2,
  };
}

/** By capacity, each once: from the shortest autonomy that is let pass to weeks, or to the handbook's size. */
export function bankCandidates(brief: Brief, handbook: Handbook, effort: Effort): readonly BankCandidate[] {
  const { loads, battery } = handbook;
  const oldWhPerAh =
    battery.bankNominalV * battery.permittedDodFrac * battery.capacityAtTemperatureFrac * END_OF_LIFE_FRAC;
  const ahForDays = (days: number) => (days * loads.largestDailyWh) / oldWhPerAh;
  const visitDays = Math.min(brief.autonomy.visitDays.value, MOST_VISIT_DAYS);
  const leastAh = ahForDays(Math.max(LEAST_SIMULATED_DAYS, visitDays));
  const handbookRatio = battery.bridgesDarkMonths ? MOST_BANK_RATIO_WHERE_BRIDGED : MOST_BANK_RATIO;
  const mostAh = Math.max(ahForDays(MOST_SIMULATED_DAYS), handbookRatio * battery.requiredAh, leastAh);
  return unique(
    rising(leastAh, mostAh, effort.bankStepRatio).map((wantedAh) => bankCandidate(brief, battery, wantedAh)),
    ({ bankAh }) => bankAh,
  );
}

export function bankCandidate(brief: Brief, battery: Battery, wantedAh: number): BankCandidate {
  const { chemistry, bankV } = battery;
  const { blocks, block, bankAh, totalMassKg } = layOut(brief, { chemistry, bankV, requiredAh: wantedAh });
  return { wantedAh, blocks, blockAh: block.capacityAh, bankAh, bankKg: totalMassKg };
}

/**
 * Whether the array charges the bank neither too weakly nor too hard. A bank of months is filled over a summer: none of the kind
 * would ever pass the lower bound.
 * @source UNAVCO knowledge base article 190 (2007): 170 W on 900 to 2300 Ah at 12 V, C/60 to C/160
 */
export function isWellCharged(array: ArrayCandidate, bank: BankCandidate, battery: Battery): boolean {
  const { minA } = chargeBoundsA(bank, battery);
  return (battery.bridgesDarkMonths || array.chargeA >= minA) && !isHardCharged(array, bank, battery);
}

/** Whether the array gives the bank more current than is good for it. */
export function isHardCharged(array: ArrayCandidate, bank: BankCandidate, battery: Battery): boolean {
  return array.chargeA > chargeBoundsA(bank, battery).maxA;
}

export const chargeBoundsA = (bank: BankCandidate, battery: Battery) =>
  chargeCurrentBoundsA({ chemistry: CELL_CHEMISTRY[battery.chemistry], capacityAh: bank.bankAh });

/** Low and high price of panels, what carries them (a frame with anchors where the mast cannot), and blocks. */
export function pairCost(
  brief: Brief,
  pair: { readonly array: ArrayCandidate; readonly bank: BankCandidate; readonly battery: Battery },
): { readonly lowCost: number; readonly highCost: number } {
  const { array, bank, battery } = pair;
  const { unitsPerUsd } = prices.priceCurrency(brief.currency);
  const perAh = prices.BLOCK_PER_AH[battery.chemistry];
  const blockRatio = (battery.blockV / BLOCK_V[battery.chemistry]) * bank.blocks * bank.blockAh;
  const mount = prices.panelMount({
    areaM2: array.areaM2,
    isOnMast: array.areaM2 <= LARGEST_ARRAY_ON_MAST_M2,
  });
  const cost = (end: 0 | 1) =>
    unitsPerUsd * (array.installedW * prices.PANEL_PER_W[end] + mount[end] + blockRatio * perAh[end]);
  return { lowCost: cost(0), highCost: cost(1) };
}

/** From `least` in steps of a ratio until `most` is reached or passed. */
function rising(least: number, most: number, stepRatio: number): readonly number[] {
  const steps = Math.ceil(Math.log(most / least) / Math.log(stepRatio));
  return Array.from({ length: steps + 1 }, (_, i) => least * stepRatio ** i);
}

function unique<T>(candidates: readonly T[], size: (candidate: T) => number): readonly T[] {
  const bySize = new Map(candidates.map((candidate) => [size(candidate), candidate]));
  return [...bySize.values()].toSorted((a, b) => size(a) - size(b));
}
