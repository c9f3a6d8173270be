import type { ClimateRefused } from "../../core/climate/index.ts";
import type { Brief } from "../brief.ts";
import type { Climate, World } from "../design.ts";

export { climateNotes } from "./climate-notes.ts";

/** The climate of the brief's place from the embedded grids; null where it has none (see climateRefusal). */
export function climateStage(brief: Brief, world: World): Climate | null {
  const site = brief.place.site.value;
  if (!site) return null;
  const found = world.climateAt(site);
  if (found.kind === "refused") return null;
  const { source } = found;
  return {
    ghiDailyKWhPerM2ByMonth: found.ghiDailyKWhPerM2ByMonth,
    ghiUncertaintyFrac: found.ghiUncertaintyFrac,
    dailyGhiQuantilesByMonth: found.dailyGhiQuantilesByMonth,
    meanTempCByMonth: found.meanTempCByMonth,
    designColdTempC: found.designColdTempC,
    recordColdTempC: found.recordColdTempC,
    designHotTempC: found.designHotTempC,
    elevationM: found.elevationM,
    rainRateMmPerH: found.rainRate001MmPerH,
    refractivityGradientPerKm: found.refractivityGradientPerKm,
    dataSource: `sun: ${source.irradiation}; temperature: ${source.temperature}; rain: ${source.rain}; refractivity: ${source.refractivity}; elevation: ${source.elevation}`,
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
