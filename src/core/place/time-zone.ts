import lookup from "@photostructure/tz-lookup";
import { within } from "../numerics/index.ts";

/**
 * IANA name of the time zone of a place, "Etc/GMT+3" and the like on the open sea.
 *
 * @param latitudeDeg   -90 to 90
 * @param longitudeDeg  -180 to 180
 * @accuracy the name differs from GeoNames' for about 2 % of populated places, the clock for about 0.6 %, nearly all
 *   of them beside a border
 * @throws RangeFault outside the ranges above
 * @source @photostructure/tz-lookup 11.7.0, from the time zone boundaries of OpenStreetMap
 */
export function timeZoneAt({
  latitudeDeg,
  longitudeDeg,
}: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}): string {
  return lookup(within("latitudeDeg", latitudeDeg, -90, 90), within("longitudeDeg", longitudeDeg, -180, 180));
}
