/**
 * Typed text as a pair of coordinates.
 *
 * 1. Marks are made alike (one kind of minus, degree, minute and second), a decimal comma becomes a point where the
 *    text leaves no doubt.
 * 2. The text is cut into numbers, marks, hemisphere letters and separators; anything else means: no coordinates.
 * 3. The pieces are divided into two angles by letters, by separators, or by their count.
 * 4. Each angle is added up and checked, and the ranges last.
 */

export type Coordinates = {
  readonly kind: "coordinates";
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
};

export type CoordinatesRead =
  | Coordinates
  /** the text is something else: a name, an address, one plain number */
  | { readonly kind: "not-coordinates" }
  /** it means to be coordinates and cannot be; `got` is the number or the text at fault */
  | { readonly kind: "bad-coordinates"; readonly why: CoordinatesFault; readonly got: number | string };

export type CoordinatesFault =
  | "latitude-range"
  | "longitude-range"
  | "minutes-range"
  | "seconds-range"
  /** only the last of degrees, minutes and seconds may have a fraction */
  | "fraction-not-last"
  /** a minus and a hemisphere letter together */
  | "sign-and-letter"
  | "two-latitudes"
  | "two-longitudes"
  | "one-angle-only"
  /** a geo: address in another reference system than WGS 84 */
  | "other-reference-system";

/**
 * Coordinates in the notations people copy from maps, receivers and papers: decimal degrees, degrees with minutes or
 * with minutes and seconds, hemisphere letters before or after (either order of the two), geo: addresses.
 *
 * @param text  without letters the first angle is the latitude
 * @source geo: RFC 5870; the other notations: common practice, no source
 */
export function readCoordinates(text: string): CoordinatesRead {
  if (/^\s*geo:/i.test(text)) return readGeoAddress(text.trim());
  const pieces = piecesOf(decimalPoints(plainMarks(text)));
  if (pieces === undefined) return { kind: "not-coordinates" };
  const hasLetter = pieces.some((piece) => piece.kind === "letter");
  const angles = hasLetter ? dividedByLetters(pieces) : dividedWithoutLetters(pieces);
  if (angles === undefined) {
    return hasLetter && pieces.some((piece) => piece.kind === "number")
      ? { kind: "bad-coordinates", why: "one-angle-only", got: text.trim() }
      : { kind: "not-coordinates" };
  }
  return pairOf(angles, text.trim());
}

type Piece =
  | {
      readonly kind: "number";
      readonly value: number;
      readonly minus: boolean;
      readonly hasFraction: boolean;
    }
  | { readonly kind: "mark"; readonly mark: "°" | "'" | '"' }
  | { readonly kind: "letter"; readonly letter: "N" | "S" | "E" | "W" }
  | { readonly kind: "separator" };

interface Angle {
  readonly letter: "N" | "S" | "E" | "W" | undefined;
  readonly pieces: readonly Piece[];
}

function plainMarks(text: string): string {
  return (
    text
      .trim()
      .replace(/^[([{]\s*(.*?)\s*[)\]}]$/u, "$1")
      .replace(/[\s.,;/]+$/, "")
      .replace(/[−–—‒]/g, "-")
      .replace(/[º˚∘]|\bdeg(?:rees?)?\b\.?/gi, "°")
      .replace(/''|′′|’’|[″”“„]/g, '"')
      .replace(/[′’‘´`ʹ]/g, "'")
      .replace(/\blat(?:itude)?\b\.?\s*[:=]?/gi, " ")
      .replace(/[,;]?\s*\b(?:lon(?:g(?:itude)?)?|lng)\b\.?\s*[:=]?/gi, ", ")
      .replace(/\b(north|south|east|west)\b/gi, (word) => word[0]!.toUpperCase())
      // With letters a hyphen between digits is a divider (52-24-11N), without them it is a sign (+52.403-003.234).
      .replace(/(\d)-(?=\d)(?=.*[NSEW])/gi, "$1 ")
  );
}

/**
 * "52,40; -3,23" and "52,40 -3,23" have decimal commas; "52,40" and "52.4,-3.2" have none: commas between digits are
 * taken for decimal ones only when there are two of them, something stands between the two numbers, and no point
 * stands anywhere.
 */
function decimalPoints(text: string): string {
  if (text.includes(".")) return text;
  const between = /(?<=\d),(?=\d)/g;
  const tight = [...text.matchAll(between)].map((found) => found.index);
  const loose = (text.match(/,/g) ?? []).length - tight.length;
  if (tight.length !== 2 || loose > 1) return text;
  const isApart = /[\s;°'"NSEW]/i.test(text.slice(tight[0], tight[1]));
  return isApart ? text.replace(between, ".") : text;
}

const PIECE = /\s*(?:([-+]?)\s?(\d+(?:\.\d*)?|\.\d+)(?![.\d])|([°'"])|([NSEW])(?![a-z])|([,;]))/iy;

function piecesOf(text: string): Piece[] | undefined {
  const pieces: Piece[] = [];
  const piece = new RegExp(PIECE);
  let at = 0;
  while (at < text.length) {
    piece.lastIndex = at;
    const found = piece.exec(text);
    if (found === null) return text.slice(at).trim() === "" ? pieces : undefined;
    const [, sign, number, mark, letter] = found;
    if (number !== undefined) {
      pieces.push({
        kind: "number",
        value: Number(number),
        minus: sign === "-",
        hasFraction: number.includes("."),
      });
    } else if (mark !== undefined) pieces.push({ kind: "mark", mark: mark as "°" | "'" | '"' });
    else if (letter !== undefined)
      pieces.push({ kind: "letter", letter: letter.toUpperCase() as "N" | "S" | "E" | "W" });
    else pieces.push({ kind: "separator" });
    at = piece.lastIndex;
  }
  return pieces;
}

function dividedByLetters(pieces: readonly Piece[]): [Angle, Angle] | undefined {
  const letters = pieces.filter((piece) => piece.kind === "letter");
  if (letters.length === 1) return dividedBySeparator(pieces);
  if (letters.length !== 2) return undefined;
  const lettersFirst = pieces[0]!.kind === "letter";
  const ordered = lettersFirst ? pieces : pieces.toReversed();
  const second = ordered.findIndex((piece, i) => i > 0 && piece.kind === "letter");
  const one = angleOf(ordered.slice(0, second));
  const other = angleOf(ordered.slice(second));
  if (one === undefined || other === undefined) return undefined;
  if (lettersFirst) return [one, other];
  const forward = (angle: Angle): Angle => ({ ...angle, pieces: angle.pieces.toReversed() });
  return [forward(other), forward(one)];
}

function angleOf(pieces: readonly Piece[]): Angle | undefined {
  const letter = pieces.find((piece) => piece.kind === "letter");
  const rest = pieces.filter((piece) => piece.kind === "number" || piece.kind === "mark");
  if (!rest.some((piece) => piece.kind === "number")) return undefined;
  return { letter: letter?.kind === "letter" ? letter.letter : undefined, pieces: rest };
}

function dividedBySeparator(pieces: readonly Piece[]): [Angle, Angle] | undefined {
  const separators = pieces.flatMap((piece, i) => (piece.kind === "separator" ? [i] : []));
  if (separators.length !== 1) return undefined;
  const one = angleOf(pieces.slice(0, separators[0]));
  const other = angleOf(pieces.slice(separators[0]! + 1));
  return one === undefined || other === undefined ? undefined : [one, other];
}

/** By a comma; else by the second degree mark; else by the count of numbers: two, four or six, half to each. */
function dividedWithoutLetters(pieces: readonly Piece[]): [Angle, Angle] | undefined {
  if (pieces.some((piece) => piece.kind === "separator")) return dividedBySeparator(pieces);
  const degrees = pieces.flatMap((piece, i) => (piece.kind === "mark" && piece.mark === "°" ? [i] : []));
  const numbers = pieces.flatMap((piece, i) => (piece.kind === "number" ? [i] : []));
  let second: number | undefined;
  if (degrees.length === 2) second = degrees[1]! - 1;
  else if (degrees.length === 0 && [2, 4, 6].includes(numbers.length)) second = numbers[numbers.length / 2];
  if (second === undefined || second < 1) return undefined;
  const one = angleOf(pieces.slice(0, second));
  const other = angleOf(pieces.slice(second));
  return one === undefined || other === undefined ? undefined : [one, other];
}

function pairOf([one, other]: readonly [Angle, Angle], text: string): CoordinatesRead {
  const axis = (angle: Angle): "latitude" | "longitude" | undefined =>
    angle.letter === undefined
      ? undefined
      : angle.letter === "N" || angle.letter === "S"
        ? "latitude"
        : "longitude";
  if (axis(one) !== undefined && axis(one) === axis(other)) {
    return {
      kind: "bad-coordinates",
      why: axis(one) === "latitude" ? "two-latitudes" : "two-longitudes",
      got: text,
    };
  }
  const turned = axis(one) === "longitude" || axis(other) === "latitude";
  const latitude = sizeOf(turned ? other : one);
  const longitude = sizeOf(turned ? one : other);
  for (const size of [latitude, longitude]) if (typeof size !== "number") return size;
  return inRange(latitude as number, longitude as number);
}

function inRange(latitudeDeg: number, longitudeDeg: number): CoordinatesRead {
  if (!(Math.abs(latitudeDeg) <= 90))
    return { kind: "bad-coordinates", why: "latitude-range", got: latitudeDeg };
  if (!(Math.abs(longitudeDeg) <= 180))
    return { kind: "bad-coordinates", why: "longitude-range", got: longitudeDeg };
  return { kind: "coordinates", latitudeDeg, longitudeDeg };
}

type Fault = Extract<CoordinatesRead, { kind: "bad-coordinates" } | { kind: "not-coordinates" }>;

const MARKS = ["°", "'", '"'] as const;

/** Degrees with their sign, or what is wrong with them. */
function sizeOf({ letter, pieces }: Angle): number | Fault {
  const numbers: { value: number; hasFraction: boolean }[] = [];
  let minus = false;
  let marked = 0;
  for (const piece of pieces) {
    if (piece.kind === "number") {
      if (numbers.length === 3 || (piece.minus && numbers.length > 0)) return { kind: "not-coordinates" };
      if (numbers.length === 0) minus = piece.minus;
      numbers.push(piece);
    } else if (piece.kind === "mark") {
      // A mark must follow its own number: degrees, then minutes, then seconds.
      if (MARKS.indexOf(piece.mark) !== numbers.length - 1 || marked >= numbers.length)
        return { kind: "not-coordinates" };
      marked = numbers.length;
    }
  }
  if (minus && letter !== undefined) return { kind: "bad-coordinates", why: "sign-and-letter", got: letter };
  const [degrees, minutes, seconds] = numbers;
  const early = numbers.slice(0, -1).find((number) => number.hasFraction && !Number.isInteger(number.value));
  if (early !== undefined) return { kind: "bad-coordinates", why: "fraction-not-last", got: early.value };
  if (minutes !== undefined && minutes.value >= 60)
    return { kind: "bad-coordinates", why: "minutes-range", got: minutes.value };
  if (seconds !== undefined && seconds.value >= 60)
    return { kind: "bad-coordinates", why: "seconds-range", got: seconds.value };
  const size = degrees!.value + (minutes?.value ?? 0) / 60 + (seconds?.value ?? 0) / 3600;
  return size !== 0 && (minus || letter === "S" || letter === "W") ? -size : size;
}

/** geo:LATITUDE,LONGITUDE[,ALTITUDE][;crs=wgs84][;u=METRES]... of RFC 5870, section 3.3. */
function readGeoAddress(text: string): CoordinatesRead {
  const found =
    /^geo:(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)(?:,-?\d+(?:\.\d+)?)?((?:;[a-z0-9-]+(?:=[^;\s]*)?)*)(?:\?\S*)?$/i.exec(
      text,
    );
  if (found === null) return { kind: "not-coordinates" };
  const system = /;crs=([^;]*)/i.exec(found[3] ?? "")?.[1] ?? "wgs84";
  if (system.toLowerCase() !== "wgs84")
    return { kind: "bad-coordinates", why: "other-reference-system", got: system };
  return inRange(Number(found[1]) || 0, Number(found[2]) || 0);
}
