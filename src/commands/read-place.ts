/** What a builder types about the place: a name, or coordinates, in which a sign may be lost. */
import {
  bearingAndDistance,
  countryName,
  type FoundPlace,
  findPlaces,
  isPaidIn,
  nearestPlace,
  type Place,
  type PlaceIndex,
  readCoordinates,
} from "../core/place/index.ts";
import { sayingIn } from "../core/units/index.ts";
import { isCommand, type PlaceHints, type PlaceMatch, type PlaceReading } from "../interview/index.ts";
import { type Spot, spotText } from "./spot.ts";

/** What is read from. */
export interface Atlas {
  readonly places: () => PlaceIndex;
  /** null where the sun of a spot is known. */
  readonly noSunAt: (spot: Spot) => "at-sea" | "outside-grid" | "on-ice" | null;
}

export const nameOf = (place: { name: string; region: string; countryCode: string }) =>
  [place.name, place.region, countryName(place.countryCode)].filter((part) => part !== "").join(", ");

export function readPlace(atlas: Atlas, text: string, hints: PlaceHints): PlaceReading {
  const read = readCoordinates(text);
  if (read.kind === "bad-coordinates")
    return {
      kind: "refused",
      says: `${read.got} cannot be a ${read.why.startsWith("lat") ? "latitude, which lies between -90 and 90" : "longitude, which lies between -180 and 180"}. Example: 52.30, -3.51`,
    };
  if (read.kind === "coordinates") {
    const { latitudeDeg, longitudeDeg } = read;
    return readSpot(atlas, { latitudeDeg, longitudeDeg }, hints);
  }
  const { near } = hints;
  const index = atlas.places();
  const found = findPlaces({ index, text, ...(near === null ? {} : { near }), atMost: 8 });
  if (found.length === 0)
    return {
      kind: "refused",
      says: `No place called ${text.trim()} is known here. Type a larger town nearby, or latitude and longitude such as 52.30, -3.51`,
    };
  // A place that only bears the name as a second one steps back behind those called so.
  const own = found.filter((place) => place.match === "exact" && isCalled(place.name, text));
  const exact = own.length > 0 ? own : found.filter((place) => place.match === "exact");
  return { kind: "sites", matches: labelled(exact.length > 0 ? exact : found, hints) };
}

function readSpot(atlas: Atlas, spot: Spot, hints: PlaceHints): PlaceReading {
  const nearest = nearestPlace({ index: atlas.places(), ...spot }).place;
  const { countryCode } = nearest;
  const matchOf = (where: string): PlaceMatch => {
    const label = `${spotText(spot)} (${where} ${nameOf(nearest)})`;
    return { label, site: { label, ...spot, elevationM: null, countryCode } };
  };
  const noSun = atlas.noSunAt(spot);
  // The sea is more likely a slip than meant.
  if (noSun === "at-sea")
    return {
      kind: "doubtful",
      match: matchOf("at sea; the nearest town is"),
      says: `${spotText(spot)} lies at sea as far as the maps here know: only sun figures of your own can do there. ${slipText(atlas, spot)}`,
    };
  const matches = [matchOf("near")];
  const says = noSun === null ? doubtText(atlas, spot, { ...hints, countryCode }) : noSunText[noSun];
  return says === null ? { kind: "sites", matches } : { kind: "sites", matches, says };
}

const noSunText = {
  "outside-grid": "The map knows no sun so far north: only sun figures of your own can do there.",
  "on-ice": "The map knows no sun on lasting ice: only sun figures of your own can do there.",
} as const;

/** Numbers a slip away from those typed: a minus sign lost or gained, the two changed over. */
const slipsOf = ({ latitudeDeg, longitudeDeg }: Spot): readonly Spot[] =>
  [
    { latitudeDeg, longitudeDeg: -longitudeDeg },
    { latitudeDeg: -latitudeDeg, longitudeDeg },
    { latitudeDeg: -latitudeDeg, longitudeDeg: -longitudeDeg },
    { latitudeDeg: longitudeDeg, longitudeDeg: latitudeDeg },
    { latitudeDeg: longitudeDeg, longitudeDeg: -latitudeDeg },
    { latitudeDeg: -longitudeDeg, longitudeDeg: latitudeDeg },
  ].filter((slip) => Math.abs(slip.latitudeDeg) <= 90);

/** People live within this distance of most posts: farther, a guess would only confuse. */
const guessReachKm = 30;

interface Guess {
  readonly spot: Spot;
  readonly place: Place;
}

/** What the numbers may have been meant to be: a slip of them that lies on land near people, in a country that fits. */
function guessFor(atlas: Atlas, spot: Spot, fits: (countryCode: string) => boolean): Guess | null {
  for (const slip of slipsOf(spot)) {
    if (atlas.noSunAt(slip) !== null) continue;
    const { place, distanceKm } = nearestPlace({ index: atlas.places(), ...slip });
    if (distanceKm <= guessReachKm && fits(place.countryCode)) return { spot: slip, place };
  }
  return null;
}

const guessText = ({ spot, place }: Guess): string => `${spotText(spot)}, near ${nameOf(place)}`;

function slipText(atlas: Atlas, spot: Spot): string {
  const guess = guessFor(atlas, spot, () => true);
  return guess === null
    ? "Check the order (latitude first) and the signs: south and west are negative."
    : `If a sign is lost or the two are changed over, it is ${guessText(guess)}.`;
}

/** A question where another country was more likely, and a slip away lies there; null where there is no doubt. */
function doubtText(
  atlas: Atlas,
  spot: Spot,
  { near, currency, countryCode }: PlaceHints & { readonly countryCode: string },
): string | null {
  const isMoneyIn = (code: string) => isPaidIn({ currency, countryCode: code });
  const before = near?.countryCode ?? null;
  const question = (guess: Guess | null, why: string): string | null =>
    guess && `Did you mean ${guessText(guess)}, ${why} (change place corrects it)?`;
  if (before === null) {
    if (isMoneyIn(countryCode) !== false) return null;
    const guess = guessFor(atlas, spot, (code) => isMoneyIn(code) === true);
    return question(guess, `where people pay in ${currency}`);
  }
  // Money that is paid here but not there says more than where a post stood before.
  const isMoneySure = isMoneyIn(countryCode) === true && isMoneyIn(before) !== true;
  if (before === countryCode || isMoneySure) return null;
  return question(
    guessFor(atlas, spot, (code) => code === before),
    "in the country of the place before",
  );
}

/** From this letter on names are suggested. */
const leastLetters = 3;
/** With which many names begin. */
const commonLetters = "san";

/**
 * Names that a place being typed may become, the likeliest first, each in words that `readPlace` understands; none for
 * coordinates and for words that are no answer. An empty text finds nothing, but makes the next look-up quick: it opens
 * what is read from and looks for something once, for the first look takes some 20 ms more than those after it.
 *
 * @param atMost  1 to 10
 */
export function suggestedPlaces(atlas: Atlas, text: string, atMost: number): readonly string[] {
  const index = atlas.places();
  const named = (letters: string) =>
    // Namesakes in one region are one suggestion: which of them is meant is asked afterwards.
    [...new Set(findPlaces({ index, text: letters, atMost: 10 * atMost, isForgiving: false }).map(nameOf))];
  if (text === "") named(commonLetters);
  const letters = text.match(/\p{L}/gu) ?? [];
  if (letters.length < leastLetters || isCommand(text)) return [];
  if (readCoordinates(text).kind !== "not-coordinates") return [];
  return named(text).slice(0, atMost);
}

const isCalled = (name: string, text: string): boolean =>
  name.localeCompare(text.split(",")[0]!.trim(), "en", { sensitivity: "base" }) === 0;

/**
 * Namesakes in one region get their coordinates, so that they can be told apart; several of them also say how far they
 * are from the place answered before.
 */
function labelled(
  found: readonly FoundPlace[],
  { near, units = "metric" }: PlaceHints,
): readonly PlaceMatch[] {
  const names = found.map(nameOf);
  return found.map((place, i) => {
    const { latitudeDeg, longitudeDeg } = place;
    const isAlone = names.filter((name) => name === names[i]).length === 1;
    const name = isAlone ? names[i]! : `${names[i]} (${spotText({ latitudeDeg, longitudeDeg })})`;
    const { countryCode, elevationM = null } = place;
    const away =
      found.length > 1 && near !== null ? `, ${sayingIn(units)(kmBetween(near, place), "km")} away` : "";
    return {
      label: `${name}${away}`,
      site: { label: name, latitudeDeg, longitudeDeg, elevationM, countryCode },
    };
  });
}

function kmBetween(from: Spot, to: Spot): number {
  const { distanceM } = bearingAndDistance({
    fromLatitudeDeg: from.latitudeDeg,
    fromLongitudeDeg: from.longitudeDeg,
    toLatitudeDeg: to.latitudeDeg,
    toLongitudeDeg: to.longitudeDeg,
  });
  return Math.round(distanceM / 1000);
}
