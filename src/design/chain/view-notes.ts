import { BITS_PER_PIXEL } from "../../core/view/index.ts";
import type { Notes, View } from "../design.ts";
import { OFFERED_SENSORS, wantedPxPerM } from "../practice/view.ts";

export const viewNotes = {
  scenes: {
    what: "lens and pixels for each scene, what they show, and the stream they make",
    formula: `longest sold lens that spans the width; fewest pixels (${OFFERED_SENSORS.map(({ widthPx }) => widthPx).join(", ")} across) with pixels x F / (sensor x distance) at least the density of the purpose; stream = pixels x frames x ${BITS_PER_PIXEL.busy} bit`,
    inputs: ["brief.view.scenes", "brief.view.smoothness"],
    source: `densities: IEC/EN 62676-4:2014 (${(["notice", "follow", "recognise", "identify"] as const).map(wantedPxPerM).join(", ")} px/m); bits per pixel of a busy scene in H.264: judgement from surveillance practice`,
  },
  totalMbps: {
    what: "all streams together",
    formula: "sum over the scenes",
    inputs: ["view.scenes"],
    source: "arithmetic",
  },
  meanMbps: {
    what: "all streams, over 24 hours of the longest day on which the cameras run",
    formula: "sum of stream x hours by its timer / 24; from dawn to dusk on the year's longest mean day",
    inputs: ["view.scenes", "brief.loads.devices", "brief.place.site"],
    source: "arithmetic; day length as in the sun stage",
  },
  storageGB: {
    what: "room for the days to be kept, every hour in which the cameras run recorded",
    formula: "mean Mbit/s x 10.8 x days",
    inputs: ["view.meanMbps", "brief.view.keepDays"],
    source: "arithmetic: 1 Mbit/s for a day is 10.8 GB",
  },
} satisfies Notes<View>;
