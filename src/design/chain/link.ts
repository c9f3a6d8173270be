import {
  AGEING_DB,
  antennaAim,
  type CarrierChoice,
  CHECK_RULES,
  carrierChoices,
  type Direction,
  exposureDistanceM,
  netThroughputMbps,
  type PathLoss,
  PLANNING_FACTOR_FRAC,
  POLARISATION_TILT_DEG,
  pathLoss,
  type RadioNeed,
  rainPathLossDb,
  regionOfCountry,
  twoWayAvailability,
  VIDEO_OVERHEAD_FRAC,
} from "../../core/link/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import { monthlyDataGB } from "../../core/view/index.ts";
import type { Brief } from "../brief.ts";
import type {
  Climate,
  Link,
  LinkAim,
  LinkAvailability,
  LinkBudget,
  LinkDirection,
  LinkLoss,
  LinkPath,
  LinkSector,
  RadioPath,
  View,
} from "../design.ts";
import {
  allowedLinkHours,
  BARE_TREES_FRAC,
  FEED_LOSS_DB,
  FIRST_FREQUENCY_MHZ,
  highestRadioM,
  SHARED_END_WIDTH_DEG,
  wantedFadeMarginDb,
} from "../practice/link.ts";
import { declinationAtDeg } from "./compass.ts";
import { choiceOf } from "./link-choices.ts";
import { clearanceOf, isTropicalAt, nearHeightM } from "./link-clearance.ts";
import { surveyedPath, type Way, wayOf } from "./link-path.ts";
import { planOf, type RadioPlan, type RadioTry, radioTry } from "./link-radio.ts";
import { fixed } from "./words.ts";

export { linkNotes } from "./link-notes.ts";

/** How the picture gets home. */
export function linkStage(brief: Brief, climate: Climate | null, view: View): Link | null {
  const carrier = brief.link.carrier.value;
  if (carrier === "none") return null;
  const needMbps = view.totalMbps * (1 + VIDEO_OVERHEAD_FRAC);
  return {
    carrier,
    needMbps,
    monthlyGB: monthlyDataGB({ streamMbps: view.meanMbps * (1 + VIDEO_OVERHEAD_FRAC) }),
    ...(carrier === "radio" ? radioLink(brief, climate, view) : noRadio),
  };
}

type RadioLink = Omit<Link, "carrier" | "needMbps" | "monthlyGB">;

const noRadio: RadioLink = {
  path: null,
  clearance: null,
  loss: null,
  radio: null,
  budget: null,
  availability: null,
  sector: null,
  aim: null,
  choices: [],
};

function radioLink(brief: Brief, climate: Climate | null, view: View): RadioLink {
  const way = wayOf(brief, climate);
  const meant = { nearHeightM: brief.mounting.cameraHeightM.value, farHeightM: brief.link.farHeightM.value };
  const heightsAt = (frequencyMHz: number) => {
    const heights = { ...meant, frequencyMHz };
    return { ...heights, nearHeightM: nearHeightM(way, heights, highestRadioM(brief.mounting)) };
  };
  const need = needOf(brief, climate, {
    path: surveyedPath(way, heightsAt(FIRST_FREQUENCY_MHZ)),
    streamMbps: view.totalMbps,
  });
  const choices = carrierChoices({ ...need, units: brief.units });
  const wantedDb = wantedFadeMarginDb(brief.autonomy);
  const triedWith = (plan: RadioPlan) => {
    const heights = heightsAt(plan.specification.centreMHz);
    const path = surveyedPath(way, heights);
    const loss = pathLoss(path);
    const tried = radioTry({
      plan,
      loss,
      distanceM: way.distanceM,
      wantedDb,
      streamMbps: view.totalMbps,
      otherPosts: brief.link.otherPosts.value,
    });
    return tried && { plan, heights, path, loss, tried };
  };
  const { plan, heights, path, loss, tried } = firstThatCarries(plansFrom(choices), triedWith);
  const latitudeDeg = brief.place.site.value?.latitudeDeg ?? 0;
  const radio = radioOf(plan, tried, { ...heights, distanceM: way.distanceM, wantedDb });
  const availability = climate && availabilityOf(brief, need, plan, tried);
  return {
    path: pathOf(way, path),
    clearance: clearanceOf(way, heights, { isTropical: isTropicalAt(latitudeDeg) }),
    loss: lossOf(way, heights, loss, need),
    radio,
    budget: budgetOf(plan, tried, loss),
    availability,
    sector: sectorOf(tried),
    aim: aimOf(brief, way, path, tried),
    choices: choices.map((choice) => choiceOf(choice, { radio, availability })),
  };
}

/** What core is asked for; without a climate there is no weather to be had, and none is asked to be borne. */
function needOf(
  brief: Brief,
  climate: Climate | null,
  given: { readonly path: RadioNeed["path"]; readonly streamMbps: number },
): RadioNeed {
  const site = brief.place.site.value;
  const posts = brief.link.otherPosts.value + 1;
  return {
    path: given.path,
    region: regionOfCountry(site?.countryCode ?? ""),
    streamsMbps: Array.from({ length: posts }, () => given.streamMbps),
    wantedMarginDb: wantedFadeMarginDb(brief.autonomy),
    wantedAvailabilityFrac: climate ? 1 - clamp(allowedLinkHours(brief.autonomy), 0, 8760) / 8760 : 0,
    rainMmPerH: clamp(climate?.rainRateMmPerH ?? 0, 0, 300),
    latitudeDeg: site?.latitudeDeg ?? 0,
    gradientNPerKm: clamp(climate?.refractivityGradientPerKm ?? -40, -1000, 200),
    roughnessM: clamp(climate?.terrainRoughnessM ?? 0, 0, 3000),
  };
}

/** The classes of radio that the country has a band for: core puts what suits first. */
const plansFrom = (choices: readonly CarrierChoice[]): readonly RadioPlan[] =>
  choices.flatMap(({ radio }) => (radio ? (planOf(radio) ?? []) : []));

/** Core tries both ends alike; where several posts share the other end, its antenna is another, and the next class may do. */
function firstThatCarries<T extends { readonly tried: RadioTry }>(
  plans: readonly RadioPlan[],
  triedWith: (plan: RadioPlan) => T | null,
): T {
  let first: T | null = null;
  for (const plan of plans) {
    const one = triedWith(plan);
    if (one?.tried.carriesPicture) return one;
    first ??= one;
  }
  return first!;
}

function pathOf(way: Way, surveyed: RadioNeed["path"]): LinkPath {
  const { distanceM, bearingDeg, backBearingDeg, groundSource, unread } = way;
  return {
    distanceM,
    bearingDeg,
    backBearingDeg,
    groundSource,
    unread,
    obstacles: way.named.map(({ noun, kind, heightM, distanceFromNearM, depthM }) => ({
      noun,
      kind,
      heightM,
      fromNearM: distanceFromNearM,
      depthM: depthM ?? 0,
    })),
    section: {
      nearAntennaM: surveyed.nearHeightM,
      farAntennaM: surveyed.farHeightM,
      frequencyMHz: surveyed.frequencyMHz,
      earthRadiusRatio: surveyed.k,
      profile: way.profile,
      obstacles: surveyed.obstacles,
    },
  };
}

function lossOf(
  way: Way,
  heights: Parameters<typeof surveyedPath>[1],
  grown: PathLoss,
  need: RadioNeed,
): LinkLoss {
  const asToday = surveyedPath(way, { ...heights, growthM: 0 });
  const today = pathLoss(asToday);
  const treeless = pathLoss({
    ...asToday,
    obstacles: asToday.obstacles.filter(({ kind }) => kind !== "trees"),
  });
  return {
    freeSpaceDb: grown.freeSpaceDb,
    gasDb: grown.gasDb,
    diffractionDb: grown.diffractionDb,
    vegetationDb: grown.vegetationDb,
    sphericalExtraDb: grown.sphericalExtraDb,
    totalDb: grown.totalDb,
    method: grown.method,
    reason: grown.reason,
    secondOpinionDb: grown.secondOpinionDb ?? null,
    toleranceDb: grown.toleranceDb,
    betweenTodayDb: today.lossDb,
    betweenBareDb: today.diffractionDb + BARE_TREES_FRAC * today.vegetationDb,
    betweenGrownDb: grown.lossDb,
    betweenWithoutTreesDb: treeless.lossDb,
    rainDb: rainPathLossDb({
      distanceM: way.distanceM,
      frequencyMHz: heights.frequencyMHz,
      rainMmPerH: need.rainMmPerH,
      polarisationTiltDeg: POLARISATION_TILT_DEG.vertical,
    }),
  };
}

const modulationOf = ({ radio }: RadioPlan, mcs: number | undefined): string =>
  mcs === undefined ? "none" : `${radio.standard} row ${mcs}, ${radio.streams} streams`;

function radioOf(
  { radio, band, specification }: RadioPlan,
  tried: RadioTry,
  about: {
    readonly nearHeightM: number;
    readonly farHeightM: number;
    readonly distanceM: number;
    readonly wantedDb: number;
  },
): RadioPath {
  const { weaker } = tried.budget;
  return {
    radioClass: radio.id,
    distanceM: about.distanceM,
    frequencyMHz: specification.centreMHz,
    region: band.region,
    bandName: `${fixed(band.lowMHz, 0)} to ${fixed(band.highMHz, 0)} MHz`,
    maxEirpDbm: tried.maxEirpDbm,
    needsRadarCheck: band.dfs,
    silenceAfterPowerCutS: band.silenceAfterPowerCutS,
    nearHeightM: about.nearHeightM,
    farHeightM: about.farHeightM,
    txPowerDbm: tried.txPowerDbm,
    antennaGainDbi: tried.gainDbi,
    farAntennaGainDbi: tried.farGainDbi,
    farTxPowerDbm: tried.farTxPowerDbm,
    rxLevelDbm: weaker.rxLevelDbm,
    modulation: modulationOf({ radio, band, specification }, weaker.rate?.mcs),
    phyMbps: tried.phyMbps,
    availableMbps: tried.availableMbps,
    sensitivityDbm: weaker.sensitivityDbm,
    fadeMarginDb: weaker.marginDb,
    wantedFadeMarginDb: about.wantedDb,
    airtimeFrac: tried.airtimeFrac,
    bandNotes: `${band.notes} ${CHECK_RULES}`,
    bandSource: band.source,
    outdoorAllowed: band.outdoorAllowed === true ? true : "ask",
    channelWidthMHz: tried.widthMHz,
    exposureDistanceM: exposureDistanceM({
      eirpDbm: Math.max(tried.txPowerDbm + tried.gainDbi, tried.farTxPowerDbm + tried.farGainDbi),
    }),
    carriesPicture: tried.carriesPicture,
  };
}

function budgetOf(plan: RadioPlan, tried: RadioTry, loss: PathLoss): LinkBudget {
  const { nearToFar, farToNear, weaker } = tried.budget;
  const [near, far] = [
    { powerDbm: tried.txPowerDbm, gainDbi: tried.gainDbi },
    { powerDbm: tried.farTxPowerDbm, gainDbi: tried.farGainDbi },
  ];
  const figures = (one: Direction, from: typeof near, to: typeof near): LinkDirection => ({
    from: one.from,
    to: one.to,
    txPowerDbm: from.powerDbm,
    txGainDbi: from.gainDbi,
    eirpDbm: one.eirpDbm,
    rxGainDbi: to.gainDbi,
    feedLossDb: 2 * FEED_LOSS_DB,
    rxLevelDbm: one.rxLevelDbm,
    expectedDbm: one.rxLevelDbm + AGEING_DB,
    toleranceDb: one.toleranceDb,
    sensitivityDbm: one.sensitivityDbm,
    marginDb: one.marginDb,
    modulation: modulationOf(plan, one.rate?.mcs),
    phyMbps: one.rate?.phyMbps ?? 0,
    availableMbps: netThroughputMbps({
      phyMbps: one.rate?.phyMbps ?? 0,
      planningFactorFrac: PLANNING_FACTOR_FRAC.clearAir,
      portMbps: plan.radio.portMbps,
    }),
  });
  return {
    nearToFar: figures(nearToFar, near, far),
    farToNear: figures(farToNear, far, near),
    weaker: weaker === nearToFar ? "nearToFar" : "farToNear",
    pathLossDb: loss.totalDb,
    allowanceDb: AGEING_DB,
  };
}

function availabilityOf(
  brief: Brief,
  need: RadioNeed,
  { specification }: RadioPlan,
  { budget, leastPhyMbps }: RadioTry,
): LinkAvailability {
  const { path, rainMmPerH, latitudeDeg, gradientNPerKm, roughnessM } = need;
  const year = twoWayAvailability({
    budget,
    leastPhyMbps,
    climate: {
      distanceM: path.distanceM,
      frequencyMHz: specification.centreMHz,
      rainMmPerH,
      polarisationTiltDeg: POLARISATION_TILT_DEG.vertical,
      nearAntennaM: clamp(path.nearHeightM, -500, 9000),
      farAntennaM: clamp(path.farHeightM, -500, 9000),
      latitudeDeg,
      gradientNPerKm,
      roughnessM,
    },
  });
  return {
    lostHPerYear: year.outageHPerYear,
    rainHPerYear: 8760 * year.rain.outageFrac,
    multipathHPerYear: 8760 * year.multipathOutageFrac,
    certainty: year.rain.certainty,
    askedHPerYear: allowedLinkHours(brief.autonomy),
  };
}

function sectorOf({ sector }: RadioTry): LinkSector | null {
  return (
    sector && {
      posts: sector.posts.length,
      airtimeFrac: sector.airtimeFrac ?? 1,
      allowedFrac: sector.allowedFrac,
      isEnough: sector.isEnough,
      hiddenPairs: sector.hiddenPairs.length,
      spreadDeg: SHARED_END_WIDTH_DEG,
    }
  );
}

function aimOf(brief: Brief, way: Way, path: RadioNeed["path"], tried: RadioTry): LinkAim {
  const { distanceM, k } = path;
  const from = (ownHeightM: number, otherHeightM: number, gainDbi: number) =>
    antennaAim({ bearingDeg: way.bearingDeg ?? 0, distanceM, ownHeightM, otherHeightM, k, gainDbi });
  const there = from(path.nearHeightM, path.farHeightM, tried.gainDbi);
  const back = from(path.farHeightM, path.nearHeightM, tried.farGainDbi);
  return {
    tiltDeg: there.tiltDeg,
    backTiltDeg: back.tiltDeg,
    beamwidthDeg: there.beamwidthDeg,
    oneDbDeg: there.oneDbDeg,
    threeDbDeg: there.threeDbDeg,
    oneDbAcrossM: there.oneDbAcrossM,
    declinationDeg: declinationAtDeg(brief.place.site.value),
  };
}
