import type { Link, Notes } from "../design.ts";

export const linkNotes = {
  carrier: {
    what: "what carries the picture",
    formula: "as answered",
    inputs: ["brief.link.carrier"],
    source: "the builder",
  },
  needMbps: {
    what: "rate that leaves the post, packets and retries included",
    formula: "all streams x 1.15",
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
    formula:
      "level = power + both gains (23 dBi) - free space - diffraction - trees - rain at 0.01 % - 3 dB aiming - 1 dB feeders; fastest rate with the wanted margin (10, 15, 20 dB); half of the air rate is payload, half of that may be video; narrowest of 20, 40, 80 MHz that carries it; post's radio raised up to 6 m until 0.6 of the first Fresnel zone is free",
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
