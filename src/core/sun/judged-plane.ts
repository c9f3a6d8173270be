import { indexOfMin, within } from "../numerics/index.ts";
import { aboveRing, cosineIntegralRad, LEVEL_NORMAL, type Plane } from "./beam.ts";
import type { LevelMonth } from "./level-month.ts";
import { type LevelSun, levelMonths, planeMonths } from "./monthly-poa.ts";
import { openSky } from "./open-sky.ts";

/**
 * A month with less than this on the level is dark: no practical array lives on it, the bank has to bridge
 * it.
 */
export const DARK_MONTH_GHI_KWH_PER_M2 = 0.1;

/** What a search for a plane is asked. */
export interface PlaneWish extends LevelSun {
  /** Demand of a day in each month, 12 entries of 0 to 1e7, at least one above 0. */
  readonly dailyWhByMonth: readonly number[];
  /** 10 when left out: flatter panes keep their dirt. */
  readonly minTiltDeg?: number;
  /** 80 when left out. */
  readonly maxTiltDeg?: number;
}

/** One fixed plane, judged by its worst month. */
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

/** A wish made ready to be asked about many planes. */
export interface PlaneJudge {
  readonly minTiltDeg: number;
  readonly maxTiltDeg: number;
  /** Direction of the equator: 180 north of it and on it, 0 south of it. */
  readonly equatorDeg: number;
  /** Months that count, 0 = January. */
  readonly judgedMonths: readonly number[];
  /** Months with demand that are left out because they are dark; all of them when there is no other. */
  readonly darkMonths: readonly number[];
  readonly at: (plane: Plane) => TiltResult;
  /** Ratio of irradiation to demand in the judged months, by fewer days of each month where `at` takes all. */
  readonly roughRatios: (plane: Plane) => readonly number[];
}

/** @throws RangeFault as monthlyPoa, for bounds outside 0 to 90, and when no month has demand */
export function planeJudge(wish: PlaneWish): PlaneJudge {
  const minTiltDeg = Math.ceil(within("minTiltDeg", wish.minTiltDeg ?? 10, 0, 90));
  const maxTiltDeg = Math.floor(within("maxTiltDeg", wish.maxTiltDeg ?? 80, minTiltDeg, 90));
  within("months of dailyWhByMonth", wish.dailyWhByMonth.length, 12, 12);
  for (const dailyWh of wish.dailyWhByMonth) within("dailyWh", dailyWh, 0, 1e7);
  const wanted = [...wish.dailyWhByMonth.keys()].filter((month) => wish.dailyWhByMonth[month]! > 0);
  within("months with demand", wanted.length, 1, 12);
  const lit = wanted.filter((month) => wish.ghiDailyKWhPerM2ByMonth[month]! >= DARK_MONTH_GHI_KWH_PER_M2);
  const judgedMonths = lit.length > 0 ? lit : wanted;

  const levels = levelMonths(wish);
  const poaOf = (months: readonly LevelMonth[]): ((plane: Plane) => readonly number[]) => {
    const sky = openSky(months, wish);
    const { albedoByMonth } = wish;
    return (plane) =>
      planeMonths({ levels: months, sky, plane, albedoByMonth }).map((month) => month.poaDailyKWhPerM2);
  };
  const ratiosOf = (poaDailyKWhPerM2ByMonth: readonly number[]): readonly number[] =>
    judgedMonths.map((month) => poaDailyKWhPerM2ByMonth[month]! / wish.dailyWhByMonth[month]!);

  const poaAt = poaOf(levels);
  // below the polar circles a month is one day: the rough answer is then the exact one
  const roughPoaAt = levels.every(({ days }) => days.length === 1) ? poaAt : poaOf(levels.map(thinned));
  const known = new Map<number, TiltResult>();
  return {
    minTiltDeg,
    maxTiltDeg,
    equatorDeg: wish.latitudeDeg < 0 ? 0 : 180,
    judgedMonths,
    darkMonths: wanted.filter((month) => !judgedMonths.includes(month) || lit.length === 0),
    roughRatios: (plane) => ratiosOf(roughPoaAt(plane)),
    at: ({ tiltDeg, azimuthDeg }) => {
      const key = azimuthDeg * 100 + tiltDeg;
      const before = known.get(key);
      if (before !== undefined) return before;
      const poaDailyKWhPerM2ByMonth = poaAt({ tiltDeg, azimuthDeg });
      const ratios = ratiosOf(poaDailyKWhPerM2ByMonth);
      const worst = indexOfMin(ratios);
      const result = {
        tiltDeg,
        azimuthDeg,
        poaDailyKWhPerM2ByMonth,
        worstMonth: judgedMonths[worst]!,
        worstRatioKWhPerM2PerWh: ratios[worst]!,
      };
      known.set(key, result);
      return result;
    },
  };
}

/** Of a month of many days every fifth: the sun moves by 2 deg at most between them. */
const DAYS_BETWEEN = 5;

function thinned(level: LevelMonth): LevelMonth {
  const days = level.days.filter((_, i) => i % DAYS_BETWEEN === 2);
  const freeRad = days.reduce(
    (total, { circle, distanceRatio }) =>
      total + distanceRatio * cosineIntegralRad(circle, LEVEL_NORMAL, [aboveRing(circle, 0)]),
    0,
  );
  return { ...level, days, freeRad };
}
