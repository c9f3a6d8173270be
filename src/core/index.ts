/**
 * The engineering as a library: solar, battery, wiring, mast, radio and view, numbers in and numbers out. It knows nothing
 * of the interview, reads no clock, no file and no environment; embedded data reaches it as bytes.
 */
export * as climate from "./climate/index.ts";
export * as energy from "./energy/index.ts";
export * as link from "./link/index.ts";
export * as mast from "./mast/index.ts";
export * as numerics from "./numerics/index.ts";
export * as place from "./place/index.ts";
export * as sun from "./sun/index.ts";
export * as units from "./units/index.ts";
export * as view from "./view/index.ts";
export * as weather from "./weather/index.ts";
export * as wiring from "./wiring/index.ts";
