export { RangeFault, within } from "./fault.ts";
export { clamp, indexOfMin, interpolate, mean, sum } from "./interpolate.ts";
export { type SeededDraws, seededDraws } from "./random.ts";
