export { RangeFault, within } from "./fault.ts";
export { clamp, indexOfMin, interpolate, mean, sum } from "./interpolate.ts";
