/** What a builder types about the ground under a radio path: level, pairs of distance and height, or a file. */
import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, extname } from "node:path";
import { type ProfilePoint, readProfile, thinnedProfile } from "../core/link/index.ts";
import { clamp } from "../core/numerics/index.ts";
import { sayingIn, type UnitSystem } from "../core/units/index.ts";
import type { GroundReading, Line } from "../interview/index.ts";
import { groundAlong } from "./read-terrain.ts";

const wouldDo = "Type level, pairs such as 0 12, 200 14, 450 13.5, or the name of a file.";
/** A profile of a line is some kilobytes. */
const largestTextBytes = 2_000_000;
/** Finer than the cells of open tiles, so that no ridge is jumped over. */
const stepM = 10;
/** What a brief keeps of a file: heights within this of the file's own. */
const keptWithinM = 0.5;

export function readGround(text: string, line: Line): GroundReading {
  const typed = text.trim();
  if (/^(?:level|flat|even|no|none|nope|nothing|n)\b/i.test(typed))
    return { kind: "ground", ground: null, says: null };
  const path = typed.replace(/^file\s+/i, "").replace(/^["']|["']$/g, "");
  if (existsSync(path)) return fromFile(path, line);
  if (/[a-z]{2}.*\.\w{2,5}$/i.test(path))
    return { kind: "refused", says: `There is no file ${path} here. ${wouldDo}` };
  return fromText(inPairs(typed), "typed by the builder", line);
}

/** A table pasted into one line has lost its line ends: "0 12 200 14" is two pairs. */
function inPairs(text: string): string {
  const numbers = text.split(/\s+/);
  const isBare = numbers.length >= 4 && numbers.every((number) => /^[+-]?\d+(?:\.\d+)?$/.test(number));
  if (!isBare) return text;
  return numbers
    .flatMap((number, i) => (i % 2 === 0 ? [`${number} ${numbers[i + 1] ?? ""}`] : []))
    .join("; ");
}

function fromFile(path: string, line: Line): GroundReading {
  const name = basename(path);
  try {
    const about = statSync(path);
    const isText =
      about.isFile() &&
      about.size <= largestTextBytes &&
      !/^\.(?:hgt|tiff?)$/i.test(extname(path)) &&
      !readFileSync(path).includes(0);
    return isText ? fromText(readFileSync(path, "utf8"), name, line) : fromHeights(path, line);
  } catch (error) {
    return { kind: "refused", says: `${name} cannot be read: ${(error as Error).message}.` };
  }
}

function fromText(text: string, source: string, { lengthM, units }: Line): GroundReading {
  const read = readProfile(text, { distanceM: lengthM, units });
  if (read.kind === "refused") return { kind: "refused", says: read.reason };
  return groundOf(read.profile, { source, units, adds: "" });
}

function fromHeights(path: string, { near, far, lengthM, units }: Line): GroundReading {
  if (near === null || far === null)
    return {
      kind: "refused",
      says: "A file of heights needs coordinates at both ends: of the post as its place, of the other end as the distance.",
    };
  const samples = clamp(Math.ceil(lengthM / stepM) + 1, 3, 10_000);
  const read = groundAlong({ file: path, near, far, samples });
  if (read.kind === "refused") return read;
  const profile = thinnedProfile({ profile: read.profile, toleranceM: keptWithinM });
  const cells = `Cells of ${sayingIn(units)(read.cellM, "m")}: what is smaller is not in it, and many files have treetops and roofs in them.`;
  return groundOf(profile, { source: basename(path), units, adds: ` ${cells}` });
}

function groundOf(
  profile: readonly ProfilePoint[],
  { source, units, adds }: { readonly source: string; readonly units: UnitSystem; readonly adds: string },
): GroundReading {
  const rounded = profile.map(({ distanceFromNearM, groundM }) => ({
    distanceFromNearM: Number(distanceFromNearM.toFixed(2)),
    groundM: Number(groundM.toFixed(2)),
  }));
  const highest = rounded.reduce((high, point) => (point.groundM > high.groundM ? point : high));
  const said = sayingIn(units);
  const height = (valueM: number) => said(valueM, "m", 1);
  return {
    kind: "ground",
    ground: { profile: rounded, source },
    says: `The ground lies at ${height(rounded[0]!.groundM)} at the post and ${height(rounded.at(-1)!.groundM)} at the other end; its highest point is ${height(highest.groundM)}, ${said(highest.distanceFromNearM, "m away", 1)} from the post.${adds}`,
  };
}
