export { type Climate, type ClimateRefused, type ClimateSource, climateAt } from "./climate-at.ts";
export { type ClimateGrids, type Layer, openClimate } from "./grids.ts";
export * from "./own/index.ts";
