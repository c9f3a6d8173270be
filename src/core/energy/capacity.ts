import { within } from "../numerics/index.ts";

/** Every line of the capacity worksheet. */
export interface BatteryCapacity {
  /** Daily ampere-hours times days of autonomy, C_u. */
  readonly unadjustedAh: number;
  readonly dodAdjustedAh: number;
  readonly dailyDodAdjustedAh: number;
  readonly endOfLifeAdjustedAh: number;
  /** Which of the three is the largest. */
  readonly governedBy: "depth-of-discharge" | "daily-depth-of-discharge" | "end-of-life";
  readonly governingAh: number;
  /** 1 or more: reciprocal of the capacity fraction at the coldest battery temperature. */
  readonly temperatureFactorRatio: number;
  readonly temperatureAdjustedAh: number;
  /** 1 plus the margin. */
  readonly marginFactorRatio: number;
  readonly requiredAh: number;
  /** Pick cell ratings published at this discharge time or longer; null without a running current. */
  readonly functionalHourRateH: number | null;
}

/**
 * Rated capacity that a bank must have: the largest of three adjusted capacities (a maximum, not their
 * product), then temperature, then margin. The same chain serves lithium iron phosphate.
 *
 * @param bank.dailyAh             load of an average day of the design month, 0 or more, conversion and cable
 *         losses included
 * @param bank.largestDailyAh      load of the heaviest day, for the daily depth; dailyAh when left out
 * @param bank.autonomyDays        0 to 400
 * @param bank.maxDodFrac          0.1 to 1: commonly 0.8 deep-cycle vented, 0.5 shallow, 0.8 to 0.9 lithium
 * @param bank.maxDailyDodFrac     0.05 to 1: commonly 0.15 to 0.25 lead-acid
 * @param bank.endOfLifeFrac       0.5 to 1: capacity left when the bank is replaced, commonly 0.8
 * @param bank.capacityFrac        0.05 to 1, at the coldest sustained battery temperature (capacityFrac)
 * @param bank.designMarginFrac    0 to 1: commonly 0.10 to 0.25
 * @param bank.largestRunningA     largest current that lasts, 0 or more
 * @throws RangeFault outside the ranges above
 * @source IEEE 1013-2007 clauses 6.1, 6.3 and 6.4 (clauses read in the contents; the rules and common values
 *         from memory)
 */
export function batteryCapacity(bank: {
  readonly dailyAh: number;
  readonly largestDailyAh?: number;
  readonly autonomyDays: number;
  readonly maxDodFrac: number;
  readonly maxDailyDodFrac: number;
  readonly endOfLifeFrac: number;
  readonly capacityFrac: number;
  readonly designMarginFrac: number;
  readonly largestRunningA: number;
}): BatteryCapacity {
  const dailyAh = within("dailyAh", bank.dailyAh, 0, 1e6);
  const largestDailyAh = within("largestDailyAh", bank.largestDailyAh ?? dailyAh, dailyAh, 1e6);
  const unadjustedAh = dailyAh * within("autonomyDays", bank.autonomyDays, 0, 400);
  const dodAdjustedAh = unadjustedAh / within("maxDodFrac", bank.maxDodFrac, 0.1, 1);
  const dailyDodAdjustedAh = largestDailyAh / within("maxDailyDodFrac", bank.maxDailyDodFrac, 0.05, 1);
  const endOfLifeAdjustedAh = unadjustedAh / within("endOfLifeFrac", bank.endOfLifeFrac, 0.5, 1);
  const governingAh = Math.max(dodAdjustedAh, dailyDodAdjustedAh, endOfLifeAdjustedAh);
  const governedBy =
    governingAh === dodAdjustedAh
      ? "depth-of-discharge"
      : governingAh === endOfLifeAdjustedAh
        ? "end-of-life"
        : "daily-depth-of-discharge";
  const temperatureFactorRatio = 1 / within("capacityFrac", bank.capacityFrac, 0.05, 1);
  const temperatureAdjustedAh = governingAh * temperatureFactorRatio;
  const marginFactorRatio = 1 + within("designMarginFrac", bank.designMarginFrac, 0, 1);
  const requiredAh = temperatureAdjustedAh * marginFactorRatio;
  const largestRunningA = within("largestRunningA", bank.largestRunningA, 0, 1e5);
  return {
    unadjustedAh,
    dodAdjustedAh,
    dailyDodAdjustedAh,
    endOfLifeAdjustedAh,
    governedBy,
    governingAh,
    temperatureFactorRatio,
    temperatureAdjustedAh,
    marginFactorRatio,
    requiredAh,
    functionalHourRateH: largestRunningA > 0 ? requiredAh / largestRunningA : null,
  };
}
