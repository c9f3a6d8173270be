import { countriesCalled } from "./countries.ts";
import { distanceFrom } from "./edit-distance.ts";
import { folded } from "./fold.ts";
import type { PlaceIndex } from "./open-places.ts";
import { type Place, placeInRow, populationInRow } from "./place.ts";

/** How a place was found: its name or another of its names as typed; a name that begins so; or a likely slip of the keys. */
export type Match = "exact" | "prefix" | "near-miss";

export interface FoundPlace extends Place {
  readonly match: Match;
}

interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/**
 * Places that a typed text may mean, the likeliest first: exact names, then names that begin so, then, if nothing has
 * that very name, names one slip of the keys away (two from eight letters on); among equals the largest first, or, with `near`, the larger and nearer.
 *
 * "Name, Region", "Name, Country", "Name, CC" and "Name, Region, Country" narrow the search; a region or country also
 * counts without the comma when nothing is called by the whole text.
 *
 * @param text    any text; capitals, accents and points are forgiven
 * @param near    rather places near here, for a builder whose country is known
 * @param atMost  1 to 100
 * @param isForgiving  false looks only for the text as it stands, without slips of the keys and without a region or country
 *   that no comma sets apart: for a look-up at every letter typed, 2 to 10 ms instead of up to 60; true where it is left out
 */
export function findPlaces(asked: {
  readonly index: PlaceIndex;
  readonly text: string;
  readonly near?: Spot | undefined;
  readonly atMost: number;
  readonly isForgiving?: boolean;
}): FoundPlace[] {
  const { index, near, atMost, isForgiving = true } = asked;
  const [name = "", ...within] = asked.text.split(",").map(folded);
  if (name === "") return [];
  const narrowing = within.filter((word) => word !== "");
  const found = rowsCalled({ index, name, narrowing, slipsUpTo: isForgiving ? atMost : 0 });
  if (isForgiving && narrowing.length === 0 && ![...found.values()].includes("exact")) {
    const split = rowsOfWordsWithoutComma(index, name);
    for (const row of split) found.set(row, "exact");
  }
  const ranked = [...found].map(([row, match]) => ({ row, match, weight: weightOf(index, row, near) }));
  ranked.sort((a, b) => RANK[a.match] - RANK[b.match] || b.weight - a.weight || a.row - b.row);
  return ranked.slice(0, atMost).map(({ row, match }) => ({ ...placeInRow(index, row), match }));
}

const RANK: Readonly<Record<Match, number>> = { exact: 0, prefix: 1, "near-miss": 2 };

/** With `near`, ten times the people make up for about three times the distance (our own choice). */
function weightOf(index: PlaceIndex, row: number, near: Spot | undefined): number {
  const size = Math.log10(populationInRow(index, row) + 1);
  if (near === undefined) return size;
  const northKm = (index.latitudeThousandths[row]! / 1000 - near.latitudeDeg) * 111;
  const turnedDeg = ((index.longitudeThousandths[row]! / 1000 - near.longitudeDeg + 540) % 360) - 180;
  const eastKm = turnedDeg * 111 * Math.cos((near.latitudeDeg * Math.PI) / 180);
  return size - 2 * Math.log10(Math.hypot(northKm, eastKm) + 20);
}

function rowsCalled(asked: {
  readonly index: PlaceIndex;
  readonly name: string;
  readonly narrowing: readonly string[];
  /** slips of the keys are looked for while fewer places than this are found */
  readonly slipsUpTo: number;
}): Map<number, Match> {
  const { index, name, narrowing, slipsUpTo } = asked;
  const allowed = allowedRegions(index, narrowing);
  const isAllowed = (row: number): boolean => allowed === undefined || allowed[index.regionIndex[row]!] === 1;
  const found = new Map<number, Match>();
  for (const spelling of spellings(name)) {
    for (const row of rowsBeginning(index, `\n${spelling}`, isAllowed))
      found.set(row.row, better(found.get(row.row), row.match));
    for (const row of rowsBeginning(index, `|${spelling}`, isAllowed)) {
      // Only whole other names: their beginnings are far too many.
      if (row.match === "exact") found.set(row.row, "exact");
    }
  }
  const isNamed = [...found.values()].includes("exact");
  if (!isNamed && found.size < slipsUpTo && name.length >= 4) {
    for (const row of rowsNearMiss(index, name, isAllowed)) if (!found.has(row)) found.set(row, "near-miss");
  }
  return found;
}

function better(known: Match | undefined, match: Match): Match {
  return known === undefined || RANK[match] < RANK[known] ? match : known;
}

/** Words that people write short or in full, as they please. */
const SHORT_AND_FULL: readonly (readonly [string, string])[] = [
  ["st", "saint"],
  ["ste", "sainte"],
  ["mt", "mount"],
  ["ft", "fort"],
];

function spellings(name: string): Set<string> {
  const all = new Set([name]);
  for (const [short, full] of SHORT_AND_FULL) {
    all.add(name.replace(new RegExp(`\\b${short}\\b`, "g"), full));
    // Only before another word: "saint" alone does not mean every name that begins with "st".
    all.add(name.replace(new RegExp(`\\b${full}\\b(?= )`, "g"), short));
  }
  return all;
}

function* rowsBeginning(
  index: PlaceIndex,
  start: string,
  isAllowed: (row: number) => boolean,
): Generator<{ readonly row: number; readonly match: Match }> {
  const { folded: all } = index;
  for (let at = all.indexOf(start); at >= 0; at = all.indexOf(start, at + 1)) {
    const row = rowAt(index, at);
    if (!isAllowed(row)) continue;
    const after = all[at + start.length];
    yield { row, match: after === "\n" || after === "|" ? "exact" : "prefix" };
  }
}

/** Row whose line holds a position of the folded text. */
function rowAt(index: PlaceIndex, position: number): number {
  let low = 0;
  let high = index.count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (index.foldedAt[middle]! <= position) low = middle;
    else high = middle - 1;
  }
  return low;
}

function* rowsNearMiss(
  index: PlaceIndex,
  name: string,
  isAllowed: (row: number) => boolean,
): Generator<number> {
  const atMost = name.length >= 8 ? 2 : 1;
  const distance = distanceFrom({ word: name, atMost });
  for (let row = 0; row < index.count; row++) {
    if (!isAllowed(row)) continue;
    const end = index.foldedAt[row + 1]!;
    let from = index.foldedAt[row]! + 1;
    for (let to = from; to <= end; to++) {
      if (to < end && index.folded.charCodeAt(to) !== BAR) continue;
      if (distance(index.folded, from, to) <= atMost) {
        yield row;
        break;
      }
      from = to + 1;
    }
  }
}

const BAR = "|".charCodeAt(0);

/** For each region 1 when every narrowing word fits it or its country; undefined when nothing narrows. */
function allowedRegions(index: PlaceIndex, narrowing: readonly string[]): Uint8Array | undefined {
  if (narrowing.length === 0) return undefined;
  const allowed = new Uint8Array(index.regions.length).fill(1);
  const codes = new Set(index.regions.map((region) => region.countryCode));
  for (const word of narrowing) {
    const countries = countriesCalled({ word, codes });
    index.regions.forEach((region, i) => {
      const fits =
        countries.has(region.countryCode) ||
        word === region.short.toLowerCase() ||
        (word.length > 2 && folded(region.name).startsWith(word));
      if (!fits) allowed[i] = 0;
    });
  }
  return allowed;
}

/** "portland oregon": the last words taken as region or country, the longest name first. */
function rowsOfWordsWithoutComma(index: PlaceIndex, text: string): number[] {
  const words = text.split(" ");
  for (let count = words.length - 1; count >= 1; count--) {
    const name = words.slice(0, count).join(" ");
    const called = rowsCalled({ index, name, narrowing: [words.slice(count).join(" ")], slipsUpTo: 0 });
    const rows = [...called].filter(([, match]) => match === "exact").map(([row]) => row);
    if (rows.length > 0) return rows;
  }
  return [];
}
