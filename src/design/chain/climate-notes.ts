import type { Climate, Notes } from "../design.ts";

const SITE = ["brief.place.site"] as const;

export const climateNotes = {
  ghiDailyKWhPerM2ByMonth: {
    what: "monthly mean of daily irradiation on level ground",
    formula: "clearness of the grid cells around the place x irradiation outside the air",
    inputs: [...SITE, "brief.place.ownSun", "brief.place.trustedSun"],
    source:
      "NASA MERRA-2 reanalysis 2011 to 2015, as packed in gsee-climate-data 1.0.0, corrected to stations; or the builder's own figures",
  },
  sunSource: {
    what: "who says how much sun there is",
    formula:
      "the map, or the builder's own figures: the lower in the dullest month unless the builder said which",
    inputs: [...SITE, "brief.place.ownSun", "brief.place.trustedSun"],
    source: "named by the grids themselves, or by the builder",
  },
  otherGhiDailyKWhPerM2ByMonth: {
    what: "the same by the source that does not count; empty where there is only one",
    formula: "as given",
    inputs: [...SITE, "brief.place.ownSun", "brief.place.trustedSun"],
    source: "the map, or the builder's own figures",
  },
  otherSunSource: {
    what: "who says so",
    formula: "as given",
    inputs: [...SITE, "brief.place.ownSun", "brief.place.trustedSun"],
    source: "named by the grids themselves, or by the builder",
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
    inputs: [...SITE, "brief.place.ownSun", "brief.place.trustedSun"],
    source:
      "NASA MERRA-2 reanalysis 2011 to 2015, as packed in gsee-climate-data 1.0.0, drawn toward the days of Bendt, Collares-Pereira and Rabl 1981 as measured days ask; or the builder's own hourly file where its figures count",
  },
  lag1ByMonth: {
    what: "how much a day's light is like the day's before; empty where the usual likeness counts",
    formula:
      "correlation of neighbouring days within each month of the year's hours, drawn toward the usual one",
    inputs: ["brief.place.ownSun", "brief.place.trustedSun"],
    source:
      "the builder's own hourly file where its figures count; the usual one from Aguiar, Collares-Pereira and Conde 1988 and Graham and Hollands 1990 (from memory)",
  },
  meanTempCByMonth: {
    what: "monthly mean air temperature",
    formula: "map value reduced to the place's elevation by the lapse of the standard atmosphere",
    inputs: SITE,
    source: "Recommendation ITU-R P.1510-1",
  },
  designColdTempC: {
    what: "coldest hour of a typical year",
    formula: "coldest month's mean less a gap that grows with the year's range",
    inputs: ["climate.meanTempCByMonth"],
    source: "fitted to stations with the climate grids; a local record goes first",
  },
  recordColdTempC: {
    what: "coldest hour in some decades",
    formula: "the same, and further by what a record of about twenty years adds",
    inputs: ["climate.meanTempCByMonth"],
    source: "fitted to stations with the climate grids; a local record goes first",
  },
  designHotTempC: {
    what: "hottest hour of a typical year",
    formula: "warmest month's mean plus a gap that grows with the year's range",
    inputs: ["climate.meanTempCByMonth"],
    source: "fitted to stations with the climate grids; a local record goes first",
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
  terrainRoughnessM: {
    what: "how rough the ground is over some 110 km, which breaks up the layers of air that bend radio",
    formula: "standard deviation of the map's heights round the place",
    inputs: SITE,
    source: "Recommendation ITU-R P.1511-2, for P.530 clause 2.3.1",
  },
  dataSource: {
    what: "which data sets the climate comes from",
    formula: "named by the grids themselves",
    inputs: SITE,
    source: "the embedded grids",
  },
} satisfies Notes<Climate>;
