/**
 * Value at `x` on the broken line through points sorted by rising x; held constant beyond both ends.
 *
 * @param points  at least one [x, y] pair, x strictly rising
 */
export function interpolate(points: readonly (readonly [number, number])[], x: number): number {
  let [x0, y0] = points[0]!;
  if (x <= x0) return y0;
  for (const [x1, y1] of points) {
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
    x0 = x1;
    y0 = y1;
  }
  return y0;
}

export function clamp(value: number, min: number, max: number): number {
  return Math.min(Math.max(value, min), max);
}

export function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

/** Mean of a non-empty list. */
export function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}

/** Index of the smallest value; the first of several equal ones; -1 for an empty list. */
export function indexOfMin(values: readonly number[]): number {
  let best = -1;
  values.forEach((value, i) => {
    if (best < 0 || value < values[best]!) best = i;
  });
  return best;
}
