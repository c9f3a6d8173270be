import { within } from "../../numerics/index.ts";
import type { BalanceBank, BalanceController, LoadTier } from "./plant.ts";
import { COLDEST_C, prepare, ROWS_PER_K } from "./prepare.ts";
import { emptyTally, fullState, ON_COUNT } from "./state.ts";
import { switchedStep } from "./switched-step.ts";
import { sumsOfFirst } from "./watts.ts";

/** What is expected of the sun on a day to come, at the maximum power point. */
export type ComingDay =
  /** 24 hourly means in W. */
  | { readonly arrayW: Float64Array }
  /** Energy of the day, laid between the two hours as half a sine. */
  | { readonly arrayWh: number; readonly sunriseH: number; readonly sunsetH: number };

export interface TierOutlook {
  readonly name: string;
  /** Hours from now until the tier is first without power it wants; null: not within the days given. 0: now. */
  readonly hoursUntilShed: number | null;
  /** Hours from now until it has power again after that; null: not within the days given. */
  readonly hoursUntilBack: number | null;
  /** Of all that is stored when full: the tier is shed below this. The cold raises it. */
  readonly shedAtSocFrac: number;
  /** Likewise: once shed, it comes back at this. */
  readonly backAtSocFrac: number;
}

export interface Outlook {
  /** Most important first. */
  readonly tiers: readonly TierOutlook[];
  /** At each full hour from now on, now included. */
  readonly socFracByHour: Float64Array;
  readonly horizonH: number;
  /** Of the bank, its heater counted. */
  readonly bankTempC: number;
}

const STEPS_PER_HOUR = 4;

/**
 * When each tier will be shed, and when it will be back, if the coming days are as expected.
 *
 * @param now.bank        its tempC holds one entry, the temperature of the days to come; the heater counts
 * @param now.socFrac     of all that is stored when full, 0 to 1
 * @param now.hourNow     hours since midnight of the first day, 0 to 23, whole
 * @param now.days        1 to 60, today first
 * @param now.tiers       as LoadTier, but with the 24 hours of a day; isShed: the tier, and every less important one, is off now (without it: by
 *         its threshold)
 * @accuracy as simulateBalance, and no better than the forecast; MPPT only
 * @throws RangeFault outside the ranges above
 * @source the same step as simulateBalance
 */
export function outlook(now: {
  readonly bank: Omit<BalanceBank, "tempC"> & { readonly tempC: number };
  readonly controller: BalanceController;
  readonly socFrac: number;
  readonly hourNow: number;
  readonly days: readonly ComingDay[];
  readonly tiers: readonly (Omit<LoadTier, "wattsByHourOfYear" | "byAmbient"> & {
    readonly wattsByHourOfDay: Float64Array;
    readonly isShed?: boolean;
  })[];
}): Outlook {
  const dayCount = within("days", now.days.length, 1, 60);
  const hourNow = within("hourNow", now.hourNow, 0, 23);
  within("part of an hour", hourNow % 1, 0, 0);
  const arrayW = hourlyArrayW(now.days);
  const plant = prepare(
    {
      pv: { kind: "mppt", outputRatio: arrayW, ratedW: 1 },
      bank: { ...now.bank, tempC: Float64Array.of(now.bank.tempC) },
      controller: now.controller,
      loads: now.tiers.map((tier) => {
        within("entries of wattsByHourOfDay", tier.wattsByHourOfDay.length, 24, 24);
        return { ...tier, wattsByHourOfYear: tier.wattsByHourOfDay };
      }),
    },
    STEPS_PER_HOUR,
  );
  const { heater } = plant;
  const outsideC = within("tempC", now.bank.tempC, -60, 70);
  const shortK = heater === null ? 0 : Math.max(0, heater.thermostatTempC - outsideC);
  const heatW = heater === null ? 0 : Math.min(heater.heaterW, shortK * heater.heatLossWPerK);
  const tempC = outsideC + (heater === null || heatW === 0 ? 0 : heatW / heater.heatLossWPerK);
  const row = Math.floor((tempC - COLDEST_C) * ROWS_PER_K + 0.5);
  const capacityWh = plant.storeWh * plant.capacityFracByRow[row]!;
  const watts = [
    new Float64Array(24).fill(plant.ownW + heatW),
    ...plant.tiers.map(({ wattsByHourOfYear }) => wattsByHourOfYear),
  ];

  const loads = { watts, firstW: sumsOfFirst(watts) };
  const state = fullState(plant);
  const tally = emptyTally(plant.tierCount, 1);
  let missing = plant.storeWh * (1 - within("socFrac", now.socFrac, 0, 1));
  const firstShed = plant.tiers.findIndex(({ name }) => now.tiers.find((tier) => tier.name === name)!.isShed);
  if (firstShed >= 0) state[ON_COUNT] = firstShed + 1;

  const horizonH = dayCount * 24 - hourNow;
  const socFracByHour = new Float64Array(horizonH + 1);
  socFracByHour[0] = now.socFrac;
  const shedH: (number | null)[] = plant.tiers.map(() => null);
  const backH: (number | null)[] = plant.tiers.map(() => null);
  const { stepH } = plant;
  for (let hour = 0; hour < horizonH; hour++) {
    for (let step = 0; step < STEPS_PER_HOUR; step++) {
      missing += (plant.storeWh - missing) * plant.selfDischargeByRow[row]!;
      tally.darkH.fill(0);
      const busW = Math.min(arrayW[hourNow + hour]! * plant.efficiencyFrac, plant.limit);
      const weather = {
        busW,
        capacityWh,
        isChargeable: plant.chargeableByRow[row] === 1,
        hour: (hourNow + hour) % 24,
        slot: 0,
      };
      missing = switchedStep(plant, state, tally, loads, weather, missing);
      for (let i = 0; i < plant.tiers.length; i++) {
        const darkH = tally.darkH[(i + 1) * tally.months]!;
        const startH = hour + step * stepH;
        const isWanted = watts[i + 1]![(hourNow + hour) % 24]! > 0;
        if (shedH[i] === null && darkH > 0)
          shedH[i] = i + 1 < state[ON_COUNT]! ? startH : startH + stepH - darkH;
        else if (shedH[i] !== null && backH[i] === null && isWanted && darkH < stepH * (1 - 1e-9)) {
          backH[i] = startH + darkH;
        }
      }
    }
    socFracByHour[hour + 1] = 1 - missing / plant.storeWh;
  }
  return {
    tiers: plant.tiers.map(({ name, shedBelowSocFrac, returnAboveSocFrac }, i) => ({
      name,
      hoursUntilShed: shedH[i]!,
      hoursUntilBack: backH[i]!,
      shedAtSocFrac: 1 - ((1 - shedBelowSocFrac) * capacityWh) / plant.storeWh,
      backAtSocFrac: 1 - ((1 - returnAboveSocFrac) * capacityWh) / plant.storeWh,
    })),
    socFracByHour,
    horizonH,
    bankTempC: tempC,
  };
}

function hourlyArrayW(days: readonly ComingDay[]): Float64Array {
  const hourly = new Float64Array(days.length * 24);
  days.forEach((day, at) => {
    if ("arrayW" in day) {
      within("entries of arrayW", day.arrayW.length, 24, 24);
      for (const watts of day.arrayW) within("arrayW", watts, 0, 1e7);
      hourly.set(day.arrayW, at * 24);
      return;
    }
    const sunriseH = within("sunriseH", day.sunriseH, 0, 23);
    const sunsetH = within("sunsetH", day.sunsetH, sunriseH + 0.5, 24);
    const arrayWh = within("arrayWh", day.arrayWh, 0, 1e7);
    // the energy of half a sine up to an hour, so that the day's sum is exact
    const upTo = (clockH: number): number => {
      const part = Math.min(Math.max((clockH - sunriseH) / (sunsetH - sunriseH), 0), 1);
      return (arrayWh * (1 - Math.cos(Math.PI * part))) / 2;
    };
    for (let hour = 0; hour < 24; hour++) hourly[at * 24 + hour] = upTo(hour + 1) - upTo(hour);
  });
  return hourly;
}
