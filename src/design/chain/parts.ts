import type { Brief } from "../brief.ts";
import type { Note, Part, Parts, StageName } from "../design.ts";
import * as prices from "../practice/prices.ts";
import { assumedFacts } from "./assumed.ts";
import { notesByStage } from "./notes.ts";
import type { Worked } from "./part-draft.ts";
import { deviceParts } from "./parts-devices.ts";
import { mountParts } from "./parts-mount.ts";
import { powerParts } from "./parts-power.ts";
import { wireParts } from "./parts-wire.ts";

/** What to buy: generic parts with the least specification to buy by. */
export function partsStage(brief: Brief, worked: Worked): Parts {
  const { unitsPerUsd } = prices.priceCurrency(brief.currency);
  const assumed = assumedFacts(brief).map(({ path }) => `brief.${path}.`);
  const drafts = [
    ...powerParts(brief, worked),
    ...deviceParts(brief, worked),
    ...mountParts(brief, worked),
    ...wireParts(brief, worked),
  ];
  return {
    lines: drafts
      .filter(({ quantity }) => quantity > 0)
      .map(({ price, isOwned = false, ...part }): Part => {
        const [low, high] = isOwned ? [0, 0] : price;
        return {
          ...part,
          lowPrice: round(low * part.quantity * unitsPerUsd),
          highPrice: round(high * part.quantity * unitsPerUsd),
          isOwned,
          restsOnAssumed: part.figures
            .flatMap((figure) => answersOf(figure))
            .some((answer) => assumed.some((path) => path.startsWith(`${answer}.`))),
        };
      }),
  };
}

/** The note behind a figure, by its path. */
function noteOf(path: string): Note | undefined {
  const [stage, field] = path.split(".");
  return field === undefined ? undefined : notesByStage[stage as StageName]?.[field];
}

/**
 * Answers that a figure reads within its own stage, going by the inputs its note names. What it inherits from the stages
 * before is left out: nearly everything rests on everything else, and a mark on every line would say nothing.
 */
function answersOf(path: string, seen: ReadonlySet<string> = new Set()): readonly string[] {
  if (path.startsWith("brief.")) return [path];
  if (seen.has(path)) return [];
  const [stage] = path.split(".");
  return (noteOf(path)?.inputs ?? [])
    .filter((input) => input.startsWith("brief.") || input.startsWith(`${stage}.`))
    .flatMap((input) => answersOf(input, new Set([...seen, path])));
}

function round(amount: number): number {
  return Math.round(amount * 100) / 100;
}
