import { within } from "../numerics/index.ts";
import { MEAN_DAY_BY_MONTH } from "../sun/index.ts";

export interface SeasonalDeficit {
  /**
   * Energy the bank must hold at the start of the lean season, at the load; 0 when every month carries
   * itself.
   */
  readonly storageWh: number;
  /** Month (0 = January) in which the bank starts to fall; null without a deficit. */
  readonly startMonth: number | null;
  /** Months of the lean season, to the lowest point. */
  readonly months: number;
  /**
   * The year's supply covers the year's demand: otherwise no bank is large enough, and storageWh is for one
   * year only.
   */
  readonly isYearCovered: boolean;
}

/**
 * Energy to be carried from season to season, when the monthly supply of a chosen array falls below demand
 * for months: the deepest fall of the running balance over a cycle of mean months. Cloudy spells within a
 * month come on top.
 *
 * @param plant.dailyWhByMonth        demand of a day, 12 entries, 0 or more
 * @param plant.dailySupplyWhByMonth  what reaches the load side on a day, 12 entries, 0 or more
 * @throws RangeFault outside the ranges above
 * @source sequent-peak method of reservoir design (Thomas and Burden 1963), from memory
 */
export function seasonalDeficit(plant: {
  readonly dailyWhByMonth: readonly number[];
  readonly dailySupplyWhByMonth: readonly number[];
}): SeasonalDeficit {
  within("months of dailyWhByMonth", plant.dailyWhByMonth.length, 12, 12);
  within("months of dailySupplyWhByMonth", plant.dailySupplyWhByMonth.length, 12, 12);
  const netWhByMonth = plant.dailyWhByMonth.map(
    (dailyWh, month) =>
      MEAN_DAY_BY_MONTH[month]!.days *
      (within("dailySupplyWh", plant.dailySupplyWhByMonth[month]!, 0, 1e7) -
        within("dailyWh", dailyWh, 0, 1e7)),
  );
  const yearNetWh = netWhByMonth.reduce((total, netWh) => total + netWh, 0);

  let worst = { storageWh: 0, startMonth: null as number | null, months: 0 };
  for (let startMonth = 0; startMonth < 12; startMonth += 1) {
    let balanceWh = 0;
    for (let months = 1; months <= 12; months += 1) {
      balanceWh += netWhByMonth[(startMonth + months - 1) % 12]!;
      if (-balanceWh > worst.storageWh + 1e-6) worst = { storageWh: -balanceWh, startMonth, months };
    }
  }
  return { ...worst, isYearCovered: yearNetWh >= -1e-6 };
}
