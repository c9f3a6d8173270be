import { type PlaceIndex, UNKNOWN_ELEVATION } from "./open-places.ts";

/** A populated place of the gazetteer (GeoNames, CC-BY 4.0). */
export interface Place {
  readonly name: string;
  /** name of its state, province or county; "" where it is not known */
  readonly region: string;
  /** ISO 3166-1 alpha-2 */
  readonly countryCode: string;
  /** to a thousandth of a degree, about 110 m; the middle of the place, not its edge */
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** of the ground in the middle of the place; undefined for one place in a thousand */
  readonly elevationM: number | undefined;
  /** rounded to about 4 %; 0 where it is not known */
  readonly population: number;
}

/** The place in a row of the gazetteer. */
export function placeInRow(index: PlaceIndex, row: number): Place {
  const region = index.regions[index.regionIndex[row]!]!;
  const elevationM = index.elevationM[row]!;
  return {
    name: nameInRow(index, row),
    region: region.name,
    countryCode: region.countryCode,
    latitudeDeg: index.latitudeThousandths[row]! / 1000,
    longitudeDeg: index.longitudeThousandths[row]! / 1000,
    elevationM: elevationM === UNKNOWN_ELEVATION ? undefined : elevationM,
    population: populationInRow(index, row),
  };
}

export function populationInRow(index: PlaceIndex, row: number): number {
  const log = index.populationLog[row]!;
  if (log === 0) return 0;
  const exact = 2 ** (log / 10);
  const digit = 10 ** (Math.floor(Math.log10(exact)) - 1);
  return Math.round(exact / digit) * digit;
}

function nameInRow(index: PlaceIndex, row: number): string {
  const stored = index.names.subarray(index.nameAt[row]!, index.nameAt[row + 1]! - 1);
  if (stored.length > 0) return new TextDecoder().decode(stored);
  return ownFoldedName(index, row).replace(/(^| )([a-z])/g, (letter) => letter.toUpperCase());
}

/** The folded form of a place's own name. */
export function ownFoldedName(index: PlaceIndex, row: number): string {
  const line = index.folded.slice(index.foldedAt[row]! + 1, index.foldedAt[row + 1]!);
  const end = line.indexOf("|");
  return end < 0 ? line : line.slice(0, end);
}
