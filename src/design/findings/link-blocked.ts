import { type Saying, sayingIn } from "../../core/units/index.ts";
import { atLeast, fixed } from "../chain/words.ts";
import type { LinkClearance, LinkLoss } from "../design.ts";
import { CLEARANCE_FRAC, HIGHEST_RADIO_M, highestRadioM, TREE_GROWTH_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** Room that lacks without taking more than this is next to nothing: heights are not known better. @source judgement */
const SLIGHT_DB = 1;

/** A line that is not cut may lose up to this, what one edge at grazing takes, where the margin bears it. @source ITU-R P.526 */
const GRAZING_DB = 6;

/** Cutting trees is advised where it brings this much at least, and half of what is lost. @source judgement */
const WORTH_CUTTING_DB = 3;

/** What to raise, the cheaper way first. */
function raising(
  { cheapest, clearingNearHeightM, clearingFarHeightM }: LinkClearance,
  poleM: number,
  said: Saying,
): string {
  const far = `the far end to ${atLeast(said, clearingFarHeightM ?? 0)}`;
  const near = postTo(clearingNearHeightM ?? 0, poleM, said);
  const farIsTall = (clearingFarHeightM ?? 0) > 40;
  const nearIsTall = (clearingNearHeightM ?? 0) > 3 * HIGHEST_RADIO_M;
  if (cheapest?.raises === "both")
    return `Raise the far end to ${atLeast(said, cheapest.farHeightM)} and ${postTo(cheapest.nearHeightM, poleM, said)} together`;
  if (cheapest?.raises === "near") return `Raise ${near}${farIsTall ? "" : `, or, for more money, ${far}`}`;
  return `Raise ${far}${nearIsTall ? "" : `, which is mostly cheaper, or ${near}`}`;
}

/** @param poleM  top of a pole that stands already; 0 without one */
function postTo(heightM: number, poleM: number, said: Saying): string {
  const how =
    heightM > HIGHEST_RADIO_M
      ? " (an engineered mast)"
      : poleM > 0 && heightM > poleM
        ? " (on a new mast, for the pole ends below)"
        : "";
  return `the post's radio to ${atLeast(said, heightM)}${how}`;
}

const db = (lossDb: number): string => fixed(lossDb, 0);

/** What the trees add to what ground and buildings take: as they stand, bare, and grown. */
function treesOf(loss: LinkLoss) {
  const more = (lossDb: number) => Math.max(0, lossDb - loss.betweenWithoutTreesDb);
  return {
    todayDb: more(loss.betweenTodayDb),
    bareDb: more(loss.betweenBareDb),
    grownDb: more(loss.betweenGrownDb),
  };
}

/** One sentence: what is lost, and to which of both where trees and something else stand in the way. */
function taking(loss: LinkLoss, { governingKind, besidesTrees }: LinkClearance, said: Saying): string {
  const trees = treesOf(loss);
  const worse = "and wet leaves more: leaves and growth make trees worse each year";
  const { called, clearanceM } = besidesTrees;
  const isAbove = clearanceM < 0;
  if (governingKind === "trees") {
    const today =
      trees.todayDb < 0.5
        ? "They take nothing today,"
        : `In leaf they take ${db(trees.todayDb)} dB today, bare ${db(trees.bareDb)},`;
    const besides =
      loss.betweenWithoutTreesDb < 0.5 && !isAbove
        ? ""
        : `; ${called} ${isAbove ? `stands ${said(-clearanceM, "m", 1)} above the line too` : "reaches into the zone too"}, and without the trees ${db(loss.betweenWithoutTreesDb)} dB would still be lost`;
    return `${today} grown ${db(trees.grownDb)} dB, ${worse}${besides}.`;
  }
  if (loss.betweenGrownDb < SLIGHT_DB)
    return "It takes next to nothing of the signal, but only if every height is right.";
  return trees.grownDb < 0.5
    ? `It takes ${db(loss.betweenGrownDb)} dB of the signal.`
    : `Without the trees ${db(loss.betweenWithoutTreesDb)} dB of the signal are lost; they add ${db(trees.todayDb)} dB today, grown ${db(trees.grownDb)} dB, ${worse}.`;
}

/** Cutting, where trees take anything: advised only if that alone brings much, else said to be too little. */
function cutting(loss: LinkLoss, isTrees: boolean): string {
  const { grownDb } = treesOf(loss);
  const aloneDb = loss.betweenWithoutTreesDb;
  const isWhole = isTrees && aloneDb < SLIGHT_DB;
  if (isWhole || (grownDb >= WORTH_CUTTING_DB && grownDb >= loss.betweenGrownDb / 2))
    return ", cut the trees";
  return isTrees || grownDb >= WORTH_CUTTING_DB
    ? ` (cutting the trees alone would leave ${db(aloneDb)} dB)`
    : "";
}

/** Ground, buildings or trees reach into the path: how high either end must go. */
export const linkBlocked: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  const clearance = link?.clearance;
  if (!radio || !clearance || !link.loss || clearance.clearingNearHeightM === null) return null;
  const { clearanceM, governing, governingKind } = clearance;
  const { betweenGrownDb, betweenWithoutTreesDb } = link.loss;
  const isTrees = governingKind === "trees";
  const isNothing = betweenGrownDb < SLIGHT_DB;
  const isSlight = clearanceM >= 0 && (isNothing || (betweenGrownDb < GRAZING_DB && radio.carriesPicture));
  const said = sayingIn(brief.units);
  const gap = said(Math.abs(clearanceM), "m", 1);
  const isPole = brief.mounting.support.value === "existingPole";
  const asMast =
    radio.nearHeightM < highestRadioM(brief.mounting)
      ? ""
      : isPole
        ? " (the top of the pole)"
        : ` (${said(HIGHEST_RADIO_M, "m", 1)} is the most a mast raised by hand should carry)`;
  return {
    id: isTrees ? "link.trees" : "link.blocked",
    severity: isSlight ? "caution" : "stop",
    says: `With the post's radio at ${said(radio.nearHeightM, "m", 1)}${asMast} the line to the far end ${clearanceM >= 0 ? `passes only ${gap} above` : `runs ${gap} below the top of`} ${governing}${isTrees ? `, ${said(TREE_GROWTH_M, "m")} of growth included` : ""}; ${fixed(CLEARANCE_FRAC, 1)} of the first Fresnel zone must be free. ${taking(link.loss, clearance, said)}`,
    change: `${raising(clearance, isPole ? brief.mounting.poleHeightM.value : 0, said)}${cutting(link.loss, isTrees)}, or move the post to where the line is free.`,
    numbers: {
      clearanceM,
      clearanceFrac: clearance.clearanceFrac,
      governing,
      clearingNearHeightM: clearance.clearingNearHeightM,
      clearingFarHeightM: clearance.clearingFarHeightM ?? 0,
      lossDb: betweenGrownDb,
      lossWithoutTreesDb: betweenWithoutTreesDb,
    },
    topics: ["link.farHeight", "link.sight", "link.between", "link.ground", "mounting.cameraHeight"],
  };
};
