import { rainflowInPlace } from "./cycles.ts";
import type { Prepared } from "./prepare.ts";
import {
  AGEING_EXCESS,
  AVAILABLE_WH,
  BUS_TOTAL_WH,
  CHARGE_STEPS,
  DRAWN_TOTAL_WH,
  FROZEN_H,
  RECOVERIES,
  RECOVERY_SUM_H,
  RECOVERY_WORST_H,
  SELF_WH,
  STORED_TOTAL_WH,
  type Tally,
  WORST_RESIDUAL,
} from "./state.ts";
import { DAYS_BEFORE_MONTH } from "./year.ts";

/** How one tier fared. Lists by month have 12 entries, January first. */
export interface TierBalance {
  readonly name: string;
  readonly priority: number;
  /** Hours in which the tier wanted power and had none; means per year. */
  readonly darkHoursPerYear: number;
  readonly darkHoursByYear: Float64Array;
  /** The lightest of the darkest tenth of the years: of ten the darkest, of thirty the third; the darkest of fewer than ten. */
  readonly worstYearInTenDarkHours: number;
  readonly darkHoursByMonth: readonly number[];
  readonly wantedWhPerYear: number;
  readonly unmetWhPerYear: number;
  /** Loss-of-load probability: of the energy wanted, and of the time in which any was wanted. */
  readonly lossOfLoadEnergyFrac: number;
  readonly lossOfLoadTimeFrac: number;
}

/** Totals of the span; used = served + own + the four losses + stored; available = used + wasted. */
export interface EnergyTotals {
  readonly pvAvailableWh: number;
  /** At the array. */
  readonly pvUsedWh: number;
  readonly pvWastedWh: number;
  readonly servedWh: number;
  /** The controller's own draw and the bank's heater. */
  readonly ownWh: number;
  readonly controllerLossWh: number;
  readonly chargeLossWh: number;
  readonly dischargeLossWh: number;
  readonly selfDischargeWh: number;
  /** More in the bank at the end than at the start. */
  readonly storedWh: number;
  /** Into the bank and out of it, at its terminals. */
  readonly chargedWh: number;
  readonly dischargedWh: number;
}

/** The days round the lowest charge of the span. */
export interface DarkestSpell {
  readonly year: number;
  /** 0 = January. */
  readonly month: number;
  readonly lowestSocFrac: number;
  /** Of all that is stored when full, what could be drawn in that hour: cold takes the rest. */
  readonly capacityFracAtLowest: number;
  /** Of the tiers, most important first, so many have power then. */
  readonly tiersOnAtLowest: number;
  /** Day of the span at which the two traces start, and the day of the lowest charge within them. */
  readonly startDay: number;
  readonly lowestAtDay: number;
  readonly dailyLowestSocFrac: Float64Array;
  readonly dailyMeanSocFrac: Float64Array;
}

export interface Balance {
  /** Most important first. */
  readonly tiers: readonly TierBalance[];
  /** Of all that is stored when full, whatever the temperature. */
  readonly lowestSocFracByMonth: readonly number[];
  /** Within 0.002. */
  readonly medianSocFracByMonth: readonly number[];
  readonly startSocFrac: number;
  readonly endSocFrac: number;
  readonly darkestSpell: DarkestSpell;
  readonly energy: EnergyTotals;
  /** Largest hourly gap of the energy balance, over that hour's turnover. */
  readonly largestResidualFrac: number;
  /** Energy taken out over what a full bank holds. */
  readonly equivalentFullCyclesPerYear: number;
  /** Cycles a year by depth: entry i counts those of depth i/20 to (i+1)/20; halves count as halves. */
  readonly cyclesPerYearByDepth: Float64Array;
  /** Steady temperature at which the bank would age as it does; 25 at least. */
  readonly ageingTempC: number;
  /** From the first return of a tier after a spell until the bank is at 0.95; null: there was no such spell. */
  readonly recovery: {
    readonly spells: number;
    readonly meanHours: number;
    readonly worstHours: number;
  } | null;
  /** How often a year any tier is connected again. */
  readonly returnsPerYear: number;
  /** Hours a year in which the electrolyte would be ice; always 0 for lithium. */
  readonly freezingHoursPerYear: number;
  /** Hours a year in which not even the controller was fed. */
  readonly controllerDarkHoursPerYear: number;
}

const SPELL_DAYS = 60;
/** The fall takes longer than the rise. */
const DAYS_BEFORE_LOWEST = 40;

export function balanceOf(
  plant: Prepared,
  tally: Tally,
  run: {
    readonly years: number;
    readonly startMissingWh: number;
    readonly endMissingWh: number;
    readonly returns: number;
  },
): Balance {
  const { years } = run;
  const { totals } = tally;
  const tiers = plant.tiers.map(({ name, priority }, i) => ({
    name,
    priority,
    ...tierBalance(tally, i + 1, years),
  }));
  const controller = tierBalance(tally, 0, years);
  const recoveries = totals[RECOVERIES]!;
  const drawnWh = totals[DRAWN_TOTAL_WH]!;
  const { dailyLowFrac, dailyHighFrac } = tally;
  const turns = new Float64Array(2 * dailyLowFrac.length);
  for (let day = 0; day < dailyLowFrac.length; day++) {
    turns[2 * day] = dailyLowFrac[day]!;
    turns[2 * day + 1] = dailyHighFrac[day]!;
  }
  const monthLow = Array.from({ length: 12 }, (_, month) => {
    let lowest = 1;
    const firstDay = DAYS_BEFORE_MONTH[month]!;
    const dayAfter = DAYS_BEFORE_MONTH[month + 1]!;
    for (let january = 0; january < dailyLowFrac.length; january += 365) {
      for (let day = january + firstDay; day < january + dayAfter; day++) {
        lowest = Math.min(lowest, dailyLowFrac[day]!);
      }
    }
    return lowest;
  });
  return {
    tiers,
    lowestSocFracByMonth: monthLow,
    medianSocFracByMonth: monthLow.map((_, month) => medianCharge(tally.hoursByCharge, month)),
    startSocFrac: 1 - run.startMissingWh / plant.storeWh,
    endSocFrac: 1 - run.endMissingWh / plant.storeWh,
    darkestSpell: darkestSpell(tally),
    energy: energyTotals(plant, tally, run.startMissingWh - run.endMissingWh),
    largestResidualFrac: totals[WORST_RESIDUAL]!,
    equivalentFullCyclesPerYear: drawnWh / plant.storeWh / years,
    cyclesPerYearByDepth: rainflowInPlace(turns, 20).map((count) => count / years),
    ageingTempC: 25 + 10 * Math.log2(1 + totals[AGEING_EXCESS]! / (years * 8760)),
    recovery:
      recoveries === 0
        ? null
        : {
            spells: recoveries,
            meanHours: totals[RECOVERY_SUM_H]! / recoveries,
            worstHours: totals[RECOVERY_WORST_H]!,
          },
    returnsPerYear: run.returns / years,
    freezingHoursPerYear: totals[FROZEN_H]! / years,
    controllerDarkHoursPerYear: controller.darkHoursPerYear,
  };
}

function tierBalance(tally: Tally, tier: number, years: number): Omit<TierBalance, "name" | "priority"> {
  const from = tier * tally.months;
  const darkHoursByYear = new Float64Array(years);
  const darkHoursByMonth = Array<number>(12).fill(0);
  let darkH = 0;
  let unmetWh = 0;
  let wantedWh = 0;
  let wantedH = 0;
  for (let at = 0; at < tally.months; at++) {
    const dark = tally.darkH[from + at]!;
    darkHoursByYear[Math.floor(at / 12)]! += dark;
    darkHoursByMonth[at % 12]! += dark / years;
    darkH += dark;
    unmetWh += tally.unmetWh[from + at]!;
    wantedWh += tally.wantedWh[from + at]!;
    wantedH += tally.wantedH[from + at]!;
  }
  const sorted = Float64Array.from(darkHoursByYear).sort();
  return {
    darkHoursPerYear: darkH / years,
    darkHoursByYear,
    worstYearInTenDarkHours: sorted[Math.min(years - 1, Math.floor(0.9 * years))]!,
    darkHoursByMonth,
    wantedWhPerYear: wantedWh / years,
    unmetWhPerYear: unmetWh / years,
    lossOfLoadEnergyFrac: wantedWh > 0 ? unmetWh / wantedWh : 0,
    lossOfLoadTimeFrac: wantedH > 0 ? darkH / wantedH : 0,
  };
}

function energyTotals(plant: Prepared, tally: Tally, storedWh: number): EnergyTotals {
  const { totals } = tally;
  const servedBy = (fromTier: number, toTier: number): number => {
    let served = 0;
    for (let at = fromTier * tally.months; at < toTier * tally.months; at++) {
      served += tally.wantedWh[at]! - tally.unmetWh[at]!;
    }
    return served;
  };
  const usedWh = totals[BUS_TOTAL_WH]! / plant.efficiencyFrac;
  const intoStoreWh = totals[STORED_TOTAL_WH]!;
  const outOfStoreWh = totals[DRAWN_TOTAL_WH]!;
  const chargedWh = intoStoreWh / plant.chargeEfficiencyFrac;
  const dischargedWh = outOfStoreWh * plant.dischargeEfficiencyFrac;
  return {
    pvAvailableWh: totals[AVAILABLE_WH]!,
    pvUsedWh: usedWh,
    pvWastedWh: totals[AVAILABLE_WH]! - usedWh,
    servedWh: servedBy(1, plant.tierCount),
    ownWh: servedBy(0, 1),
    controllerLossWh: usedWh - totals[BUS_TOTAL_WH]!,
    chargeLossWh: chargedWh - intoStoreWh,
    dischargeLossWh: outOfStoreWh - dischargedWh,
    selfDischargeWh: totals[SELF_WH]!,
    storedWh,
    chargedWh,
    dischargedWh,
  };
}

function medianCharge(hoursByCharge: Float64Array, month: number): number {
  const steps = CHARGE_STEPS;
  const from = month * (steps + 1);
  let total = 0;
  for (let step = 0; step <= steps; step++) total += hoursByCharge[from + step]!;
  let step = 0;
  let passed = hoursByCharge[from]!;
  while (passed < total / 2) {
    step += 1;
    passed += hoursByCharge[from + step]!;
  }
  return step / steps;
}

function darkestSpell({
  dailyLowFrac,
  dailyMeanFrac,
  dailyLowCapacityFrac,
  dailyLowOnCount,
}: Tally): DarkestSpell {
  let lowest = 0;
  for (let day = 1; day < dailyLowFrac.length; day++) {
    if (dailyLowFrac[day]! < dailyLowFrac[lowest]!) lowest = day;
  }
  const startDay = Math.max(0, Math.min(lowest - DAYS_BEFORE_LOWEST, dailyLowFrac.length - SPELL_DAYS));
  return {
    year: Math.floor(lowest / 365),
    month: monthOfDay(lowest % 365),
    lowestSocFrac: dailyLowFrac[lowest]!,
    capacityFracAtLowest: dailyLowCapacityFrac[lowest]!,
    // the controller, first of all, is no tier of the builder's
    tiersOnAtLowest: Math.max(0, dailyLowOnCount[lowest]! - 1),
    startDay,
    lowestAtDay: lowest - startDay,
    dailyLowestSocFrac: dailyLowFrac.slice(startDay, startDay + SPELL_DAYS),
    dailyMeanSocFrac: dailyMeanFrac.slice(startDay, startDay + SPELL_DAYS),
  };
}

function monthOfDay(day: number): number {
  let month = 0;
  while (day >= DAYS_BEFORE_MONTH[month + 1]!) month += 1;
  return month;
}
