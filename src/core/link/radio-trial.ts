import { clamp } from "../numerics/index.ts";
import { type Availability, availability } from "./availability.ts";
import { AGEING_DB, linkBudget } from "./budget.ts";
import { gasDbPerKm } from "./gas.ts";
import type { ChannelWidthMHz, RadioStandard } from "./modulation-tables.ts";
import { type PathLoss, pathLoss, type SurveyedPath } from "./path-loss.ts";
import type { RadioBand } from "./radio-band.ts";
import type { RadioClass } from "./radio-classes.ts";
import { POLARISATION_TILT_DEG } from "./rain.ts";
import { bestRate, type RateStep, rateSteps } from "./rates.ts";
import type { RadioRegion } from "./regions.ts";
import { powerLimitDbm } from "./rules.ts";
import { capacityCheck, netThroughputMbps, PLANNING_FACTOR_FRAC } from "./throughput.ts";

export type RadioNeed = {
  /** Heights above sea level, or above any datum near it; its frequency is not used. At most 60 km. */
  readonly path: SurveyedPath;
  readonly region: RadioRegion;
  /** Streams that cross the link, without overhead, 0 to 10 000. */
  readonly streamsMbps: readonly number[];
  /** 0 to 80. */
  readonly wantedMarginDb: number;
  /** 0 to 1, over the year. */
  readonly wantedAvailabilityFrac: number;
  /** Rate exceeded during 0.01 % of the year, 0 to 300. */
  readonly rainMmPerH: number;
  readonly latitudeDeg: number;
  readonly gradientNPerKm: number;
  readonly roughnessM: number;
  readonly hasPowerControl?: boolean;
};

/** What to look for on a data sheet. */
export type RadioSpecification = {
  readonly lowMHz: number;
  readonly highMHz: number;
  /** Middle of the band, or of the channel that loses least to the air: what the sums took. */
  readonly centreMHz: number;
  readonly standard: RadioStandard;
  readonly streams: number;
  readonly leastGainDbi: number;
  readonly widthMHz: ChannelWidthMHz;
  /** Row of the modulation table that must be kept, and the level at which the receiver must still read it. */
  readonly mcs: number;
  readonly leastSensitivityDbm: number;
  /** To be set at the radio: what law and radio allow. */
  readonly txPowerDbm: number;
  readonly eirpDbm: number;
  readonly feed: string;
};

/** One class of radio in one band with one antenna and one width. */
export type Trial = {
  readonly band: RadioBand;
  readonly loss: PathLoss;
  readonly specification: RadioSpecification;
  readonly rxLevelDbm: number;
  readonly marginDb: number;
  readonly netMbps: number;
  readonly availability: Availability;
  readonly lacks: "nothing" | "margin" | "rate" | "hours";
};

const FEED =
  "antenna built in, fed over one outdoor Ethernet cable of at most 90 m; no coaxial cable between radio and antenna";

/** Loss inside a radio with a built-in antenna, each end. Judgement. */
const BUILT_IN_LOSS_DB = 0.5;

/** Every antenna and width that a class offers in a band. */
export function trialsIn(need: RadioNeed, radio: RadioClass, band: RadioBand): readonly Trial[] {
  const frequencyMHz = frequencyIn(radio, band);
  if (frequencyMHz === undefined) return [];
  const loss = pathLoss({ ...need.path, frequencyMHz });
  return radio.widthsMHz
    .filter((widthMHz) => radio.centresMHz !== undefined || widthMHz <= band.highMHz - band.lowMHz)
    .flatMap((widthMHz) =>
      radio.gainsDbi.flatMap((gainDbi) => {
        const limit = powerLimitDbm({
          band,
          gainDbi,
          widthMHz,
          hasPowerControl: need.hasPowerControl ?? false,
        });
        return limit
          ? [
              trial({
                need,
                radio,
                band,
                loss,
                frequencyMHz,
                widthMHz,
                gainDbi,
                legalDbm: limit.conductedDbm,
              }),
            ]
          : [];
      }),
    );
}

/** Middle of the band, or of the whole channel inside it that loses least to the air. */
function frequencyIn(radio: RadioClass, band: RadioBand): number | undefined {
  if (!radio.centresMHz) return (band.lowMHz + band.highMHz) / 2;
  const halfMHz = radio.widthsMHz[0]! / 2;
  const gas = (frequencyMHz: number) => {
    const { oxygenDbPerKm, vapourDbPerKm } = gasDbPerKm({ frequencyMHz });
    return oxygenDbPerKm + vapourDbPerKm;
  };
  return radio.centresMHz
    .filter((centre) => centre - halfMHz >= band.lowMHz && centre + halfMHz <= band.highMHz)
    .toSorted((a, b) => gas(a) - gas(b))[0];
}

function trial(use: {
  readonly need: RadioNeed;
  readonly radio: RadioClass;
  readonly band: RadioBand;
  readonly loss: PathLoss;
  readonly frequencyMHz: number;
  readonly widthMHz: ChannelWidthMHz;
  readonly gainDbi: number;
  readonly legalDbm: number;
}): Trial {
  const { need, radio, band, loss, widthMHz, gainDbi } = use;
  const txPowerDbm = Math.max(-60, Math.min(use.legalDbm, radio.maxTxPowerDbm));
  const { rxLevelDbm, eirpDbm } = linkBudget({
    txPowerDbm,
    txGainDbi: gainDbi,
    // the law counts what leaves the antenna; a loss inside is not made up for
    txLossDb: BUILT_IN_LOSS_DB,
    rxGainDbi: gainDbi,
    rxLossDb: BUILT_IN_LOSS_DB,
    pathLossDb: Math.min(300, loss.freeSpaceDb),
    otherLossDb: Math.min(300, loss.gasDb + loss.lossDb + AGEING_DB),
  });
  const air = { standard: radio.standard, widthMHz, streams: radio.streams };
  const steps = rateSteps(air);
  const carries = (step: RateStep) =>
    capacityCheck({ streamsMbps: need.streamsMbps, netMbps: Math.max(0.001, netOf(radio, step)) }).isEnough;
  const fastest = bestRate({
    ...air,
    rxLevelDbm: clamp(rxLevelDbm, -200, 30),
    fadeMarginDb: need.wantedMarginDb,
  });
  // the slowest rate that carries the picture leaves the most margin: that is what the link must not fall below
  const wanted = steps.find(carries) ?? steps.at(-1)!;
  const marginDb = rxLevelDbm - wanted.sensitivityDbm;
  const year = availability({
    distanceM: need.path.distanceM,
    frequencyMHz: use.frequencyMHz,
    rainMmPerH: need.rainMmPerH,
    polarisationTiltDeg: POLARISATION_TILT_DEG.vertical,
    nearAntennaM: clamp(need.path.nearHeightM, -500, 9000),
    farAntennaM: clamp(need.path.farHeightM, -500, 9000),
    latitudeDeg: need.latitudeDeg,
    gradientNPerKm: need.gradientNPerKm,
    roughnessM: need.roughnessM,
    marginDb: clamp(marginDb, -300, 300),
  });
  return {
    band,
    loss,
    rxLevelDbm,
    marginDb,
    netMbps: fastest ? netOf(radio, fastest) : 0,
    availability: year,
    lacks: !carries(wanted)
      ? "rate"
      : marginDb < need.wantedMarginDb
        ? "margin"
        : year.availabilityFrac < need.wantedAvailabilityFrac
          ? "hours"
          : "nothing",
    specification: {
      lowMHz: band.lowMHz,
      highMHz: band.highMHz,
      centreMHz: use.frequencyMHz,
      standard: radio.standard,
      streams: radio.streams,
      leastGainDbi: gainDbi,
      widthMHz,
      mcs: wanted.mcs,
      leastSensitivityDbm: wanted.sensitivityDbm,
      txPowerDbm,
      eirpDbm,
      feed: FEED,
    },
  };
}

function netOf(radio: RadioClass, step: RateStep): number {
  return netThroughputMbps({
    phyMbps: step.phyMbps,
    planningFactorFrac: PLANNING_FACTOR_FRAC.clearAir,
    portMbps: radio.portMbps,
  });
}
