import { seededDraws } from "../numerics/index.ts";
import { DAYS_A_YEAR, MONTH_OF_DAY, twelveWithin } from "./calendar.ts";
import { normalShareBelow } from "./gauss.ts";

const SNOW_STREAM = 0xc2b2_ae35;

/** Memory of the cover from day to day: spells of 2.7 days where it lies one day in ten, of 5.6 where every other (judgement). */
const SNOW_LAG1 = 0.85;

/**
 * Days on which snow covers the panel, in spells. Each day of a month is covered with the month's probability, so the
 * expectation is exact and single years differ.
 *
 * @param from.coveredFracByMonth  0 to 1
 * @returns years * 365 entries, 1 = covered
 * @throws RangeFault outside that range
 * @source our own: a normal value that remembers the day before, cut off at the month's share
 */
export function snowDays(from: {
  readonly coveredFracByMonth: readonly number[];
  readonly years: number;
  readonly seed: number;
}): Uint8Array {
  const fracByMonth = twelveWithin("snowCoveredFracByMonth", from.coveredFracByMonth, 0, 1);
  const covered = new Uint8Array(from.years * DAYS_A_YEAR);
  if (fracByMonth.every((frac) => frac === 0)) return covered;
  const draws = seededDraws({ seed: from.seed, stream: SNOW_STREAM });
  const fresh = Math.sqrt(1 - SNOW_LAG1 ** 2);
  let normal = draws.normal();
  for (let i = 0; i < covered.length; i += 1) {
    normal = SNOW_LAG1 * normal + fresh * draws.normal();
    if (normalShareBelow(normal) < fracByMonth[MONTH_OF_DAY[i % DAYS_A_YEAR]!]!) covered[i] = 1;
  }
  return covered;
}
