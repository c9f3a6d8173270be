import {
  AGEING_DB,
  PLANNING_FACTOR_FRAC,
  VIDEO_OVERHEAD_FRAC,
  VIDEO_SHARE_FRAC,
} from "../../core/link/index.ts";
import type { Link, Notes } from "../design.ts";
import {
  BARE_TREES_FRAC,
  CLEARANCE_FRAC,
  COST_PER_M,
  FEED_LOSS_DB,
  HIGHEST_RADIO_M,
  SHARED_END_GAIN_DBI,
  SHARED_END_WIDTH_DEG,
  TREE_GROWTH_M,
} from "../practice/link.ts";

const NEED = [
  "brief.link.carrier",
  "brief.link.otherPosts",
  "brief.autonomy.consequence",
  "brief.place.site",
  "view.totalMbps",
] as const;

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
    what: "data in a month when every stream is sent for as long as the cameras run",
    formula: `mean Mbit/s x ${1 + VIDEO_OVERHEAD_FRAC} x 10.8 x 30.44 days`,
    inputs: ["view.meanMbps"],
    source: "arithmetic",
  },
  path: {
    what: "how far and which way the other end lies, over which ground, past what",
    formula: `distance as answered, or the geodesic between both ends' coordinates and its azimuth at either; ground as given, else level between the ends; trees ${TREE_GROWTH_M} m higher than they are, for growth and swaying`,
    inputs: [
      "brief.link.distanceM",
      "brief.link.far",
      "brief.link.sight",
      "brief.link.between",
      "brief.link.ground",
      "brief.link.farHeightM",
      "brief.mounting.cameraHeightM",
      "brief.place.site",
      "climate.elevationM",
    ],
    source:
      "Karney, J. Geodesy 87 (2013) on the WGS 84 ellipsoid; obstacles as the builder named them; growth: judgement",
  },
  clearance: {
    what: "room between the line and what comes nearest, by three rules, and which end had better rise",
    formula: `line less top less the earth's bulge d1 d2/(2 k R), over the first Fresnel radius sqrt(wave length x d1 d2/d); ${CLEARANCE_FRAC} of it at the median k must be free; the post's radio is raised up to ${HIGHEST_RADIO_M} m for it, or to the top of a pole that stands already; cheapest pair where a metre at the post costs ${COST_PER_M.near / COST_PER_M.far} times one at the other end`,
    inputs: ["link.path", "brief.mounting.cameraHeightM", "brief.link.farHeightM"],
    source:
      "Recommendations ITU-R P.526 clause 2.1 and P.530 clause 2.2.2.1 (from memory, partly confirmed); costs: judgement",
  },
  loss: {
    what: "what the path takes, part by part, how well that is known, and what grown and bare trees make of it",
    formula: `free space 20 log10(4 pi d / wave length) + air + bending over edges or ground + trees in leaf passed through; bare trees ${BARE_TREES_FRAC} of their dB in leaf; without trees: the same path with ground and buildings alone; rain exceeded 0.01 % of the year stands apart`,
    inputs: ["link.path", "climate.rainRateMmPerH"],
    source:
      "Recommendations ITU-R P.525, P.526 clauses 4.1, 4.3 and 4.5, P.676, P.838, P.530 clause 2.4.1; Deygout 1966; Weissberger 1982; bare trees: P.833, from memory; the choice of construction is judgement",
  },
  radio: {
    what: "class of radio, band, antenna, width and power, and what the weaker direction leaves for the picture",
    formula: `smallest antenna and narrowest channel whose fastest rate with the wanted margin (10, 15, 20 dB) carries the picture both ways; ${PLANNING_FACTOR_FRAC.clearAir} of the air rate is payload, ${VIDEO_SHARE_FRAC} of that may be video`,
    inputs: [...NEED, "link.budget", "link.choices"],
    source:
      "IEEE 802.11 minimum sensitivities; national rules row by row (starting values: check your own country's); margins: Wireless Networking in the Developing World; classes of radio from memory; planning factors: judgement",
  },
  budget: {
    what: "levels in both directions, each against the sensitivity of the end that hears it",
    formula: `power + antenna - feed (${FEED_LOSS_DB} dB an end) - path - ${AGEING_DB} dB for aim and ageing + antenna - feed; an end that several posts share has a sector antenna (5 GHz: ${SHARED_END_GAIN_DBI["5 GHz"]} dBi over ${SHARED_END_WIDTH_DEG} degrees); expected on the day: without the ${AGEING_DB} dB; tolerance sqrt(1.5^2 + 1 + 1 + 1 + path^2) dB`,
    inputs: ["link.loss", "link.radio", "brief.link.otherPosts"],
    source:
      "sum of gains and losses, Recommendation ITU-R P.341 (from memory); allowance, tolerance and sector antenna: judgement and from memory",
  },
  availability: {
    what: "hours a year in which rain or layers of air take the weaker direction, against the hours that were asked",
    formula:
      "time in which the margin to the slowest rate that still carries the picture is used up: rain and multipath added",
    inputs: [
      "link.budget",
      "climate.rainRateMmPerH",
      "climate.refractivityGradientPerKm",
      "climate.terrainRoughnessM",
      "brief.place.site",
      "brief.autonomy.consequence",
      "brief.autonomy.askedDarkHours",
    ],
    source:
      "Recommendation ITU-R P.530 clauses 2.3 and 2.4; power cuts, radar, leaning masts and broken parts are not in it",
  },
  sector: {
    what: "air time that all posts together take of the one radio at the other end",
    formula: `need x posts over what one would have alone; the others are taken as like this one, as far away, spread evenly over ${SHARED_END_WIDTH_DEG} degrees; a pair is hidden where one hears the other below -82 dBm`,
    inputs: ["brief.link.otherPosts", "link.radio", "link.needMbps"],
    source:
      "time sharing; IEEE 802.11 clear channel assessment (from memory); where the others stand is assumed",
  },
  aim: {
    what: "how the antennas must look, and how exactly",
    formula:
      "tilt by both heights and the earth's bulge; loss 12 (angle / beam width)^2 dB; beam width from the gain, 29 500 / gain",
    inputs: ["link.path", "link.radio", "brief.place.site"],
    source:
      "Recommendations ITU-R F.699 and F.1336 (from memory); declination: World Magnetic Model 2025, middle of its years",
  },
  choices: {
    what: "other ways and classes of radio that were looked at, best first",
    formula:
      "each class with its smallest antenna that does, both ends alike, at legal power with the worst sensitivity a radio may have; the one that is taken by its own budget",
    inputs: [...NEED, "link.path", "link.budget", "link.availability", "climate.rainRateMmPerH"],
    source: "as radio; copper to 90 m: ISO/IEC 11801, from memory; the order is judgement",
  },
} satisfies Notes<Link>;
