import { degOfRad, turnDeg } from "../astronomy/index.ts";
import { within } from "../numerics/index.ts";

/** A direction and how high the land, a tree or a house stands there. */
export interface HorizonPoint {
  /** Clockwise from true north, 0 to 360. */
  readonly azimuthDeg: number;
  /** Above the level, 0 to 90. */
  readonly elevationDeg: number;
}

/**
 * What hides the sky round the panel: straight between neighbouring points and from the last over north to the first.
 * Two points in one direction are an upright edge. No points are an open horizon, one point is a level ring.
 */
export type HorizonProfile = readonly HorizonPoint[];

/** Something of one height between two directions, clockwise from the first to the second, over north if need be. */
export interface Obstacle {
  /** 0 to 360. */
  readonly fromAzimuthDeg: number;
  /** 0 to 360. 0 to 360 is all round; the same twice is nothing. */
  readonly toAzimuthDeg: number;
  /** 0 to 90. */
  readonly elevationDeg: number;
}

/**
 * Profile of obstacles with upright sides over a level ring; where several overlap, the highest.
 *
 * @param from.uniformDeg  0 to 90, the ring; 0 when left out
 * @param from.obstacles   none when left out
 * @returns points by rising azimuth; empty when nothing stands anywhere
 * @throws RangeFault outside the ranges above and those of Obstacle
 * @example horizonFrom({ obstacles: [{ fromAzimuthDeg: 150, toAzimuthDeg: 210, elevationDeg: 15 }] })
 */
export function horizonFrom(from: {
  readonly uniformDeg?: number;
  readonly obstacles?: readonly Obstacle[];
}): HorizonProfile {
  const ringDeg = within("uniformDeg", from.uniformDeg ?? 0, 0, 90);
  const standing = (from.obstacles ?? []).map((obstacle) => {
    const startDeg = within("fromAzimuthDeg", obstacle.fromAzimuthDeg, 0, 360);
    const endDeg = within("toAzimuthDeg", obstacle.toAzimuthDeg, 0, 360);
    const elevationDeg = within("elevationDeg", obstacle.elevationDeg, 0, 90);
    return {
      startDeg,
      widthDeg: endDeg < startDeg ? endDeg - startDeg + 360 : endDeg - startDeg,
      elevationDeg,
    };
  });
  const edges = new Set([0, 360]);
  for (const { startDeg, widthDeg } of standing) {
    edges.add(turnDeg(startDeg));
    edges.add(turnDeg(startDeg + widthDeg));
  }
  const sorted = [...edges].sort((a, b) => a - b);
  const points: HorizonPoint[] = [];
  sorted.slice(1).forEach((toDeg, i) => {
    const fromDeg = sorted[i]!;
    const middleDeg = (fromDeg + toDeg) / 2;
    const elevationDeg = standing
      .filter(({ startDeg, widthDeg }) => turnDeg(middleDeg - startDeg) < widthDeg)
      .reduce((highest, each) => Math.max(highest, each.elevationDeg), ringDeg);
    if (points.at(-1)?.elevationDeg === elevationDeg) points.pop();
    else points.push({ azimuthDeg: fromDeg, elevationDeg });
    points.push({ azimuthDeg: toDeg, elevationDeg });
  });
  return points.length > 2 ? points : ringDeg > 0 || points[0]!.elevationDeg > 0 ? [points[0]!] : [];
}

/**
 * How high a tree, a wall or a mast stands above the level of the panel, on level ground.
 *
 * @param tree.heightM     of its top above the ground, 0 to 500
 * @param tree.distanceM   from the panel to its near side, 0.1 to 100000
 * @param tree.eyeHeightM  of the panel above the same ground, 0 to 100
 * @returns deg, 0 to 90; 0 for what does not reach up to the panel
 * @throws RangeFault outside the ranges above
 * @source worked by hand: the angle whose tangent is height over distance
 */
export function treeElevationDeg(tree: {
  readonly heightM: number;
  readonly distanceM: number;
  readonly eyeHeightM: number;
}): number {
  const aboveM = within("heightM", tree.heightM, 0, 500) - within("eyeHeightM", tree.eyeHeightM, 0, 100);
  return Math.max(0, degOfRad(Math.atan2(aboveM, within("distanceM", tree.distanceM, 0.1, 100_000))));
}

/** A profile made ready to be asked many times. */
export interface Skyline {
  readonly lowestDeg: number;
  readonly highestDeg: number;
  /** Height of what stands in a direction (0 to 360); at an upright edge the higher side. */
  readonly elevationDeg: (azimuthDeg: number) => number;
}

/**
 * @param profile  sorted or not
 * @param ringDeg  0 to 90: nothing lies lower than this
 * @throws RangeFault for a point outside the ranges of HorizonPoint
 */
export function skylineOf(profile: HorizonProfile, ringDeg: number): Skyline {
  const points = profile
    .map((point) => ({
      azimuthDeg: within("horizon azimuthDeg", point.azimuthDeg, 0, 360),
      elevationDeg: within("horizon elevationDeg", point.elevationDeg, 0, 90),
    }))
    .sort((a, b) => a.azimuthDeg - b.azimuthDeg);
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) {
    return { lowestDeg: ringDeg, highestDeg: ringDeg, elevationDeg: () => ringDeg };
  }
  // once more beyond north on either side, so that the round closes
  const round = [
    { ...last, azimuthDeg: last.azimuthDeg - 360 },
    ...points,
    { ...first, azimuthDeg: first.azimuthDeg + 360 },
  ];
  const azimuths = Float64Array.from(round, (point) => point.azimuthDeg);
  const elevations = Float64Array.from(round, (point) => point.elevationDeg);
  return {
    lowestDeg: Math.max(ringDeg, Math.min(...elevations)),
    highestDeg: Math.max(ringDeg, ...elevations),
    elevationDeg: (azimuthDeg) => Math.max(ringDeg, onBrokenLine(azimuths, elevations, azimuthDeg)),
  };
}

/** As `interpolate`, but by bisection and with upright edges. */
function onBrokenLine(x: Float64Array, y: Float64Array, at: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! < at) low = middle;
    else high = middle;
  }
  if (x[low]! < at && at < x[high]!) {
    return y[low]! + ((y[high]! - y[low]!) * (at - x[low]!)) / (x[high]! - x[low]!);
  }
  let highest = 0;
  for (let i = low; i < x.length && x[i]! <= at; i += 1) {
    if (x[i] === at) highest = Math.max(highest, y[i]!);
  }
  return highest;
}
