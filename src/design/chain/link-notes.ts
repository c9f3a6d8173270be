import { PLANNING_FACTOR_FRAC, VIDEO_OVERHEAD_FRAC, VIDEO_SHARE_FRAC } from "../../core/link/index.ts";
import type { Link, Notes } from "../design.ts";
import {
  ALIGNMENT_LOSS_DB,
  CLEARANCE_FRAC,
  GENERIC_RADIO,
  HIGHEST_RADIO_M,
  OFFERED_WIDTHS_MHZ,
} from "../practice/link.ts";

export const linkNotes = {
  carrier: {
    what: "what carries the picture",
    formula: "as answered",
    inputs: ["brief.link.carrier"],
    source: "the builder",
  },
  needMbps: {
    what: "rate that leaves the post, packets and retries included",
    formula: `all streams x ${1 + VIDEO_OVERHEAD_FRAC}`,
    inputs: ["view.totalMbps"],
    source: "judgement, built from RFC 3550 headers (5.6 %) and retries",
  },
  monthlyGB: {
    what: "data in a month when every stream is sent day and night",
    formula: "Mbit/s x 10.8 x 30.44 days",
    inputs: ["link.needMbps"],
    source: "arithmetic",
  },
  radio: {
    what: "the radio path: clearance, losses, level, rate and what is left for the picture",
    formula: `level = power + both gains (${GENERIC_RADIO.antennaGainDbi} dBi) - free space - diffraction - trees - rain at 0.01 % - ${ALIGNMENT_LOSS_DB} dB aiming - ${2 * GENERIC_RADIO.feederLossDb} dB feeders; fastest rate with the wanted margin (10, 15, 20 dB); ${PLANNING_FACTOR_FRAC.clearAir} of the air rate is payload, ${VIDEO_SHARE_FRAC} of that may be video; narrowest of ${OFFERED_WIDTHS_MHZ.join(", ")} MHz that carries it; post's radio raised up to ${HIGHEST_RADIO_M} m until ${CLEARANCE_FRAC} of the first Fresnel zone is free`,
    inputs: [
      "brief.link.distanceM",
      "brief.link.sight",
      "brief.link.obstacleDistanceM",
      "brief.link.obstacleTopM",
      "brief.link.obstacleDepthM",
      "brief.link.farHeightM",
      "brief.link.otherPosts",
      "brief.mounting.cameraHeightM",
      "brief.place.site",
      "brief.autonomy.consequence",
      "climate.rainRateMmPerH",
      "view.totalMbps",
    ],
    source:
      "ITU-R P.525, P.526, P.530, P.838; Weissberger 1982; IEEE 802.11 minimum sensitivities; margins: Wireless Networking in the Developing World; radio and planning factors: judgement",
  },
} satisfies Notes<Link>;
