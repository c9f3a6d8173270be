/** The package's own types know only its door, which asks for the clock and ends with November 2029. */
declare module "geomagnetism/lib/model.js" {
  export interface Coefficients {
    readonly main_field_coeff_g: readonly number[];
    readonly main_field_coeff_h: readonly number[];
    readonly n_max: number;
  }
  export default class Model {
    constructor(coefficients: Coefficients);
    /** Latitude and longitude in degrees, north and east positive, at sea level; `h` in nT, `decl` in degrees. */
    point(spot: readonly [latitudeDeg: number, longitudeDeg: number]): {
      readonly h: number;
      readonly decl: number;
    };
  }
}

declare module "geomagnetism/data/wmm-2025.json" {
  import type { Coefficients } from "geomagnetism/lib/model.js";

  const model: Coefficients & {
    readonly epoch: number;
    readonly secular_var_coeff_g: readonly number[];
    readonly secular_var_coeff_h: readonly number[];
  };
  export default model;
}
