import { clamp, mean, within } from "../numerics/index.ts";
import { normalShareBelow } from "./gauss.ts";
import { CLEAREST_DAY_INDEX, DULLEST_DAY_INDEX } from "./tables.ts";

/** Daily values that a month is described by. */
const SIXTEENTHS = 16;
/** Less light than this has no distribution worth a name. */
const LEAST_TO_SPREAD = 1e-6;
/** Corners of the broken line: both ends and the middle of each sixteenth. */
const CORNERS = 2 * SIXTEENTHS;

/**
 * How a month's daily clearness is spread: a broken line of 33 corners, equally far apart in probability, of daily
 * clearness over the month's. Rising; its mean is 1.
 */
export type DayDistribution = Float64Array;

/**
 * Distribution of a month's days from sixteen equally likely values.
 *
 * Each value is the mean of one sixteenth of all days, so the line is laid through the sixteenths in such a way that
 * it keeps those means where it can rise at the same time. The outermost sixteenths run on as steeply as the line did,
 * down to a clearness of 0.02 and up to 0.86 (or to the month's own values, if those lie beyond). The values hold the
 * month's trend too, that days grow longer or shorter; since the generator adds the trend by itself, the spread is
 * first made narrower by a power that takes just that variance out. Last the line is scaled to a mean of exactly 1, no
 * day above the extraterrestrial irradiation.
 *
 * @param month.dailyGhiQuantiles   sixteen daily irradiations over the month's mean, dullest first, 0 to 20 each
 * @param month.clearnessIndex      of the month, 0 to 1
 * @param month.trendVariance       variance of the days' extraterrestrial irradiation over its mean squared, 0 or more
 * @throws RangeFault outside the ranges above
 * @source our own construction
 */
export function dayDistribution(month: {
  readonly dailyGhiQuantiles: readonly number[];
  readonly clearnessIndex: number;
  readonly trendVariance: number;
}): DayDistribution {
  within("dailyGhiQuantiles", month.dailyGhiQuantiles.length, SIXTEENTHS, SIXTEENTHS);
  const given = month.dailyGhiQuantiles.map((value) => within("dailyGhiQuantile", value, 0, 20));
  const index = within("clearnessIndex", month.clearnessIndex, 0, 1);
  const corners = new Float64Array(CORNERS + 1).fill(1);
  if (index < LEAST_TO_SPREAD || mean(given) < LEAST_TO_SPREAD) return corners;
  layLine(
    corners,
    withoutTrend(
      [...given].sort((a, b) => a - b),
      month.trendVariance,
    ),
    index,
  );
  scaleToOne(corners, 1 / index);
  return corners;
}

/** Daily clearness over the month's, for a standard normal value. */
export function shareOf(distribution: DayDistribution, normal: number): number {
  const place = normalShareBelow(normal) * CORNERS;
  const corner = Math.min(CORNERS - 1, Math.floor(place));
  const from = distribution[corner]!;
  return from + (distribution[corner + 1]! - from) * (place - corner);
}

/** Least power left of a spread that the trend explains: even then days differ. */
const LEAST_POWER = 0.3;

function withoutTrend(values: readonly number[], trendVariance: number): readonly number[] {
  const raised = (power: number): readonly number[] => {
    const powers = values.map((value) => value ** power);
    const middle = mean(powers);
    return powers.map((value) => value / middle);
  };
  const square = (shares: readonly number[]): number => mean(shares.map((share) => share * share));
  // of two independent factors of mean 1 the mean squares multiply
  const wanted = square(raised(1)) / (1 + Math.max(0, trendVariance));
  let low = LEAST_POWER;
  let high = 1;
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    if (square(raised(middle)) < wanted) low = middle;
    else high = middle;
  }
  return raised(trendVariance > 0 ? low : 1);
}

function layLine(corners: DayDistribution, values: readonly number[], index: number): void {
  const last = SIXTEENTHS - 1;
  const least = values[0]!;
  const most = values[last]!;
  corners[0] = clamp(1.5 * least - 0.5 * values[1]!, Math.min(least, DULLEST_DAY_INDEX / index), least);
  for (let i = 1; i < SIXTEENTHS; i += 1) corners[2 * i] = (values[i - 1]! + values[i]!) / 2;
  corners[CORNERS] = clamp(
    1.5 * most - 0.5 * values[last - 1]!,
    most,
    Math.max(most, CLEAREST_DAY_INDEX / index),
  );
  values.forEach((value, i) => {
    const from = corners[2 * i]!;
    const to = corners[2 * i + 2]!;
    corners[2 * i + 1] = clamp(2 * value - (from + to) / 2, from, to);
  });
}

/** No day under a risen sun is quite dark; and without it months of a few bright days could not be scaled. */
const LEAST_SHARE = 1e-3;

function scaleToOne(corners: DayDistribution, most: number): void {
  const raw = corners.map((corner) => Math.max(LEAST_SHARE, corner));
  const meanScaled = (scale: number): number => {
    let total = 0;
    for (let i = 0; i <= CORNERS; i += 1) {
      corners[i] = Math.min(most, raw[i]! * scale);
      total += corners[i]! * (i === 0 || i === CORNERS ? 0.5 : 1);
    }
    return total / CORNERS;
  };
  let low = 0;
  let high = 2 / LEAST_SHARE;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (meanScaled(middle) < 1) low = middle;
    else high = middle;
  }
  meanScaled(high);
}
