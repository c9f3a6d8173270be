import { sayingIn, type UnitSystem } from "../units/index.ts";
import type { ProfilePoint } from "./bullington.ts";
import type { Obstacle } from "./clearance.ts";
import { type PathFact, pathFacts } from "./obstacle-words.ts";
import { lengthRefused, type PathRefused, pathRefused, saidM } from "./path-refusal.ts";
import { groundAtM } from "./terrain.ts";

/** One obstacle as it was understood, to be said back to the builder. */
export interface UnderstoodPathObstacle extends Obstacle {
  /** As the builder called it. */
  readonly noun: string;
  /** Its own height above the ground it stands on. */
  readonly heightM: number;
}

export interface ObstaclesRead {
  readonly kind: "obstacles";
  /** Nearest first; empty for a clear path. */
  readonly obstacles: readonly UnderstoodPathObstacle[];
}

/** Nothing of its kind is higher. Judgement. */
const HIGHEST_M = { trees: 110, building: 400, ridge: 3000, ground: 3000 } as const;

/** An obstacle nearer than this to an antenna stands at it, not between. */
const AT_END_M = 0.5;

/** The path that is spoken of, and the units in which it is. */
interface PathSaid {
  readonly distanceM: number;
  readonly profile?: readonly ProfilePoint[];
  readonly units?: UnitSystem;
}

/**
 * A builder's words about what stands between the post and the far end.
 *
 * "Barn 7 m high, 300 m from the post", "row of trees 12 m high and 20 m deep at 450 m", "rise of 5 m in the middle", "two
 * houses 6 m high at 200 m and 350 m". "Clear" is nothing. Distances count from the post unless "from the far end" is
 * said. Numbers are never passed over: one that finds no place is refused.
 *
 * @param text            of a line or more
 * @param from.distanceM  10 to 200 000, of the whole path; else refused
 * @param from.units      in which a refusal tells lengths; metric when absent
 * @param from.profile    ground on which they stand, from 0 to distanceM; level at 0 when absent
 * @returns the obstacles, tops in the datum of the profile, or one reason why not
 * @source a form of ours
 */
export function readObstacles(text: string, from: PathSaid): ObstaclesRead | PathRefused {
  const refusal = lengthRefused(from.distanceM, from.units ?? "metric");
  if (refusal) return refusal;
  const plain = text.trim();
  if (
    /^(?:(?:it\s+is\s+|it's\s+)?(?:open|free|clear|flat|none|nothing|no|0)(?:\s+(?:sight|view|path|obstacles?|in\s+the\s+way|at\s+all))?)[.!]?$/i.test(
      plain,
    )
  ) {
    return { kind: "obstacles", obstacles: [] };
  }
  const thousands = /(?<![\d.,])[1-9]\d{0,2},\d{3}(?!\d)/.exec(plain);
  if (thousands) {
    return pathRefused(
      "thousands-comma",
      `Is ${thousands[0]} a thousand or a fraction? Write it without the comma.`,
    );
  }
  const obstacles: UnderstoodPathObstacle[] = [];
  for (const facts of descriptions(pathFacts(plain))) {
    const found = obstaclesOf(facts, from);
    if ("kind" in found) return found;
    obstacles.push(...found);
  }
  if (obstacles.length === 0) {
    return pathRefused(
      "empty",
      `Say what stands where and how high, such as: ${sayingIn(from.units ?? "metric").either("barn 7 m high, 300 m from the post", "barn 25 ft high, 900 ft from the post")}.`,
    );
  }
  return {
    kind: "obstacles",
    obstacles: obstacles.sort((a, b) => a.distanceFromNearM - b.distanceFromNearM),
  };
}

/** The facts of each obstacle: a new one begins where a part between breaks names another thing. */
function descriptions(facts: readonly PathFact[]): readonly (readonly PathFact[])[] {
  const parts: PathFact[][] = [[]];
  for (const fact of facts) {
    if (fact.kind === "break") parts.push([]);
    else parts.at(-1)!.push(fact);
  }
  const described: PathFact[][] = [];
  for (const part of parts) {
    const open = described.at(-1);
    const names = (list: readonly PathFact[]) => list.some((fact) => fact.kind === "thing");
    if (part.length === 0) continue;
    if (open && !(names(part) && names(open))) open.push(...part);
    else described.push([...part]);
  }
  return described;
}

type Said = {
  noun: Extract<PathFact, { kind: "thing" }> | null;
  count: number | null;
  heightM: number | null;
  depthM: number | null;
  bareM: number[];
  placesM: number[];
};

function obstaclesOf(
  facts: readonly PathFact[],
  path: PathSaid,
): readonly UnderstoodPathObstacle[] | PathRefused {
  const { units = "metric" } = path;
  const said = saidOf(facts, path);
  if ("kind" in said) return said;
  const { noun } = said;
  if (noun === null) {
    return pathRefused("no-thing", "What is it: trees, a building, or a rise of the ground?");
  }
  for (const bareM of said.bareM) {
    // a length that was not named is known by what is missing: first the height, then the place
    if (said.heightM === null) said.heightM = bareM;
    else if (said.placesM.length === 0) said.placesM.push(bareM);
    else {
      return pathRefused(
        "no-role",
        `Is ${saidM(bareM, units)} the height, the depth or the distance of the ${noun.noun}?`,
      );
    }
  }
  const { heightM, depthM, placesM } = said;
  if (heightM === null)
    return pathRefused("no-height", `How high? The height of the ${noun.noun} is missing.`);
  if (placesM.length === 0)
    return pathRefused("no-distance", `How far from the post? The distance of the ${noun.noun} is missing.`);
  if (said.count !== null && said.count !== placesM.length) {
    return pathRefused("count", `Where does each of the ${said.count} stand? Say a distance for each.`);
  }
  if (heightM <= 0) {
    return pathRefused(
      "below-ground",
      `${saidM(heightM, units)} high is not above the ground: leave it out.`,
    );
  }
  const highestM = HIGHEST_M[noun.obstacle];
  if (heightM > highestM) {
    return pathRefused(
      "absurd-height",
      `${saidM(heightM, units)} is higher than any ${noun.noun}: check the unit.`,
    );
  }
  if (depthM !== null && (depthM < 0 || depthM > path.distanceM)) {
    return pathRefused(
      "beyond-end",
      `${saidM(depthM, units)} deep is more than the whole path of ${saidM(path.distanceM, units)}.`,
    );
  }
  const read: UnderstoodPathObstacle[] = [];
  for (const placeM of placesM) {
    const refusal = placeRefused(placeM, noun.noun, path);
    if (refusal) return refusal;
    const groundM = path.profile ? groundAtM({ profile: path.profile, distanceFromNearM: placeM }) : 0;
    read.push({
      noun: noun.noun.toLowerCase(),
      kind: noun.obstacle,
      heightM,
      distanceFromNearM: placeM,
      topM: groundM + heightM,
      ...(depthM === null || depthM === 0 ? {} : { depthM }),
    });
  }
  return read;
}

function placeRefused(
  placeM: number,
  noun: string,
  { distanceM, units = "metric" }: PathSaid,
): PathRefused | null {
  if (placeM < 0)
    return pathRefused(
      "negative-distance",
      `${saidM(placeM, units)} lies behind the post: it is not in the way.`,
    );
  if (placeM > distanceM) {
    return pathRefused(
      "beyond-end",
      `${saidM(placeM, units)} lies beyond the far end, which is ${saidM(distanceM, units)} away.`,
    );
  }
  if (placeM < AT_END_M || placeM > distanceM - AT_END_M) {
    return pathRefused("at-an-end", `The ${noun} would stand at an antenna itself, not between the two.`);
  }
  return null;
}

function saidOf(facts: readonly PathFact[], { distanceM, units = "metric" }: PathSaid): Said | PathRefused {
  const said: Said = { noun: null, count: null, heightM: null, depthM: null, bareM: [], placesM: [] };
  for (const fact of facts) {
    switch (fact.kind) {
      case "negation":
        return pathRefused(
          "negation",
          `"${fact.word}" cannot be followed here: say only what does stand there.`,
        );
      case "loose-number":
        return pathRefused("loose-number", `Is ${fact.word} in metres or feet?`);
      case "thing":
        if (said.noun !== null && said.noun.obstacle !== fact.obstacle) {
          return pathRefused(
            "two-things",
            `Say ${said.noun.noun} and ${fact.noun} one after the other, with a comma between.`,
          );
        }
        said.noun ??= fact;
        break;
      case "count":
        said.count = fact.count;
        break;
      case "span":
        said.placesM.push((fact.fromM + fact.toM) / 2);
        said.depthM = Math.abs(fact.toM - fact.fromM);
        if (Math.max(fact.fromM, fact.toM) > distanceM) {
          return pathRefused(
            "beyond-end",
            `${saidM(Math.max(fact.fromM, fact.toM), units)} lies beyond the far end, which is ${saidM(distanceM, units)} away.`,
          );
        }
        break;
      case "share":
        said.placesM.push(fact.share * distanceM);
        break;
      case "places":
        said.placesM.push(...fact.distancesM.map((m) => (fact.from === "far" ? distanceM - m : m)));
        break;
      case "length":
        if (fact.role === null) said.bareM.push(fact.lengthM);
        else if (fact.role === "height") {
          if (said.heightM !== null)
            return pathRefused("no-role", "Two heights for one thing: which one holds?");
          said.heightM = fact.lengthM;
        } else if (fact.role === "depth") said.depthM = fact.lengthM;
        break;
      default:
        break;
    }
  }
  return said;
}
