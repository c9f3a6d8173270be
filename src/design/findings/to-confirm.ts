import type { Brief, Given } from "../brief.ts";
import { chainOf, chainUnder } from "../chain/chain.ts";
import { type AssumedAnswer, assumedAnswers } from "../chain/order.ts";
import { fixed, plain } from "../chain/words.ts";
import type { World } from "../design.ts";
import type { Rule, Worked } from "./rule.ts";

/** A stand-in is moved by this share to see what it moves. @source judgement */
const SWING_FRAC = 0.2;

/** So many are named; the rest is counted. */
const NAMED = 3;

/** Answers that move the sun itself, so that the whole chain must be worked anew. */
const MOVES_SUN = ["place.horizonDeg", "place.snowWeeks"];

/**
 * Facts that can be found out, by path: what they are called and their unit. Wishes (days, margin, weights) are the builder's
 * own and are not weighed. Devices and scenes are told apart by their place in the list.
 */
const WORDS: Readonly<Record<string, readonly [what: string, unit: string]>> = {
  "place.horizonDeg": ["what shades the panel", "°"],
  "place.soilingFrac": ["dirt on the panel", ""],
  "place.snowWeeks": ["weeks of snow on the panel", ""],
  "view.scenes.distanceM": ["distance of scene", "m"],
  "view.scenes.widthM": ["width of scene", "m"],
  "loads.devices.dayW": ["power of", "W"],
  "loads.devices.nightExtraW": ["infrared power of", "W"],
  "autonomy.visitDays": ["days until somebody comes by", ""],
  "mounting.cameraHeightM": ["height of the camera", "m"],
  "mounting.poleDiameterMm": ["diameter of the pole", "mm"],
  "mounting.gustMPerS": ["design gust", "m/s"],
  "mounting.frostDepthM": ["frost depth", "m"],
  "link.distanceM": ["distance to the far end", "m"],
  "link.obstacleDistanceM": ["distance of what stands in the way", "m"],
  "link.obstacleTopM": ["height of what stands in the way", "m"],
  "link.obstacleDepthM": ["depth of what stands in the way", "m"],
  "link.farHeightM": ["height of the far end", "m"],
  "link.otherPosts": ["other posts at the far end", ""],
};

/** The path without the place in a list. */
function kindOf(path: string): string {
  return path.replace(/\.\d+\./, ".");
}

function called({ path, value }: AssumedAnswer, brief: Brief): string {
  const [, index] = /\.(\d+)\./.exec(path) ?? [];
  const [what, unit] = WORDS[kindOf(path)]!;
  const which =
    index === undefined
      ? ""
      : path.startsWith("loads.devices")
        ? ` ${brief.loads.devices[Number(index)]!.name}`
        : ` ${Number(index) + 1}`;
  return `${what}${which} (${plain(value as number)}${unit === "" || unit === "°" ? unit : ` ${unit}`})`;
}

/** The brief with one number, deep inside it, made larger or smaller. */
function moved<T>(part: T, keys: readonly string[], ratio: number): T {
  const [key, ...rest] = keys;
  if (key === undefined) {
    const given = part as Given<number>;
    return { ...given, value: given.value * ratio } as T;
  }
  if (Array.isArray(part)) {
    return part.map((one, i) => (String(i) === key ? moved(one, rest, ratio) : one)) as T;
  }
  return { ...part, [key]: moved((part as Record<string, unknown>)[key], rest, ratio) };
}

/** By how much the high price moves when the answer is a fifth off, whichever way costs more. */
function swing(answer: AssumedAnswer, design: Worked, world: World): number {
  const { brief, climate, sun, money } = design;
  const refusal = design.withheld.find(({ stage }) => stage === "climate")?.because ?? null;
  const costs = [1 + SWING_FRAC, 1 - SWING_FRAC].map((ratio) => {
    const other = moved(brief, answer.path.split("."), ratio);
    const worked = MOVES_SUN.includes(answer.path)
      ? chainOf(other, world)
      : chainUnder(other, { climate, sun, refusal });
    return Math.abs(worked.money.highTotal - money.highTotal);
  });
  return Math.max(...costs);
}

/** Which stand-ins to replace by a measurement before buying: once everything has been asked. */
export const toConfirm: Rule = (design, world) => {
  const { brief, money } = design;
  if (brief.openTopics.length > 0) return null;
  const assumed = assumedAnswers(brief);
  const heaviest = assumed
    .filter(({ path, value }) => kindOf(path) in WORDS && value !== 0)
    .map((answer) => ({ answer, cost: swing(answer, design, world) }))
    .filter(({ cost }) => cost > 0.005 * money.highTotal)
    .toSorted((a, b) => b.cost - a.cost)
    .slice(0, NAMED);
  if (assumed.length === 0) return null;
  const rest = assumed.length - heaviest.length;
  const names = heaviest
    .map(({ answer, cost }) => `${called(answer, brief)}, ${fixed(cost, 0)} ${money.currency}`)
    .join("; ");
  return {
    id: "assumed.confirm",
    severity: "note",
    says:
      heaviest.length === 0
        ? `${assumed.length} answers are stand-ins; none of them by itself moves the price much.`
        : `${assumed.length} answers are stand-ins. What a fifth more or less of each would move the price by: ${names}${rest > 0 ? `; the other ${rest} move it less or cannot be weighed so` : ""}.`,
    change: "Measure these before buying, or read them off a data sheet, and answer again.",
    numbers: {
      assumed: assumed.length,
      ...Object.fromEntries(heaviest.map(({ answer, cost }) => [answer.path, cost])),
    },
    topics: [...new Set(assumed.map(({ topic }) => `${topic}`))],
  };
};
