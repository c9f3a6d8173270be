import { clamp, indexOfMin, within } from "../numerics/index.ts";
import { type LevelSun, levelMonths, planeMonths } from "./monthly-poa.ts";
import { openSky } from "./open-sky.ts";
import { flattestBestDeg } from "./tilt-search.ts";

/**
 * A month with less than this on the level is dark: no practical array lives on it, the bank has to bridge
 * it.
 */
export const DARK_MONTH_GHI_KWH_PER_M2 = 0.1;

/** One fixed tilt, facing the equator, judged by its worst month. */
export interface TiltResult {
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  readonly poaDailyKWhPerM2ByMonth: readonly number[];
  /**
   * Month (0 = January) with the least irradiation for its demand, dark months and months without demand left
   * out.
   */
  readonly worstMonth: number;
  /** Irradiation over demand in that month, kWh/m2 per Wh. */
  readonly worstRatioKWhPerM2PerWh: number;
}

export interface BestTilt extends TiltResult {
  /** The common rule tilt = latitude (held within the same bounds), for comparison. */
  readonly latitudeTilt: TiltResult;
  /** Months (0 = January) left out because they are dark. */
  readonly darkMonths: readonly number[];
}

/**
 * The fixed tilt toward the equator whose worst month is best: the largest smallest ratio of plane-of-array
 * irradiation to demand. Of equal tilts the flattest, which catches less wind.
 *
 * @param site.dailyWhByMonth  demand of a day in each month, 12 entries of 0 or more, at least one above 0
 * @param site.minTiltDeg      10 when left out: flatter panes keep their dirt
 * @param site.maxTiltDeg      80 when left out
 * @returns whole degrees of tilt; azimuth 180 north of the equator and on it, 0 south of it
 * @throws RangeFault as monthlyPoa, and when no month has demand
 * @source the design-month rule of IEEE 1562 (from memory) over a sweep of tilts by monthlyPoa; leaving dark
 *         months out is our own choice
 */
export function bestTilt(
  site: LevelSun & {
    readonly dailyWhByMonth: readonly number[];
    readonly minTiltDeg?: number;
    readonly maxTiltDeg?: number;
  },
): BestTilt {
  const minTiltDeg = Math.ceil(within("minTiltDeg", site.minTiltDeg ?? 10, 0, 90));
  const maxTiltDeg = Math.floor(within("maxTiltDeg", site.maxTiltDeg ?? 80, minTiltDeg, 90));
  within("months of dailyWhByMonth", site.dailyWhByMonth.length, 12, 12);
  for (const dailyWh of site.dailyWhByMonth) within("dailyWh", dailyWh, 0, 1e7);
  const wanted = [...site.dailyWhByMonth.keys()].filter((month) => site.dailyWhByMonth[month]! > 0);
  within("months with demand", wanted.length, 1, 12);
  const lit = wanted.filter((month) => site.ghiDailyKWhPerM2ByMonth[month]! >= DARK_MONTH_GHI_KWH_PER_M2);
  const judged = lit.length > 0 ? lit : wanted;

  const levels = levelMonths(site);
  const sky = openSky(levels, site);
  const known = new Map<number, TiltResult>();
  const at = (tiltDeg: number): TiltResult => {
    const before = known.get(tiltDeg);
    if (before !== undefined) return before;
    const azimuthDeg = site.latitudeDeg < 0 ? 0 : 180;
    const poaDailyKWhPerM2ByMonth = planeMonths({
      levels,
      sky,
      plane: { tiltDeg, azimuthDeg },
      albedoByMonth: site.albedoByMonth,
    }).map((month) => month.poaDailyKWhPerM2);
    const ratios = judged.map((month) => poaDailyKWhPerM2ByMonth[month]! / site.dailyWhByMonth[month]!);
    const worst = indexOfMin(ratios);
    const result = {
      tiltDeg,
      azimuthDeg,
      poaDailyKWhPerM2ByMonth,
      worstMonth: judged[worst]!,
      worstRatioKWhPerM2PerWh: ratios[worst]!,
    };
    known.set(tiltDeg, result);
    return result;
  };

  const bestDeg = flattestBestDeg({
    minDeg: minTiltDeg,
    maxDeg: maxTiltDeg,
    worth: (tiltDeg) => at(tiltDeg).worstRatioKWhPerM2PerWh,
  });
  return {
    ...at(bestDeg),
    latitudeTilt: at(Math.round(clamp(Math.abs(site.latitudeDeg), minTiltDeg, maxTiltDeg))),
    darkMonths: wanted.filter((month) => !judged.includes(month) || lit.length === 0),
  };
}
