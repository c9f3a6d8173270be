import { clamp, within } from "../numerics/index.ts";
import { type Availability, availability } from "./availability.ts";
import { AGEING_DB, linkBudget } from "./budget.ts";
import { gasDbPerKm } from "./gas.ts";
import type { ChannelWidthMHz, RadioStandard } from "./modulation-tables.ts";
import { type PathLoss, pathLoss, type SurveyedPath } from "./path-loss.ts";
import type { RadioBand } from "./radio-band.ts";
import { RADIO_CLASSES, type RadioClass, type RadioClassId } from "./radio-classes.ts";
import { POLARISATION_TILT_DEG } from "./rain.ts";
import { bestRate, type RateStep, rateSteps } from "./rates.ts";
import type { RadioRegion } from "./regions.ts";
import { bandsForOutdoorPointToPoint, powerLimitDbm } from "./rules.ts";
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

export type RadioCandidate = {
  readonly id: RadioClassId;
  readonly suits: boolean;
  /** One sentence. */
  readonly reason: string;
  readonly band: RadioBand | undefined;
  readonly specification: RadioSpecification | undefined;
  readonly rxLevelDbm: number | undefined;
  readonly marginDb: number | undefined;
  readonly netMbps: number;
  readonly loss: PathLoss | undefined;
  readonly availability: Availability | undefined;
};

const FEED =
  "antenna built in, fed over one outdoor Ethernet cable of at most 90 m; no coaxial cable between radio and antenna";

/** Loss inside a radio with a built-in antenna, each end. Judgement. */
const BUILT_IN_LOSS_DB = 0.5;

/**
 * Which class of radio would carry the picture, best first.
 *
 * Each class is tried with its smallest antenna and narrowest channel first, both ends alike, at the power that law and
 * radio allow, with the WORST sensitivities a compliant radio may have: a better radio only adds margin.
 *
 * @param need  see {@link RadioNeed}
 * @returns every class: those that suit first, surely allowed outdoors before those to ask about, then 5, 60, 2.4 GHz
 * @throws RangeFault outside the ranges above and of pathLoss
 * @source rules, rates and losses as in their own files; classes generic (from memory); the order is judgement
 */
export function radioCandidates(need: RadioNeed): readonly RadioCandidate[] {
  within("distanceM", need.path.distanceM, 10, 60_000);
  within("wantedMarginDb", need.wantedMarginDb, 0, 80);
  within("wantedAvailabilityFrac", need.wantedAvailabilityFrac, 0, 1);
  const candidates = RADIO_CLASSES.map((radio) => bestOfClass(need, radio));
  const rank = (one: RadioCandidate) => (one.suits ? 0 : 2) + (one.band?.outdoorAllowed === true ? 0 : 1);
  return candidates.toSorted((a, b) => rank(a) - rank(b));
}

type Trial = {
  readonly band: RadioBand;
  readonly loss: PathLoss;
  readonly specification: RadioSpecification;
  readonly rxLevelDbm: number;
  readonly marginDb: number;
  readonly netMbps: number;
  readonly availability: Availability;
  readonly lacks: "nothing" | "margin" | "rate" | "hours";
};

function bestOfClass(need: RadioNeed, radio: RadioClass): RadioCandidate {
  const bands = bandsForOutdoorPointToPoint(need.region).filter(
    (band) => band.lowMHz >= radio.lowMHz && band.highMHz <= radio.highMHz,
  );
  const trials = bands.flatMap((band) => trialsIn(need, radio, band));
  const best = trials.reduce<Trial | undefined>(
    (kept, trial) => (kept && !isBetter(trial, kept) ? kept : trial),
    undefined,
  );
  if (!best) {
    return {
      id: radio.id,
      suits: false,
      reason: "The rules that are known for the country hold no such band for a fixed outdoor link.",
      band: undefined,
      specification: undefined,
      rxLevelDbm: undefined,
      marginDb: undefined,
      netMbps: 0,
      loss: undefined,
      availability: undefined,
    };
  }
  return {
    id: radio.id,
    suits: best.lacks === "nothing",
    reason: reasonOf(need, best),
    band: best.band,
    specification: best.specification,
    rxLevelDbm: best.rxLevelDbm,
    marginDb: best.marginDb,
    netMbps: best.netMbps,
    loss: best.loss,
    availability: best.availability,
  };
}

const LACK_ORDER = ["nothing", "hours", "rate", "margin"] as const;

/** What suits before what does not; no questions to ask, no radar wait; then what needs least; else what comes nearest. */
function isBetter(a: Trial, b: Trial): boolean {
  const keys = (one: Trial) => [
    LACK_ORDER.indexOf(one.lacks),
    one.band.outdoorAllowed === true ? 0 : 1,
    ...(one.lacks === "nothing"
      ? [
          one.band.silenceAfterPowerCutS,
          one.specification.leastGainDbi,
          one.specification.widthMHz,
          one.loss.totalDb,
        ]
      : [one.lacks === "rate" ? -one.netMbps : 0, -one.marginDb]),
  ];
  const left = keys(a);
  const right = keys(b);
  const at = left.findIndex((key, i) => key !== right[i]);
  return at >= 0 && left[at]! < right[at]!;
}

function trialsIn(need: RadioNeed, radio: RadioClass, band: RadioBand): readonly Trial[] {
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

function reasonOf(need: RadioNeed, best: Trial): string {
  const db = (value: number) => `${Math.round(value * 10) / 10} dB`;
  const hours = (year: Availability) => `${Math.round(year.outageHPerYear * 10) / 10} h a year`;
  switch (best.lacks) {
    case "nothing":
      return best.band.outdoorAllowed === "ask"
        ? `It leaves ${db(best.marginDb)} of margin, but the country must be asked whether a post may use the band.`
        : `It leaves ${db(best.marginDb)} of margin and is lost to weather ${hours(best.availability)}.`;
    case "margin":
      return `Its best leaves ${db(best.marginDb)} of margin; ${db(need.wantedMarginDb)} are wanted.`;
    case "rate":
      return "Its fastest rate does not carry the pictures with room to spare.";
    case "hours":
      return `Weather would take it away ${hours(best.availability)}, more than is wanted.`;
  }
}
