import { type NumberFound, readNumberWords } from "./number-words.ts";

/** More than anything asked here, in any unit: what is larger is a slip. */
const LARGEST = 1e12;

const NUMERAL = /^(?:\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+)/;
const MIXED = /^(\d+)(?: |-| and )(\d+)\/(\d+)(?![\d/])/;
const FRACTION = /^(\d+)\/(\d+)(?![\d/])/;
const AND_PART = /^ and (?:(a )?(half|quarter|third)|three[ -]quarters|two[ -]thirds)(?![a-z])/i;
/** The denominators of rulers and of speech; "12/24" is two voltages, not a half. */
const DENOMINATORS: readonly number[] = [2, 3, 4, 5, 8, 10, 16, 32, 64];
const PARTS: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3 };

/** The number that begins at `at`, in figures or words, without its sign; undefined where none does. */
export function readNumber(text: string, at: number): NumberFound | undefined {
  const rest = text.slice(at);
  const found = readFraction(rest) ?? readNumeral(rest) ?? readNumberWords(rest);
  if (found === undefined || !(found.value <= LARGEST)) return undefined;
  return { ...found, next: at + found.next };
}

/** "and a half" after a number or a unit: how much it adds, and its length. */
export function readAndPart(rest: string): { readonly value: number; readonly length: number } | undefined {
  const match = AND_PART.exec(rest);
  if (match === null) return undefined;
  const part = match[2]?.toLowerCase();
  const value = part !== undefined ? PARTS[part]! : match[0].toLowerCase().includes("three") ? 3 / 4 : 2 / 3;
  return { value, length: match[0].length };
}

function readFraction(rest: string): NumberFound | undefined {
  const mixed = MIXED.exec(rest);
  if (mixed !== null && isRulerFraction(mixed[2]!, mixed[3]!)) {
    const value = Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
    return { value, next: mixed[0].length, isPart: false, isArticle: false };
  }
  const simple = FRACTION.exec(rest);
  if (simple !== null && isRulerFraction(simple[1]!, simple[2]!)) {
    const value = Number(simple[1]) / Number(simple[2]);
    return { value, next: simple[0].length, isPart: true, isArticle: false };
  }
  return undefined;
}

function isRulerFraction(above: string, below: string): boolean {
  return Number(above) > 0 && Number(above) < Number(below) && DENOMINATORS.includes(Number(below));
}

function readNumeral(rest: string): NumberFound | undefined {
  const match = NUMERAL.exec(rest);
  if (match === null) return undefined;
  const typed = match[0];
  const found = { next: typed.length, isPart: false, isArticle: false };
  if (/^[1-9]\d{0,2},\d{3}$/.test(typed)) {
    const asThousands = Number(typed.replace(",", ""));
    const asDecimal = Number(typed.replace(",", "."));
    return { ...found, value: asThousands, comma: { typed, asThousands, asDecimal } };
  }
  const value = numeralValue(typed.replace(/ /g, ""));
  if (value === undefined) return undefined;
  const part = readAndPart(rest.slice(typed.length));
  if (part === undefined) return { ...found, value };
  return { ...found, value: value + part.value, next: typed.length + part.length };
}

/** Which of "," and "." stands before the decimals is told by their order, their count and what follows them. */
function numeralValue(typed: string): number | undefined {
  const marks = typed.replace(/\d/g, "");
  if (marks.length === 0) return Number(typed);
  if (marks.length === 1) return Number(typed.replace(",", "."));
  const last = marks.at(-1)!;
  const group = marks[0]!;
  if (group === last) {
    // The same mark twice can only part thousands.
    return inThousands(typed, group) ? Number(typed.replaceAll(group, "")) : undefined;
  }
  const at = typed.lastIndexOf(last);
  const whole = typed.slice(0, at);
  if (!inThousands(whole, group)) return undefined;
  return Number(`${whole.replaceAll(group, "")}.${typed.slice(at + 1)}`);
}

function inThousands(whole: string, mark: string): boolean {
  const [first, ...rest] = whole.split(mark);
  return /^\d{1,3}$/.test(first!) && rest.length > 0 && rest.every((group) => /^\d{3}$/.test(group));
}
