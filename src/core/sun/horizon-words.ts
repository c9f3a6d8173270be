import { findUnit } from "../units/index.ts";
import { type Form, PARTINGS, type Parting, scan } from "../words/index.ts";
import { COMPASS_PATTERN, compassDeg } from "./compass.ts";

/** What one stretch of a builder's words about the horizon says; words that say nothing here are passed over. */
export type HorizonFact =
  /** One direction, or a stretch clockwise from the first to the second. */
  | { readonly kind: "direction"; readonly fromAzimuthDeg: number; readonly toAzimuthDeg: number | null }
  /** From east to west: over north or over south? */
  | { readonly kind: "either-way"; readonly words: string }
  | { readonly kind: "all-round" }
  | { readonly kind: "angle"; readonly angleDeg: number; readonly isWidth: boolean }
  | { readonly kind: "length"; readonly lengthM: number; readonly role: LengthRole | null }
  /** One tree or pole, whose width follows from its height. */
  | { readonly kind: "single"; readonly widthPerHeight: number }
  | Parting
  | { readonly kind: "loose-number"; readonly word: string };

export type LengthRole = "height" | "distance" | "width";

/** A fist at arm's length is 10 deg (in the unit table), a finger or thumb about 2. @source common practice, no source */
const FINGER_DEG = 2;

/** Breadth over height of a free-standing tree's crown, and of a pole. @source judgement */
const TREE_WIDTH_PER_HEIGHT = 0.6;
const POLE_WIDTH_PER_HEIGHT = 0.05;

const NUMBER_WORDS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  half: 0.5,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
};

const NUMBER = `(?:\\d+(?:[.,]\\d+)?|(?:${Object.keys(NUMBER_WORDS).join("|")})(?![\\w']))`;
const AND_A_HALF = "(?:\\s+and\\s+a\\s+half)";
const DEGREES = "(?:\\s*°|\\s*-?deg(?:ree)?s?\\b)";
// a hyphen without spaces joins the parts of one wind
const TO = "(?:\\s+(?:to|through|until|-)\\s+|\\s*–\\s*)(?:the\\s+)?";
const NOUN = "trees?|house|wall|shed|barn|building|hedge|fence|hill|forest|wood";

/** The forms, tried in this order at each place of the text. */
const FORMS: readonly Form<HorizonFact>[] = [
  {
    form: new RegExp(`^(?:from\\s+)?(?:the\\s+)?(${COMPASS_PATTERN})${TO}(${COMPASS_PATTERN})`, "i"),
    fact: ([words, from, to]) => shorterWay(words!, compassDeg(from!), compassDeg(to!)),
  },
  {
    form: new RegExp(
      `^between\\s+(?:the\\s+)?(${COMPASS_PATTERN})\\s+and\\s+(?:the\\s+)?(${COMPASS_PATTERN})`,
      "i",
    ),
    fact: ([words, from, to]) => shorterWay(words!, compassDeg(from!), compassDeg(to!)),
  },
  {
    form: new RegExp(
      `^(?:from|between|azimuths?|bearings?)\\s+(\\d+(?:\\.\\d+)?)${DEGREES}?(?:${TO}|\\s+and\\s+|\\s*-\\s*)(\\d+(?:\\.\\d+)?)${DEGREES}(?!\\s*(?:high|tall|up|above))`,
      "i",
    ),
    fact: ([, from, to]) => direction(turn(from!), turn(to!)),
  },
  {
    form: new RegExp(`^(?:azimuth|bearing|heading)\\s+(?:of\\s+)?(\\d+(?:\\.\\d+)?)${DEGREES}?`, "i"),
    fact: ([, at]) => direction(turn(at!), null),
  },
  {
    form: new RegExp(`^(${COMPASS_PATTERN})`, "i"),
    fact: ([, words]) => direction(compassDeg(words!), null),
  },
  {
    form: /^(?:(?:all\s+(?:a?round|sides|directions)|everywhere|every\s+(?:side|direction)|the\s+whole\s+horizon)(?![\w']))/i,
    fact: () => ({ kind: "all-round" }),
  },
  {
    form: new RegExp(
      `^(?:(height|distance|width)\\s+(?:of\\s+|is\\s+)?)?(${NUMBER})(${AND_A_HALF})?(?:\\s*-?\\s*)(°|'|"|[a-z]+)(${AND_A_HALF})?(?:\\s+(tall|high|away|off|distant|from|far|back|wide|across|broad)(?![\\w'])|(?=\\s+(${NOUN})(?![\\w'])))?`,
      "i",
    ),
    fact: ([, before, number, half, unit, halfAfter, after, noun]) =>
      amount({
        value: numberOf(number!) + (half || halfAfter ? 0.5 : 0),
        unit: unit!,
        role: roleOf(before ?? after ?? (noun ? "tall" : "")),
      }),
  },
  { form: /^(?:tree(?![\w']))/i, fact: () => ({ kind: "single", widthPerHeight: TREE_WIDTH_PER_HEIGHT }) },
  {
    form: /^(?:(?:pole|mast|post|chimney)(?![\w']))/i,
    fact: () => ({ kind: "single", widthPerHeight: POLE_WIDTH_PER_HEIGHT }),
  },
  ...PARTINGS,
  { form: /^(?:\d+(?:[.,]\d+)?)/i, fact: ([word]) => ({ kind: "loose-number", word: word! }) },
];

/** The facts of a text in their order. */
export function horizonFacts(text: string): readonly HorizonFact[] {
  const plain = text.normalize("NFKC").replace(/[º˚]/g, "°").replace(/[’′]/g, "'").replace(/[”″]/g, '"');
  return scan(plain, FORMS);
}

function direction(fromAzimuthDeg: number | null, toAzimuthDeg: number | null): HorizonFact | null {
  return fromAzimuthDeg === null ? null : { kind: "direction", fromAzimuthDeg, toAzimuthDeg };
}

/** A stretch between two winds, whichever was named first. */
function shorterWay(words: string, fromDeg: number | null, toDeg: number | null): HorizonFact | null {
  if (fromDeg === null || toDeg === null) return null;
  const widthDeg = (toDeg - fromDeg + 360) % 360;
  if (widthDeg === 180) return { kind: "either-way", words: words.trim() };
  return widthDeg < 180 ? direction(fromDeg, toDeg) : direction(toDeg, fromDeg);
}

function turn(number: string): number | null {
  const angleDeg = Number(number);
  return angleDeg <= 360 ? angleDeg : null;
}

function numberOf(number: string): number {
  return NUMBER_WORDS[number.toLowerCase()] ?? Number(number.replace(",", "."));
}

function roleOf(word: string): LengthRole | null {
  if (/^(?:height|tall|high)$/i.test(word)) return "height";
  if (/^(?:distance|away|off|distant|from|far|back)$/i.test(word)) return "distance";
  if (/^(?:width|wide|across|broad)$/i.test(word)) return "width";
  return null;
}

function amount(read: {
  readonly value: number;
  readonly unit: string;
  readonly role: LengthRole | null;
}): HorizonFact | null {
  if (/^(?:finger|thumb)(?:s|'s)?$/i.test(read.unit)) {
    return { kind: "angle", angleDeg: FINGER_DEG * read.value, isWidth: read.role === "width" };
  }
  const angle = findUnit(read.unit, "angle");
  if (angle !== undefined) {
    return { kind: "angle", angleDeg: angle.toBase * read.value, isWidth: read.role === "width" };
  }
  // "one in the south" is no inch
  const length = /^in$/i.test(read.unit) ? undefined : findUnit(read.unit, "length");
  return length === undefined
    ? null
    : { kind: "length", lengthM: length.toBase * read.value, role: read.role };
}
