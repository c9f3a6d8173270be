import { sum } from "../../core/numerics/index.ts";
import type { Brief } from "../brief.ts";
import type { Money, Parts } from "../design.ts";
import { priceCurrency } from "../practice/prices.ts";

export { moneyNotes } from "./money-notes.ts";

/** What is still to be bought, with the allowance for the trip that is always forgotten. */
export function moneyStage(brief: Brief, parts: Parts): Money {
  const { currency, unitsPerUsd } = priceCurrency(brief.currency);
  const lowParts = sum(parts.lines.map(({ lowPrice }) => lowPrice));
  const highParts = sum(parts.lines.map(({ highPrice }) => highPrice));
  const contingencyFrac = brief.money.contingencyFrac.value;
  return {
    currency,
    unitsPerUsd,
    lowParts,
    highParts,
    lowTotal: lowParts * (1 + contingencyFrac),
    highTotal: highParts * (1 + contingencyFrac),
    contingencyFrac,
    ceiling: brief.money.ceiling.value,
  };
}
