/**
 * Joins what no lower floor may know of each other: the flow, the engine's tools, the embedded data. The data is
 * opened on first use, so that a command that needs none starts at once.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { brotliDecompressSync } from "node:zlib";
import { briefFromAnswers, details, optionNotes, tellings, topics } from "../../flows/index.ts";
import { type ClimateGrids, climateAt, climateOfOwn, openClimate } from "../core/climate/index.ts";
import { openPlaces, type PlaceIndex, timeZoneAt } from "../core/place/index.ts";
import { type Brief, type Design, designOf, meaningsOf, type Site, type World } from "../design/index.ts";
import type { Interview, Walked } from "../interview/conversation.ts";
import type { SiteFacts } from "../interview/define.ts";
import { chartsOf } from "../report/index.ts";
import { lookAhead, postClock } from "./look-ahead.ts";
import { readGround } from "./read-ground.ts";
import { type Atlas, readPlace, suggestedPlaces as suggestedFrom } from "./read-place.ts";
import { readSun } from "./read-sun.ts";
import { remembering } from "./remember.ts";

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

export const once = <T>(make: () => T): (() => T) => {
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

const remember = remembering();

export const world: World = {
  climateAt: ({ latitudeDeg, longitudeDeg, elevationM }) =>
    climateAt({ grids: grids(), latitudeDeg, longitudeDeg, elevationM: elevationM ?? undefined }),
  climateOfOwn: ({ longitudeDeg, elevationM }, own) =>
    climateOfOwn({ grids: grids(), longitudeDeg, elevationM: elevationM ?? undefined, own }),
  clockMinusSolarH: ({ latitudeDeg, longitudeDeg }) =>
    standardOffsetH(timeZoneAt({ latitudeDeg, longitudeDeg })) - longitudeDeg / 15,
  simulation: { remember },
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

const atlas: Atlas = {
  places,
  noSunAt: (spot) => {
    const climate = world.climateAt({ ...spot, elevationM: null });
    return climate.kind === "refused" ? climate.why : null;
  },
};

export const suggestedPlaces = (text: string, atMost: number): readonly string[] =>
  suggestedFrom(atlas, text, atMost);

function designOfAnswers(
  walked: readonly Walked[],
  about: Pick<Brief, "name" | "currency" | "units">,
): Design {
  const brief = briefFromAnswers(topics, walked, about);
  // asked for before an answer, after it, and for what is shown next
  return remember("design", brief, () => designOf(brief, world));
}

/** The real interview: ten topics, their tellings, the real design. */
export const interview: Interview<Design> = {
  topics,
  tellings,
  siteFacts,
  readPlace: (text, hints) => readPlace(atlas, text, hints),
  readSun,
  readGround,
  designOf: designOfAnswers,
  findingsOf: (design) => design.findings,
  optionNotes: (id, design) => optionNotes(id, () => meaningsOf(design(), world)),
  charts: chartsOf,
  details,
  outlook: (asked, design) => lookAhead(design, asked, postClock(design, new Date().toISOString())).said,
};

/** Credit lines of the embedded data sets: they go into the lists' small print and into `about`. */
export const attributions: readonly string[] = [
  "Places: GeoNames (geonames.org), CC BY 4.0.",
  "Sun: NASA MERRA-2 reanalysis, in the gsee-climate-data package (BSD 3-clause).",
  "Temperature, rain, refractivity, ground height: digital maps of Recommendations ITU-R P.1510, P.837, P.453 and P.1511, as shipped with ITU-Rpy (MIT).",
  "Sun figures fetched on request: NASA Langley Research Center POWER Project, public domain.",
  "Compass: World Magnetic Model 2025 of NOAA/NCEI and the British Geological Survey, public domain, in the geomagnetism package (Apache 2.0).",
];
