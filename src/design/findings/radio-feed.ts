import type { OwnedRadio } from "../brief.ts";
import { type Feed, feedOf } from "../chain/demand.ts";
import { plain } from "../chain/words.ts";
import type { Finding } from "../finding.ts";
import { DEVICE_SUPPLY_V } from "../practice/wiring.ts";
import type { Rule } from "./rule.ts";

const FEED_WORDS = {
  passive24: "passive 24 V PoE",
  passive48: "passive 48 V PoE",
} as const;

/** A DC radio that does not bear the bank's swing hangs on the converter, which gives one voltage. */
function dcRadio(owned: OwnedRadio, feed: Feed): Finding | null {
  if (feed !== "converter" || (owned.minInputV <= DEVICE_SUPPLY_V && owned.maxInputV >= DEVICE_SUPPLY_V))
    return null;
  return {
    id: "parts.radioFeed",
    severity: "stop",
    says: `Your radio wants ${plain(owned.minInputV)} to ${plain(owned.maxInputV)} V DC, and the converter of this design gives ${DEVICE_SUPPLY_V} V.`,
    change: `Buy a converter whose output lies within ${plain(owned.minInputV)} to ${plain(owned.maxInputV)} V, or take a radio that is fed to IEEE 802.3 or with ${DEVICE_SUPPLY_V} V, and leave this one out of the owned parts.`,
    numbers: { feed: owned.feed, minInputV: owned.minInputV, maxInputV: owned.maxInputV },
    topics: ["parts.owned"],
  };
}

/** A standard switch does not power a passive radio, and a passive injector can destroy a standard one. */
export const radioFeed: Rule = ({ brief }) => {
  const owned = brief.parts.radio?.value;
  const radio = brief.loads.devices.find(({ kind }) => kind === "radio");
  if (!owned || !radio) return null;
  if (owned.feed === "dc") return dcRadio(owned, feedOf(radio, brief));
  if (owned.feed === "802.3") return null;
  if (feedOf(radio, brief) !== "switch") return null;
  return {
    id: "parts.radioFeed",
    severity: "stop",
    says: `Your radio wants ${FEED_WORDS[owned.feed]} (${plain(owned.minInputV)} to ${plain(owned.maxInputV)} V), which a standard (IEEE 802.3) switch port does not give: the radio would stay dark.`,
    change:
      "Take a radio that is fed to IEEE 802.3, or feed this one through an injector of its own voltage beside the switch (check both pin-outs first) and leave it out of the owned parts.",
    numbers: { feed: owned.feed, minInputV: owned.minInputV, maxInputV: owned.maxInputV },
    topics: ["parts.owned"],
  };
};
