import type { ClimateRefused } from "../../core/climate/index.ts";
import { indexOfMin } from "../../core/numerics/index.ts";
import type { Brief } from "../brief.ts";
import type { ByMonth, Climate, World } from "../design.ts";

export { climateNotes } from "./climate-notes.ts";

/** The climate of the brief's place from the embedded grids; null where it has none (see climateRefusal). */
export function climateStage(brief: Brief, world: World): Climate | null {
  const site = brief.place.site.value;
  if (!site) return null;
  const found = world.climateAt(site);
  if (found.kind === "refused") return null;
  const { source } = found;
  return {
    ...sunSources(brief, { ghi: found.ghiDailyKWhPerM2ByMonth, says: source.irradiation }),
    ghiUncertaintyFrac: found.ghiUncertaintyFrac,
    dailyGhiQuantilesByMonth: found.dailyGhiQuantilesByMonth,
    meanTempCByMonth: found.meanTempCByMonth,
    designColdTempC: found.designColdTempC,
    recordColdTempC: found.recordColdTempC,
    designHotTempC: found.designHotTempC,
    elevationM: found.elevationM,
    rainRateMmPerH: found.rainRate001MmPerH,
    refractivityGradientPerKm: found.refractivityGradientPerKm,
    dataSource: `temperature: ${source.temperature}; rain: ${source.rain}; refractivity: ${source.refractivity}; elevation: ${source.elevation}`,
  };
}

type SunSources = Pick<
  Climate,
  "ghiDailyKWhPerM2ByMonth" | "sunSource" | "otherGhiDailyKWhPerM2ByMonth" | "otherSunSource"
>;

/** The source that counts and the one beside it: the lower in the map's dullest month, unless the builder said which. */
function sunSources(brief: Brief, map: { readonly ghi: ByMonth; readonly says: string }): SunSources {
  const own = brief.place.ownSun.value;
  const trusted = brief.place.trustedSun.value;
  const ofMap = { ghiDailyKWhPerM2ByMonth: map.ghi, sunSource: map.says };
  if (own === null) return { ...ofMap, otherGhiDailyKWhPerM2ByMonth: null, otherSunSource: null };
  const month = indexOfMin(map.ghi);
  const ownIsLower = own.ghiDailyKWhPerM2ByMonth[month]! < map.ghi[month]!;
  if (trusted === "own" || (trusted === "lower" && ownIsLower)) {
    return {
      ghiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
      sunSource: own.source,
      otherGhiDailyKWhPerM2ByMonth: map.ghi,
      otherSunSource: map.says,
    };
  }
  return {
    ...ofMap,
    otherGhiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    otherSunSource: own.source,
  };
}

const REFUSAL: Readonly<Record<ClimateRefused["why"], string>> = {
  "at-sea": "the coordinates lie in the open sea, where the climate grids hold nothing",
  "outside-grid": "no irradiation data lie within about 400 km of the place",
  "on-ice": "the place lies on permanent ice, for which the climate grids do not hold",
};

/** Why there is no climate; null where there is one. */
export function climateRefusal(brief: Brief, world: World): string | null {
  const site = brief.place.site.value;
  if (!site) return "the place is not known";
  const found = world.climateAt(site);
  return found.kind === "refused" ? REFUSAL[found.why] : null;
}
