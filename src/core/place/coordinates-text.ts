import { within } from "../numerics/index.ts";

/**
 * A pair of coordinates as text that people and maps understand and readCoordinates reads back: "52.40310, -3.23390".
 *
 * @param latitudeDeg   -90 to 90
 * @param longitudeDeg  -180 to 180
 * @returns decimal degrees to five places, about 1 m
 * @throws RangeFault outside the ranges above
 */
export function coordinatesText(place: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}): string {
  return `${fivePlaces(within("latitudeDeg", place.latitudeDeg, -90, 90))}, ${fivePlaces(within("longitudeDeg", place.longitudeDeg, -180, 180))}`;
}

function fivePlaces(deg: number): string {
  const text = deg.toFixed(5);
  return text === "-0.00000" ? "0.00000" : text;
}
