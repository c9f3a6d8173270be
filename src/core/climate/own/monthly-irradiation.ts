import { extraterrestrialDailyKWhPerM2ByMonth } from "../../astronomy/index.ts";
import { sum, within } from "../../numerics/index.ts";

/** How twelve monthly figures of sun are printed; "a month" is the sum of all days. */
export type IrradiationUnit = "kWh/m2 a day" | "MJ/m2 a day" | "kWh/m2 a month";

/** What is wrong or doubtful about twelve figures. Months are 0 = January. */
export type IrradiationCheck =
  | { readonly code: "wrong-count"; readonly got: number; readonly wanted: 12 }
  | { readonly code: "not-a-number"; readonly month: number }
  | { readonly code: "negative"; readonly month: number; readonly got: number }
  /** More than falls on the level outside the atmosphere; both in kWh/m2 a day. */
  | {
      readonly code: "above-extraterrestrial";
      readonly month: number;
      readonly gotKWhPerM2: number;
      readonly limitKWhPerM2: number;
    }
  /** Impossible or far too dull as typed, right in another unit. */
  | {
      readonly code: "looks-like-monthly-sums" | "looks-like-MJ" | "looks-like-daily-kWh";
      readonly suggestedUnit: IrradiationUnit;
    }
  /** Bright when the place is dark: the correlation with the sun outside the atmosphere, here and at its mirror place. */
  | {
      readonly code: "looks-like-other-hemisphere";
      readonly correlation: number;
      readonly mirroredCorrelation: number;
    };

export interface OwnIrradiation {
  /** null where the figures cannot be used: a check says why. */
  readonly ghiDailyKWhPerM2ByMonth: readonly number[] | null;
  readonly checks: readonly IrradiationCheck[];
}

/** February of four years, so that sums of long averages come out right. */
const DAYS_BY_MONTH = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const MJ_PER_KWH = 3.6;

/** Twilight and rounding: polar night is printed as 0.02 at times. */
const TRACE_KWH_PER_M2 = 0.05;

/** No month anywhere gets more outside the atmosphere: December at the south pole has 13.2. */
const WORLD_LIMIT_KWH_PER_M2 = 13.5;

/** A year whose brightest month keeps less than this is nowhere: the dullest in the embedded grid has 0.32. */
const DULLEST_BEST_MONTH_FRAC = 0.25;
/** The same where the place is not known, in kWh/m2 a day. */
const DULLEST_BEST_MONTH_KWH_PER_M2 = 1.5;

/** Nearer the equator the rains, not the sun's height, decide which months are bright. */
const SEASONS_BEYOND_LATITUDE_DEG = 20;

const SUGGESTION = {
  "kWh/m2 a day": "looks-like-daily-kWh",
  "MJ/m2 a day": "looks-like-MJ",
  "kWh/m2 a month": "looks-like-monthly-sums",
} as const satisfies Record<IrradiationUnit, IrradiationCheck["code"]>;

/**
 * Twelve figures of global horizontal irradiation, in the unit they are printed in, made daily means and checked.
 *
 * @param own.values       January first; anything may be handed over, what cannot be is told in the checks
 * @param own.unit         of all twelve
 * @param own.latitudeDeg  of the place they are for, -90 to 90; without it only the limits of the whole world are known
 * @returns kWh/m2 a day; null with a wrong count, with what is no number or negative, and above the extraterrestrial
 * @throws RangeFault for a latitude out of range
 * @source 1 kWh = 3.6 MJ; the thresholds of the suggestions are judgement, held against every cell of the embedded grid
 */
export function monthlyIrradiation(own: {
  readonly values: readonly number[];
  readonly unit: IrradiationUnit;
  readonly latitudeDeg?: number | undefined;
}): OwnIrradiation {
  const { values, unit, latitudeDeg } = own;
  const limits =
    latitudeDeg === undefined
      ? DAYS_BY_MONTH.map(() => WORLD_LIMIT_KWH_PER_M2)
      : extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg);
  if (values.length !== 12) {
    return refused([{ code: "wrong-count", got: values.length, wanted: 12 }]);
  }
  const bad = values.flatMap((value, month): IrradiationCheck[] => {
    if (!Number.isFinite(value)) return [{ code: "not-a-number", month }];
    return value < 0 ? [{ code: "negative", month, got: value }] : [];
  });
  if (bad.length > 0) return refused(bad);

  const daily = inDailyKWh(values, unit);
  const above = daily.flatMap((gotKWhPerM2, month): IrradiationCheck[] => {
    const limitKWhPerM2 = limits[month]!;
    return gotKWhPerM2 > limitKWhPerM2 + TRACE_KWH_PER_M2
      ? [{ code: "above-extraterrestrial", month, gotKWhPerM2, limitKWhPerM2 }]
      : [];
  });
  const isLikely = (candidate: readonly number[]): boolean => {
    const isBelow = candidate.every((value, month) => value <= limits[month]! + TRACE_KWH_PER_M2);
    if (latitudeDeg === undefined) return isBelow && Math.max(...candidate) >= DULLEST_BEST_MONTH_KWH_PER_M2;
    return (
      isBelow &&
      candidate.some((value, month) => value >= DULLEST_BEST_MONTH_FRAC * limits[month]! && value > 0)
    );
  };
  const suggestions = isLikely(daily)
    ? []
    : (Object.keys(SUGGESTION) as IrradiationUnit[])
        .filter((other) => other !== unit && isLikely(inDailyKWh(values, other)))
        .map((suggestedUnit): IrradiationCheck => ({ code: SUGGESTION[suggestedUnit], suggestedUnit }));
  if (above.length > 0) return refused([...above, ...suggestions]);
  return {
    ghiDailyKWhPerM2ByMonth: daily,
    checks: [...suggestions, ...(latitudeDeg === undefined ? [] : hemisphereCheck(daily, latitudeDeg))],
  };
}

function refused(checks: readonly IrradiationCheck[]): OwnIrradiation {
  return { ghiDailyKWhPerM2ByMonth: null, checks };
}

function inDailyKWh(values: readonly number[], unit: IrradiationUnit): readonly number[] {
  switch (unit) {
    case "kWh/m2 a day":
      return [...values];
    case "MJ/m2 a day":
      return values.map((value) => value / MJ_PER_KWH);
    case "kWh/m2 a month":
      return values.map((value, month) => value / DAYS_BY_MONTH[month]!);
  }
}

function hemisphereCheck(daily: readonly number[], latitudeDeg: number): readonly IrradiationCheck[] {
  if (Math.abs(within("latitudeDeg", latitudeDeg, -90, 90)) < SEASONS_BEYOND_LATITUDE_DEG) return [];
  const here = correlation(daily, extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg));
  const mirrored = correlation(daily, extraterrestrialDailyKWhPerM2ByMonth(-latitudeDeg));
  return here < 0 && mirrored > 0.5
    ? [{ code: "looks-like-other-hemisphere", correlation: here, mirroredCorrelation: mirrored }]
    : [];
}

/** Pearson's coefficient; 0 where one of the two does not vary. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const aMean = sum(a) / a.length;
  const bMean = sum(b) / b.length;
  const together = sum(a.map((value, i) => (value - aMean) * (b[i]! - bMean)));
  const spread = Math.sqrt(sum(a.map((v) => (v - aMean) ** 2)) * sum(b.map((v) => (v - bMean) ** 2)));
  return spread > 0 ? together / spread : 0;
}
