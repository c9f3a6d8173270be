import { within } from "../numerics/index.ts";
import type { Plane } from "./beam.ts";
import { monthSun, partedMonth } from "./level-month.ts";
import { planeMonth, planeViews } from "./monthly-poa.ts";
import { openSky } from "./open-sky.ts";

export type GhiFromTilted =
  | { readonly kind: "figures"; readonly ghiDailyKWhPerM2ByMonth: readonly number[] }
  | {
      /** A month's figure is more than the plane can get there under any sky. */
      readonly kind: "refused";
      readonly why: "above-possible";
      /** 0 = January, the first such month. */
      readonly month: number;
      readonly gotKWhPerM2: number;
      /** The most that this plane gets in that month. */
      readonly limitKWhPerM2: number;
    };

/** More of the extraterrestrial than a month ever keeps is asked, so that a bright guess is told and not cut. */
const CLEAREST_INDEX = 1;
const RUNGS = 50;
/** A month without sun still may hold a trace of twilight. */
const DARK_LIMIT_KWH_PER_M2 = 0.1;
const HALVINGS = 50;
const ROUNDING_KWH_PER_M2 = 1e-9;

/**
 * Monthly global horizontal irradiation behind a table of irradiation on a tilt ("peak sun hours" of a panel): monthlyPoa
 * read backwards, month by month, under an open horizon.
 *
 * Where two values give the same on the tilt (a plane that hardly sees the sun gets less beam than it loses sky when the
 * air clears) the duller one is taken.
 *
 * @param tilted.poaDailyKWhPerM2ByMonth  12 entries, 0 to 20
 * @param tilted.latitudeDeg              -90 to 90
 * @param tilted.tiltDeg                  0 to 90
 * @param tilted.azimuthDeg               0 to 360
 * @param tilted.albedoByMonth            12 entries, 0 to 1
 * @returns kWh/m2 per day for each month, or the first month that cannot be
 * @accuracy the same figures through monthlyPoa again: 1e-6 kWh/m2. A table that was made hour by hour may come out 4 to
 *           19 % too dull in dull winters, by as much as monthlyPoa lies above such a sum
 * @throws RangeFault outside the ranges above
 * @source monthlyPoa's, by bracketing and halving
 */
export function ghiFromTilted(
  tilted: Plane & {
    readonly poaDailyKWhPerM2ByMonth: readonly number[];
    readonly latitudeDeg: number;
    readonly albedoByMonth: readonly number[];
  },
): GhiFromTilted {
  within("months of poaDailyKWhPerM2ByMonth", tilted.poaDailyKWhPerM2ByMonth.length, 12, 12);
  within("months of albedoByMonth", tilted.albedoByMonth.length, 12, 12);
  const suns = tilted.poaDailyKWhPerM2ByMonth.map((_, month) => monthSun({ ...tilted, month }));
  const views = planeViews({
    levels: suns,
    sky: openSky(suns, {}),
    plane: tilted,
    albedoByMonth: tilted.albedoByMonth,
  });
  const ghiDailyKWhPerM2ByMonth: number[] = [];
  for (const [month, poaDailyKWhPerM2] of tilted.poaDailyKWhPerM2ByMonth.entries()) {
    const wanted = within("poaDailyKWhPerM2", poaDailyKWhPerM2, 0, 20);
    const sun = suns[month]!;
    const onPlane = (ghi: number): number =>
      planeMonth(partedMonth(sun, ghi), views[month]!).poaDailyKWhPerM2;
    const most = Math.max(CLEAREST_INDEX * sun.extraterrestrialDailyKWhPerM2, DARK_LIMIT_KWH_PER_M2);
    const rungs = withTops(
      onPlane,
      Array.from({ length: RUNGS + 1 }, (_, i) => (most * i) / RUNGS),
    );
    const first = rungs.findIndex((ghi) => onPlane(ghi) >= wanted - ROUNDING_KWH_PER_M2);
    if (first < 0) {
      const limitKWhPerM2 = Math.max(...rungs.map(onPlane));
      return { kind: "refused", why: "above-possible", month, gotKWhPerM2: wanted, limitKWhPerM2 };
    }
    ghiDailyKWhPerM2ByMonth.push(
      first === 0 ? 0 : crossing(onPlane, { wanted, below: rungs[first - 1]!, above: rungs[first]! }),
    );
  }
  return { kind: "figures", ghiDailyKWhPerM2ByMonth };
}

/**
 * The rungs and, between the neighbours of each that is higher than they, the top of the function itself: what is wanted
 * may lie just under it.
 */
function withTops(valueAt: (x: number) => number, rungs: readonly number[]): readonly number[] {
  const values = rungs.map(valueAt);
  return rungs.flatMap((rung, i) => {
    if (i === 0 || i === rungs.length - 1) return [rung];
    if (values[i]! < values[i - 1]! || values[i]! < values[i + 1]!) return [rung];
    let low = rungs[i - 1]!;
    let high = rungs[i + 1]!;
    for (let step = 0; step < HALVINGS; step += 1) {
      const third = (high - low) / 3;
      if (valueAt(low + third) < valueAt(high - third)) low += third;
      else high -= third;
    }
    const top = (low + high) / 2;
    return top < rung ? [top, rung] : [rung, top];
  });
}

/** Where a continuous function, below the wanted value at one end and not below it at the other, first was seen to reach it. */
function crossing(
  valueAt: (x: number) => number,
  bracket: { readonly wanted: number; readonly below: number; readonly above: number },
): number {
  let { below, above } = bracket;
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (below + above) / 2;
    if (valueAt(middle) < bracket.wanted) below = middle;
    else above = middle;
  }
  return above;
}
