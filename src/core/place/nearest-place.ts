import { within } from "../numerics/index.ts";
import { bearingAndDistance } from "./geodesic.ts";
import type { PlaceIndex } from "./open-places.ts";
import { type Place, placeInRow } from "./place.ts";

export interface NearestPlace {
  readonly place: Place;
  readonly distanceKm: number;
}

/**
 * The populated place nearest to a point.
 *
 * @param latitudeDeg   -90 to 90
 * @param longitudeDeg  -180 to 180
 * @accuracy the place is the nearest on a sphere, the distance is the geodesic on the WGS 84 ellipsoid
 * @throws RangeFault outside the ranges above
 */
export function nearestPlace(asked: {
  readonly index: PlaceIndex;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}): NearestPlace {
  const { index } = asked;
  const latitude = radians(within("latitudeDeg", asked.latitudeDeg, -90, 90));
  const longitude = radians(within("longitudeDeg", asked.longitudeDeg, -180, 180));
  let best = 0;
  let bestHaversine = Number.POSITIVE_INFINITY;
  let bestAngle = Number.POSITIVE_INFINITY;
  for (let row = 0; row < index.count; row++) {
    const rowLatitude = radians(index.latitudeThousandths[row]! / 1000);
    // A place cannot be nearer than its difference in latitude: most rows need no sine.
    if (Math.abs(rowLatitude - latitude) > bestAngle) continue;
    const rowLongitude = radians(index.longitudeThousandths[row]! / 1000);
    const haversine =
      Math.sin((rowLatitude - latitude) / 2) ** 2 +
      Math.cos(latitude) * Math.cos(rowLatitude) * Math.sin((rowLongitude - longitude) / 2) ** 2;
    if (haversine < bestHaversine) {
      bestHaversine = haversine;
      bestAngle = 2 * Math.asin(Math.min(1, Math.sqrt(haversine)));
      best = row;
    }
  }
  const place = placeInRow(index, best);
  const { distanceM } = bearingAndDistance({
    fromLatitudeDeg: asked.latitudeDeg,
    fromLongitudeDeg: asked.longitudeDeg,
    toLatitudeDeg: place.latitudeDeg,
    toLongitudeDeg: place.longitudeDeg,
  });
  return { place, distanceKm: distanceM / 1000 };
}

function radians(deg: number): number {
  return (deg * Math.PI) / 180;
}
