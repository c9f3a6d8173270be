/** What a compass is off by at the post. */
import { compassTrust, MAGNETIC_MODEL_YEARS, magneticDeclinationDeg } from "../../core/place/index.ts";
import type { Site } from "../brief.ts";

/** The magnetic field drifts by some tenths of a degree a year: the middle of the model's years will do for an aim. */
const COMPASS_YEAR = (MAGNETIC_MODEL_YEARS.first + MAGNETIC_MODEL_YEARS.last) / 2;

/** East positive; null where no place is known or no compass can be trusted. */
export function declinationAtDeg(site: Site | null): number | null {
  const compass = site && { ...site, year: COMPASS_YEAR };
  return compass && compassTrust(compass) === "good" ? magneticDeclinationDeg(compass) : null;
}
