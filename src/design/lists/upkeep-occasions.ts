/** What is done when something happens: snow, storm, the end of the season, the end of the post. */
import { monthSpans } from "../chain/words.ts";
import * as cautions from "./cautions.ts";
import { counted, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import { liftsOf, type Post } from "./post.ts";

export const occasions = (post: Post): readonly MaybeStep[] => [
  ...season(post),
  snow(post),
  storm(post),
  low(post),
  incident(post),
  end(post),
];

function season(post: Post): readonly MaybeStep[] {
  const { brief, battery } = post.design;
  const months = brief.hours.runsInMonth.value.flatMap((runs, month) => (runs ? [month] : []));
  if (battery === null || months.length === 0 || months.length === 12) return [];
  const rests = brief.hours.runsInMonth.value.flatMap((runs, month) => (runs ? [] : [month]));
  const isLead = battery.chemistry === "agm";
  return [
    step(
      "pause",
      `When it goes to rest (${monthSpans(rests)}): take out the load fuse. Leave panels, controller and battery connected.`,
      {
        cautions: post.bank,
        why: isLead
          ? "The panels keep the battery full: a lead-acid bank left part empty is dead by spring, and freezes sooner."
          : "The panels keep the battery up: one left empty is cut off by its management system and may not wake.",
        expects: `The battery reaches ${volts(battery.absorptionV)} on the next clear days.`,
      },
    ),
    step(
      "resume",
      `Before it runs again (${monthSpans(months)}): read the battery's voltage, clean the panels, put the load fuse in, and go through the first readings again.`,
      {
        cautions: [...post.bank, post.livePanel, ...(post.hasFrame ? [] : post.high)],
        why: "A fault of the winter is found before the picture is needed.",
        expects: `At least ${isLead ? volts((12.6 / 12) * battery.bankV) : volts((13.2 / 12.8) * battery.bankNominalV)} at rest (from memory).`,
      },
    ),
  ];
}

function snow(post: Post): MaybeStep {
  const weeks = post.design.brief.place.snowWeeks.value;
  return (
    weeks > 0 &&
    step("snow", "After snow: clear the panels with a soft broom, from the ground if you can.", {
      cautions: post.hasFrame ? [post.livePanel] : [...post.high, post.livePanel],
      why: `The sums allow for ${counted(Math.round(10 * weeks) / 10, "week")} of snow a year, not more.`,
      expects: "Glass free to its lower edge: one covered row of cells can stop a whole panel.",
    })
  );
}

function storm(post: Post): MaybeStep {
  const { design, isNewMast, support } = post;
  return step(
    "storm",
    `After a storm, a lightning strike nearby, a flood or smoke: look from a distance first, then at ${support}, clamps, cables, surge protectors and aim. Wash off ash and salt.`,
    {
      cautions: [
        post.overheadLines,
        ...(isNewMast ? [cautions.fallingMast] : []),
        ...post.high,
        cautions.lightning,
        ...(design.battery === null ? [] : post.bank),
      ],
      why: `A damaged ${support === "wall" || support === "roof" ? "bracket" : support} may still be standing by habit, and a fallen wire may be live. A battery that stood in water is left alone: ask the fire service.`,
      expects: "Green flags at the surge protectors, and the level and voltages of before.",
    },
  );
}

function low(post: Post): MaybeStep {
  const { battery } = post.design;
  return (
    battery !== null &&
    step(
      "low",
      `When the picture went dark for want of power: find out why, charge the bank fully${battery.chemistry === "agm" ? " within a week" : ""}, and check the time in every device.`,
      {
        cautions: [...post.bank, ...(battery.chemistry === "lifepo4" ? [cautions.polarity] : [])],
        why:
          battery.chemistry === "agm"
            ? "A lead-acid bank left empty hardens within weeks, and an empty one freezes at a few degrees of frost."
            : `An empty block that has been below ${post.say.temperature(0)} is warmed before it is charged.`,
        expects: `Back above ${volts(battery.reconnectV)} while it is charged, and the loads on again by themselves.`,
      },
    )
  );
}

const incident = ({ design }: Post): MaybeStep =>
  design.view.scenes.length > 0 &&
  step(
    "incident",
    "When something happened in the picture: copy that stretch, note who gets it and why, and let the rest be overwritten.",
    {
      why: "Police and insurers ask where a clip has been. Clips of strangers are not published. Your local rules say who may have one.",
    },
  );

function end(post: Post): MaybeStep {
  const { battery, array } = post.design;
  const order =
    battery === null || array === null
      ? ""
      : " Panels first (switch open, covered, then unplugged at the controller), then the loads, the battery last, its fuses out first.";
  return step(
    "end",
    `When it is taken down:${order} Wipe cameras, recorder and cards, and close the accounts.${battery === null ? "" : " Bring the battery to a collection point."}${post.isNewMast ? " Lower the mast bare, and fill the hole." : " Fill every hole you made."} Take the sign down.`,
    {
      cautions: [
        ...(battery === null ? [] : [post.livePanel, ...post.bank, ...liftsOf(post, "battery block")]),
        ...post.high,
        ...(post.isNewMast
          ? [cautions.fallingMast, post.overheadLines, ...liftsOf(post, "mast tube"), post.openHole]
          : []),
      ],
      why: "It is the order of connecting, backwards. A camera sold with its card has been sold with its pictures.",
    },
  );
}
