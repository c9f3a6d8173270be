import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** After each start the radio listens for radar before it sends: much for a post that starts anew every day. */
export const radarSilence: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  if (!radio?.needsRadarCheck) return null;
  const sender = brief.loads.devices.find(({ kind }) => kind === "radio");
  const startsDaily = sender?.schedule.kind === "daylight" || sender?.schedule.kind === "clock";
  const minutes = radio.silenceAfterPowerCutS / 60;
  const months = brief.hours.runsInMonth.value.filter(Boolean).length;
  const lostHPerYear = startsDaily ? ((months / 12) * 365.25 * minutes) / 60 : 0;
  return {
    id: "link.radarSilence",
    severity: startsDaily ? "caution" : "note",
    says: `In this band (${radio.bandName}) the radio must listen for radar first: after every power cut the picture stays away for ${fixed(minutes, 0)} min or more, and it may change channel by itself.${startsDaily ? ` This post starts anew every day: about ${fixed(lostHPerYear, 0)} hours a year are lost so, at the beginning of each.` : ""}`,
    change: startsDaily
      ? "Let the radio run all day and night, or start it that much earlier than the camera."
      : "",
    numbers: {
      silenceAfterPowerCutS: radio.silenceAfterPowerCutS,
      bandName: radio.bandName,
      lostHPerYear,
    },
    topics: ["link.carrier", "place.where", "hours.when"],
  };
};
