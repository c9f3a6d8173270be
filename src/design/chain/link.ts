import {
  bandsForOutdoorPointToPoint,
  bestRate,
  capacityCheck,
  exposureDistanceM,
  freeSpaceLossDb,
  fresnelRadiusM,
  linkBudget,
  MEDIAN_K,
  netThroughputMbps,
  type Obstacle,
  obstacleLoss,
  type Path,
  PLANNING_FACTOR_FRAC,
  pathClearance,
  powerLimitDbm,
  type RadioBand,
  rainPathLossDb,
  rateSteps,
  regionOfCountry,
  straightGround,
  VIDEO_OVERHEAD_FRAC,
} from "../../core/link/index.ts";
import { clamp } from "../../core/numerics/index.ts";
import { monthlyDataGB } from "../../core/view/index.ts";
import type { Brief } from "../brief.ts";
import type { Climate, Link, RadioPath, View } from "../design.ts";
import {
  ALIGNMENT_LOSS_DB,
  BAND_RANGE_MHZ,
  CLEARANCE_FRAC,
  GENERIC_RADIO,
  HIGHEST_RADIO_M,
  OFFERED_WIDTHS_MHZ,
  TREE_GROWTH_M,
  wantedFadeMarginDb,
} from "../practice/link.ts";
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
    monthlyGB: monthlyDataGB({ streamMbps: needMbps }),
    radio: carrier === "radio" ? radioPath(brief, climate, view) : null,
  };
}

function radioPath(brief: Brief, climate: Climate | null, view: View): RadioPath {
  const { link, autonomy, mounting } = brief;
  const region = regionOfCountry(brief.place.site.value?.countryCode ?? "");
  const gainDbi = GENERIC_RADIO.antennaGainDbi;
  const band = bandFor(region, gainDbi);
  const frequencyMHz = (band.lowMHz + band.highMHz) / 2;
  const distanceM = Math.max(10, link.distanceM.value);
  const wantedDb = wantedFadeMarginDb(autonomy);

  const lowestM = mounting.cameraHeightM.value;
  const from: Path = {
    distanceM,
    nearHeightM: lowestM,
    farHeightM: link.farHeightM.value,
    frequencyMHz,
    k: MEDIAN_K,
    obstacles: obstaclesOf(brief, distanceM),
  };
  const asMeant = pathClearance({ ...from, clearanceFrac: CLEARANCE_FRAC });
  // centimetres up, so that rounding never leaves the raised path a hair short
  const nearHeightM = asMeant.isClear
    ? lowestM
    : Math.max(
        lowestM,
        Math.min(Math.ceil(asMeant.heightsThatClear.nearAloneM * 100) / 100, HIGHEST_RADIO_M),
      );
  const path: Path = { ...from, nearHeightM };
  const clearance = pathClearance({ ...path, clearanceFrac: CLEARANCE_FRAC });
  const worst = clearance.worst!;
  const blocked = obstacleLoss(path);
  const freeSpaceDb = freeSpaceLossDb({ distanceM, frequencyMHz });
  const rainDb = climate
    ? rainPathLossDb({
        distanceM: clamp(distanceM, 1, 60_000),
        frequencyMHz,
        rainMmPerH: clamp(climate.rainRateMmPerH, 0, 300),
        polarisationTiltDeg: 0,
      })
    : 0;

  const tried = OFFERED_WIDTHS_MHZ.map((widthMHz) => {
    const limit = powerLimitDbm({ band, gainDbi, widthMHz })!;
    const txPowerDbm = Math.min(limit.conductedDbm, GENERIC_RADIO.maxTxPowerDbm);
    const { rxLevelDbm } = linkBudget({
      txPowerDbm,
      txGainDbi: gainDbi,
      txLossDb: 0,
      rxGainDbi: gainDbi,
      rxLossDb: 2 * GENERIC_RADIO.feederLossDb,
      pathLossDb: freeSpaceDb,
      otherLossDb: Math.min(300, blocked.lossDb + rainDb + ALIGNMENT_LOSS_DB),
    });
    const air = { standard: GENERIC_RADIO.standard, widthMHz, streams: GENERIC_RADIO.streams };
    const rate = bestRate({ ...air, rxLevelDbm: Math.max(rxLevelDbm, -200), fadeMarginDb: wantedDb });
    const slowest = rateSteps(air)[0]!;
    const availableMbps = netThroughputMbps({
      phyMbps: rate?.phyMbps ?? 0,
      planningFactorFrac: PLANNING_FACTOR_FRAC.clearAir,
      portMbps: GENERIC_RADIO.portMbps,
    });
    const capacity = capacityCheck({
      streamsMbps: Array.from({ length: link.otherPosts.value + 1 }, () => view.totalMbps),
      netMbps: Math.max(availableMbps, 0.001),
    });
    return {
      maxEirpDbm: limit.eirpDbm,
      txPowerDbm,
      rxLevelDbm,
      modulation: rate
        ? `${GENERIC_RADIO.standard} row ${rate.mcs}, ${GENERIC_RADIO.streams} streams`
        : "none",
      phyMbps: rate?.phyMbps ?? 0,
      availableMbps,
      sensitivityDbm: (rate ?? slowest).sensitivityDbm,
      fadeMarginDb: rxLevelDbm - (rate ?? slowest).sensitivityDbm,
      channelWidthMHz: widthMHz,
      airtimeFrac: capacity.usedFrac,
      carriesPicture: rate !== undefined && capacity.isEnough,
    };
  });
  const chosen =
    tried.find((one) => one.carriesPicture) ??
    tried.reduce((best, one) => (one.availableMbps > best.availableMbps ? one : best));
  return {
    ...chosen,
    distanceM,
    frequencyMHz,
    region,
    bandName: `${fixed(band.lowMHz, 0)} to ${fixed(band.highMHz, 0)} MHz`,
    needsRadarCheck: band.dfs,
    silenceAfterPowerCutS: band.silenceAfterPowerCutS,
    nearHeightM,
    farHeightM: link.farHeightM.value,
    fresnelRadiusM: fresnelRadiusM({ fromNearM: distanceM / 2, fromFarM: distanceM / 2, frequencyMHz }),
    clearanceM: worst.clearanceM,
    clearanceFrac: worst.clearanceFrac,
    clearingNearHeightM: clearance.isClear ? null : clearance.heightsThatClear.nearAloneM,
    clearingFarHeightM: clearance.isClear ? null : clearance.heightsThatClear.farAloneM,
    freeSpaceLossDb: freeSpaceDb,
    diffractionLossDb: blocked.diffractionDb,
    vegetationLossDb: blocked.vegetationDb,
    rainLossDb: rainDb,
    antennaGainDbi: gainDbi,
    wantedFadeMarginDb: wantedDb,
    bandNotes: band.notes,
    bandSource: band.source,
    outdoorAllowed: band.outdoorAllowed,
    exposureDistanceM: exposureDistanceM({ eirpDbm: chosen.txPowerDbm + gainDbi }),
  };
}

/** The ground as a straight slope between the ends, and the one thing the builder named in the way. */
function obstaclesOf(brief: Brief, distanceM: number): readonly Obstacle[] {
  const ground = straightGround({ distanceM, nearGroundM: 0, farGroundM: 0 });
  const { sight, obstacleDistanceM, obstacleTopM, obstacleDepthM } = brief.link;
  if (sight.value === "clear" || sight.value === "unknown" || obstacleTopM.value <= 0) return ground;
  const kind = sight.value === "ground" ? "ridge" : sight.value === "buildings" ? "building" : "trees";
  return [
    ...ground,
    {
      kind,
      distanceFromNearM: clamp(obstacleDistanceM.value, 1, distanceM - 1),
      topM: obstacleTopM.value + (kind === "trees" ? TREE_GROWTH_M : 0),
      ...(obstacleDepthM.value > 0 ? { depthM: obstacleDepthM.value } : {}),
    },
  ];
}

/** The 5 GHz band with the fewest strings attached: surely allowed outdoors, no radar wait, then the most power, then the highest. */
function bandFor(region: ReturnType<typeof regionOfCountry>, gainDbi: number): RadioBand {
  const rank = (band: RadioBand) => [
    band.outdoorAllowed === true ? 0 : 1,
    band.silenceAfterPowerCutS,
    -(powerLimitDbm({ band, gainDbi, widthMHz: OFFERED_WIDTHS_MHZ[0] })?.eirpDbm ?? -100),
    -band.lowMHz,
  ];
  return bandsForOutdoorPointToPoint(region)
    .filter((band) => band.lowMHz >= BAND_RANGE_MHZ.low && band.highMHz <= BAND_RANGE_MHZ.high)
    .toSorted((a, b) => {
      const [left, right] = [rank(a), rank(b)];
      return left.map((value, i) => value - right[i]!).find((difference) => difference !== 0) ?? 0;
    })[0]!;
}
