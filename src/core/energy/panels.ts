import { within } from "../numerics/index.ts";

export interface PanelLayout {
  readonly panelW: number;
  readonly count: number;
  readonly arrayW: number;
  /** Rating beyond what was asked, over what was asked; 0 when nothing was asked. */
  readonly overshootFrac: number;
  /**
   * What chose this size: `one-fits` only one size may be mounted; `panel-size` a larger panel was barred
   * that would have needed fewer; `fewest-panels`; `least-overshoot` among sizes that need as few.
   */
  readonly decidedBy: "one-fits" | "panel-size" | "fewest-panels" | "least-overshoot";
  /** More panels than may be mounted, because no size that may be mounted does with fewer. */
  readonly exceedsMaxCount: boolean;
}

/**
 * Whole panels of one size for an array: the fewest panels, then the least rating beyond what was asked.
 *
 * @param array.requiredW   0 or more; at least one panel is laid out
 * @param array.sizesW      ratings that can be bought, each above 0
 * @param array.largestW    largest single panel that may be mounted; no limit when left out
 * @param array.maxCount    1 to 10000; no limit when left out
 * @returns the layout, or null when no size may be mounted
 * @throws RangeFault outside the ranges above
 * @source common practice, no source; the order of preference is our own
 */
export function layoutPanels(array: {
  readonly requiredW: number;
  readonly sizesW: readonly number[];
  readonly largestW?: number;
  readonly maxCount?: number;
}): PanelLayout | null {
  const requiredW = within("requiredW", array.requiredW, 0, 1e7);
  const largestW = within("largestW", array.largestW ?? 1e5, 0, 1e5);
  const maxCount = within("maxCount", array.maxCount ?? 10_000, 1, 10_000);
  const laidOut = array.sizesW
    .map((panelW) => {
      const count = Math.max(1, Math.ceil(requiredW / within("panelW", panelW, 0.1, 1e5) - 1e-9));
      return { panelW, count, arrayW: count * panelW };
    })
    .sort((a, b) => a.count - b.count || a.arrayW - b.arrayW);
  const mountable = laidOut.filter(({ panelW }) => panelW <= largestW);
  const best = mountable[0];
  if (!best) return null;
  const decidedBy =
    laidOut[0]!.count < best.count
      ? "panel-size"
      : mountable.length === 1
        ? "one-fits"
        : mountable[1]!.count === best.count
          ? "least-overshoot"
          : "fewest-panels";
  return {
    ...best,
    overshootFrac: requiredW > 0 ? best.arrayW / requiredW - 1 : 0,
    decidedBy,
    exceedsMaxCount: best.count > maxCount,
  };
}
