import { within } from "../../numerics/index.ts";
import { clearnessShares } from "../clearness-shares.ts";
import { type Climate, mapsAt, SOURCE } from "../climate-at.ts";
import type { ClimateGrids } from "../grids.ts";
import { clearnessFracByMonth, type OwnFigures, withOwnFigures } from "./with-own-figures.ts";

/**
 * Climate of a place where climateAt refuses (the open sea, ice, beyond the grid) from the builder's own figures: the
 * maps of temperature, rain and refractivity cover the whole world; the spread of days within a month follows from its
 * clearness (clearnessShares).
 *
 * @param place.longitudeDeg  -180 to 180
 * @param place.elevationM    of the site, -450 to 9000; without it the ground map's
 * @accuracy as OwnFigures for the sun; the maps are coarse over sea and ice, and unchecked there
 * @throws RangeFault outside the ranges above and those of OwnFigures
 */
export function climateOfOwn(place: {
  readonly grids: ClimateGrids;
  readonly longitudeDeg: number;
  readonly elevationM?: number | undefined;
  readonly own: OwnFigures;
}): Climate {
  const { own } = place;
  const latitudeDeg = within("latitudeDeg", own.latitudeDeg, -90, 90);
  const longitudeDeg = within("longitudeDeg", place.longitudeDeg, -180, 180);
  const elevationM =
    place.elevationM === undefined ? undefined : within("elevationM", place.elevationM, -450, 9000);
  const clearness = clearnessFracByMonth(own.ghiDailyKWhPerM2ByMonth, latitudeDeg);
  const bare: Climate = {
    kind: "climate",
    ...mapsAt(place.grids, { latitudeDeg, longitudeDeg, elevationM }).climate,
    ghiDailyKWhPerM2ByMonth: own.ghiDailyKWhPerM2ByMonth,
    clearnessFracByMonth: clearness,
    // no grid: nothing to be surer than
    ghiUncertaintyFrac: 0,
    dailyGhiQuantilesByMonth: clearness.map(clearnessShares),
    source: SOURCE,
  };
  return withOwnFigures(bare, own);
}
