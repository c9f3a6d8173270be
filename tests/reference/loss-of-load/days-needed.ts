// The smallest battery that keeps a lossless post to a loss-of-load probability: the quantity of the tables in this folder.
import { simulateBalance } from "../../../src/core/energy/index.ts";
import { LOSSLESS, tier } from "../../core/energy/balance/weather.ts";

export const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const MONTH_OF_HOUR = DAYS.flatMap((days, month) => new Array<number>(days * 24).fill(month));

const LOAD_W = 10;
const DAILY_WH = 24 * LOAD_W;
const NOMINAL_V = 12;

/** Mean daily sums by month over all years, in thousands of the hours' unit. */
export function dailyMeansByMonth(hourly: Float64Array): readonly number[] {
  const sums = new Array<number>(12).fill(0);
  hourly.forEach((value, hour) => {
    sums[MONTH_OF_HOUR[hour % 8760]!]! += value / 1000;
  });
  return sums.map((sum, month) => sum / (DAYS[month]! * (hourly.length / 8760)));
}

/** Light on the plane, and what of it makes the load of a mean day in the month with the least. */
export interface Light {
  readonly hourly: Float64Array;
  readonly worstDailyMean: number;
}

export function lightOf(hourly: Float64Array): Light {
  return { hourly, worstDailyMean: Math.min(...dailyMeansByMonth(hourly)) };
}

/**
 * Unmet over wanted energy of a steady load with a battery of so many days and an array that gives `arrayRatio` times the load
 * in the worst month. The battery starts as a year's run leaves it: the year run twice and the second scored.
 */
export function lossOfLoad(
  { hourly, worstDailyMean }: Light,
  { arrayRatio, days }: { readonly arrayRatio: number; readonly days: number },
): number {
  const { tiers } = simulateBalance({
    years: hourly.length / 8760,
    pv: {
      kind: "mppt",
      outputRatio: hourly.map((value) => value / 1000),
      ratedW: (arrayRatio * DAILY_WH) / worstDailyMean,
    },
    bank: {
      chemistry: "lifepo4",
      nominalV: NOMINAL_V,
      ratedAh: (days * DAILY_WH) / NOMINAL_V,
      healthFrac: 1,
      tempC: new Float64Array(hourly.length).fill(25),
      traits: LOSSLESS,
    },
    controller: { efficiencyFrac: 1, maxOutputA: 1000, ownW: 0 },
    loads: [tier({ watts: LOAD_W })],
  });
  return tiers[0]!.lossOfLoadEnergyFrac;
}

/** To within 0.1 % of the answer. */
export function daysNeeded(
  light: Light,
  { arrayRatio, lossFrac }: { readonly arrayRatio: number; readonly lossFrac: number },
): number {
  let low = 0.2;
  let high = 0.4;
  const isEnough = (days: number): boolean => lossOfLoad(light, { arrayRatio, days }) <= lossFrac + 1e-12;
  while (!isEnough(high)) [low, high] = [high, 2 * high];
  while (high / low > 1.001) {
    const middle = Math.sqrt(low * high);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
