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
  /**
   * What the worst month may lack of its best so that the pane stands less steep, 0 to 0.1; 0 when left out. Near its top the
   * curve is flat: the last per cent or two are 10 deg steeper and all from bright days, while dull ones lose the light of the
   * sky they no longer face, and it is in dull spells that a bank runs empty.
   */
  readonly acceptedLossFrac?: number;
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
  readonly acceptedLossFrac: number;
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
  const acceptedLossFrac = within("acceptedLossFrac", wish.acceptedLossFrac ?? 0, 0, 0.1);
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
    acceptedLossFrac,
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

/** The flattest plane of the same azimuth whose worst month lacks no more than what is accepted. */
export function laidBack(judge: PlaneJudge, steepest: TiltResult): TiltResult {
  const enough = steepest.worstRatioKWhPerM2PerWh * (1 - judge.acceptedLossFrac);
  if (judge.acceptedLossFrac === 0 || enough <= 0) return steepest;
  let flattest = steepest;
  // the worth of a tilt rises to one top: below the first that is not enough there is no other
  for (let tiltDeg = steepest.tiltDeg - 1; tiltDeg >= judge.minTiltDeg; tiltDeg -= 1) {
    const next = judge.at({ tiltDeg, azimuthDeg: steepest.azimuthDeg });
    if (next.worstRatioKWhPerM2PerWh < enough) break;
    flattest = next;
  }
  return flattest;
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
