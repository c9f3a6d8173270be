/** The generic radio that the sums ask for, and what a path must leave to spare. */
import type { Brief } from "../brief.ts";

/**
 * A 5 GHz bridge with a panel antenna of its own, two streams.
 * @source from memory of usual data sheets; 802.11ac: the standard's own minimum sensitivity stands in for a data sheet
 */
export const GENERIC_RADIO = {
  standard: "802.11ac",
  antennaGainDbi: 23,
  /** Most that it sends at its slow rates. */
  maxTxPowerDbm: 24,
  feederLossDb: 0.5,
  streams: 2,
  /** Its Ethernet port. */
  portMbps: 100,
} as const;

/** Channel widths to choose from, narrowest first: a narrow one hears less noise and reaches further. */
export const OFFERED_WIDTHS_MHZ = [20, 40, 80] as const;

/** Bands looked at: the usual one for outdoor bridges. @source common practice, no source */
export const BAND_RANGE_MHZ = { low: 5000, high: 6000 } as const;

/** Aiming, ageing and wet antennas. @source judgement */
export const ALIGNMENT_LOSS_DB = 3;

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

/** Share of the first Fresnel zone that is to be free. @source common practice; ITU-R P.530 asks 1.0 at the median k (from memory) */
export const CLEARANCE_FRAC = 0.6;

/** Trees are taken this much higher than they are: growth of some years and swaying. @source judgement */
export const TREE_GROWTH_M = 2;

/** Highest radio on a post that a builder raises by hand. @source judgement */
export const HIGHEST_RADIO_M = 6;

/** Longest cable run between switch and far end, cords taken off. @source ISO/IEC 11801, TIA-568: 90 m permanent link, from memory */
export const LONGEST_CABLE_M = 90;

/** Beyond this a bridge on 5 GHz is no work for a first try. @source judgement */
export const FARTHEST_PATH_M = 15_000;
