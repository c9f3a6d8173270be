/**
 * Number of letters to change, drop, add or swap with their neighbour to turn one word into another.
 *
 * @returns the distance, or `atMost + 1` when it is larger than that
 * @source optimal string alignment (Damerau and Levenshtein), the textbook recurrence, from memory
 */
export function editDistance({
  from,
  to,
  atMost,
}: {
  readonly from: string;
  readonly to: string;
  readonly atMost: number;
}): number {
  if (Math.abs(from.length - to.length) > atMost) return atMost + 1;
  let twoBack: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    let best = i;
    for (let j = 1; j <= to.length; j++) {
      const same = from.charCodeAt(i - 1) === to.charCodeAt(j - 1);
      let steps = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      const swapped =
        i > 1 &&
        j > 1 &&
        from.charCodeAt(i - 1) === to.charCodeAt(j - 2) &&
        from.charCodeAt(i - 2) === to.charCodeAt(j - 1);
      if (swapped) steps = Math.min(steps, twoBack[j - 2]! + 1);
      row.push(steps);
      best = Math.min(best, steps);
    }
    if (best > atMost) return atMost + 1;
    twoBack = last;
    last = row;
  }
  return Math.min(last[to.length]!, atMost + 1);
}
