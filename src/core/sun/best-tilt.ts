import { clamp } from "../numerics/index.ts";
import { laidBack, type PlaneJudge, type PlaneWish, planeJudge, type TiltResult } from "./judged-plane.ts";
import { flattestBestDeg } from "./tilt-search.ts";

export interface BestTilt extends TiltResult {
  /** The common rule tilt = latitude (held within the same bounds), for comparison. */
  readonly latitudeTilt: TiltResult;
  /** What that rule loses in its worst month against the best tilt in its own, 0 to 1. */
  readonly latitudeLossFrac: number;
  /** Months (0 = January) left out because they are dark. */
  readonly darkMonths: readonly number[];
}

/**
 * The fixed tilt toward the equator whose worst month is best: the largest smallest ratio of plane-of-array
 * irradiation to demand. Of equal tilts the flattest, which catches less wind; and where a loss is accepted, the flattest that
 * loses no more.
 *
 * @param site.dailyWhByMonth  demand of a day in each month, 12 entries of 0 or more, at least one above 0
 * @param site.minTiltDeg      10 when left out: flatter panes keep their dirt
 * @param site.maxTiltDeg      80 when left out
 * @returns whole degrees of tilt; azimuth 180 north of the equator and on it, 0 south of it
 * @throws RangeFault as monthlyPoa, and when no month has demand
 * @source the design-month rule of IEEE 1562 (from memory) over a sweep of tilts by monthlyPoa; leaving dark
 *         months out is our own choice
 */
export function bestTilt(site: PlaneWish): BestTilt {
  const judge = planeJudge(site);
  return gentle(judge, bestTiltOf(judge, Math.abs(site.latitudeDeg)));
}

/** The best tilt laid back as far as is accepted. */
export function gentle(judge: PlaneJudge, best: BestTilt): BestTilt {
  const stands = laidBack(judge, best);
  return { ...best, ...stands, latitudeLossFrac: shortfallFrac(best.latitudeTilt, stands) };
}

export function bestTiltOf(judge: PlaneJudge, latitudeRuleDeg: number): BestTilt {
  const { minTiltDeg, maxTiltDeg, equatorDeg, darkMonths } = judge;
  const at = (tiltDeg: number): TiltResult => judge.at({ tiltDeg, azimuthDeg: equatorDeg });
  const best = at(
    flattestBestDeg({
      minDeg: minTiltDeg,
      maxDeg: maxTiltDeg,
      worth: (tiltDeg) => at(tiltDeg).worstRatioKWhPerM2PerWh,
    }),
  );
  const latitudeTilt = at(Math.round(clamp(latitudeRuleDeg, minTiltDeg, maxTiltDeg)));
  return { ...best, latitudeTilt, latitudeLossFrac: shortfallFrac(latitudeTilt, best), darkMonths };
}

/** What one plane's worst month lacks of another's; 0 where it lacks nothing. */
export function shortfallFrac(one: TiltResult, other: TiltResult): number {
  const otherRatio = other.worstRatioKWhPerM2PerWh;
  return otherRatio > 0 ? Math.max(0, 1 - one.worstRatioKWhPerM2PerWh / otherRatio) : 0;
}
