import { sum, within } from "../numerics/index.ts";
import { type Saying, sayingIn, type UnitSystem } from "../units/index.ts";
import { type RadioCandidate, radioCandidates } from "./choose-radio.ts";
import type { RadioNeed } from "./radio-trial.ts";
import { VIDEO_OVERHEAD_FRAC } from "./throughput.ts";

/** Fixed part of a copper Ethernet channel; 10 m of cords at its ends make 100. ISO/IEC 11801, from memory. */
export const COPPER_REACH_M = 90;

/** What a single-mode link of the common kind bridges. IEEE 802.3 (1000BASE-LX10), from memory. */
const FIBRE_REACH_M = 10_000;

/** Gigabyte a month for each Mbit/s that never stops: 30.42 days. */
const GB_PER_MONTH_PER_MBPS = 328.5;

export type CarrierChoice = {
  readonly carrier: "radio" | "cable" | "fibre" | "cellular";
  /** `ask`: nothing speaks against it that is known here. */
  readonly suits: true | false | "ask";
  /** One sentence. */
  readonly reason: string;
  /** What can hurt, before the work; empty where nothing special does. */
  readonly caution: string;
  readonly radio: RadioCandidate | undefined;
};

/**
 * How the picture could get home, best first: a short cable before any radio, radio by class, then fibre, then the
 * cellular network.
 *
 * @param need             as for radioCandidates; longer paths than 60 km get no radio
 * @param need.wireRouteM  length of a trench or duct between the ends, 0 to 1 000 000; the path's own when absent
 * @param need.units       in which the reasons are told; metric when absent
 * @throws RangeFault outside the ranges there
 * @source copper: ISO/IEC 11801 and IEEE 802.3, from memory; the order is judgement
 */
export function carrierChoices(
  need: RadioNeed & { readonly wireRouteM?: number; readonly units?: UnitSystem },
): readonly CarrierChoice[] {
  const said = sayingIn(need.units ?? "metric");
  const routeM = within("wireRouteM", need.wireRouteM ?? need.path.distanceM, 0, 1_000_000);
  const neededMbps = sum(need.streamsMbps) * (1 + VIDEO_OVERHEAD_FRAC);
  const radios = need.path.distanceM > 60_000 ? [] : radioCandidates(need);
  const radioChoices = radios.map(
    (radio): CarrierChoice => ({
      carrier: "radio",
      suits: radio.suits ? (radio.band?.outdoorAllowed === true ? true : "ask") : false,
      reason: `${radio.id}: ${radio.reason}`,
      caution: radio.band?.caution ?? "",
      radio,
    }),
  );
  const cable = cableChoice(routeM, said);
  const fibre: CarrierChoice = {
    carrier: "fibre",
    suits: routeM <= FIBRE_REACH_M ? "ask" : false,
    reason:
      routeM <= FIBRE_REACH_M
        ? `Optical fibre in a duct of ${said(routeM, "m away")} carries anything and no lightning; it must be dug, and a converter fed at each end.`
        : `Optical fibre of the common kind ends at ${said(FIBRE_REACH_M / 1000, "km", { safe: "down" })}.`,
    caution:
      "Before digging have buried services located. Never look into a fibre: its light is invisible and can blind.",
    radio: undefined,
  };
  const cellular: CarrierChoice = {
    carrier: "cellular",
    suits: "ask",
    reason: `The cellular network, where it reaches: ${Math.round(neededMbps * GB_PER_MONTH_PER_MBPS)} GB a month if the picture never stops; measure the upload at the post first.`,
    caution: "",
    radio: undefined,
  };
  const all = [cable, ...radioChoices, fibre, cellular];
  const rank = (choice: CarrierChoice) => [true, "ask", false].indexOf(choice.suits);
  return all.toSorted((a, b) => rank(a) - rank(b));
}

function cableChoice(routeM: number, said: Saying): CarrierChoice {
  const suits = routeM <= COPPER_REACH_M;
  return {
    carrier: "cable",
    suits,
    reason: suits
      ? `An outdoor Ethernet cable of ${said(routeM, "m away")} does without any radio, and can bring the power too.`
      : `${said(routeM, "m away")} is more than the ${said(COPPER_REACH_M, "m away", { safe: "down" })} that a copper Ethernet cable bridges.`,
    caution: suits
      ? "Lightning: between two buildings or earths a copper cable needs surge arresters at both ends, or fibre in its place; ask a licensed electrician."
      : "",
    radio: undefined,
  };
}
