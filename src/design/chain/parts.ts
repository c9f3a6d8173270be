import type { Brief, TopicId } from "../brief.ts";
import type { Part, Parts } from "../design.ts";
import * as prices from "../practice/prices.ts";
import { assumedAnswers, topicsUnder } from "./order.ts";
import type { Worked } from "./part-draft.ts";
import { deviceParts } from "./parts-devices.ts";
import { mountParts } from "./parts-mount.ts";
import { powerParts } from "./parts-power.ts";
import { wireParts } from "./parts-wire.ts";

export { partsNotes } from "./parts-notes.ts";

/** What to buy: generic parts with the least specification to buy by. */
export function partsStage(brief: Brief, worked: Worked): Parts {
  const { unitsPerUsd } = prices.priceCurrency(brief.currency);
  const assumedTopics = new Set<TopicId>(assumedAnswers(brief).map(({ topic }) => topic));
  const drafts = [
    ...powerParts(brief, worked),
    ...deviceParts(brief, worked),
    ...mountParts(brief, worked),
    ...wireParts(brief, worked),
  ];
  return {
    lines: drafts
      .filter(({ quantity }) => quantity > 0)
      .map(({ price, because, isOwned = false, ...part }): Part => {
        const [low, high] = isOwned ? [0, 0] : price;
        const topics = new Set(because.flatMap((stage) => [...topicsUnder(stage)]));
        return {
          ...part,
          lowPrice: round(low * part.quantity * unitsPerUsd),
          highPrice: round(high * part.quantity * unitsPerUsd),
          isOwned,
          because,
          restsOnAssumed: [...topics].some((topic) => assumedTopics.has(topic)),
        };
      }),
  };
}

function round(amount: number): number {
  return Math.round(amount * 100) / 100;
}
