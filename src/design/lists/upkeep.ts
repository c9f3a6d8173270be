import type { Design } from "../design.ts";
import * as cautions from "./cautions.ts";
import { applicable, type List, step } from "./list.ts";

/**
 * What to look at and when.
 *
 * @source intervals: common practice; monthly readings in the manner of IEEE 1188, from memory
 */
export function upkeepList({ battery, link, brief, mounting }: Design): List {
  return {
    id: "upkeep",
    title: "Look after it",
    intro: "Put these into a calendar now.",
    isOrdered: false,
    steps: applicable([
      step(
        "day",
        "After the first day and the first week: tighten every terminal again, look at aim and received level.",
        {
          cautions: [cautions.ladder, cautions.batteryHandling],
          why: "Copper settles under a screw.",
        },
      ),
      step(
        "month",
        "Every month, from home: lowest voltage before dawn, time in the picture, received level.",
        {
          why: "A slow change shows weeks before a failure does.",
        },
      ),
      step(
        "quarter",
        "Every three months: wash the panel with water and a soft brush in the cool of the day, cut what has grown into sun or radio path, look for water, ants and nests in the box.",
        {
          cautions: [cautions.ladder],
          why:
            brief.place.soilingFrac.value > 0.1
              ? "It is a dirty place: the sums take off a good deal for dust, and more would be missed."
              : "Growth and dirt take light slowly, so nobody sees it.",
        },
      ),
      step(
        "year",
        "Every year: torque of all terminals, gaskets, rust, clamps, bolts, mast plumb, cracks in the footing, surge arresters, firmware, passwords.",
        {
          cautions: [cautions.ladder, cautions.thunder],
          why: "Wind works on bolts all year.",
        },
      ),
      battery !== null &&
        step(
          "capacity",
          `Every year: switch the panel off for a day and see how far the battery falls. Replace it below 80 percent of its rating, usually after ${battery.chemistry === "agm" ? "3 to 6" : "8 to 15"} years.`,
          {
            cautions: [
              cautions.batteryHandling,
              battery.chemistry === "agm" ? cautions.acid : cautions.lithium,
            ],
            why: "The size was chosen so that it still carries the dark spell at 80 percent (IEEE 1013, from memory).",
          },
        ),
      brief.place.snowWeeks.value > 0 &&
        step("snow", "After snow: clear the panel with a soft broom, from the ground if you can.", {
          cautions: [cautions.ladder],
          why: `The sums allow for ${brief.place.snowWeeks.value} weeks of snow a year, not more.`,
        }),
      step("storm", "After a storm, a near strike or smoke: arresters, cables, aim, mast.", {
        cautions: [mounting.tube === null ? cautions.ladder : cautions.fallingMast, cautions.thunder],
        why: "Look before you climb: a damaged mast may be holding by habit.",
      }),
      link?.carrier === "radio" &&
        step(
          "leaves",
          "In early summer, when the leaves are out: compare the received level with the first one.",
          {
            why: "Trees grow into radio paths.",
          },
        ),
      step(
        "end",
        "When it is taken down: wipe the cameras and cards, bring the battery to a collection point, fill the hole.",
        {
          cautions: [cautions.batteryHandling],
        },
      ),
    ]),
  };
}
