import { extraterrestrialDailyKWhPerM2ByMonth } from "../../astronomy/index.ts";
import { mean, within } from "../../numerics/index.ts";
import type { Climate } from "../climate-at.ts";
import { extremeTemperatures } from "../extremes.ts";
import { RECORD_SHARE_OF_GAP } from "../tables.ts";

/** Figures that a builder brought for a place. */
export interface OwnFigures {
  /** Of the place, -90 to 90. */
  readonly latitudeDeg: number;
  /** Monthly means of daily global horizontal irradiation, 12 entries, 0 to 15. */
  readonly ghiDailyKWhPerM2ByMonth: readonly number[];
  /** Where they come from: an instrument at the place, a printed table or data service, or a guess. */
  readonly origin: "measured" | "datasheet" | "estimate";
  /** Who says so, in words that stand within a sentence: "the farm's weather station". */
  readonly source: string;
  /** Standard deviation of the error of a monthly value, 0.01 to 1; the usual one of the origin when left out. */
  readonly ghiUncertaintyFrac?: number | undefined;
  /** 12 entries, -90 to 60; the map's are kept when left out. */
  readonly meanTempCByMonth?: readonly number[] | undefined;
  /**
   * Twelve times sixteen equally likely daily irradiations over the month's mean, dullest first, each 0 to 16; the map's
   * are kept when left out.
   */
  readonly dailyGhiQuantilesByMonth?: readonly (readonly number[])[] | undefined;
  /** The lowest and the highest hour of a typical year; worked out from the months when left out. */
  readonly lowestTempC?: number | undefined;
  readonly highestTempC?: number | undefined;
}

/**
 * How far a single month may be off. Measured: an instrument's 5 % and a few years that do not stand for all. Printed:
 * what satellites and typical years do. An estimate is no better than the map.
 *
 * @source judgement, from memory of station comparisons
 */
const UNCERTAINTY_FRAC = { measured: 0.08, datasheet: 0.1, estimate: 0.2 } as const;

const ORIGIN_WORDS = {
  measured: "own figures, measured",
  datasheet: "own figures, published",
  estimate: "own figures, an estimate",
} as const;

/**
 * A climate with the builder's own figures in place of the grid's.
 *
 * The days' spread within a month stays the grid's unless it is given. Temperatures given are taken as those of the site, at its own
 * height; the record cold lies below the lowest hour of a typical year by the same share of its gap to the coldest month
 * as everywhere (tables.ts), without the allowance for the fit where that hour is known.
 *
 * @throws RangeFault outside the ranges of OwnFigures
 */
export function withOwnFigures(climate: Climate, own: OwnFigures): Climate {
  const ghiDailyKWhPerM2ByMonth = twelve("ghiDailyKWhPerM2", own.ghiDailyKWhPerM2ByMonth, 0, 15);
  const said = `${ORIGIN_WORDS[own.origin]}: ${own.source}`;
  const usual =
    own.origin === "estimate"
      ? Math.max(UNCERTAINTY_FRAC.estimate, climate.ghiUncertaintyFrac)
      : UNCERTAINTY_FRAC[own.origin];
  return {
    ...climate,
    ghiDailyKWhPerM2ByMonth,
    clearnessFracByMonth: clearnessFracByMonth(ghiDailyKWhPerM2ByMonth, own.latitudeDeg),
    ghiUncertaintyFrac: within("ghiUncertaintyFrac", own.ghiUncertaintyFrac ?? usual, 0.01, 1),
    ...(own.dailyGhiQuantilesByMonth === undefined
      ? {}
      : { dailyGhiQuantilesByMonth: ownShares(own.dailyGhiQuantilesByMonth) }),
    ...temperatures(climate, own),
    source: {
      ...climate.source,
      irradiation: said,
      ...(own.meanTempCByMonth === undefined ? {} : { temperature: said }),
    },
  };
}

const SHARES = 16;

/** As given but for their mean, which rounding has moved from 1; even days for a month without light. */
function ownShares(sharesByMonth: readonly (readonly number[])[]): readonly (readonly number[])[] {
  within("months of dailyGhiQuantiles", sharesByMonth.length, 12, 12);
  return sharesByMonth.map((shares) => {
    within("dailyGhiQuantiles of a month", shares.length, SHARES, SHARES);
    const all = mean(shares.map((share) => within("dailyGhiQuantile", share, 0, SHARES)));
    return shares.map((share) => (all > 0 ? share / all : 1));
  });
}

/** Ratio to the extraterrestrial; 0 in polar night, and never above 1 where twilight would make it. */
export function clearnessFracByMonth(
  ghiDailyKWhPerM2ByMonth: readonly number[],
  latitudeDeg: number,
): readonly number[] {
  const outside = extraterrestrialDailyKWhPerM2ByMonth(latitudeDeg);
  return ghiDailyKWhPerM2ByMonth.map((ghi, month) =>
    outside[month]! > 0 ? Math.min(1, ghi / outside[month]!) : 0,
  );
}

function temperatures(
  climate: Climate,
  own: OwnFigures,
): Pick<Climate, "meanTempCByMonth" | "designColdTempC" | "recordColdTempC" | "designHotTempC"> {
  const meanTempCByMonth =
    own.meanTempCByMonth === undefined
      ? climate.meanTempCByMonth
      : twelve("meanTempC", own.meanTempCByMonth, -90, 60);
  const coldestMonthTempC = Math.min(...meanTempCByMonth);
  const hottestMonthTempC = Math.max(...meanTempCByMonth);
  const fitted =
    own.meanTempCByMonth === undefined
      ? climate
      : extremeTemperatures({ coldestMonthTempC, hottestMonthTempC });
  const designHotTempC =
    own.highestTempC === undefined
      ? fitted.designHotTempC
      : within("highestTempC", own.highestTempC, hottestMonthTempC, 65);
  if (own.lowestTempC === undefined) {
    const { designColdTempC, recordColdTempC } = fitted;
    return { meanTempCByMonth, designColdTempC, recordColdTempC, designHotTempC };
  }
  const designColdTempC = within("lowestTempC", own.lowestTempC, -95, coldestMonthTempC);
  const recordColdTempC = designColdTempC - RECORD_SHARE_OF_GAP * (coldestMonthTempC - designColdTempC);
  return { meanTempCByMonth, designColdTempC, recordColdTempC, designHotTempC };
}

function twelve(name: string, values: readonly number[], min: number, max: number): readonly number[] {
  within(`months of ${name}`, values.length, 12, 12);
  return values.map((value) => within(name, value, min, max));
}
