/** Which radio, with which antenna and width, and what arrives at both ends. */
import {
  AGEING_DB,
  beamwidthFromGainDeg,
  netThroughputMbps,
  type PathLoss,
  PLANNING_FACTOR_FRAC,
  powerLimitDbm,
  RADIO_CLASSES,
  type RadioBand,
  type RadioCandidate,
  type RadioClass,
  type RadioSpecification,
  type SectorLoad,
  sectorLoad,
  type TwoWayBudget,
  twoWayBudget,
  VIDEO_OVERHEAD_FRAC,
  VIDEO_SHARE_FRAC,
} from "../../core/link/index.ts";
import { FEED_LOSS_DB, SHARED_END_GAIN_DBI, SHARED_END_WIDTH_DEG } from "../practice/link.ts";

export interface RadioPlan {
  readonly radio: RadioClass;
  readonly band: RadioBand;
  readonly specification: RadioSpecification;
}

/** What a candidate of core comes to as something to plan with; null where the country has no such band. */
export function planOf({ id, band, specification }: RadioCandidate): RadioPlan | null {
  const radio = RADIO_CLASSES.find((one) => one.id === id);
  return band && specification && radio ? { radio, band, specification } : null;
}

/** One antenna and width tried. */
export interface RadioTry {
  readonly gainDbi: number;
  readonly farGainDbi: number;
  readonly widthMHz: number;
  readonly txPowerDbm: number;
  readonly farTxPowerDbm: number;
  readonly maxEirpDbm: number;
  readonly budget: TwoWayBudget;
  readonly phyMbps: number;
  readonly availableMbps: number;
  /** Of all posts together, each like this one. */
  readonly airtimeFrac: number;
  readonly sector: SectorLoad | null;
  /** Slowest rate on the air with which all posts fit. */
  readonly leastPhyMbps: number;
  readonly carriesPicture: boolean;
}

interface Need {
  readonly plan: RadioPlan;
  readonly loss: PathLoss;
  readonly distanceM: number;
  readonly wantedDb: number;
  readonly streamMbps: number;
  readonly otherPosts: number;
}

/**
 * The smallest antenna and narrowest channel that carry the picture both ways; else what comes nearest. null where the rule
 * asks for more gain than the wide antenna of a shared end has.
 */
export function radioTry(need: Need): RadioTry | null {
  const { radio, specification } = need.plan;
  const gains = radio.gainsDbi.filter((gainDbi) => gainDbi >= specification.leastGainDbi);
  const tries = gains.flatMap((gainDbi) =>
    radio.widthsMHz.flatMap((widthMHz) => tryOf(need, gainDbi, widthMHz) ?? []),
  );
  return (
    tries.find((one) => one.carriesPicture) ??
    tries.reduce<RadioTry | null>(
      (best, one) =>
        best === null ||
        one.availableMbps > best.availableMbps ||
        (one.availableMbps === best.availableMbps && one.budget.weaker.marginDb > best.budget.weaker.marginDb)
          ? one
          : best,
      null,
    )
  );
}

function tryOf(need: Need, gainDbi: number, widthMHz: RadioClass["widthsMHz"][number]): RadioTry | null {
  const { plan, loss, wantedDb, streamMbps, otherPosts } = need;
  const { radio, band } = plan;
  const farGainDbi = otherPosts > 0 ? SHARED_END_GAIN_DBI[radio.id] : gainDbi;
  const limit = powerLimitDbm({ band, gainDbi, widthMHz });
  const farLimit = powerLimitDbm({ band, gainDbi: farGainDbi, widthMHz });
  if (limit === undefined || farLimit === undefined) return null;
  const txPowerDbm = Math.max(-60, Math.min(limit.conductedDbm, radio.maxTxPowerDbm));
  const farTxPowerDbm = Math.max(-60, Math.min(farLimit.conductedDbm, radio.maxTxPowerDbm));
  const budget = twoWayBudget({
    near: { name: "the post", txPowerDbm, gainDbi, feedLossDb: FEED_LOSS_DB },
    far: {
      name: "the other end",
      txPowerDbm: farTxPowerDbm,
      gainDbi: farGainDbi,
      feedLossDb: FEED_LOSS_DB,
    },
    air: { standard: radio.standard, widthMHz, streams: radio.streams },
    pathLossDb: Math.min(300, loss.totalDb + AGEING_DB),
    fadeMarginDb: wantedDb,
    pathToleranceDb: Math.min(40, loss.toleranceDb),
  });
  const neededMbps = streamMbps * (1 + VIDEO_OVERHEAD_FRAC);
  const posts = otherPosts + 1;
  const phyMbps = budget.weaker.rate?.phyMbps ?? 0;
  const availableMbps = netMbps(radio, phyMbps);
  const fits = (net: number) => neededMbps * posts <= VIDEO_SHARE_FRAC * net + 1e-9;
  const sector = otherPosts > 0 ? loadOf(need, { gainDbi, txPowerDbm, availableMbps, neededMbps }) : null;
  const least = budget.weaker.steps.find((step) => fits(netMbps(radio, step.phyMbps)));
  return {
    gainDbi,
    farGainDbi,
    widthMHz,
    txPowerDbm,
    farTxPowerDbm,
    maxEirpDbm: limit.eirpDbm,
    budget,
    phyMbps,
    availableMbps,
    airtimeFrac: (neededMbps * posts) / Math.max(availableMbps, 0.001),
    sector,
    leastPhyMbps: least?.phyMbps ?? budget.weaker.steps.at(-1)!.phyMbps,
    carriesPicture: phyMbps > 0 && fits(availableMbps) && (sector?.isEnough ?? true),
  };
}

/** All posts alike, spread evenly over the sector: where the others stand nobody said. */
function loadOf(
  { plan, distanceM, otherPosts }: Need,
  post: {
    readonly gainDbi: number;
    readonly txPowerDbm: number;
    readonly availableMbps: number;
    readonly neededMbps: number;
  },
): SectorLoad {
  const stepDeg = SHARED_END_WIDTH_DEG / (otherPosts + 1);
  return sectorLoad({
    posts: Array.from({ length: otherPosts + 1 }, (_, i) => ({
      name: `post ${i + 1}`,
      bearingDeg: stepDeg * (i + 0.5),
      distanceM,
      neededMbps: post.neededMbps,
      netMbps: post.availableMbps,
      gainDbi: post.gainDbi,
      beamwidthDeg: beamwidthFromGainDeg(post.gainDbi),
      txPowerDbm: post.txPowerDbm,
    })),
    sector: {
      bearingDeg: SHARED_END_WIDTH_DEG / 2,
      beamwidthDeg: SHARED_END_WIDTH_DEG,
      frequencyMHz: plan.specification.centreMHz,
    },
  });
}

const netMbps = (radio: RadioClass, phyMbps: number): number =>
  netThroughputMbps({
    phyMbps,
    planningFactorFrac: PLANNING_FACTOR_FRAC.clearAir,
    portMbps: radio.portMbps,
  });
