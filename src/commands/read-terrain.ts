/** The ground along a radio path, from a file of heights that the builder has: a GeoTIFF or an .hgt tile. */
import { spawnSync } from "node:child_process";
import { closeSync, openSync, readSync, statSync } from "node:fs";
import { basename, extname } from "node:path";
import { fileURLToPath } from "node:url";
import type { ProfilePoint } from "../core/link/index.ts";
import { within } from "../core/numerics/index.ts";
import { pointsAlong } from "../core/place/index.ts";
import type { HeightsRead, Net } from "./height-grid.ts";
import { hgtHeights } from "./read-hgt.ts";
import type { Spot } from "./spot.ts";

export type GroundRead =
  | {
      readonly kind: "ground";
      /** From the near end (distance 0) to the far end. */
      readonly profile: readonly ProfilePoint[];
      /** Larger side of the file's cells, at the near end: what is smaller than it is not in the file. */
      readonly cellM: number;
    }
  /** One or two plain sentences. */
  | { readonly kind: "refused"; readonly says: string };

const largestFileBytes = 300_000_000;
const wouldDo = "A GeoTIFF of heights or an .hgt tile is wanted.";
/** A degree of latitude is never longer on WGS 84. */
const degreeM = 111_700;

/**
 * Ground along the shortest way between two places, straight between the four heights of the file around each point.
 * Heights above the file's own sea level; most open files are of the surface and have treetops and roofs in them, those of
 * bare ground have not, and neither has what is narrower than a cell. No more than a first look at a path: walk it.
 *
 * @param file       as typed
 * @param near, far  on WGS 84
 * @param samples    points along the path with both ends, 3 to 10 000; a step longer than a cell jumps over ridges
 * @accuracy that of the file: open tiles of 30 m and 90 m are commonly within 10 m and worse in steep ground (from memory)
 * @throws RangeFault for places that are none, or samples out of range
 */
export function groundAlong(asked: {
  readonly file: string;
  readonly near: Spot;
  readonly far: Spot;
  readonly samples: number;
}): GroundRead {
  const { file, near, far } = asked;
  const points = pointsAlong({
    fromLatitudeDeg: near.latitudeDeg,
    fromLongitudeDeg: near.longitudeDeg,
    toLatitudeDeg: far.latitudeDeg,
    toLongitudeDeg: far.longitudeDeg,
    samples: within("samples", asked.samples, 3, 10_000),
  });
  if (points.at(-1)!.distanceFromNearM < 1)
    return { kind: "refused", says: "Both ends of the path are the same place." };
  const read = heightsIn(file, points);
  if (read.kind === "refused") return read;
  const name = basename(file);
  const missing = read.heightsM.filter((heightM) => heightM === null).length;
  if (missing > 0)
    return {
      kind: "refused",
      says: `${name} has holes on the path: ${missing} of ${points.length} points have no height. Use another file.`,
    };
  return {
    kind: "ground",
    profile: points.map(({ distanceFromNearM }, i) => ({ distanceFromNearM, groundM: read.heightsM[i]! })),
    cellM: cellM(read.net, near),
  };
}

function heightsIn(file: string, spots: readonly Spot[]): HeightsRead {
  const name = basename(file);
  try {
    const about = statSync(file, { throwIfNoEntry: false });
    if (about === undefined) return refused(`There is no file ${file} here. ${wouldDo}`);
    if (!about.isFile()) return refused(`${file} is a folder. ${wouldDo}`);
    if (about.size > largestFileBytes)
      return refused(`${name} is larger than 300 MB. Cut out the part around the path.`);
    if (extname(name).toLowerCase() === ".hgt") return hgtHeights(file, spots);
    if (isTiff(file)) return askGeotiff(file, spots);
    const isPacked = /\.(?:zip|gz|7z|bz2)$/i.test(name);
    return refused(isPacked ? `Unpack ${name} first. ${wouldDo}` : `${name} is neither. ${wouldDo}`);
  } catch (error) {
    return refused(`${name} cannot be read: ${(error as Error).message}.`);
  }
}

const refused = (says: string): HeightsRead => ({ kind: "refused", says });

/** By its first bytes: II or MM, then 42, or 43 for a large one. */
function isTiff(file: string): boolean {
  const start = Buffer.alloc(4);
  const opened = openSync(file, "r");
  try {
    readSync(opened, start, 0, 4, 0);
  } finally {
    closeSync(opened);
  }
  return ["II*\0", "II+\0", "MM\0*", "MM\0+"].includes(start.toString("latin1"));
}

/** A program of its own beside the bundle. */
const askGeotiffProgram = fileURLToPath(new URL("./ask-geotiff.js", import.meta.url));

/** Waited for: reading an answer must not take turns. */
function askGeotiff(file: string, spots: readonly Spot[]): HeightsRead {
  const { status, stdout } = spawnSync(process.execPath, [askGeotiffProgram], {
    input: JSON.stringify({
      file,
      spots: spots.map(({ latitudeDeg, longitudeDeg }) => ({ latitudeDeg, longitudeDeg })),
    }),
    encoding: "utf8",
    timeout: 25_000,
    maxBuffer: 8_000_000,
    windowsHide: true,
  });
  if (status !== 0)
    return refused(`${basename(file)} could not be read in time. Cut out the part around the path.`);
  return JSON.parse(stdout) as HeightsRead;
}

function cellM(net: Net, near: Spot): number {
  const widthM = net.longitudeStepDeg * degreeM * Math.cos((near.latitudeDeg * Math.PI) / 180);
  return Math.max(net.latitudeStepDeg * degreeM, widthM);
}
