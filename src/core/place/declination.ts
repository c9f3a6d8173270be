import worldModel from "geomagnetism/data/wmm-2025.json" with { type: "json" };
import Model from "geomagnetism/lib/model.js";
import { within } from "../numerics/index.ts";

/** Years for which the World Magnetic Model of 2025 is made: from the first to the last, decimal. */
export const MAGNETIC_MODEL_YEARS = { first: 2025, last: 2030 } as const;

/** Where and when a compass is read. */
export interface CompassReading {
  /** -90 to 90 */
  readonly latitudeDeg: number;
  /** -180 to 180 */
  readonly longitudeDeg: number;
  /** decimal year, 2025.0 to 2030.0: 2026.5 is the middle of 2026 */
  readonly year: number;
}

/**
 * How far a compass points from true north, east positive: true azimuth = compass bearing + declination. Of the earth's
 * field alone: steel, batteries, a vehicle or a mast beside the compass turn it much further. Near the magnetic poles it
 * means nothing: ask {@link compassTrust} first.
 *
 * @param reading  see {@link CompassReading}; sea level (100 m of height change it by under 0.001 degree outside the
 *   caution zone)
 * @returns degrees, above -180 to 180
 * @accuracy one standard deviation is the root of 0.26^2 + (5417 / horizontal field in nT)^2 degrees: 0.4 where the field is
 *   20 000 nT (northern Europe, Canada), 0.9 at 6000 nT, 2.7 at 2000 nT; this is the model's own estimate, local rocks
 *   included (WMM2025's error model, as given in pygeomag 1.1.0)
 * @throws RangeFault outside the ranges, the model's years among them, for nobody knows how the field drifts after them:
 *   ask {@link MAGNETIC_MODEL_YEARS} beforehand
 * @source World Magnetic Model 2025 (NOAA/NCEI and British Geological Survey, public domain), in geomagnetism 0.2.0
 */
export function magneticDeclinationDeg(reading: CompassReading): number {
  return fieldAt(reading).decl;
}

/**
 * Whether a compass can be believed at a spot: it is drawn by the horizontal field alone, which vanishes at the magnetic
 * poles. "good" from 6000 nT on; "caution" below, where it is sluggish and the declination may be wrong by degrees; "none"
 * below 2000 nT, where it must not be used: sight on the sun, or measure a line on a map.
 *
 * @param reading  see {@link CompassReading}
 * @throws RangeFault outside the ranges there
 * @source the model's caution and blackout zones, as given in pygeomag 1.1.0
 */
export function compassTrust(reading: CompassReading): "good" | "caution" | "none" {
  const { h: horizontalNT } = fieldAt(reading);
  return horizontalNT < 2000 ? "none" : horizontalNT < 6000 ? "caution" : "good";
}

function fieldAt({ latitudeDeg, longitudeDeg, year }: CompassReading) {
  const { first, last } = MAGNETIC_MODEL_YEARS;
  const sinceEpoch = within("year", year, first, last) - worldModel.epoch;
  const drifted = (field: readonly number[], yearly: readonly number[]) =>
    field.map((nT, i) => nT + sinceEpoch * yearly[i]!);
  return new Model({
    n_max: worldModel.n_max,
    main_field_coeff_g: drifted(worldModel.main_field_coeff_g, worldModel.secular_var_coeff_g),
    main_field_coeff_h: drifted(worldModel.main_field_coeff_h, worldModel.secular_var_coeff_h),
  }).point([within("latitudeDeg", latitudeDeg, -90, 90), within("longitudeDeg", longitudeDeg, -180, 180)]);
}
