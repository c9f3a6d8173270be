/** Longer than any answer: what is longer is a slip of the mouse, and is not searched. */
export const LONGEST_ANSWER = 200;

/**
 * Typed text in one spelling for what looks the same: quotes, dashes, odd spaces, vulgar fractions, superscripts,
 * comparison signs. Letter case is kept: MW is not mW.
 */
export function plainText(text: string): string {
  return text
    .slice(0, LONGEST_ANSWER + 1)
    .replace(/½/g, " 1/2")
    .replace(/¼/g, " 1/4")
    .replace(/¾/g, " 3/4")
    .replace(/⅓/g, " 1/3")
    .replace(/⅔/g, " 2/3")
    .replace(/[′’‘`´]/g, "'")
    .replace(/[″“”]|''/g, '"')
    .normalize("NFKC")
    .replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2064\ufeff]/g, " ")
    .replace(/[‐‑‒–—―−]/g, "-")
    .replace(/±|\+\s*\/\s*-/g, "+-")
    .replace(/[≈≃∼]/g, "~")
    .replace(/≥/g, ">=")
    .replace(/≤/g, "<=")
    .replace(/[º˚]/g, "°")
    .replace(/\s+/g, " ")
    .trim();
}

/** What was typed, fit to be quoted in a sentence: no control characters, at most 40 characters. */
export function quotable(text: string): string {
  const plain = plainText(text);
  const letters = [...plain];
  return letters.length > 40 ? `${letters.slice(0, 37).join("").trimEnd()}...` : plain;
}
