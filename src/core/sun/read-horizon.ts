import { turnDeg } from "../astronomy/index.ts";
import type { UnitSystem } from "../units/index.ts";
import { type HorizonProfile, horizonFrom, type Obstacle } from "./horizon.ts";
import { type HorizonRefused, refused, saidNumber } from "./horizon-refusal.ts";
import { sizeOf } from "./horizon-size.ts";
import { type HorizonFact, horizonFacts } from "./horizon-words.ts";

/** One obstacle as it was understood, to be said back to the builder. */
export interface UnderstoodObstacle extends Obstacle {
  /** The width was not said: an eighth of the compass, or what a tree of that height usually has. */
  readonly isWidthAssumed: boolean;
}

export interface HorizonRead {
  readonly kind: "profile";
  readonly horizon: HorizonProfile;
  /** Empty where pairs of azimuth and elevation were given. */
  readonly obstacles: readonly UnderstoodObstacle[];
}

/** Width of what is said to stand in one direction: an eighth of the compass. @source judgement */
const WIND_WIDTH_DEG = 45;

/**
 * A builder's words about what stands round the panel, or pairs of azimuth and elevation.
 *
 * Pairs ("120:5, 180:15, 240:8") are joined by straight lines round the whole compass. Words describe obstacles with
 * upright sides before an open horizon: "hill to the south, 15° high", "tree 8 m tall, 10 m away, to the south-west",
 * "two fists to the east", "from south-east to south 12°, wall 3 m high 4 m away to the west", "10° all round". "Open"
 * is an open horizon. What is wider than said is as good as forgotten; numbers never are: one that finds no place is
 * refused.
 *
 * @param text             of a line or more
 * @param from.eyeHeightM  0 to 100, of the panel above the ground on which trees and houses stand; 0 when left out,
 *                         which makes them rather too high
 * @param from.units       in which a refusal tells lengths; metric when left out
 * @returns the profile with the obstacles as understood, or one reason why not
 * @throws RangeFault for an eye height out of range
 * @source a fist at arm's length is 10 deg, a finger 2: common practice, no source; assumed widths: judgement
 */
export function readHorizon(
  text: string,
  from: { readonly eyeHeightM?: number; readonly units?: UnitSystem } = {},
): HorizonRead | HorizonRefused {
  const plain = text.trim();
  if (/^(?:open|free|clear|flat|none|nothing|no|0)(?:\s+(?:sky|horizon))?[.!]?$/i.test(plain)) {
    return { kind: "profile", horizon: [], obstacles: [] };
  }
  const lone = /^(\d+(?:\.\d+)?)\s*(?:°|deg(?:rees)?)?$/.exec(plain);
  if (lone) return obstaclesRead([allRound(Number(lone[1]))]);
  if (/:/.test(plain) && /^[\d.:°,;\s]+$/.test(plain)) return readPairs(plain);

  const obstacles: UnderstoodObstacle[] = [];
  for (const facts of descriptions(horizonFacts(plain))) {
    const found = obstacleOf(facts, { eyeHeightM: from.eyeHeightM ?? 0, units: from.units ?? "metric" });
    if ("kind" in found) return found;
    obstacles.push(found);
  }
  if (obstacles.length === 0) {
    return refused("empty", "Say what stands where and how high, such as: hill to the south, 15° high.");
  }
  return obstaclesRead(obstacles);
}

function obstaclesRead(obstacles: readonly UnderstoodObstacle[]): HorizonRead | HorizonRefused {
  const tooHigh = obstacles.find(({ elevationDeg }) => elevationDeg > 90);
  if (tooHigh) {
    return refused("too-high", `${saidNumber(tooHigh.elevationDeg)}° is beyond straight up, which is 90°.`);
  }
  return { kind: "profile", horizon: horizonFrom({ obstacles }), obstacles };
}

function readPairs(text: string): HorizonRead | HorizonRefused {
  const horizon: { azimuthDeg: number; elevationDeg: number }[] = [];
  for (const pair of text.replace(/\s*:\s*/g, ":").split(/[,;\s]+/)) {
    const found = /^(\d+(?:\.\d+)?)°?:(\d+(?:\.\d+)?)°?$/.exec(pair);
    if (pair === "") continue;
    const azimuthDeg = Number(found?.[1] ?? Number.NaN);
    const elevationDeg = Number(found?.[2] ?? Number.NaN);
    if (!(azimuthDeg <= 360 && elevationDeg <= 90)) {
      return refused(
        "pair-out-of-range",
        `"${pair}" is no pair of azimuth (0 to 360) and elevation (0 to 90), such as 180:15.`,
      );
    }
    horizon.push({ azimuthDeg, elevationDeg });
  }
  if (horizon.length < 2) {
    return refused(
      "lone-pair",
      "One pair says nothing of the other directions: give at least two, or say it in words.",
    );
  }
  horizon.sort((a, b) => a.azimuthDeg - b.azimuthDeg);
  return { kind: "profile", horizon, obstacles: [] };
}

/**
 * The facts of each obstacle. A light break ends one only where what follows would say the same thing a second time:
 * "tree 8 m tall, 10 m away, to the south" is one, "hill south 15°, tree east 20°" are two.
 */
function descriptions(facts: readonly HorizonFact[]): readonly (readonly HorizonFact[])[] {
  const parts: { facts: HorizonFact[]; isAfterFull: boolean }[] = [{ facts: [], isAfterFull: true }];
  for (const fact of facts) {
    if (fact.kind === "break") parts.push({ facts: [], isAfterFull: fact.isFull });
    else parts.at(-1)!.facts.push(fact);
  }
  const described: HorizonFact[][] = [];
  for (const part of parts) {
    const open = described.at(-1);
    const repeats = open && part.facts.some((fact) => open.some((before) => saysOf(before) === saysOf(fact)));
    if (part.facts.length === 0 || (part.facts.length > 0 && open && !repeats && !part.isAfterFull)) {
      open?.push(...part.facts);
    } else described.push([...part.facts]);
  }
  return described;
}

/** What a fact is about: where, how high, how far, how wide. */
function saysOf(fact: HorizonFact): string {
  switch (fact.kind) {
    case "direction":
    case "either-way":
    case "all-round":
      return "where";
    case "angle":
      return fact.isWidth ? "width" : "height";
    case "length":
      return fact.role ?? "length";
    default:
      return fact.kind;
  }
}

function obstacleOf(
  facts: readonly HorizonFact[],
  from: { readonly eyeHeightM: number; readonly units: UnitSystem },
): UnderstoodObstacle | HorizonRefused {
  const sized = sizeOf(facts, from);
  if ("kind" in sized) return sized;
  const where = facts.filter((fact) => saysOf(fact) === "where");
  const first = where[0];
  if (first === undefined) {
    return refused(
      "no-direction",
      `In which direction does it stand that is ${saidNumber(sized.elevationDeg)}° high?`,
    );
  }
  if (where.length > 1) {
    return refused("no-height", "Say for each direction how high it stands there.");
  }
  if (first.kind === "either-way") {
    return refused("either-way", `"${first.words}": over north or over south? Name a direction between.`);
  }
  if (first.kind !== "direction") return allRound(sized.elevationDeg);
  if (first.toAzimuthDeg !== null) {
    return {
      fromAzimuthDeg: first.fromAzimuthDeg,
      toAzimuthDeg: first.toAzimuthDeg,
      elevationDeg: sized.elevationDeg,
      isWidthAssumed: false,
    };
  }
  const halfDeg = (sized.widthDeg ?? WIND_WIDTH_DEG) / 2;
  return {
    fromAzimuthDeg: turnDeg(first.fromAzimuthDeg - halfDeg),
    toAzimuthDeg: turnDeg(first.fromAzimuthDeg + halfDeg),
    elevationDeg: sized.elevationDeg,
    isWidthAssumed: !sized.isWidthSaid,
  };
}

function allRound(elevationDeg: number): UnderstoodObstacle {
  return { fromAzimuthDeg: 0, toAzimuthDeg: 360, elevationDeg, isWidthAssumed: false };
}
