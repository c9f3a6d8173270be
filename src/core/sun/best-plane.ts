import { turnDeg } from "../astronomy/index.ts";
import type { Plane } from "./beam.ts";
import { type BestTilt, bestTiltOf, gentle, shortfallFrac } from "./best-tilt.ts";
import { laidBack, type PlaneJudge, type PlaneWish, planeJudge, type TiltResult } from "./judged-plane.ts";

export interface BestPlane extends TiltResult {
  /** The best tilt facing the equator, and what the latitude rule loses against it. */
  readonly equatorFacing: BestTilt;
  /** What facing the equator loses in its worst month against this plane in its own, 0 to 1. */
  readonly equatorLossFrac: number;
}

/** Turning the plane for less than this is not worth it: other errors of the monthly method are larger. */
const LEAST_WORTH_FRAC = 1e-6;

/**
 * The fixed plane, free to turn to any side, whose worst month is best. Worth asking where hills or trees hide the sun
 * from one side, and near the equator where the worst month's sun may stand poleward; with an open horizon elsewhere it
 * answers as bestTilt.
 *
 * @returns tilt in whole degrees, azimuth in steps of 5 deg, which is as near as a compass at a mast points it
 * @accuracy its worst month within 0.5 % of the best of all planes of those steps
 * @throws RangeFault as bestTilt
 * @source the rule of bestTilt; the search is our own: a coarse grid, then ever smaller steps from its best points
 */
export function bestPlane(site: PlaneWish): BestPlane {
  const judge = planeJudge(site);
  const best = bestTiltOf(judge, Math.abs(site.latitudeDeg));
  const turned = judge.at(bestTurn(judge));
  const equatorLossFrac = shortfallFrac(best, turned);
  const equatorFacing = gentle(judge, best);
  if (equatorLossFrac < LEAST_WORTH_FRAC) {
    const { latitudeTilt: _, latitudeLossFrac: __, darkMonths: ___, ...result } = equatorFacing;
    return { ...result, equatorFacing, equatorLossFrac: 0 };
  }
  return { ...laidBack(judge, turned), equatorFacing, equatorLossFrac };
}

const GRID_AZIMUTH_DEG = 30;
const GRID_TILTS = 4;
/** So many of the grid's best points are climbed from: behind a ridge there may be another hill. */
const CLIMBS = 2;
const CLIMB_STEPS: readonly Plane[] = [
  { azimuthDeg: 15, tiltDeg: 8 },
  { azimuthDeg: 5, tiltDeg: 3 },
  { azimuthDeg: 5, tiltDeg: 1 },
];
const SIDES = [-1, 0, 1];

function bestTurn(judge: PlaneJudge): Plane {
  const { minTiltDeg, maxTiltDeg, equatorDeg } = judge;
  const known = new Map<number, number>();
  const worth = (plane: Plane): number => {
    const key = plane.azimuthDeg * 100 + plane.tiltDeg;
    const before = known.get(key) ?? Math.min(...judge.roughRatios(plane));
    known.set(key, before);
    return before;
  };
  const climbed = (start: Plane): Plane => {
    let best = start;
    for (const step of CLIMB_STEPS) {
      for (let middle: Plane | null = best; middle !== null; ) {
        const around: Plane = middle;
        for (const [turns, lifts] of SIDES.flatMap((a) => SIDES.map((b) => [a, b] as const))) {
          const next = {
            azimuthDeg: turnDeg(around.azimuthDeg + turns * step.azimuthDeg),
            tiltDeg: Math.min(maxTiltDeg, Math.max(minTiltDeg, around.tiltDeg + lifts * step.tiltDeg)),
          };
          if (worth(next) > worth(best) * (1 + 1e-9)) best = next;
        }
        middle = best === around ? null : best;
      }
    }
    return best;
  };
  const grid: Plane[] = [];
  for (let turn = 0; turn < 360; turn += GRID_AZIMUTH_DEG) {
    for (let i = 0; i < GRID_TILTS; i += 1) {
      const tiltDeg = Math.round(minTiltDeg + ((maxTiltDeg - minTiltDeg) * i) / (GRID_TILTS - 1));
      grid.push({ azimuthDeg: turnDeg(equatorDeg + turn), tiltDeg });
    }
  }
  return grid
    .sort((a, b) => worth(b) - worth(a))
    .slice(0, CLIMBS)
    .map(climbed)
    .reduce((best, plane) => (worth(plane) > worth(best) ? plane : best));
}
