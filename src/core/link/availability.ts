import { within } from "../numerics/index.ts";
import {
  type MultipathPath,
  multipathExceededFrac,
  multipathOccurrenceFrac,
  yearFromWorstMonthFrac,
} from "./multipath.ts";
import { type RainOutage, type RainPath, rainOutage } from "./rain-path.ts";

const HOURS_PER_YEAR = 8760;

export type LinkClimate = RainPath &
  MultipathPath & {
    /** -90 to 90. */
    readonly latitudeDeg: number;
    /** Refractivity gradient not exceeded 1 % of the year, N-units/km, -1000 to 200. */
    readonly gradientNPerKm: number;
    /** Standard deviation of terrain heights within 110 km by 110 km, 0 to 3000. */
    readonly roughnessM: number;
  };

export type Availability = {
  readonly rain: RainOutage;
  readonly multipathOutageFrac: number;
  /** Rain and multipath together: their times are added, for they do not happen at once. */
  readonly outageFrac: number;
  readonly outageHPerYear: number;
  readonly availabilityFrac: number;
};

/**
 * How many hours a year weather and air take the link away in one direction.
 *
 * @param marginDb  received level less sensitivity of the receiving end, -300 to 300
 * @returns see {@link Availability}. Power, radar, foliage, a leaning mast and broken parts are not in it
 * @accuracy rain statistics of one place differ from year to year by a factor of two
 * @throws RangeFault outside the ranges above and of {@link LinkClimate}
 * @source Recommendation ITU-R P.530 clauses 2.3 and 2.4; multipath is zero up to 5 km
 */
export function availability(link: LinkClimate & { readonly marginDb: number }): Availability {
  const marginDb = within("marginDb", link.marginDb, -300, 300);
  const rain = rainOutage(link);
  const worstMonthFrac = multipathExceededFrac({
    occurrenceFrac: multipathOccurrenceFrac(link),
    fadeDb: Math.min(100, Math.max(0, marginDb)),
  });
  const multipathOutageFrac = yearFromWorstMonthFrac({ ...link, worstMonthFrac });
  const outageFrac = Math.min(1, rain.outageFrac + multipathOutageFrac);
  return {
    rain,
    multipathOutageFrac,
    outageFrac,
    outageHPerYear: outageHPerYear(1 - outageFrac),
    availabilityFrac: 1 - outageFrac,
  };
}

/**
 * Hours of a common year that an availability leaves dark.
 *
 * @param availabilityFrac  0 to 1
 * @returns hours; 8.76 for 0.999
 * @throws RangeFault outside the range above
 * @source definition, 8760 hours
 */
export function outageHPerYear(availabilityFrac: number): number {
  return (1 - within("availabilityFrac", availabilityFrac, 0, 1)) * HOURS_PER_YEAR;
}
