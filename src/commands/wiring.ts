/**
 * Joins what no lower floor may know of each other: the flow, the engine's tools, the embedded data. The data is
 * opened on first use, so that a command that needs none starts at once.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { brotliDecompressSync } from "node:zlib";
import { briefFromAnswers, tellings, topics } from "../../flows/index.ts";
import { type ClimateGrids, climateAt, climateOfOwn, openClimate } from "../core/climate/index.ts";
import {
  bearingAndDistance,
  countryName,
  type FoundPlace,
  findPlaces,
  nearestPlace,
  openPlaces,
  type PlaceIndex,
  readCoordinates,
  timeZoneAt,
} from "../core/place/index.ts";
import { type Design, designOf, type Site, type World } from "../design/index.ts";
import type { Interview, PlaceMatch, PlaceReading, Walked } from "../interview/conversation.ts";
import type { SiteFacts } from "../interview/define.ts";
import { readSun } from "./read-sun.ts";
import { type Spot, spotText } from "./spot.ts";

/** Beside the bundle, or in the source tree while it is run from there. */
function dataBytes(field: string, file: string): Uint8Array {
  const places = [`./data/${file}`, `../core/${field}/data/${file}`].map((path) =>
    fileURLToPath(new URL(path, import.meta.url)),
  );
  const found = places.find((path) => existsSync(path));
  if (found === undefined)
    throw new Error(`the embedded data file ${file} is missing from this installation`);
  return brotliDecompressSync(readFileSync(found));
}

const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

const grids = once((): ClimateGrids => openClimate(dataBytes("climate", "climate.bin")));
export const places = once((): PlaceIndex => openPlaces(dataBytes("place", "places.bin")));

/** Standard time's offset from UTC, hours: the smaller of the offsets of January and July. */
function standardOffsetH(timeZone: string): number {
  const offsetH = (utcMs: number) => {
    const text = new Intl.DateTimeFormat("en", { timeZone, timeZoneName: "longOffset" })
      .formatToParts(new Date(utcMs))
      .find((part) => part.type === "timeZoneName")?.value;
    const [, sign, hours, minutes] = /GMT([+-])(\d\d):(\d\d)/.exec(text ?? "") ?? [];
    return (sign === "-" ? -1 : 1) * (Number(hours ?? 0) + Number(minutes ?? 0) / 60);
  };
  return Math.min(offsetH(Date.UTC(2025, 0, 15)), offsetH(Date.UTC(2025, 6, 15)));
}

export const world: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids: grids(), latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg, elevationM }, own) =>
    climateOfOwn({ grids: grids(), longitudeDeg, elevationM: elevationM ?? undefined, own }),
  clockMinusSolarH: ({ latitudeDeg, longitudeDeg }) =>
    standardOffsetH(timeZoneAt({ latitudeDeg, longitudeDeg })) - longitudeDeg / 15,
};

function siteFacts(site: Site): SiteFacts | null {
  const climate = world.climateAt(site);
  if (climate.kind === "refused") return null;
  return {
    coldestMonthC: Math.min(...climate.meanTempCByMonth),
    designColdC: climate.designColdTempC,
    designHotC: climate.designHotTempC,
    ghiDailyKWhPerM2ByMonth: climate.ghiDailyKWhPerM2ByMonth,
    absLatitudeDeg: Math.abs(site.latitudeDeg),
  };
}

const nameOf = (place: { name: string; region: string; countryCode: string }) =>
  [place.name, place.region, countryName(place.countryCode)].filter((part) => part !== "").join(", ");

/** Numbers a slip away from those typed: a minus sign lost or gained, the two changed over. */
const slipsOf = ({ latitudeDeg, longitudeDeg }: Spot): readonly Spot[] =>
  [
    { latitudeDeg, longitudeDeg: -longitudeDeg },
    { latitudeDeg: -latitudeDeg, longitudeDeg },
    { latitudeDeg: -latitudeDeg, longitudeDeg: -longitudeDeg },
    { latitudeDeg: longitudeDeg, longitudeDeg: latitudeDeg },
    { latitudeDeg: longitudeDeg, longitudeDeg: -latitudeDeg },
    { latitudeDeg: -longitudeDeg, longitudeDeg: latitudeDeg },
  ].filter((spot) => Math.abs(spot.latitudeDeg) <= 90);

/** People live within this distance of most posts: farther, a guess would only confuse. */
const guessReachKm = 30;

/** A sentence on what the numbers may have been meant to be, where a slip of them lies on land near people. */
function guessFor(spot: Spot): string {
  for (const slip of slipsOf(spot)) {
    if (world.climateAt({ ...slip, elevationM: null }).kind === "refused") continue;
    const nearest = nearestPlace({ index: places(), ...slip });
    if (nearest.distanceKm > guessReachKm) continue;
    return `Did you mean ${spotText(slip)}, near ${nameOf(nearest.place)}?`;
  }
  return "Check the order (latitude first) and the signs: south and west are negative.";
}

function readPlace(text: string, near: Site | null): PlaceReading {
  const read = readCoordinates(text);
  if (read.kind === "bad-coordinates")
    return {
      kind: "refused",
      says: `${read.got} cannot be a ${read.why.startsWith("lat") ? "latitude, which lies between -90 and 90" : "longitude, which lies between -180 and 180"}. Example: 52.30, -3.51`,
    };
  if (read.kind === "coordinates") {
    const { latitudeDeg, longitudeDeg } = read;
    const climate = world.climateAt({ latitudeDeg, longitudeDeg, elevationM: null });
    const spot = spotText({ latitudeDeg, longitudeDeg });
    // On ice and beyond the grids the builder's own figures can still do; the sea is more likely a slip.
    if (climate.kind === "refused" && climate.why === "at-sea")
      return {
        kind: "refused",
        says: `${spot} lies at sea as far as the maps here know. ${guessFor({ latitudeDeg, longitudeDeg })}`,
      };
    const nearest = nearestPlace({ index: places(), latitudeDeg, longitudeDeg }).place;
    const site: Site = {
      label: `${spot} (near ${nameOf(nearest)})`,
      latitudeDeg,
      longitudeDeg,
      elevationM: null,
      countryCode: nearest.countryCode,
    };
    return { kind: "sites", matches: [{ label: site.label, site }] };
  }
  const found = findPlaces({ index: places(), text, ...(near === null ? {} : { near }), atMost: 8 });
  if (found.length === 0)
    return {
      kind: "refused",
      says: `No place called ${text.trim()} is known here. Type a larger town nearby, or latitude and longitude such as 52.30, -3.51`,
    };
  // A place that only bears the name as a second one steps back behind those called so.
  const own = found.filter((place) => place.match === "exact" && isCalled(place.name, text));
  const exact = own.length > 0 ? own : found.filter((place) => place.match === "exact");
  return { kind: "sites", matches: labelled(exact.length > 0 ? exact : found, near) };
}

/** From this letter on names are suggested. */
const leastLetters = 3;

/**
 * Names that a place being typed may become, the likeliest first, each in words that `readPlace` understands; none for
 * coordinates. An empty text finds nothing, but opens what is read from.
 *
 * @param atMost  1 to 10
 */
export function suggestedPlaces(text: string, atMost: number): readonly string[] {
  const index = places();
  const letters = text.match(/\p{L}/gu) ?? [];
  if (letters.length < leastLetters || readCoordinates(text).kind !== "not-coordinates") return [];
  // Namesakes in one region are one suggestion: which of them is meant is asked afterwards.
  const found = findPlaces({ index, text, atMost: 10 * atMost, isForgiving: false });
  return [...new Set(found.map(nameOf))].slice(0, atMost);
}

const isCalled = (name: string, text: string): boolean =>
  name.localeCompare(text.split(",")[0]!.trim(), "en", { sensitivity: "base" }) === 0;

/**
 * Namesakes in one region get their coordinates, so that they can be told apart; several of them also say how far they
 * are from the place answered before.
 */
function labelled(found: readonly FoundPlace[], near: Site | null): readonly PlaceMatch[] {
  const names = found.map(nameOf);
  return found.map((place, i) => {
    const { latitudeDeg, longitudeDeg } = place;
    const isAlone = names.filter((name) => name === names[i]).length === 1;
    const name = isAlone ? names[i]! : `${names[i]} (${spotText({ latitudeDeg, longitudeDeg })})`;
    const { countryCode, elevationM = null } = place;
    const away = found.length > 1 && near !== null ? `, ${kmBetween(near, place)} km away` : "";
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

function designOfAnswers(
  walked: readonly Walked[],
  about: { readonly name: string; readonly currency: string },
): Design {
  return designOf(briefFromAnswers(topics, walked, about), world);
}

/** The real interview: ten topics, their tellings, the real design. */
export const interview: Interview<Design> = {
  topics,
  tellings,
  siteFacts,
  readPlace,
  readSun,
  designOf: designOfAnswers,
  findingsOf: (design) => design.findings,
};

/** Credit lines of the embedded data sets: they go into the lists' small print and into `about`. */
export const attributions: readonly string[] = [
  "Places: GeoNames (geonames.org), CC BY 4.0.",
  "Sun: NASA MERRA-2 reanalysis, in the gsee-climate-data package (BSD 3-clause).",
  "Temperature, rain, refractivity, ground height: digital maps of Recommendations ITU-R P.1510, P.837, P.453 and P.1511, as shipped with ITU-Rpy (MIT).",
  "Sun figures fetched on request: NASA Langley Research Center POWER Project, public domain.",
];
