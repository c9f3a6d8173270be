/** What was looked at, in a line each; the radio that is taken by its own budget, not by core's first look. */
import type { CarrierChoice } from "../../core/link/index.ts";
import type { LinkAvailability, LinkChoice, RadioPath } from "../design.ts";
import { fixed } from "./words.ts";

interface Taken {
  readonly radio: RadioPath;
  readonly availability: LinkAvailability | null;
}

export function choiceOf({ carrier, suits, reason, radio }: CarrierChoice, taken: Taken): LinkChoice {
  const name = {
    radio: `${radio?.id ?? ""} radio`,
    cable: "network cable",
    fibre: "optical fibre",
    cellular: "mobile network",
  }[carrier];
  if (radio?.id === taken.radio.radioClass) return { name, ...verdictOn(taken), isTaken: true };
  return { name, suits, reason: radio ? radio.reason : reason, isTaken: false };
}

const SIDE = { computed: "about", "at-most": "at most", "at-least": "at least" } as const;

/** Heights, band and antennas as built: core's first look has both ends alike and the heights of the usual band. */
function verdictOn({ radio, availability }: Taken): Pick<LinkChoice, "suits" | "reason"> {
  const marginDb = fixed(radio.fadeMarginDb, 1);
  const leaves = `It leaves ${marginDb} dB of margin`;
  if (radio.phyMbps === 0)
    return {
      suits: false,
      reason: `Its best leaves ${marginDb} dB of margin; ${fixed(radio.wantedFadeMarginDb, 0)} dB are wanted.`,
    };
  if (!radio.carriesPicture)
    return {
      suits: false,
      reason: `${leaves}, but at that rate it does not carry the pictures with room to spare.`,
    };
  if (availability !== null && availability.lostHPerYear > availability.askedHPerYear)
    return {
      suits: false,
      reason: `${leaves}, but weather would take it away for ${hoursOf(availability)}, more than is wanted.`,
    };
  if (radio.outdoorAllowed !== true)
    return {
      suits: "ask",
      reason: `${leaves}, but the country must be asked whether a post may use the band.`,
    };
  return {
    suits: true,
    reason:
      availability === null ? `${leaves}.` : `${leaves} and is lost to weather for ${hoursOf(availability)}.`,
  };
}

function hoursOf({ certainty, lostHPerYear }: LinkAvailability): string {
  if (lostHPerYear < 1 && certainty !== "at-least") return "less than an hour a year";
  return `${SIDE[certainty]} ${fixed(lostHPerYear, lostHPerYear < 10 ? 1 : 0)} h a year`;
}
