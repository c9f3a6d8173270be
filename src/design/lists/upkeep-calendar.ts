/**
 * What comes round: first day, month, quarter, year.
 *
 * @source intervals: common practice, from memory; monthly readings and the 80 % limit in the manner of IEEE 1188, from
 *         memory; washing and growth as in NREL/TP-7A40-73822
 */
import { fixed, monthName } from "../chain/words.ts";
import type { Battery, Reliability } from "../design.ts";
import * as cautions from "./cautions.ts";
import { decibels, degrees, listed, percent, plumb, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";

export const calendar = (post: Post): readonly MaybeStep[] => [
  first(post),
  month(post),
  quarter(post),
  ...year(post),
  capacity(post),
  tilt(post),
  leaves(post),
];

function first(post: Post): MaybeStep {
  return step(
    "first",
    `After the first day and the first week: tighten every terminal to its torque again, feel for warm joints, and look at ${post.sender === null ? "the aim of the camera" : `aim and ${post.sender === "radio" ? "received level" : "signal"}`}.`,
    {
      cautions: [...post.high, ...(post.design.battery === null ? [] : post.bank)],
      why: "Copper settles under a screw, and concrete and clamps settle too.",
      expects: "No joint warmer than the hand, and the values of the first day.",
    },
  );
}

function month({ design, sender }: Post): MaybeStep {
  const { battery, link } = design;
  const readings = [
    ...(battery === null
      ? []
      : ["the lowest voltage before dawn", "the highest charge current", "the battery's temperature"]),
    ...(sender === "radio" ? ["the received level"] : []),
    ...(sender === "router" ? ["the signal", "the data used"] : []),
    "the time in the picture",
  ];
  const level = link?.radio == null ? "" : ` and a level within ${decibels(5)} of the first`;
  return step("month", `Every month, from home: write down ${listed(readings)}.`, {
    why: "A slow change shows weeks before a failure does.",
    expects:
      battery === null
        ? "The values of the first day."
        : `Always above ${volts(battery.lowVoltageDisconnectV)}${level}.`,
  });
}

function quarter(post: Post): MaybeStep {
  const { design, hasFrame, sender } = post;
  const hasBlocks = (design.battery?.blocks ?? 0) > 1;
  const hasFarEnd = sender === "radio" || design.link?.carrier === "cable";
  const isDirty = design.brief.place.soilingFrac.value > 0.1;
  return step(
    "quarter",
    `Every three months: wash the panels with water and a soft brush in the cool of the day${hasFrame ? "" : ", from the ground on a long handle"}. Cut what grows into the ${sender === "radio" ? "sun or the radio's path" : "sun"}. Look for loose ties, water, ants and nests in the box, open its door slowly, and read the flags of the surge protectors.${hasBlocks ? " Measure each block's own voltage." : ""}${hasFarEnd ? " Press the test button of the residual-current device at the other end." : ""}`,
    {
      cautions: [
        post.livePanel,
        ...(hasFrame ? [] : post.high),
        ...(design.battery === null ? [] : post.bank),
      ],
      why: `${isDirty ? `The sums take off ${percent(design.brief.place.soilingFrac.value)} for dirt: wash more often if it looks worse.` : "Growth and dirt take light slowly, so nobody sees it."} Cold water on hot glass can crack it.`,
      expects: `Clean glass, a dry box, green flags${hasBlocks ? `, all blocks within ${volts(0.1)} of each other` : ""}.`,
    },
  );
}

function year(post: Post): readonly MaybeStep[] {
  const { design, support, isNewMast } = post;
  return [
    step(
      "yearElectric",
      `Every year, electricity: torque of all terminals, every fuse against the table of wires, gaskets, sachets against damp, chafed cables, the path from each metal part to the earth bar.`,
      {
        cautions: [...(design.battery === null ? [] : post.bank), post.livePanel, cautions.lightning],
        why: "Heat and cold work on every joint all year.",
        expects: `Less than 1 ohm to the earth bar, no green or white crust.`,
      },
    ),
    step(
      "yearMechanic",
      `Every year, mechanics: rust, clamps, bolts${isNewMast ? ", mast plumb, cracks in the footing" : `, the ${support} itself`}${post.hasFrame ? ", anchors of the panel frame" : ""}, trees that could fall on it, new wires overhead.`,
      {
        cautions: [...post.high, post.overheadLines, ...(isNewMast ? [cautions.fallingMast] : [])],
        why: "Wind works on bolts all year.",
        expects: isNewMast ? `Plumb within ${plumb(post.say)}, as at first.` : "Nothing that moves by hand.",
      },
    ),
    step(
      "yearNetwork",
      "Every year, network: firmware, passwords, accounts of people who have left, and one saved set of settings loaded into a device as a trial.",
      {
        why: "A copy that was never tried is a hope.",
        expects: "Every device on its newest version, and nobody with access who should not have it.",
      },
    ),
    design.view.scenes.length > 0 &&
      step(
        "yearPrivacy",
        "Every year, privacy: is the camera still needed, does it still see only what it should, are the masks right, can the sign be read, are old clips and copies deleted?",
        {
          why: "Rules change, and so does what grows, is built and is lived in next door. Ask a local source.",
        },
      ),
  ];
}

/** Usual life, years, where nothing was worked out. @source common practice, from memory */
const LIFE_YEARS = { agm: "3 to 6", lifepo4: "8 to 15" } as const;

/** The same years as the design says, where weather years were worked through. */
function lifeText({ chemistry }: Battery, reliability: Reliability | null): string {
  if (reliability === null) return `usually after ${LIFE_YEARS[chemistry]} years`;
  const { batteryYears } = reliability.yearly;
  const years = fixed(batteryYears, batteryYears < 10 ? 1 : 0);
  return `after about ${years} ${years === "1" ? "year" : "years"} by its work and warmth, within a factor of two`;
}

function capacity(post: Post): MaybeStep {
  const { battery, loads, reliability } = post.design;
  if (battery === null) return null;
  const dayFrac = loads.designDailyWh / (battery.bankAh * battery.bankNominalV);
  return step(
    "capacity",
    `Every year, in the bright season: cover the panels for two days and see how far the battery falls. Replace it, all blocks together, when it holds less than 80 % of its rating: ${lifeText(battery, reliability)}.`,
    {
      cautions: [...post.bank, post.livePanel, ...(post.hasFrame ? [] : post.high)],
      why: "The size was chosen so that it still carries the dark spell at 80 % (IEEE 1013, from memory).",
      expects: `In two days not much more than ${percent(Math.min(1, 2 * dayFrac))} of the bank is gone, and the voltage stays above ${volts(battery.lowVoltageDisconnectV)}.`,
    },
  );
}

function tilt(post: Post): MaybeStep {
  const { sun } = post.design;
  return (
    sun !== null &&
    sun.summerTiltDeg !== null &&
    step(
      "tilt",
      `Twice a year: tilt the panels to ${degrees(sun.summerTiltDeg)} when ${monthName(sun.summerMonths[0]!)} begins and back to ${degrees(sun.tiltDeg)} when ${monthName(sun.summerMonths.at(-1)!)} ends.`,
      {
        cautions: [...(post.hasFrame ? [] : post.high), cautions.wind, post.livePanel],
        why: "The sums of the dark season count on the steep tilt, so never miss the autumn.",
        expects: `Within ${degrees(3)}.`,
      },
    )
  );
}

const leaves = ({ sender }: Post): MaybeStep =>
  sender === "radio" &&
  step("leaves", "In early summer, when the leaves are out: compare the received level with the first one.", {
    why: "Trees grow into radio paths.",
    expects: `Within ${decibels(5)} of the first value.`,
  });
