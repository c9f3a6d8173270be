const figure = String.raw`(\d+(?:[.,]\d+)?)`;
const volts = `${figure} ?v(?:olts?)?(?: ?dc)?`;
const amperes = `${figure} ?(m?)a(?:mps?|mperes?)?`;
const between = ` ?(?:[x×*/@,]|at|by|and|times)? ?`;
const voltsFirst = new RegExp(`^${volts}${between}${amperes}$`, "i");
const amperesFirst = new RegExp(`^${amperes}${between}${volts}$`, "i");

const numberOf = (typed: string): number => Number(typed.replace(",", "."));

/**
 * The watts of a label that gives volts and amperes side by side, as text: "12 V 2 A" and "500 mA at 48 V" are "24 W". Any
 * other text comes back as it is.
 */
export function labelWatts(text: string): string {
  const first = voltsFirst.exec(text);
  const second = amperesFirst.exec(text);
  const [v, a, milli] =
    first !== null
      ? [first[1], first[2], first[3]]
      : second !== null
        ? [second[3], second[1], second[2]]
        : [undefined, undefined, undefined];
  if (v === undefined || a === undefined) return text;
  const watts = (numberOf(v) * numberOf(a)) / (milli ? 1000 : 1);
  return `${Number(watts.toPrecision(12))} W`;
}
