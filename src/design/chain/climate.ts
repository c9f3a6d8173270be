import {
  type ClimateRefused,
  comparedSources,
  type OwnFigures,
  type Climate as SiteClimate,
  withOwnFigures,
} from "../../core/climate/index.ts";
import { indexOfMin } from "../../core/numerics/index.ts";
import { type Saying, sayingIn } from "../../core/units/index.ts";
import { unpackHours } from "../../core/weather/index.ts";
import type { Brief, OwnSun } from "../brief.ts";
import type { Climate, World } from "../design.ts";

export { climateNotes } from "./climate-notes.ts";

/** The climate of the brief's place: embedded grids, own figures, or both; null where it has none (see climateRefusal). */
export function climateStage(brief: Brief, world: World): Climate | null {
  const site = brief.place.site.value;
  if (!site) return null;
  const map = world.climateAt(site);
  const own = ownFigures(brief, site.latitudeDeg, map.kind === "refused" ? null : map);
  const ownLag1ByMonth = brief.place.ownSun.value?.lag1ByMonth ?? null;
  if (map.kind === "refused")
    return own === null ? null : stageOf(world.climateOfOwn(site, own), null, ownLag1ByMonth);
  if (own === null) return stageOf(map, null);
  const mine = withOwnFigures(map, own);
  const { lower } = comparedSources({
    firstGhiDailyKWhPerM2ByMonth: map.ghiDailyKWhPerM2ByMonth,
    secondGhiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    month: indexOfMin(map.ghiDailyKWhPerM2ByMonth),
  });
  const trusted = brief.place.trustedSun.value;
  const countsOwn = trusted === "own" || (trusted === "lower" && lower === "second");
  return countsOwn ? stageOf(mine, map, ownLag1ByMonth) : stageOf(map, mine);
}

/** What the builder brought, as core takes it. */
function ownFigures(brief: Brief, latitudeDeg: number, map: SiteClimate | null): OwnFigures | null {
  const { value, origin } = brief.place.ownSun;
  if (value === null) return null;
  return {
    latitudeDeg,
    ghiDailyKWhPerM2ByMonth: value.ghiDailyKWhPerM2ByMonth,
    origin: origin === "assumed" ? "estimate" : origin,
    source: value.source,
    meanTempCByMonth: value.meanTempCByMonth ?? undefined,
    dailyGhiQuantilesByMonth: value.dailyQuantilesByMonth ?? undefined,
    ...extremesOf(value, map),
  };
}

/**
 * The coldest and the hottest hour: of the file where they go beyond what the map has, for a typical year leaves out the worst
 * and a map the local.
 */
function extremesOf(
  { meanTempCByMonth, hours }: OwnSun,
  map: SiteClimate | null,
): Pick<OwnFigures, "lowestTempC" | "highestTempC"> {
  if (hours === null || meanTempCByMonth === null) return {};
  const { tempC } = unpackHours(hours.packed);
  return {
    lowestTempC: tempC.reduce(
      (lowest, each) => Math.min(lowest, each),
      Math.min(...meanTempCByMonth, map?.designColdTempC ?? 60),
    ),
    highestTempC: tempC.reduce(
      (highest, each) => Math.max(highest, each),
      Math.max(...meanTempCByMonth, map?.designHotTempC ?? -90),
    ),
  };
}

/**
 * @param beside       the source that does not count
 * @param lag1ByMonth  of the one that does
 */
function stageOf(
  found: SiteClimate,
  beside: SiteClimate | null,
  lag1ByMonth: readonly number[] | null = null,
): Climate {
  const { source } = found;
  return {
    ghiDailyKWhPerM2ByMonth: found.ghiDailyKWhPerM2ByMonth,
    sunSource: source.irradiation,
    otherGhiDailyKWhPerM2ByMonth: beside?.ghiDailyKWhPerM2ByMonth ?? null,
    otherSunSource: beside?.source.irradiation ?? null,
    ghiUncertaintyFrac: found.ghiUncertaintyFrac,
    dailyGhiQuantilesByMonth: found.dailyGhiQuantilesByMonth,
    lag1ByMonth,
    meanTempCByMonth: found.meanTempCByMonth,
    designColdTempC: found.designColdTempC,
    recordColdTempC: found.recordColdTempC,
    designHotTempC: found.designHotTempC,
    elevationM: found.elevationM,
    rainRateMmPerH: found.rainRate001MmPerH,
    refractivityGradientPerKm: found.refractivityGradientPerKm,
    terrainRoughnessM: found.terrainRoughnessM,
    dataSource: `temperature: ${source.temperature}; rain: ${source.rain}; refractivity: ${source.refractivity}; elevation: ${source.elevation}`,
  };
}

const REFUSAL: Readonly<Record<ClimateRefused["why"], (said: Saying) => string>> = {
  "at-sea": () => "the coordinates lie in the open sea, where the climate grids hold nothing",
  "outside-grid": (said) => `no irradiation data lie within about ${said(400, "km")} of the place`,
  "on-ice": () => "the place lies on permanent ice, for which the climate grids do not hold",
};

/** Why there is no climate; null where there is one. */
export function climateRefusal(brief: Brief, world: World): string | null {
  const site = brief.place.site.value;
  if (!site) return "the place is not known";
  if (brief.place.ownSun.value !== null) return null;
  const found = world.climateAt(site);
  return found.kind === "refused" ? REFUSAL[found.why](sayingIn(brief.units)) : null;
}
