import { degOfRad } from "../astronomy/index.ts";
import { clamp } from "../numerics/index.ts";
import { sayingIn, type UnitSystem } from "../units/index.ts";
import { treeElevationDeg } from "./horizon.ts";
import { type HorizonRefused, refused, saidNumber } from "./horizon-refusal.ts";
import type { HorizonFact } from "./horizon-words.ts";

/** How high and how wide a described obstacle stands, seen from the panel. */
export interface Size {
  readonly elevationDeg: number;
  /** null where neither said nor known from a height. */
  readonly widthDeg: number | null;
  readonly isWidthSaid: boolean;
}

/** The size that the facts about one obstacle add up to. */
export function sizeOf(
  facts: readonly HorizonFact[],
  { eyeHeightM, units }: { readonly eyeHeightM: number; readonly units: UnitSystem },
): Size | HorizonRefused {
  let angleDeg: number | null = null;
  let widthDeg: number | null = null;
  let widthPerHeight: number | null = null;
  const lengths = new Map<string, number>();
  for (const fact of facts) {
    switch (fact.kind) {
      case "negation":
        return refused("negation", `"${fact.word}" cannot be followed here: say only what does stand there.`);
      case "loose-number":
        return refused("loose-number", `Is ${fact.word} in degrees, metres or feet?`);
      case "angle":
        if (fact.isWidth) widthDeg = fact.angleDeg;
        else if (angleDeg !== null)
          return refused("no-height", "Two heights for one thing: which one holds?");
        else angleDeg = fact.angleDeg;
        break;
      case "single":
        widthPerHeight = fact.widthPerHeight;
        break;
      case "length": {
        const role = fact.role ?? "";
        if (lengths.has(role))
          return refused("no-role", "Which length is the height and which the distance?");
        lengths.set(role, fact.lengthM);
        break;
      }
      default:
        break;
    }
  }
  const bare = lengths.get("");
  let heightM = lengths.get("height");
  let distanceM = lengths.get("distance");
  if (bare !== undefined) {
    // the one that was not named is known by the other
    if (heightM !== undefined && distanceM === undefined) distanceM = bare;
    else if (distanceM !== undefined && heightM === undefined) heightM = bare;
    else return refused("no-role", 'Is that length the height or the distance? Say "tall" or "away".');
  }
  const isWidthSaid = widthDeg !== null || lengths.has("width");
  if (distanceM !== undefined) {
    distanceM = Math.max(0.1, distanceM);
    const widthM =
      lengths.get("width") ??
      (widthPerHeight !== null && heightM !== undefined ? widthPerHeight * heightM : null);
    if (widthM !== null) widthDeg ??= 2 * degOfRad(Math.atan(widthM / 2 / distanceM));
  }
  if (angleDeg !== null) return { elevationDeg: angleDeg, widthDeg, isWidthSaid };
  if (heightM === undefined)
    return refused(
      "no-height",
      `How high does it stand, in degrees, in fists at arm's length, or in ${sayingIn(units).either("metres", "feet")} with its distance?`,
    );
  const tall = units === "metric" ? `${saidNumber(heightM)} m` : sayingIn(units)(heightM, "m", 1);
  if (distanceM === undefined) return refused("no-distance", `How far away is it that is ${tall} tall?`);
  return {
    elevationDeg: treeElevationDeg({
      heightM: clamp(heightM, 0, 500),
      distanceM: clamp(distanceM, 0.1, 100_000),
      eyeHeightM,
    }),
    widthDeg,
    isWidthSaid,
  };
}
