import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const radarSilence: Rule = ({ link }) => {
  const radio = link?.radio;
  if (!radio?.needsRadarCheck) return null;
  return {
    id: "link.radarSilence",
    severity: "note",
    says: `In this band (${radio.bandName}) the radio must listen for radar first: after every power cut the picture stays away for ${fixed(radio.silenceAfterPowerCutS / 60, 0)} min or more, and it may change channel by itself.`,
    change: "",
    numbers: { silenceAfterPowerCutS: radio.silenceAfterPowerCutS, bandName: radio.bandName },
    topics: ["link.carrier", "place.where"],
  };
};
