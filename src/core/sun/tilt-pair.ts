import { mean } from "../numerics/index.ts";
import { type BestTilt, bestTiltOf, gentle } from "./best-tilt.ts";
import { type PlaneJudge, type PlaneWish, planeJudge, type TiltResult } from "./judged-plane.ts";

/** A tilt and the months in which the plane stands at it. */
export interface SeasonTilt {
  readonly tiltDeg: number;
  /** Months in a row, the first first; 0 = January. */
  readonly months: readonly number[];
}

/** A plane facing the equator that is tilted anew twice a year. `poaDailyKWhPerM2ByMonth` is as it then stands. */
export interface TiltPair extends Omit<TiltResult, "tiltDeg"> {
  /** The steeper. */
  readonly winter: SeasonTilt;
  readonly summer: SeasonTilt;
  /** The best single tilt, and what the latitude rule loses against it. */
  readonly oneTilt: BestTilt;
  /** What the single tilt loses in its worst month against the pair in its own, 0 to 1. */
  readonly oneTiltLossFrac: number;
  /** What the pair gathers more than the single tilt on the mean of the twelve months; it may be below 0. */
  readonly yearGainFrac: number;
}

/** A season shorter than this is not worth two climbs. */
const LEAST_MONTHS = 3;

/** Worst months that differ by less are equal: the harvest of the year then decides. */
const EQUAL_FRAC = 0.001;

/**
 * Two tilts toward the equator and the months of each, so that the worst month is best; of those within 0.1 % the pair
 * that gathers most over the year for its demand. Where a loss is accepted the winter's is then laid back toward the best
 * single tilt, as far as its worst month loses no more: the pair is never worse than that tilt, nor much darker in dull spells.
 *
 * Where the demand is the same all year the worst month is a winter's, and it is no better with two tilts than with
 * one: the pair then gains in the other months only.
 *
 * @returns whole degrees of tilt; each season at least 3 months
 * @accuracy beyond 60 deg of latitude the tilts are chosen by every fifth day: within 1 deg
 * @throws RangeFault as bestTilt
 * @source the rule of bestTilt applied to each season (our own); two settings a year as common practice has it, no
 *         source
 */
export function tiltPair(site: PlaneWish): TiltPair {
  const judge = planeJudge(site);
  const oneTilt = gentle(judge, bestTiltOf(judge, Math.abs(site.latitudeDeg)));
  const [one, other] = bestSeasons(judge);
  const [summer, steepest] = one.tiltDeg <= other.tiltDeg ? [one, other] : [other, one];
  const winter = gentler(judge, steepest, Math.max(oneTilt.tiltDeg, summer.tiltDeg));
  const [atSummer, atWinter] = [summer, winter].map(({ tiltDeg }) =>
    judge.at({ tiltDeg, azimuthDeg: judge.equatorDeg }),
  ) as [TiltResult, TiltResult];
  const poaDailyKWhPerM2ByMonth = atWinter.poaDailyKWhPerM2ByMonth.map((poa, month) =>
    summer.months.includes(month) ? atSummer.poaDailyKWhPerM2ByMonth[month]! : poa,
  );
  const ratioOf = (month: number) => poaDailyKWhPerM2ByMonth[month]! / site.dailyWhByMonth[month]!;
  const worstMonth = judge.judgedMonths.reduce((worst, month) =>
    ratioOf(month) < ratioOf(worst) ? month : worst,
  );
  const worstRatioKWhPerM2PerWh = ratioOf(worstMonth);
  const oneYear = mean(oneTilt.poaDailyKWhPerM2ByMonth);
  return {
    winter,
    summer,
    azimuthDeg: judge.equatorDeg,
    poaDailyKWhPerM2ByMonth,
    worstMonth,
    worstRatioKWhPerM2PerWh,
    oneTilt,
    oneTiltLossFrac:
      worstRatioKWhPerM2PerWh > 0
        ? Math.max(0, 1 - oneTilt.worstRatioKWhPerM2PerWh / worstRatioKWhPerM2PerWh)
        : 0,
    yearGainFrac: oneYear > 0 ? mean(poaDailyKWhPerM2ByMonth) / oneYear - 1 : 0,
  };
}

/** The season's flattest tilt that is nearly as good, and not flatter than the least. */
function gentler(judge: PlaneJudge, season: SeasonTilt, leastDeg: number): SeasonTilt {
  const { judgedMonths, equatorDeg, acceptedLossFrac } = judge;
  if (acceptedLossFrac === 0) return season;
  const keys = [...judgedMonths.keys()].filter((k) => season.months.includes(judgedMonths[k]!));
  const worstAt = (tiltDeg: number): number => {
    const ratios = judge.roughRatios({ tiltDeg, azimuthDeg: equatorDeg });
    return Math.min(...keys.map((k) => ratios[k]!));
  };
  // a season without demand stands as it stood
  const enough =
    keys.length > 0 ? worstAt(season.tiltDeg) * (1 - acceptedLossFrac) : Number.POSITIVE_INFINITY;
  for (let tiltDeg = leastDeg; tiltDeg < season.tiltDeg; tiltDeg += 1) {
    if (worstAt(tiltDeg) >= enough) return { ...season, tiltDeg };
  }
  return season;
}

function bestSeasons(judge: PlaneJudge): readonly [SeasonTilt, SeasonTilt] {
  const { minTiltDeg, maxTiltDeg, judgedMonths, equatorDeg } = judge;
  const ratiosByTilt = Array.from({ length: maxTiltDeg - minTiltDeg + 1 }, (_, i) =>
    judge.roughRatios({ tiltDeg: minTiltDeg + i, azimuthDeg: equatorDeg }),
  );
  /** The flattest tilt, counted from the least, whose worst month of a season is best; any for a season of none. */
  const bestFor = (season: readonly number[]): number => {
    let best = 0;
    let bestWorth = -1;
    ratiosByTilt.forEach((ratios, i) => {
      let worth = Number.POSITIVE_INFINITY;
      for (const k of season) worth = Math.min(worth, ratios[k]!);
      if (worth > bestWorth * (1 + 1e-9)) [best, bestWorth] = [i, worth];
    });
    return best;
  };

  const pairs: {
    readonly seasons: readonly [SeasonTilt, SeasonTilt];
    readonly worst: number;
    readonly mean: number;
  }[] = [];
  // from equal seasons to unequal, so that of equals the first stays
  for (let length = 6; length >= LEAST_MONTHS; length -= 1) {
    for (let first = 0; first < (length === 6 ? 6 : 12); first += 1) {
      const one = monthsFrom(first, length);
      const other = monthsFrom(first + length, 12 - length);
      const oneKeys = [...judgedMonths.keys()].filter((k) => one.includes(judgedMonths[k]!));
      const otherKeys = [...judgedMonths.keys()].filter((k) => other.includes(judgedMonths[k]!));
      // a season without demand keeps the tilt of the other: nobody need climb for it
      const oneBest = bestFor(oneKeys.length > 0 ? oneKeys : otherKeys);
      const otherBest = bestFor(otherKeys.length > 0 ? otherKeys : oneKeys);
      const ratios = [
        ...oneKeys.map((k) => ratiosByTilt[oneBest]![k]!),
        ...otherKeys.map((k) => ratiosByTilt[otherBest]![k]!),
      ];
      pairs.push({
        seasons: [
          { tiltDeg: minTiltDeg + oneBest, months: one },
          { tiltDeg: minTiltDeg + otherBest, months: other },
        ],
        worst: Math.min(...ratios),
        mean: mean(ratios),
      });
    }
  }
  const best = Math.max(...pairs.map(({ worst }) => worst));
  return pairs
    .filter(({ worst }) => worst >= best * (1 - EQUAL_FRAC))
    .reduce((sofar, pair) => (pair.mean > sofar.mean * (1 + 1e-9) ? pair : sofar)).seasons;
}

function monthsFrom(first: number, length: number): readonly number[] {
  return Array.from({ length }, (_, i) => (first + i) % 12);
}
