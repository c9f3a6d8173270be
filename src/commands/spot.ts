import { coordinatesText } from "../core/place/index.ts";

export interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** "52.3, -3.51": read back as the same spot, without zeros that promise a survey. */
export const spotText = (spot: Spot): string => coordinatesText(spot).replace(/\.?0+(?=,|$)/g, "");
