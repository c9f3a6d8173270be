import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

/** One direction is too weak even at the slowest rate: both are needed, for every packet is answered. */
export const linkMargin: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  const budget = link?.budget;
  if (!radio || !budget || radio.phyMbps > 0) return null;
  const weaker = budget[budget.weaker];
  const other = budget[budget.weaker === "nearToFar" ? "farToNear" : "nearToFar"];
  const isAlike = Math.abs(other.marginDb - weaker.marginDb) < 0.5;
  return {
    id: "link.margin",
    severity: "stop",
    says: `From ${weaker.from} to ${weaker.to} ${fixed(weaker.rxLevelDbm, 0)} dBm would arrive, which leaves ${fixed(weaker.marginDb, 0)} dB of the ${fixed(radio.wantedFadeMarginDb, 0)} dB wanted even at the slowest rate${isAlike ? "; the other way it is the same" : `; the other way leaves ${fixed(other.marginDb, 0)} dB`}.`,
    change: `Clear or shorten the path, ${
      brief.link.otherPosts.value > 0
        ? "give this post a radio of its own at the far end (the wide antenna that several share hears less), "
        : ""
    }or find another far end; more power than the law allows is no way out.`,
    numbers: {
      rxLevelDbm: weaker.rxLevelDbm,
      marginDb: weaker.marginDb,
      otherMarginDb: other.marginDb,
      wantedMarginDb: radio.wantedFadeMarginDb,
    },
    topics: ["link.distance", "link.sight", "link.between", "link.otherPosts"],
  };
};
