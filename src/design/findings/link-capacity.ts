import { fixed } from "../chain/words.ts";
import type { Rule } from "./rule.ts";

export const linkCapacity: Rule = ({ brief, link }) => {
  const radio = link?.radio;
  if (!link || !radio || radio.carriesPicture || radio.phyMbps === 0) return null;
  const posts = brief.link.otherPosts.value;
  const shared = posts > 0 ? ` shared by ${posts + 1} posts` : "";
  return {
    id: "link.capacity",
    severity: "stop",
    says: `The pictures need ${fixed(link.needMbps, 1)} Mbit/s; of the radio's ${fixed(radio.availableMbps, 0)} Mbit/s${shared} only half may be filled steadily, which is 50 %, and they would take ${fixed(100 * radio.airtimeFrac, 0)} % of the whole.${posts > 0 ? " Where the other posts stand is not known: they are taken as like this one and as far away." : ""}`,
    change:
      "Send fewer pictures a second, fewer pixels or fewer cameras, give the posts separate radios at the far end, or shorten or clear the path.",
    numbers: {
      needMbps: link.needMbps,
      availableMbps: radio.availableMbps,
      airtimeFrac: radio.airtimeFrac,
      fadeMarginDb: radio.fadeMarginDb,
    },
    topics: ["view.smoothness", "link.otherPosts", "link.distance", "view.cameras"],
  };
};
