/**
 * A name as it is compared: lower case, without accents, apostrophes and full stops, every other mark a single space.
 *
 * The same rule made the folded names in the data (make/places.py), so that both sides of a comparison agree.
 *
 * @returns ASCII for every Latin-script name; other scripts keep their letters and find nothing
 */
export function folded(text: string): string {
  const lower = text.toLowerCase();
  if (/^[a-z ]*$/.test(lower)) return lower.replace(/ +/g, " ").trim();
  return lower
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\u0000-\u007f]/gu, (letter) => LETTERS[letter] ?? letter)
    .replace(/['’‘ʻʼ`´.]/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Letters that Unicode does not take apart into a plain one and a mark. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: "ss",
  ø: "o",
  æ: "ae",
  œ: "oe",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
  ħ: "h",
  ŋ: "ng",
  ə: "e",
  ŧ: "t",
  ĸ: "k",
  ɓ: "b",
  ɗ: "d",
  ƙ: "k",
  ɛ: "e",
  ɔ: "o",
};
