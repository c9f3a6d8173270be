import { formatQuantity, type Unit } from "../../core/units/index.ts";
import type { QuantityHeard } from "./quantity-heard.ts";

/** What was typed, in one spelling, and what it comes to in the unit shown: "about 25 ft = 7.6 m (6.1 to 9.1 m)". */
export function heardText(given: {
  readonly ends: Pick<QuantityHeard, "low" | "best" | "high">;
  readonly doubt: QuantityHeard["doubt"];
  /** "20 ft", "20 to 30 ft", "25 ft +- 5 ft". */
  readonly typed: string;
  /** True where `typed` is already all there is to say, in the unit shown. */
  readonly isShownUnit: boolean;
  /** What was given or taken has a middle worth saying. */
  readonly hasMiddle: boolean;
  /** True where the doubt lies in the unit itself: a step, a fist. */
  readonly isRough: boolean;
  readonly shown: Unit;
}): string {
  const { ends, doubt, typed, isShownUnit, hasMiddle, isRough, shown } = given;
  const show = (value: number): string => formatQuantity({ value, unit: shown.symbol });
  const best = isShownUnit ? "" : ` = ${isRough ? "about " : ""}${show(ends.best)}`;
  const span = rangeText(show(ends.low), show(ends.high));
  switch (doubt) {
    case "none":
      return `${typed}${best}`;
    case "about":
      return `${isRough ? "" : "about "}${typed}${best} (${span})`;
    case "range":
      if (hasMiddle) return `${typed}${best} (${span})`;
      return isShownUnit ? typed : `${typed} = ${span}`;
    case "atLeast":
      return `at least ${typed}${best}`;
    case "under":
      return `at most ${typed}${best}`;
  }
}

/** "6.1 to 9.1 m": a unit that both ends share is said once. */
export function rangeText(low: string, high: string): string {
  if (low === high) return low;
  const unit = / .*$/.exec(high)?.[0] ?? "";
  const isShared = unit !== "" && / .*$/.exec(low)?.[0] === unit;
  return `${isShared ? low.slice(0, -unit.length) : low} to ${high}`;
}
