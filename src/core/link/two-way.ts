import { sum, within } from "../numerics/index.ts";
import { misalignmentLossDb, polarisationLossDb } from "./antenna.ts";
import { type Availability, availability, type LinkClimate } from "./availability.ts";
import { linkBudget } from "./budget.ts";
import { type AirInterface, bestRate, type RadioRow, type RateStep, rateSteps } from "./rates.ts";

/** Noise figure from which the standard's minimum sensitivities are derived. IEEE 802.11, from memory. */
const STANDARD_NOISE_FIGURE_DB = 10;

/** One end of a link as it sends and as it hears. */
export type RadioEnd = {
  readonly name: string;
  /** -60 to 60, at full power. */
  readonly txPowerDbm: number;
  /** -20 to 70. */
  readonly gainDbi: number;
  /** Cable and connectors between radio and antenna, 0 to 60; 0 for an antenna built in. */
  readonly feedLossDb: number;
  /** How far the antenna looks past the other end, -180 to 180; 0 when absent. Needs beamwidthDeg. */
  readonly offAxisDeg?: number;
  /** Full half-power width, 0.05 to 180. */
  readonly beamwidthDeg?: number;
  /** Data sheet: sensitivity of this end's receiver and power of this end's transmitter, row by row. */
  readonly radioRows?: readonly RadioRow[];
  /** 0 to 30; shifts the standard's sensitivities, which stand for 10. Not used with radioRows. */
  readonly noiseFigureDb?: number;
};

export type TwoWayLink = {
  readonly near: RadioEnd;
  readonly far: RadioEnd;
  readonly air: AirInterface;
  /** Free space, gases and obstacles: the same both ways. 0 to 300. */
  readonly pathLossDb: number;
  /** Turn of the two antennas' polarisations against each other, -90 to 90; 0 when absent. */
  readonly polarisationTwistDeg?: number;
  /** Margin that the rate must leave, 0 to 80. */
  readonly fadeMarginDb: number;
  /** How well the path loss is known, dB either way, 0 to 40; 0 when absent. */
  readonly pathToleranceDb?: number;
};

export type Direction = {
  readonly from: string;
  readonly to: string;
  readonly eirpDbm: number;
  /** Expected at the receiver, at the transmitter's full power. */
  readonly rxLevelDbm: number;
  /** The reading may lie so far from it either way before something is wrong. */
  readonly toleranceDb: number;
  /** The fastest rate that leaves the wanted margin; undefined where none does. */
  readonly rate: RateStep | undefined;
  /** Every rate, slowest first, with the margin it leaves. */
  readonly steps: readonly (RateStep & { readonly marginDb: number })[];
  /** At the rate above, or at the slowest one where none leaves the wanted margin. */
  readonly marginDb: number;
  readonly sensitivityDbm: number;
};

export type TwoWayBudget = {
  readonly nearToFar: Direction;
  readonly farToNear: Direction;
  /** The direction with less rate, or at one rate with less margin. */
  readonly weaker: Direction;
};

/**
 * Both directions of a link: each with its sender's power and its RECEIVER's sensitivity.
 *
 * @param link  see {@link TwoWayLink}
 * @throws RangeFault outside the ranges there and of bestRate
 * @source sum of gains and losses, Recommendation ITU-R P.341 (from memory); sensitivities as in modulation-tables.ts;
 *         tolerance: 1.5 dB of power, 1 dB of each antenna, 1 dB of the meter and the path's own, as root of squares:
 *         judgement, no source
 */
export function twoWayBudget(link: TwoWayLink): TwoWayBudget {
  const nearToFar = direction(link, link.near, link.far);
  const farToNear = direction(link, link.far, link.near);
  const rank = (one: Direction) => one.rate?.phyMbps ?? 0;
  const isFarWeaker =
    rank(farToNear) < rank(nearToFar) ||
    (rank(farToNear) === rank(nearToFar) && farToNear.marginDb < nearToFar.marginDb);
  return { nearToFar, farToNear, weaker: isFarWeaker ? farToNear : nearToFar };
}

/**
 * Availability over the year of the direction that fails first.
 *
 * A radio falls back to a slower rate when it fades, so what counts is the margin to the slowest rate that still carries
 * the pictures, not to the one chosen under a clear sky.
 *
 * @param use.budget        of {@link twoWayBudget}; its path loss must hold the gases already
 * @param use.climate       see LinkClimate
 * @param use.leastPhyMbps  slowest rate that is enough, 0 to 100 000; the slowest there is when absent
 * @returns of rain and multipath, times added. A fade takes both directions at once: the weaker one decides
 * @throws RangeFault outside the ranges above and of LinkClimate
 * @source Recommendation ITU-R P.530 clauses 2.3 and 2.4
 */
export function twoWayAvailability(use: {
  readonly budget: TwoWayBudget;
  readonly climate: LinkClimate;
  readonly leastPhyMbps?: number;
}): Availability {
  const leastMbps = within("leastPhyMbps", use.leastPhyMbps ?? 0, 0, 100_000);
  const margins = [use.budget.nearToFar, use.budget.farToNear].map(({ steps }) =>
    Math.max(-300, ...steps.filter((step) => step.phyMbps >= leastMbps).map((step) => step.marginDb)),
  );
  return availability({ ...use.climate, marginDb: Math.min(300, ...margins) });
}

function direction(link: TwoWayLink, from: RadioEnd, to: RadioEnd): Direction {
  const aimDb = sum([from, to].map(aimLossDb)) + polarisationLossDb(link.polarisationTwistDeg ?? 0);
  const { rxLevelDbm, eirpDbm } = linkBudget({
    txPowerDbm: from.txPowerDbm,
    txGainDbi: from.gainDbi,
    txLossDb: from.feedLossDb,
    rxGainDbi: to.gainDbi,
    rxLossDb: to.feedLossDb,
    pathLossDb: link.pathLossDb,
    otherLossDb: aimDb,
  });
  const radioRows = rowsBetween(link.air, from, to);
  const air = { ...link.air, ...(radioRows ? { radioRows } : {}) };
  const rate = bestRate({
    ...air,
    rxLevelDbm: Math.min(30, Math.max(-200, rxLevelDbm)),
    fadeMarginDb: link.fadeMarginDb,
  });
  const steps = rateSteps(air).map((one) => ({
    ...one,
    marginDb: rxLevelDbm - one.powerBackoffDb - one.sensitivityDbm,
  }));
  within("rates of the air interface", steps.length, 1, 100);
  const step = steps.find((one) => one.mcs === rate?.mcs) ?? steps[0]!;
  const pathToleranceDb = within("pathToleranceDb", link.pathToleranceDb ?? 0, 0, 40);
  return {
    from: from.name,
    to: to.name,
    eirpDbm,
    rxLevelDbm,
    toleranceDb: Math.hypot(1.5, 1, 1, 1, pathToleranceDb),
    rate,
    steps,
    marginDb: step.marginDb,
    sensitivityDbm: step.sensitivityDbm,
  };
}

function aimLossDb(end: RadioEnd): number {
  if (end.offAxisDeg === undefined || end.offAxisDeg === 0) return 0;
  return misalignmentLossDb({ offAxisDeg: end.offAxisDeg, beamwidthDeg: end.beamwidthDeg ?? Number.NaN });
}

/** Sensitivity of the end that receives paired with the back-off of the end that sends; undefined: the standard's own. */
function rowsBetween(air: AirInterface, from: RadioEnd, to: RadioEnd): readonly RadioRow[] | undefined {
  const hasOwn = to.radioRows || from.radioRows || to.noiseFigureDb !== undefined;
  if (!hasOwn) return undefined;
  const betterDb = STANDARD_NOISE_FIGURE_DB - within("noiseFigureDb", to.noiseFigureDb ?? 10, 0, 30);
  const standard = rateSteps(air).map(({ mcs, sensitivityDbm }) => ({
    mcs,
    sensitivityDbm: sensitivityDbm - betterDb,
  }));
  const heard = to.radioRows ?? standard;
  const sent = from.radioRows;
  return heard
    .filter((row) => !sent || sent.some((own) => own.mcs === row.mcs))
    .map(({ mcs, sensitivityDbm }) => ({
      mcs,
      sensitivityDbm,
      powerBackoffDb: sent?.find((own) => own.mcs === mcs)?.powerBackoffDb ?? 0,
    }));
}
