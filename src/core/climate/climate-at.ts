import { extraterrestrialDailyKWhPerM2ByMonth } from "../astronomy/index.ts";
import { indexOfMin, within } from "../numerics/index.ts";
import { type ExtremeTemperatures, extremeTemperatures } from "./extremes.ts";
import type { ClimateGrids } from "./grids.ts";
import { blended, cellsRound, nodesRound, storedAt, valueAt } from "./lookup.ts";
import { gridShares, sharesOfDays } from "./shares-of-days.ts";
import { IRRADIATION_REACH_KM, LAPSE_K_PER_M } from "./tables.ts";

/** What the embedded grids say about one place. Lists by month have twelve entries, January first. */
export interface Climate extends ExtremeTemperatures {
  readonly kind: "climate";
  /** monthly mean of the daily global horizontal irradiation */
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  /** the same over the extraterrestrial irradiation (clearness index, 0 to 1) */
  readonly clearnessFracByMonth: readonly number[];
  /**
   * Standard deviation of the error of the darkest month's value (the least above 0.1 kWh/m²), as a fraction of it, measured
   * against stations: 0.07 under steady sun, 0.15 and more under changeable cloud far from every station, wider still where
   * a lasting cloud is known to be missed (make/bias.py). Brighter months of the same place are mostly known better.
   */
  readonly ghiUncertaintyFrac: number;
  /**
   * For each month sixteen equally likely values of daily irradiation over the month's mean, dullest first: each the
   * mean of one sixteenth of all days. Their mean is 1. See sharesOfDays for how they are had and how far they are off.
   */
  readonly dailyGhiQuantilesByMonth: readonly (readonly number[])[];
  readonly meanTempCByMonth: readonly number[];
  /** rain rate exceeded for 0.01 % of an average year */
  readonly rainRate001MmPerH: number;
  /** refractivity gradient in the lowest 65 m, not exceeded for 1 % of an average year (N-units per km, negative) */
  readonly refractivityGradientPerKm: number;
  /** standard deviation of ground heights within about 110 km by 110 km */
  readonly terrainRoughnessM: number;
  /** mean height of the quarter-degree cell, which a hilltop or a valley may leave by hundreds of metres */
  readonly groundElevationM: number;
  /** the elevation that the temperatures were reduced to: the one given, or else the ground elevation */
  readonly elevationM: number;
  readonly source: ClimateSource;
}

export interface ClimateSource {
  readonly irradiation: string;
  readonly temperature: string;
  readonly rain: string;
  readonly refractivity: string;
  readonly elevation: string;
}

export interface ClimateRefused {
  readonly kind: "refused";
  readonly why: "at-sea" | "outside-grid" | "on-ice";
}

/**
 * Climate of a place from the embedded world grids.
 *
 * @param latitudeDeg   -90 to 90
 * @param longitudeDeg  -180 to 180
 * @param elevationM    of the site, -450 to 9000; without it the mean ground height of a quarter-degree cell is used
 * @returns the climate, or why there is none: the open sea, land without irradiation data (beyond about 75 N), or permanent
 *   ice
 * @accuracy irradiation: see ghiUncertaintyFrac; the year within 6 % for the median station and 8 % for four in five, the
 *   darkest month within 10 % for half of them (a perfect mean would be for nine in ten) and 20 % for most; worse in deep
 *   valleys, on coasts under lasting low cloud and in the Sichuan basin. Monthly temperature: 1.5 K (standard deviation),
 *   within 2.8 K at 80 of 81 stations in the coldest month, 3.5 K in the hottest
 * @throws RangeFault outside the ranges above
 * @source irradiation: gsee-climate-data 1.0.0 (NASA MERRA-2, 2011-2015), corrected by make/bias.py; temperature: ITU-R P.1510-1; rain: ITU-R
 *   P.837-7; gradient: ITU-R P.453 (65 m, 1 %); roughness: ITU-R P.530-17; elevation: ITU-R P.1511-2
 */
export function climateAt(place: {
  readonly grids: ClimateGrids;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number | undefined;
}): Climate | ClimateRefused {
  const { grids } = place;
  const latitudeDeg = within("latitudeDeg", place.latitudeDeg, -90, 90);
  const longitudeDeg = within("longitudeDeg", place.longitudeDeg, -180, 180);
  const spot = { latitudeDeg, longitudeDeg };
  const givenElevationM =
    place.elevationM === undefined ? undefined : within("elevationM", place.elevationM, -450, 9000);
  if (latitudeDeg < -60) return { kind: "refused", why: "on-ice" };
  if (latitudeDeg > 84 || storedAt(grids.land, spot) !== 1) return { kind: "refused", why: "at-sea" };

  const cells = cellsRound(grids.clearness, { ...spot, reachKm: IRRADIATION_REACH_KM });
  if (cells.length === 0) return { kind: "refused", why: "outside-grid" };

  const maps = mapsAt(grids, { ...spot, elevationM: givenElevationM });
  if (isIceCap(spot, maps.warmestOnMapTempC)) return { kind: "refused", why: "on-ice" };

  const clearnessFracByMonth = months((month) => blended(grids.clearness, month, cells));
  const outside = extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg);
  const ghiDailyKWhPerM2ByMonth = clearnessFracByMonth.map((frac, month) => frac * outside[month]!);
  return {
    kind: "climate",
    ghiDailyKWhPerM2ByMonth,
    clearnessFracByMonth,
    ghiUncertaintyFrac: blended(grids.clearnessErrorFrac, darkestMonth(ghiDailyKWhPerM2ByMonth), cells),
    dailyGhiQuantilesByMonth: clearnessFracByMonth.map((clearnessFrac, month) =>
      sharesOfDays(gridShares(grids, month, cells), clearnessFrac),
    ),
    ...maps.climate,
    source: {
      ...SOURCE,
      irradiation: blended(grids.estimated, 0, cells) > 0.5 ? ESTIMATED : SOURCE.irradiation,
    },
  };
}

/** What the maps that cover the whole world say, sea and ice included. */
export type MapClimate = Omit<
  Climate,
  | "kind"
  | "source"
  | "ghiDailyKWhPerM2ByMonth"
  | "clearnessFracByMonth"
  | "ghiUncertaintyFrac"
  | "dailyGhiQuantilesByMonth"
>;

/** Everything but irradiation. */
export function mapsAt(
  grids: ClimateGrids,
  spot: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly elevationM: number | undefined;
  },
): { readonly climate: MapClimate; readonly warmestOnMapTempC: number } {
  const nodes = nodesRound(grids.monthlyTempC, spot);
  const referenceM = blended(grids.temperatureReferenceM, 0, nodes);
  const onMapTempC = months((month) => blended(grids.monthlyTempC, month, nodes));
  const groundElevationM = valueAt(grids.groundElevationM, spot);
  const elevationM = spot.elevationM ?? groundElevationM;
  const meanTempCByMonth = onMapTempC.map((tempC) => tempC - LAPSE_K_PER_M * (elevationM - referenceM));
  return {
    warmestOnMapTempC: Math.max(...onMapTempC),
    climate: {
      meanTempCByMonth,
      ...extremeTemperatures({
        coldestMonthTempC: Math.min(...meanTempCByMonth),
        hottestMonthTempC: Math.max(...meanTempCByMonth),
      }),
      rainRate001MmPerH: valueAt(grids.rainRate001MmPerH, spot),
      refractivityGradientPerKm: valueAt(grids.refractivityGradientPerKm, spot),
      terrainRoughnessM: valueAt(grids.terrainRoughnessM, spot),
      groundElevationM,
      elevationM,
    },
  };
}

export const SOURCE: ClimateSource = {
  irradiation: "NASA MERRA-2 reanalysis 2011-2015 (gsee-climate-data 1.0.0), corrected to stations",
  temperature: "ITU-R P.1510-1",
  rain: "ITU-R P.837-7",
  refractivity: "ITU-R P.453",
  elevation: "ITU-R P.1511-2",
};

const ESTIMATED =
  "estimated from the rain and temperature maps of ITU-R P.837-7 and P.1510-1, for want of irradiation data";

/** The month with the least sun that is worth the name: nobody sizes an array for the polar night. */
function darkestMonth(ghiDailyKWhPerM2ByMonth: readonly number[]): number {
  const worthTheName = ghiDailyKWhPerM2ByMonth.map((ghi) => (ghi > 0.1 ? ghi : Number.POSITIVE_INFINITY));
  return indexOfMin(worthTheName);
}

function months<T>(of: (month: number) => T): T[] {
  return Array.from({ length: 12 }, (_, month) => of(month));
}

/** Greenland's inland ice: no month above freezing (Köppen's EF). Elsewhere a summit may be that cold and still ground. */
function isIceCap(
  { latitudeDeg, longitudeDeg }: { latitudeDeg: number; longitudeDeg: number },
  warmestTempC: number,
): boolean {
  return latitudeDeg > 59 && longitudeDeg > -74 && longitudeDeg < -10 && warmestTempC < 0;
}
