import type { Plane } from "./beam.ts";
import { type LevelSun, levelMonths, planeMonths } from "./monthly-poa.ts";
import { openSky } from "./open-sky.ts";

/** What the surroundings take from a plane, month by month; 12 entries each, fractions of the same under an open sky. */
export interface HorizonLoss {
  /** Straight from the sun; 0 where there is none anyway. */
  readonly beamLossFracByMonth: readonly number[];
  /** From the sky: the same in every month. */
  readonly diffuseLossFrac: number;
  /** Of all that falls on the plane, light from the ground included. */
  readonly poaLossFracByMonth: readonly number[];
}

/**
 * Loss by hills, trees and houses on a fixed plane.
 *
 * @throws RangeFault as monthlyPoa
 * @source the same method as monthlyPoa, with the surroundings and without
 */
export function horizonLoss(site: LevelSun & Plane): HorizonLoss {
  const levels = levelMonths(site);
  const { albedoByMonth } = site;
  const openAround = openSky(levels, {});
  const around = openSky(levels, site);
  const open = planeMonths({ levels, sky: openAround, plane: site, albedoByMonth });
  const left = planeMonths({ levels, sky: around, plane: site, albedoByMonth });
  const lossFrac = (openOf: number, leftOf: number): number =>
    openOf > 0 ? Math.max(0, 1 - leftOf / openOf) : 0;
  return {
    beamLossFracByMonth: open.map((month, i) => lossFrac(month.beamTiltRatio, left[i]!.beamTiltRatio)),
    diffuseLossFrac: lossFrac(openAround.skyFrac(site), around.skyFrac(site)),
    poaLossFracByMonth: open.map((month, i) => lossFrac(month.poaDailyKWhPerM2, left[i]!.poaDailyKWhPerM2)),
  };
}
