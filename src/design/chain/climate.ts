import type { ClimateRefused } from "../../core/climate/index.ts";
import type { Brief } from "../brief.ts";
import type { Climate, Notes, World } from "../design.ts";

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

const SITE = ["brief.place.site"] as const;

export const climateNotes = {
  ghiDailyKWhPerM2ByMonth: {
    what: "monthly mean of daily irradiation on level ground",
    formula: "clearness of the grid cells around the place x irradiation outside the air",
    inputs: SITE,
    source: "NASA MERRA-2 reanalysis 2011 to 2015, as packed in gsee-climate-data 1.0.0",
  },
  ghiUncertaintyFrac: {
    what: "standard deviation of the error of a monthly irradiation",
    formula: "error of the grid against ground stations, over the value",
    inputs: SITE,
    source: "comparison of the grid with station records, made with the grid",
  },
  dailyGhiQuantilesByMonth: {
    what: "how bright and dull days spread within each month",
    formula: "sixteen equally likely daily sums over the month's mean",
    inputs: SITE,
    source: "NASA MERRA-2 reanalysis 2011 to 2015, as packed in gsee-climate-data 1.0.0",
  },
  meanTempCByMonth: {
    what: "monthly mean air temperature",
    formula: "map value reduced to the place's elevation, 6.5 K per km",
    inputs: SITE,
    source: "Recommendation ITU-R P.1510-1",
  },
  designColdTempC: {
    what: "coldest hour of a typical year",
    formula: "coldest month's mean less 18 K",
    inputs: ["climate.meanTempCByMonth"],
    source: "stand-in fitted with the climate grids; a local record goes first",
  },
  recordColdTempC: {
    what: "coldest hour in some decades",
    formula: "coldest month's mean less 25 K",
    inputs: ["climate.meanTempCByMonth"],
    source: "stand-in fitted with the climate grids; a local record goes first",
  },
  designHotTempC: {
    what: "hottest hour of a typical year",
    formula: "warmest month's mean plus 13 K",
    inputs: ["climate.meanTempCByMonth"],
    source: "stand-in fitted with the climate grids; a local record goes first",
  },
  elevationM: {
    what: "height of the place above the sea",
    formula: "the builder's, else the mean height of the quarter-degree cell",
    inputs: SITE,
    source: "Recommendation ITU-R P.1511-2",
  },
  rainRateMmPerH: {
    what: "rain rate exceeded for 0.01 % of an average year",
    formula: "map value",
    inputs: SITE,
    source: "Recommendation ITU-R P.837-7",
  },
  refractivityGradientPerKm: {
    what: "bending of radio waves near the ground on the worst 1 % of the year",
    formula: "map value, lowest 65 m",
    inputs: SITE,
    source: "Recommendation ITU-R P.453",
  },
  dataSource: {
    what: "which data sets the climate comes from",
    formula: "named by the grids themselves",
    inputs: SITE,
    source: "the embedded grids",
  },
} satisfies Notes<Climate>;
