/** How far the line clears what stands between, and which end had better rise. */
import {
  clearanceRules,
  fresnelRadiusM,
  lowestHeights,
  type Path,
  PRACTICAL_RULE,
  pathClearance,
  profileObstacles,
} from "../../core/link/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import type { LinkClearance } from "../design.ts";
import { CLEARANCE_FRAC, COST_PER_M, HIGHEST_THOUGHT_OF_M } from "../practice/link.ts";
import { groundAtEnd, obstacleCalled, surveyedPath, type Way } from "./link-path.ts";

interface Heights {
  readonly nearHeightM: number;
  readonly farHeightM: number;
  readonly frequencyMHz: number;
}

/** With the ground among the obstacles: named ones come first, so that their index stays. */
function wholePath(way: Way, heights: Heights): Path {
  const path = surveyedPath(way, heights);
  return { ...path, obstacles: [...path.obstacles, ...profileObstacles(way.profile)] };
}

/** Up in whole centimetres, so that rounding never leaves the raised path a hair short. */
const upM = (heightM: number): number => Math.ceil(heightM * 100 - 1e-6) / 100;

/** The post's radio where it was meant to be, or as much higher as it must and as what carries it allows. */
export function nearHeightM(way: Way, heights: Heights, highestM: number): number {
  const { isClear, heightsThatClear } = pathClearance({
    ...wholePath(way, heights),
    clearanceFrac: CLEARANCE_FRAC,
  });
  if (isClear) return heights.nearHeightM;
  const neededM = upM(heightsThatClear.nearAloneM - groundAtEnd(way, "near"));
  return Math.max(heights.nearHeightM, Math.min(neededM, highestM));
}

/** @param isTropical  the climate of ITU-R P.530's rules: within 23.5 degrees of the equator */
export function clearanceOf(
  way: Way,
  heights: Heights,
  about: { readonly isTropical: boolean },
): LinkClearance {
  const { distanceM } = way;
  const { frequencyMHz } = heights;
  const path = wholePath(way, heights);
  const { isClear, worst, heightsThatClear } = pathClearance({ ...path, clearanceFrac: CLEARANCE_FRAC });
  const governing = path.obstacles[worst!.index]!;
  // the ground is always among them
  const treeless = path.obstacles.filter(({ kind }) => kind !== "trees");
  const bare = pathClearance({ ...path, obstacles: treeless, clearanceFrac: CLEARANCE_FRAC }).worst!;
  const besides = treeless[bare.index]!;
  const rules = [
    PRACTICAL_RULE,
    ...clearanceRules({
      distanceM,
      climate: about.isTropical ? "tropical" : "temperate",
      obstruction: governing.kind === "ground" || (governing.depthM ?? 0) > 0 ? "extended" : "isolated",
    }),
  ];
  const [groundNearM, groundFarM] = [groundAtEnd(way, "near"), groundAtEnd(way, "far")];
  const { cheapest, raises } = lowestHeights({
    path,
    rules: [PRACTICAL_RULE],
    nearCostPerM: COST_PER_M.near,
    farCostPerM: COST_PER_M.far,
    nearHighestM: groundNearM + Math.max(heights.nearHeightM, HIGHEST_THOUGHT_OF_M.near),
    farHighestM: groundFarM + Math.max(heights.farHeightM, HIGHEST_THOUGHT_OF_M.far),
  });
  return {
    fresnelRadiusM: fresnelRadiusM({ fromNearM: distanceM / 2, fromFarM: distanceM / 2, frequencyMHz }),
    clearanceM: worst!.clearanceM,
    clearanceFrac: worst!.clearanceFrac,
    governing: obstacleCalled(way, governing, worst!.index),
    governingKind: governing.kind,
    besidesTrees: {
      called: obstacleCalled(way, besides, path.obstacles.indexOf(besides)),
      clearanceM: bare.clearanceM,
    },
    byRule: rules.map((rule) => ({
      name: rule.name,
      missingM: Math.max(
        ...pathClearance({ ...path, k: rule.k, clearanceFrac: rule.clearanceFrac }).points.map(
          ({ missingM }) => missingM,
        ),
      ),
    })),
    clearingNearHeightM: isClear ? null : heightsThatClear.nearAloneM - groundNearM,
    clearingFarHeightM: isClear ? null : heightsThatClear.farAloneM - groundFarM,
    cheapest:
      isClear || cheapest === undefined || raises === undefined || raises === "nothing"
        ? null
        : {
            nearHeightM: cheapest.nearHeightM - groundNearM,
            farHeightM: cheapest.farHeightM - groundFarM,
            raises,
          },
  };
}

export const isTropicalAt = (latitudeDeg: number): boolean => Math.abs(clamp(latitudeDeg, -90, 90)) < 23.5;
