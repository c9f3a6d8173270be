/**
 * Cycles by depth in a course of charge, counted by the rainflow method: a small cycle within a large one is counted as itself
 * and leaves the large one whole.
 *
 * @param charge  0 to 1, in the order of time; need not be only turning points
 * @param bins    1 or more; entry i counts ranges from i/bins up to (i+1)/bins, the last one 1 too
 * @returns cycles, halves as 0.5
 * @source ASTM E1049-85 section 5.4.4 (from memory)
 */
export function rainflow(charge: Float64Array, bins: number): Float64Array {
  return rainflowInPlace(charge.slice(), bins);
}

/** The same for a caller who no longer needs the course: it is overwritten, which spares a long one a copy. */
export function rainflowInPlace(course: Float64Array, bins: number): Float64Array {
  const counts = new Float64Array(bins);
  // turning points whose ranges are not yet counted stand at the front: never more than were read
  const open = course;
  const { length } = course;
  let size = 0;
  let start = 0;
  for (let at = 0; at < length; at++) {
    const value = course[at]!;
    if (size > start) {
      const last = open[size - 1]!;
      if (last === value) continue;
      if (size - start >= 2 && last > open[size - 2]! === value > last) size -= 1;
    }
    open[size] = value;
    size += 1;
    while (size - start >= 3) {
      const middle = open[size - 2]!;
      const range = Math.abs(middle - open[size - 3]!);
      if (Math.abs(value - middle) < range) break;
      const bin = Math.min(bins - 1, Math.floor(range * bins));
      if (size - start === 3) {
        // the range holds the starting point: half a cycle, and the start moves on
        counts[bin]! += 0.5;
        start += 1;
      } else {
        counts[bin]! += 1;
        open[size - 3] = value;
        size -= 2;
      }
    }
  }
  for (let i = start + 1; i < size; i++) {
    counts[Math.min(bins - 1, Math.floor(Math.abs(open[i]! - open[i - 1]!) * bins))]! += 0.5;
  }
  return counts;
}
