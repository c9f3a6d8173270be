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
  storageGB: {
    what: "room for the days to be kept, as if every camera recorded day and night",
    formula: "Mbit/s x 10.8 x days",
    inputs: ["view.totalMbps", "brief.view.keepDays"],
    source: "arithmetic: 1 Mbit/s for a day is 10.8 GB",
  },
} satisfies Notes<View>;
