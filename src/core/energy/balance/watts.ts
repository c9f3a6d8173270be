import { within } from "../../numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../../sun/index.ts";
import { HOURS_OF_YEAR } from "./plant.ts";
import type { Prepared } from "./prepare.ts";

/** Power by tier, the controller with its heater first, for the hours of one year. */
export interface YearOfLoads {
  readonly watts: readonly Float64Array[];
  /** Sum of the first n tiers; entry 0 is nothing, entry 1 the controller's own array. */
  readonly firstW: readonly Float64Array[];
}

/** Whether the loads differ from year to year, because the weather switches some of them. */
export function areLoadsByWeather({ tiers, heater }: Prepared): boolean {
  return heater !== null || tiers.some(({ byAmbient }) => (byAmbient ?? []).length > 0);
}

/** @param firstHour  of the year in the hourly inputs */
export function yearOfLoads(plant: Prepared, firstHour: number): YearOfLoads {
  const { tiers, ownW, heater, bankTempC, ambientTempC } = plant;
  const own = new Float64Array(HOURS_OF_YEAR).fill(ownW);
  const hours = own.length;
  if (heater !== null) {
    const { heaterW, heatLossWPerK, thermostatTempC } = heater;
    for (let hour = 0; hour < hours; hour++) {
      const shortK = thermostatTempC - bankTempC[firstHour + hour]!;
      if (shortK > 0) own[hour]! += Math.min(heaterW, shortK * heatLossWPerK);
    }
  }
  const watts: Float64Array[] = [own];
  for (const { wattsByHourOfYear, byAmbient } of tiers) {
    if (byAmbient === undefined || byAmbient.length === 0) {
      watts.push(wattsByHourOfYear);
      continue;
    }
    const hourlyW = Float64Array.from(wattsByHourOfYear);
    for (const { runs, tempC, watts: addedW, runsInMonth } of byAmbient) {
      within("watts", addedW, 0, 1e5);
      MEAN_DAY_BY_MONTH.forEach(({ firstDayOfYear, days }, month) => {
        if (runsInMonth?.[month] === false) return;
        const from = (firstDayOfYear - 1) * 24;
        for (let hour = from; hour < from + days * 24; hour++) {
          const ambientC = ambientTempC![firstHour + hour]!;
          if (runs === "below" ? ambientC < tempC : ambientC > tempC) hourlyW[hour]! += addedW;
        }
      });
    }
    watts.push(hourlyW);
  }
  return { watts, firstW: sumsOfFirst(watts) };
}

export function sumsOfFirst(watts: readonly Float64Array[]): readonly Float64Array[] {
  let sums = watts[0]!;
  const firstW = [new Float64Array(sums.length), sums];
  for (let k = 1; k < watts.length; k++) {
    const before = sums;
    const hourlyW = watts[k]!;
    sums = new Float64Array(before.length);
    for (let hour = 0; hour < sums.length; hour++) sums[hour] = before[hour]! + hourlyW[hour]!;
    firstW.push(sums);
  }
  return firstW;
}
