import { fixed } from "../chain/words.ts";
import { CLEARANCE_FRAC, HIGHEST_RADIO_M } from "../practice/link.ts";
import type { Rule } from "./rule.ts";

/** Ground, buildings or trees reach into the path: how high either end must go. */
export const linkBlocked: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  if (!radio || radio.clearingNearHeightM === null || radio.clearingFarHeightM === null) return null;
  const isTrees = brief.link.sight.value === "trees";
  const isFree = radio.clearanceM >= 0;
  const gap = fixed(Math.abs(radio.clearanceM), 1);
  return {
    id: isTrees ? "link.trees" : "link.blocked",
    severity: "stop",
    says: `With the post's radio at ${fixed(radio.nearHeightM, 1)} m (${HIGHEST_RADIO_M} m is the most a mast raised by hand should carry), the line to the far end ${isFree ? `passes only ${gap} m above` : `runs ${gap} m below the top of`} what stands in the way; ${fixed(CLEARANCE_FRAC, 1)} of the first Fresnel zone must be free${isTrees ? ", and leaves and growth make trees worse each year" : ""}.`,
    change: `Raise the far end to ${fixed(Math.ceil(radio.clearingFarHeightM * 10) / 10, 1)} m${radio.clearingNearHeightM <= 3 * HIGHEST_RADIO_M ? ` or the post's radio to ${fixed(Math.ceil(radio.clearingNearHeightM * 10) / 10, 1)} m (an engineered mast)` : ""}${isTrees ? ", cut the trees" : ""}, or move the post to where the line is free.`,
    numbers: {
      clearanceM: radio.clearanceM,
      clearanceFrac: radio.clearanceFrac,
      clearingNearHeightM: radio.clearingNearHeightM,
      clearingFarHeightM: radio.clearingFarHeightM,
    },
    topics: [
      "link.farHeight",
      "link.sight",
      "link.obstacleTop",
      "link.obstacleDistance",
      "mounting.cameraHeight",
    ],
  };
};
