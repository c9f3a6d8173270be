/**
 * A measure of how far other words are from one word: the number of letters to change, drop, add or swap with their
 * neighbour. It compares pieces of one long text in place, because it is asked a hundred thousand times.
 *
 * @param word    the word as typed
 * @param atMost  distances beyond it are not told apart
 * @returns a function of a text and the ends of the piece, which returns the distance, or `atMost + 1` if it is larger
 * @source optimal string alignment (Damerau and Levenshtein), the textbook recurrence, from memory
 */
export function distanceFrom({
  word,
  atMost,
}: {
  readonly word: string;
  readonly atMost: number;
}): (text: string, from: number, to: number) => number {
  const letters = Uint16Array.from(word, (letter) => letter.charCodeAt(0));
  const length = letters.length;
  let twoBack = new Uint8Array(length + 1);
  let last = new Uint8Array(length + 1);
  let row = new Uint8Array(length + 1);
  return (text, from, to) => {
    if (Math.abs(to - from - length) > atMost) return atMost + 1;
    for (let j = 0; j <= length; j++) last[j] = j;
    let before = -1;
    for (let i = 1; i <= to - from; i++) {
      const letter = text.charCodeAt(from + i - 1);
      row[0] = i;
      let best = i;
      for (let j = 1; j <= length; j++) {
        let steps = last[j - 1]! + (letters[j - 1] === letter ? 0 : 1);
        if (last[j]! + 1 < steps) steps = last[j]! + 1;
        if (row[j - 1]! + 1 < steps) steps = row[j - 1]! + 1;
        const isSwapped = j > 1 && i > 1 && letters[j - 2] === letter && letters[j - 1] === before;
        if (isSwapped && twoBack[j - 2]! + 1 < steps) steps = twoBack[j - 2]! + 1;
        row[j] = steps;
        if (steps < best) best = steps;
      }
      if (best > atMost) return atMost + 1;
      before = letter;
      [twoBack, last, row] = [last, row, twoBack];
    }
    return Math.min(last[length]!, atMost + 1);
  };
}
