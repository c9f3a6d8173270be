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
  const counts = new Float64Array(bins);
  const count = (range: number, cycles: number): void => {
    counts[Math.min(bins - 1, Math.floor(range * bins))]! += cycles;
  };
  // turning points whose ranges are not yet counted; the course is walked once
  const open = new Float64Array(charge.length);
  let size = 0;
  let start = 0;
  for (const value of charge) {
    if (size - start >= 1 && open[size - 1] === value) continue;
    if (size - start >= 2 && open[size - 1]! > open[size - 2]! === value > open[size - 1]!) size -= 1;
    open[size] = value;
    size += 1;
    while (size - start >= 3) {
      const range = Math.abs(open[size - 2]! - open[size - 3]!);
      if (Math.abs(open[size - 1]! - open[size - 2]!) < range) break;
      if (size - start === 3) {
        // the range holds the starting point: half a cycle, and the start moves on
        count(range, 0.5);
        start += 1;
      } else {
        count(range, 1);
        open[size - 3] = open[size - 1]!;
        size -= 2;
      }
    }
  }
  for (let i = start + 1; i < size; i++) count(Math.abs(open[i]! - open[i - 1]!), 0.5);
  return counts;
}
