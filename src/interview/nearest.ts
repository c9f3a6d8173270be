/** The known word that a misspelt one is nearest to. */

/** Longer than any id: what is longer is not searched. */
const longest = 100;

/**
 * The candidate that takes the fewest changed, added or left-out characters, letter case aside.
 *
 * @returns null where there is no candidate
 */
export function nearestOf(word: string, candidates: readonly string[]): string | null {
  const wanted = word.slice(0, longest).toLowerCase();
  let nearest: string | null = null;
  let fewest = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const edits = editsBetween(wanted, candidate.toLowerCase());
    if (edits >= fewest) continue;
    fewest = edits;
    nearest = candidate;
  }
  return nearest;
}

/** Edit distance, row by row: the number of single characters to change, add or leave out (Levenshtein). */
function editsBetween(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const changed = row[j - 1]! + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[other.length]!;
}
