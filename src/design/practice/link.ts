/** What a radio path must leave to spare, and what its ends may be. */
import type { RadioClassId } from "../../core/link/index.ts";
import type { Brief } from "../brief.ts";
import { allowedDarkHours, DARK_HOURS } from "./battery.ts";

/** Loss inside a radio with a built-in antenna, each end. @source judgement */
export const FEED_LOSS_DB = 0.5;

/**
 * Antenna at an end that several posts share, wide enough for all of them.
 * @source from memory of usual data sheets: sectors of 90 degrees with a flat beam
 */
export const SHARED_END_GAIN_DBI: Readonly<Record<RadioClassId, number>> = {
  "5 GHz": 19,
  "60 GHz": 17,
  "2.4 GHz": 15,
};
/** Nobody said where the other posts stand: like ones at the same distance, spread evenly over such a sector. */
export const SHARED_END_WIDTH_DEG = 90;

/** Heights are first worked for a band in the middle of the usual one, then anew for the band taken. */
export const FIRST_FREQUENCY_MHZ = 5500;

/**
 * Level to spare above what the wanted rate needs.
 * @source Wireless Networking in the Developing World, 3rd ed.: "10 to 15 dB is fine, 20 dB should be safe enough"
 */
export function wantedFadeMarginDb(autonomy: Brief["autonomy"]): number {
  switch (autonomy.consequence.value) {
    case "nuisance":
      return 10;
    case "disaster":
      return 20;
    default:
      return 15;
  }
}

/** Hours a year that weather may take the link: as many as the post may be dark; a worry's where days were asked. @source judgement */
export function allowedLinkHours(autonomy: Brief["autonomy"]): number {
  return allowedDarkHours(autonomy) ?? DARK_HOURS.worry;
}

/** Share of the first Fresnel zone that is to be free. @source common practice; ITU-R P.530 asks 1.0 at the median k (from memory) */
export const CLEARANCE_FRAC = 0.6;

/** Trees are taken this much higher than they are: growth of some years and swaying. @source judgement */
export const TREE_GROWTH_M = 2;

/** Without leaves the same trees take so much of what they take in leaf, in dB. @source ITU-R P.833: some 20 % less, from memory */
export const BARE_TREES_FRAC = 0.8;

/** Highest radio on a post that a builder raises by hand. @source judgement */
export const HIGHEST_RADIO_M = 6;

/** What carries the radio ends there: a pole that stands already at its top, anything else at what is raised by hand. */
export const highestRadioM = ({ support, poleHeightM }: Brief["mounting"]): number =>
  support.value === "existingPole" && poleHeightM.value > 0 ? poleHeightM.value : HIGHEST_RADIO_M;

/**
 * What a metre more costs at either end, against each other: at the post a longer tube, a deeper footing and a worse ladder;
 * at the other end mostly a longer bracket on a house. Only their ratio counts.
 * @source judgement
 */
export const COST_PER_M = { near: 2, far: 1 } as const;
/** As high as either end may be thought of when the cheapest pair is sought: beyond, nobody builds for a camera. @source judgement */
export const HIGHEST_THOUGHT_OF_M = { near: 18, far: 40 } as const;

/** Ground is looked at this often along the path at least, so that the earth's bulge counts between two points of a profile. */
export const GROUND_POINTS = 20;

/** A profile must end this near the far end, or it is of another path. @source judgement: maps are not better */
export const PROFILE_SLACK_FRAC = 0.01;

/** Longest cable run between switch and far end, cords taken off. @source ISO/IEC 11801, TIA-568: 90 m permanent link, from memory */
export const LONGEST_CABLE_M = 90;

/** Beyond this a bridge on 5 GHz is no work for a first try. @source judgement */
export const FARTHEST_PATH_M = 15_000;

/** Sums of a path end here. */
export const LONGEST_PATH_M = 60_000;
