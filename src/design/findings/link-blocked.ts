import { fixed } from "../chain/words.ts";
import type { LinkClearance } from "../design.ts";
import { CLEARANCE_FRAC, HIGHEST_RADIO_M, TREE_GROWTH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** Up to a tenth: a height that is built must not fall short. */
const up = (heightM: number): string => fixed(Math.ceil(heightM * 10 - 1e-9) / 10, 1);

/** Room that lacks without taking more than this is next to nothing: heights are not known better. @source judgement */
const SLIGHT_DB = 1;

/** A line that is not cut may lose up to this, what one edge at grazing takes, where the margin bears it. @source ITU-R P.526 */
const GRAZING_DB = 6;

/** What to raise, the cheaper way first. */
function raising({ cheapest, clearingNearHeightM, clearingFarHeightM }: LinkClearance): string {
  const far = `the far end to ${up(clearingFarHeightM ?? 0)} m`;
  const near = `the post's radio to ${up(clearingNearHeightM ?? 0)} m (an engineered mast)`;
  const farIsTall = (clearingFarHeightM ?? 0) > 40;
  const nearIsTall = (clearingNearHeightM ?? 0) > 3 * HIGHEST_RADIO_M;
  if (cheapest?.raises === "both")
    return `Raise the far end to ${up(cheapest.farHeightM)} m and the post's radio to ${up(cheapest.nearHeightM)} m together`;
  if (cheapest?.raises === "near") return `Raise ${near}${farIsTall ? "" : `, or, for more money, ${far}`}`;
  return `Raise ${far}${nearIsTall ? "" : `, which is mostly cheaper, or ${near}`}`;
}

/** Ground, buildings or trees reach into the path: how high either end must go. */
export const linkBlocked: Rule = ({ link }) => {
  const radio = link?.radio;
  const clearance = link?.clearance;
  if (!radio || !clearance || !link.loss || clearance.clearingNearHeightM === null) return null;
  const { clearanceM, governing, governingKind } = clearance;
  const { betweenGrownDb, betweenTodayDb, betweenBareDb } = link.loss;
  const isTrees = governingKind === "trees";
  const isNothing = betweenGrownDb < SLIGHT_DB;
  const isSlight = clearanceM >= 0 && (isNothing || (betweenGrownDb < GRAZING_DB && radio.carriesPicture));
  const gap = fixed(Math.abs(clearanceM), 1);
  const asMast =
    radio.nearHeightM >= HIGHEST_RADIO_M
      ? ` (${HIGHEST_RADIO_M} m is the most a mast raised by hand should carry)`
      : "";
  const today =
    betweenTodayDb < 0.5
      ? "They take nothing today,"
      : `In leaf they take ${fixed(betweenTodayDb, 0)} dB today, bare ${fixed(betweenBareDb, 0)},`;
  const takes = isTrees
    ? `${today} grown ${fixed(betweenGrownDb, 0)} dB, and wet leaves more: leaves and growth make trees worse each year.`
    : isNothing
      ? "It takes next to nothing of the signal, but only if every height is right."
      : `It takes ${fixed(betweenGrownDb, 0)} dB of the signal.`;
  return {
    id: isTrees ? "link.trees" : "link.blocked",
    severity: isSlight ? "caution" : "stop",
    says: `With the post's radio at ${fixed(radio.nearHeightM, 1)} m${asMast} the line to the far end ${clearanceM >= 0 ? `passes only ${gap} m above` : `runs ${gap} m below the top of`} ${governing}${isTrees ? `, ${TREE_GROWTH_M} m of growth included` : ""}; ${fixed(CLEARANCE_FRAC, 1)} of the first Fresnel zone must be free. ${takes}`,
    change: `${raising(clearance)}${isTrees ? ", cut the trees" : ""}, or move the post to where the line is free.`,
    numbers: {
      clearanceM,
      clearanceFrac: clearance.clearanceFrac,
      governing,
      clearingNearHeightM: clearance.clearingNearHeightM,
      clearingFarHeightM: clearance.clearingFarHeightM ?? 0,
      lossDb: betweenGrownDb,
    },
    topics: ["link.farHeight", "link.sight", "link.between", "link.ground", "mounting.cameraHeight"],
  };
};
