import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const radioRegion: Rule = ({ link }) => {
  const radio = link?.radio;
  if (!radio || (radio.region !== "other" && radio.outdoorAllowed === true)) return null;
  return {
    id: "link.region",
    severity: "caution",
    says: `${radio.region === "other" ? "No radio rules of this country are known here" : "Whether this band may be used out of doors depends on a licence"}: the sums take ${radio.bandName} with ${fixed(radio.maxEirpDbm, 0)} dBm, the lowest figure of the regions known.`,
    change:
      "Before buying, ask the country's radio authority which band and power a fixed outdoor link may use.",
    numbers: { region: radio.region, maxEirpDbm: radio.maxEirpDbm, bandName: radio.bandName },
    topics: ["place.where", "link.carrier"],
  };
};
