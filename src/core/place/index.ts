export { coordinatesText } from "./coordinates-text.ts";
export { countryName } from "./countries.ts";
export { currencyOf, isPaidIn } from "./currencies.ts";
export {
  type CompassReading,
  compassTrust,
  MAGNETIC_MODEL_YEARS,
  magneticDeclinationDeg,
} from "./declination.ts";
export { type FoundPlace, findPlaces, type Match } from "./find-places.ts";
export { type BearingAndDistance, bearingAndDistance } from "./geodesic.ts";
export { type NearestPlace, nearestPlace } from "./nearest-place.ts";
export { openPlaces, type PlaceIndex } from "./open-places.ts";
export type { Place } from "./place.ts";
export { type PointAlong, pointsAlong } from "./points-along.ts";
export {
  type Coordinates,
  type CoordinatesFault,
  type CoordinatesRead,
  readCoordinates,
} from "./read-coordinates.ts";
export { timeZoneAt } from "./time-zone.ts";
