import type { Given } from "../brief.ts";
import { measurableCalled, measurableWords, pathKind } from "../chain/assumed.ts";
import { chainOf, chainUnder } from "../chain/chain.ts";
import { type AssumedAnswer, assumedAnswers } from "../chain/order.ts";
import { atVoltage } from "../chain/settled-bank.ts";
import { fixed } from "../chain/words.ts";
import type { World } from "../design.ts";
import type { Rule, Worked } from "./rule.ts";

/** A stand-in is moved by this share to see what it moves. @source judgement */
const SWING_FRAC = 0.2;

/** So many are named; the rest is counted. */
const NAMED = 3;

/** Answers that move the sun itself, so that the whole chain must be worked anew. */
const MOVES_SUN = ["place.snowWeeks"];

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

/**
 * By how much the high price moves when the answer is a fifth off, whichever way costs more. A simulated pair is taken as moving
 * with the handbook's sizes: a run through the weather years for each answer would keep the builder waiting.
 */
function swing(answer: AssumedAnswer, design: Worked, world: World): number {
  const { brief, climate, sun, battery, money } = design;
  const refusal = design.withheld.find(({ stage }) => stage === "climate")?.because ?? null;
  const costs = [1 + SWING_FRAC, 1 - SWING_FRAC].map((ratio) => {
    const other = moved(
      battery === null ? brief : atVoltage(brief, battery.bankV),
      answer.path.split("."),
      ratio,
    );
    const worked = MOVES_SUN.includes(answer.path)
      ? chainOf(other, world)
      : chainUnder(other, { climate, sun, refusal }, world, design);
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
    .filter(({ path, value }) => pathKind(path) in measurableWords && value !== 0)
    .map((answer) => ({ answer, cost: swing(answer, design, world) }))
    .filter(({ cost }) => cost > 0.005 * money.highTotal)
    .toSorted((a, b) => b.cost - a.cost)
    .slice(0, NAMED);
  if (assumed.length === 0) return null;
  const rest = assumed.length - heaviest.length;
  const names = heaviest
    .map(({ answer, cost }) => `${measurableCalled(answer, brief)}, ${fixed(cost, 0)} ${money.currency}`)
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
