import { within } from "../numerics/index.ts";
import type { Availability } from "./availability.ts";
import type { PathLoss } from "./path-loss.ts";
import type { RadioBand } from "./radio-band.ts";
import { RADIO_CLASSES, type RadioClass, type RadioClassId } from "./radio-classes.ts";
import { type RadioNeed, type RadioSpecification, type Trial, trialsIn } from "./radio-trial.ts";
import { bandsForOutdoorPointToPoint } from "./rules.ts";

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

function reasonOf(need: RadioNeed, best: Trial): string {
  const db = (value: number) => `${Math.round(value * 10) / 10} dB`;
  const hours = (year: Availability) => {
    // the rain law ends at 0.001 % and 1 % of the year: beyond them only the side is known
    const side = { computed: "", "at-most": "at most ", "at-least": "at least " }[year.rain.certainty];
    return `${side}${Math.round(year.outageHPerYear * 10) / 10} h a year`;
  };
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
