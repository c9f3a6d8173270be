/** Spellings for a terminal that shows no Unicode, in the order they are tried. */
const spellings: readonly (readonly [string, string])[] = [
  ["│", "|"],
  ["─", "-"],
  ["█", "#"],
  ["▄", "="],
  ["▒", "%"],
  ["░", ":"],
  ["╌", "-"],
  ["├", "+"],
  ["└", "+"],
  ["┴", "+"],
  ["┤", "+"],
  ["–", "-"],
  ["—", "-"],
  ["−", "-"],
  ["…", "..."],
  ["·", "-"],
  ["•", "-"],
  ["→", "->"],
  ["×", "x"],
  ["±", "+-"],
  ["≥", ">="],
  ["≤", "<="],
  ["≈", "about "],
  ["°", " deg"],
  ["²", "2"],
  ["³", "3"],
  ["Ω", "ohm"],
  ["µ", "u"],
  ["μ", "u"],
  ["½", "1/2"],
  ["“", '"'],
  ["”", '"'],
  ["‘", "'"],
  ["’", "'"],
  ["\u00a0", " "],
  ["\u202f", " "],
  ["ß", "ss"],
  ["æ", "ae"],
  ["Æ", "Ae"],
  ["ø", "o"],
  ["Ø", "O"],
  ["ł", "l"],
  ["Ł", "L"],
  ["đ", "d"],
  ["Đ", "D"],
  ["þ", "th"],
  ["ð", "d"],
  ["ı", "i"],
  ["œ", "oe"],
];

const bySign = new Map(spellings);

/** The same text in the 95 printable signs of ASCII: known signs spelled out, accents dropped, the rest a "?". */
export function asciiText(text: string): string {
  if (/^[\x20-\x7e\n]*$/.test(text)) return text;
  let spelled = "";
  for (const sign of text) spelled += bySign.get(sign) ?? sign;
  return spelled
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\x20-\x7e\n]/gu, "?");
}
