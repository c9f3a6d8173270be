import { findUnit, sayingIn, type UnitSystem } from "../units/index.ts";
import type { ProfilePoint } from "./bullington.ts";
import { lengthRefused, type PathRefused, pathRefused, saidM } from "./path-refusal.ts";

export interface ProfileRead {
  readonly kind: "profile";
  readonly profile: readonly ProfilePoint[];
  readonly lengthM: number;
}

/** A profile may end this share of the path before or after the far antenna: maps are not better. Judgement. */
const END_SLACK_FRAC = 0.01;

const NUMBER = "([+-]?\\d+(?:[.,]\\d+)?)";
const UNIT = "(?:\\s*([a-z']+|′))?";
/** "0.2 km 14 m": a blank, colon or tab between; a comma is a decimal one. */
const SPACED = new RegExp(`^${NUMBER}${UNIT}(?:\\s*[:\\t|]\\s*|\\s+)${NUMBER}${UNIT}$`, "i");
/** "200,14" of a table in a file; the comma stands between. */
const COMMAED = new RegExp(`^([+-]?\\d+(?:\\.\\d+)?)${UNIT}\\s*,\\s*([+-]?\\d+(?:\\.\\d+)?)${UNIT}$`, "i");

type Pair = {
  readonly words: string;
  readonly distance: number;
  readonly distanceUnit: string | undefined;
  readonly height: number;
  readonly heightUnit: string | undefined;
};

/**
 * Ground heights pasted by a builder: pairs of distance from the post and height, one a line or parted by commas.
 *
 * "0 12, 200 14, 450 13.5", "0 ft 40 ft; 300 ft 42 ft", or a table with a heading such as "distance km, height m".
 * Metres where no unit is said, or feet to whoever thinks in them.
 *
 * @param text             of a line or more
 * @param from.distanceM   0 to 1 000 000, of the whole path; when left out the last point is the far end
 * @param from.units       metric when left out
 * @returns the profile from 0 to the far end, or one reason why not
 * @source a format of ours; common practice for profiles read off a map
 */
export function readProfile(
  text: string,
  from: { readonly distanceM?: number; readonly units?: UnitSystem } = {},
): ProfileRead | PathRefused {
  const { units = "metric" } = from;
  if (from.distanceM !== undefined) {
    const refusal = lengthRefused(from.distanceM, units);
    if (refusal) return refusal;
  }
  const { heading, pieces } = piecesOf(text.normalize("NFKC"));
  if (pieces.length === 0) {
    return pathRefused(
      "empty",
      `Give pairs of distance from the post and height of the ground, such as: ${sayingIn(units).either("0 12, 200 14, 450 13.5", "0 40, 600 46, 1500 44")}.`,
    );
  }
  const pairs: Pair[] = [];
  for (const piece of pieces) {
    const pair = pairOf(piece);
    if ("kind" in pair) return pair;
    pairs.push(pair);
  }
  const points = pointsOf(pairs, unitsOfHeading(heading, units));
  return "kind" in points ? points : profileOf(points, from.distanceM, units);
}

/** A heading, if any, and the text of each pair. */
function piecesOf(text: string): { readonly heading: string; readonly pieces: readonly string[] } {
  const lines = text
    .split(/[\n\r;]+/)
    .map((line) => line.trim().replace(/[,.]$/, ""))
    .filter((line) => line !== "");
  const isHeading = lines.length > 1 && !/\d/.test(lines[0]!);
  const heading = isHeading ? lines.shift()! : "";
  if (lines.length > 1) return { heading, pieces: lines };
  const parts = (lines[0] ?? "")
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const isFlat =
    parts.length >= 4 && parts.length % 2 === 0 && parts.every((part) => !/\d\s+[+-]?\d/.test(part));
  if (!isFlat) return { heading, pieces: parts };
  return {
    heading,
    pieces: parts.flatMap((part, i) => (i % 2 === 0 ? [`${part} ${parts[i + 1]!}`] : [])),
  };
}

function pairOf(piece: string): Pair | PathRefused {
  const found = SPACED.exec(piece) ?? COMMAED.exec(piece);
  if (!found) {
    return pathRefused("no-pair", `"${piece}" is no pair of distance and height, such as 200 14.`);
  }
  const [, distance, distanceUnit, height, heightUnit] = found;
  const isThousands = [distance!, height!].find((number) => /^[+-]?[1-9]\d{0,2},\d{3}$/.test(number));
  if (isThousands) {
    return pathRefused(
      "thousands-comma",
      `Is ${isThousands} a thousand or a fraction? Write it without the comma.`,
    );
  }
  return {
    words: piece,
    distance: Number(distance!.replace(",", ".")),
    distanceUnit,
    height: Number(height!.replace(",", ".")),
    heightUnit,
  };
}

function pointsOf(
  pairs: readonly Pair[],
  [distanceDefault, heightDefault]: readonly [string, string],
): readonly ProfilePoint[] | PathRefused {
  const points: ProfilePoint[] = [];
  const says = (unit: string | undefined, value: number) => unit !== undefined || value === 0;
  for (const column of ["distance", "height"] as const) {
    const isSaid = pairs.some((pair) => pair[`${column}Unit`] !== undefined);
    const bare = pairs.find((pair) => !says(pair[`${column}Unit`], pair[column]));
    if (isSaid && bare) {
      return pathRefused(
        "mixed-units",
        `"${bare.words}" has no unit for its ${column} where others have one: give each one, or none.`,
      );
    }
  }
  for (const pair of pairs) {
    const distanceFactor = metresPer(pair.distanceUnit ?? distanceDefault);
    const heightFactor = metresPer(pair.heightUnit ?? heightDefault);
    if (distanceFactor === undefined || heightFactor === undefined) {
      const unit = distanceFactor === undefined ? pair.distanceUnit : pair.heightUnit;
      return pathRefused(
        "not-a-length",
        `"${unit}" is no unit of length that is known here: m, km, ft or mi.`,
      );
    }
    points.push({
      distanceFromNearM: pair.distance * distanceFactor,
      groundM: pair.height * heightFactor,
    });
  }
  return points;
}

/** Units of a heading in the order of its columns; one alone holds for both. */
function unitsOfHeading(heading: string, system: UnitSystem): readonly [string, string] {
  const units = heading
    .toLowerCase()
    .split(/[^a-z']+/)
    // "distance in km" speaks of no inch
    .filter((word) => word !== "in" && metresPer(word) !== undefined);
  const usual = sayingIn(system).symbol("m");
  return [units[0] ?? usual, units[1] ?? units[0] ?? usual];
}

function metresPer(unit: string): number | undefined {
  return findUnit(unit, "length")?.toBase;
}

function profileOf(
  points: readonly ProfilePoint[],
  distanceM: number | undefined,
  units: UnitSystem,
): ProfileRead | PathRefused {
  if (points.length < 2) {
    return pathRefused(
      "too-few",
      "One point is no profile: give the ground at the post and at the far end at least.",
    );
  }
  const negative = points.find((point) => point.distanceFromNearM < 0);
  if (negative) {
    return pathRefused(
      "negative-distance",
      `${saidM(negative.distanceFromNearM, units)} lies behind the post: count from it.`,
    );
  }
  for (let i = 1; i < points.length; i++) {
    const [before, at] = [points[i - 1]!.distanceFromNearM, points[i]!.distanceFromNearM];
    if (at - before < 0.01) {
      return pathRefused(
        "out-of-order",
        `${saidM(at, units)} comes after ${saidM(before, units)}: give the distances from the post outwards, each once.`,
      );
    }
  }
  const high = points.find((point) => point.groundM < -500 || point.groundM > 9000);
  if (high) return pathRefused("absurd-height", `No ground lies at ${saidM(high.groundM, units)}.`);
  if (points[0]!.distanceFromNearM !== 0) {
    return pathRefused("not-from-zero", "Begin with the ground at the post itself, at distance 0.");
  }
  const last = points.at(-1)!;
  const refusal = lengthRefused(last.distanceFromNearM, units);
  if (refusal) return refusal;
  if (distanceM === undefined) return { kind: "profile", profile: points, lengthM: last.distanceFromNearM };
  if (last.distanceFromNearM > distanceM * (1 + END_SLACK_FRAC)) {
    return pathRefused(
      "beyond-end",
      `${saidM(last.distanceFromNearM, units)} lies beyond the far end, which is ${saidM(distanceM, units)} away.`,
    );
  }
  if (last.distanceFromNearM < distanceM * (1 - END_SLACK_FRAC)) {
    return pathRefused(
      "short",
      `The profile ends at ${saidM(last.distanceFromNearM, units)}; the far end is ${saidM(distanceM, units)} away.`,
    );
  }
  const inner = points.slice(0, -1).filter((point) => point.distanceFromNearM < distanceM - 0.01);
  const profile = [...inner, { distanceFromNearM: distanceM, groundM: last.groundM }];
  return { kind: "profile", profile, lengthM: distanceM };
}
