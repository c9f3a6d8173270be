export { densityClass, densityClasses } from "./density.ts";
export { distanceForDensityM, fieldOfViewDeg, pixelDensityPxPerM, sceneWidthM } from "./field.ts";
export { type LensChoice, type LensPick, pickLens } from "./lens.ts";
export {
  COMMON_FOCAL_LENGTHS_MM,
  COMMON_SENSORS,
  COMMON_WIDTHS_PX,
  type DensityClass,
  type DensityEdition,
  type Sensor,
} from "./tables.ts";
export {
  BITS_PER_PIXEL,
  CODEC_RATIO,
  type Codec,
  monthlyDataGB,
  PEAK_RATIO,
  peakMbps,
  type SceneActivity,
  storageGB,
  streamMbps,
} from "./video.ts";
