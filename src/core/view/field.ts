import { within } from "../numerics/index.ts";

/**
 * Angle of view across one side of the sensor.
 *
 * @param sensorWidthMm  1 to 40; give the height for the vertical angle
 * @param focalLengthMm  1 to 200
 * @returns degrees, full angle
 * @accuracy exact for a lens without distortion; wide lenses differ by 5 to 15 degrees
 * @throws RangeFault outside the ranges above
 * @source geometry of the pinhole, 2 atan(w / 2F)
 * @example fieldOfViewDeg({ sensorWidthMm: 5.568, focalLengthMm: 4 })  // 69.7
 */
export function fieldOfViewDeg(lens: {
  readonly sensorWidthMm: number;
  readonly focalLengthMm: number;
}): number {
  const { sensorWidthMm, focalLengthMm } = checkedLens(lens);
  return (2 * Math.atan(sensorWidthMm / (2 * focalLengthMm)) * 180) / Math.PI;
}

/**
 * Width of the scene that fills the picture at a distance, on a flat target square to the view.
 *
 * @param sensorWidthMm  1 to 40; give the height for the scene's height
 * @param focalLengthMm  1 to 200
 * @param distanceM      0.1 to 10 000
 * @returns m
 * @accuracy exact for a lens without distortion
 * @throws RangeFault outside the ranges above
 * @source geometry of the pinhole, D w / F
 */
export function sceneWidthM(view: {
  readonly sensorWidthMm: number;
  readonly focalLengthMm: number;
  readonly distanceM: number;
}): number {
  const { sensorWidthMm, focalLengthMm } = checkedLens(view);
  return (within("distanceM", view.distanceM, 0.1, 10_000) * sensorWidthMm) / focalLengthMm;
}

/**
 * Pixels on each metre of the scene at a distance.
 *
 * @param widthPx        pixels across the sensor, 100 to 20 000
 * @param sensorWidthMm  1 to 40
 * @param focalLengthMm  1 to 200
 * @param distanceM      0.1 to 10 000
 * @returns px/m
 * @accuracy exact for a lens without distortion; focus, haze, motion and compression take their share
 * @throws RangeFault outside the ranges above
 * @source geometry of the pinhole, N F / (w D)
 */
export function pixelDensityPxPerM(view: {
  readonly widthPx: number;
  readonly sensorWidthMm: number;
  readonly focalLengthMm: number;
  readonly distanceM: number;
}): number {
  return within("widthPx", view.widthPx, 100, 20_000) / sceneWidthM(view);
}

/**
 * Distance up to which a wanted pixel density is kept.
 *
 * @param widthPx        pixels across the sensor, 100 to 20 000
 * @param sensorWidthMm  1 to 40
 * @param focalLengthMm  1 to 200
 * @param wantedPxPerM   1 to 10 000
 * @returns m. By night the reach of the infrared light usually ends first
 * @accuracy exact for a lens without distortion
 * @throws RangeFault outside the ranges above
 * @source geometry of the pinhole, N F / (w p)
 * @example distanceForDensityM({ widthPx: 1920, sensorWidthMm: 5.568, focalLengthMm: 4, wantedPxPerM: 125 })  // 11.03
 */
export function distanceForDensityM(view: {
  readonly widthPx: number;
  readonly sensorWidthMm: number;
  readonly focalLengthMm: number;
  readonly wantedPxPerM: number;
}): number {
  const { sensorWidthMm, focalLengthMm } = checkedLens(view);
  const widthPx = within("widthPx", view.widthPx, 100, 20_000);
  return (widthPx * focalLengthMm) / (sensorWidthMm * within("wantedPxPerM", view.wantedPxPerM, 1, 10_000));
}

function checkedLens(lens: { readonly sensorWidthMm: number; readonly focalLengthMm: number }) {
  return {
    sensorWidthMm: within("sensorWidthMm", lens.sensorWidthMm, 1, 40),
    focalLengthMm: within("focalLengthMm", lens.focalLengthMm, 1, 200),
  };
}
