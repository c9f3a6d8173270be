/** The first visit and what comes before it: looking, trying out at home, digging, what everything hangs on, earth. */
import { CHECK_RULES } from "../../core/link/index.ts";
import * as cautions from "./cautions.ts";
import { level, listed, plumb, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import { liftsOf, type Post, usesOwned } from "./post.ts";

export const groundSteps = (post: Post): readonly MaybeStep[] => [
  lookUp(post),
  marks(post),
  ...ownedSteps(post),
  radioRules(post),
  bench(post),
  ...mastSteps(post),
  pole(post),
  anchor(post),
  frame(post),
  trench(post),
  earth(post),
];

function lookUp({ design, isNewMast, say, overheadLines }: Post): MaybeStep {
  const { keepClearM } = design.mounting;
  const clear = say.clear(keepClearM);
  const { overheadLine, freeGroundM } = design.brief.mounting;
  const isTooNear = overheadLine.value === "yes" && freeGroundM.value < keepClearM;
  return step(
    "lookUp",
    isTooNear
      ? `Stop here: a wire was said to be within ${clear} of the spot. Choose another spot, or have the wire's owner make it safe and say so in writing.`
      : `Stand on the spot and look up, all round and along the way on which long parts will be carried. Measure ${clear} to each side.`,
    {
      cautions: [overheadLines],
      why: "It comes first, because no other step is worth anything if this one is wrong.",
      expects: `No wire within ${clear}, which is the ${isNewMast ? "whole length of the mast, its buried part counted because it is raised with it," : "height of the work"} and ${say.said.either("3 m (10 ft)", "10 ft")} more.`,
    },
  );
}

/** What goes into the ground, in words. */
function diggings({ design, isNewMast, standsFree, hasFrame }: Post): readonly string[] {
  return [
    ...(isNewMast ? ["the hole"] : []),
    ...(hasFrame ? ["the panel frame's anchors"] : []),
    ...(design.link?.carrier === "cable" ? ["the trench"] : []),
    ...(standsFree ? ["the earth rod"] : []),
  ];
}

function marks(post: Post): MaybeStep {
  const dug = diggings(post);
  return (
    dug.length > 0 &&
    step(
      "marks",
      `Have buried pipes and cables marked where you will dig: for ${listed(dug)}. Wait until every owner has answered.`,
      {
        cautions: [post.buriedLines],
        why: "The answers take days, so ask before you start and use the wait for the steps at home.",
        expects: "A mark or a written all-clear from each owner.",
      },
    )
  );
}

function ownedSteps(post: Post): readonly MaybeStep[] {
  const { battery, array, brief } = post.design;
  const radio = brief.parts.radio?.value;
  return [
    battery !== null &&
      usesOwned(post, "battery") &&
      step(
        "ownedBattery",
        "Charge each battery block you own fully, let it rest overnight and measure it. Then run a lamp of known watts from it for some hours.",
        {
          cautions: [...post.bank, cautions.polarity],
          why: "An old block can look full and hold half. The sums take your blocks at their full rating.",
          expects:
            battery.chemistry === "agm"
              ? `At least ${volts((12.7 / 12) * battery.blockV)} at rest, all blocks within ${volts(0.1)} of each other, and at least 80 % of the rating (from memory).`
              : `At least ${volts((13.3 / 12.8) * battery.blockV)} at rest, all blocks within ${volts(0.1)} of each other, and at least 80 % of the rating (from memory).`,
        },
      ),
    array !== null &&
      usesOwned(post, "panel") &&
      step("ownedPanel", "Measure the open-circuit voltage of each panel you own, in full sun.", {
        cautions: [post.livePanel, post.heat],
        why: "A cracked cell or a burnt diode shows here, and costs no climb.",
        expects: `Between ${volts(0.85 * array.openCircuitV)} and ${volts(1.02 * array.openCircuitV)}: lower when hot. A third less means a dead part.`,
      }),
    array !== null &&
      battery !== null &&
      usesOwned(post, "controller") &&
      step("ownedController", "Read the label and the sheet of the controller you own.", {
        why: "It is the part that cannot be stretched: one volt too many on a cold morning ends it.",
        expects: `It takes ${battery.bankV} V banks, at least ${volts(array.coldOpenCircuitV)} from the panels, and the charge voltages of the settings sheet.`,
      }),
    radio !== undefined &&
      post.sender === "radio" &&
      step("ownedRadio", "Read how the radio you own is fed, and which of its wires are plus and minus.", {
        cautions: radio.feed.startsWith("passive") ? [cautions.passivePoe] : [],
        why: "Radios look alike and are fed in ways that destroy each other.",
        expects: `${FEED_WORDS[radio.feed]}, ${volts(radio.minInputV)} to ${volts(radio.maxInputV)}, as you answered.`,
      }),
  ];
}

const FEED_WORDS = {
  "802.3": "PoE to IEEE 802.3",
  passive24: "Passive PoE of 24 V",
  passive48: "Passive PoE of 48 V",
  dc: "Direct current",
} as const;

/** Before anything that sends is switched on for the first time, on the table too. */
function radioRules({ design }: Post): MaybeStep {
  const radio = design.link?.radio;
  return (
    radio != null &&
    step(
      "radioRules",
      `${CHECK_RULES} Compare ${radio.bandName}, at most ${level(radio.txPowerDbm)} into the antenna and ${level(radio.maxEirpDbm)} EIRP, used outdoors, with the regulator's own page, and set the country truthfully.`,
      {
        why: "The figures here are starting values, and a radio that is switched on sends at once. It comes before the table, where both are on.",
      },
    )
  );
}

function bench(post: Post): MaybeStep {
  const { battery, link } = post.design;
  const hasRadio = post.sender === "radio";
  const things = [
    ...(battery === null ? [] : ["battery", "controller", "fuses"]),
    post.cameras,
    ...(post.sender === null ? [] : [hasRadio ? "both radios" : "router"]),
  ];
  return step(
    "bench",
    `Put the system together on a table at home: ${listed(things)}. Enter the settings sheet and let it run for two days.${hasRadio ? ` Set the radios to their lowest power and keep them ${post.say.said(2, "m", { safe: "up" })} apart.` : ""}`,
    {
      cautions: [
        ...(battery === null ? [] : [...post.bank, cautions.polarity]),
        ...(hasRadio ? [post.radioWaves] : []),
      ],
      why: "A part that does not fit is found on the table, not on the ladder.",
      expects: `${link === null ? "Pictures in the recorder" : "A picture at the other end"} for two days, and every figure of the settings sheet.`,
    },
  );
}

const SOIL_WORDS = {
  rock: "rock",
  gravel: "gravel",
  sand: "sand",
  clay: "clay or silt",
  soft: "soft ground",
} as const;

function mastSteps(post: Post): readonly MaybeStep[] {
  const { mounting, brief } = post.design;
  const { footing, tube } = mounting;
  if (!post.isNewMast || footing === null || tube === null) return [];
  const bags = post.say.bags(footing);
  const soil = SOIL_WORDS[brief.mounting.soil.value];
  const isGroundBox = mounting.box.stands === "ground";
  return [
    step(
      "hole",
      footing.mustRedesign
        ? "Do not dig yet: this footing needs an engineer's design, a smaller panel or better ground."
        : `Dig the hole ${post.say.dug(footing.diameterM)} across and ${post.say.dug(footing.depthM)} deep, and ${post.say.dug(0.1)} more for gravel at the bottom.`,
      {
        cautions: [post.buriedLines, post.openHole],
        why: `The ground must hold the mast in the strongest gust.${footing.frostDepthM > 0 ? ` The hole also reaches below the frost, taken as ${post.say.dug(footing.frostDepthM)}: ask the building office for the local depth.` : ""}`,
        expects: `Firm, undisturbed ${soil}, as was answered, and no water standing in it. If the ground is softer, answer that question again before you go on.`,
      },
    ),
    !tube.isEnough
      ? step(
          "mast",
          "Do not raise a mast yet: no tube of the list bears this wind. An engineer chooses it.",
          {
            cautions: [post.overheadLines, cautions.fallingMast],
            why: "The figures of the mast are those of the stoutest tube, which is not enough.",
          },
        )
      : !footing.mustRedesign &&
        step(
          "mast",
          `Stand the mast (${tube.name}, ${post.say.cut(mounting.tubeLengthM)} ${post.say.said.either("in all", "overall")}) on the gravel and prop it plumb in two directions. ${isGroundBox ? "Lay the cable pipe to the box beside it. " : ""}Fill the hole with ${bags.count} bags of concrete mix of ${bags.each} and slope the top so that water runs off.`,
          {
            cautions: [
              post.overheadLines,
              cautions.fallingMast,
              ...liftsOf(post, "mast tube"),
              ...liftsOf(post, "bag of concrete"),
              cautions.cement,
            ],
            why: "Concrete must harden before anything hangs on it, so it is poured on the first visit.",
            expects: `Plumb within ${plumb(post.say)}, in both directions, before and after the pour.`,
          },
        ),
    tube.isEnough &&
      !footing.mustRedesign &&
      step("cure", "Leave the props in place, keep the concrete damp, and go home.", {
        why: "Loaded too early, concrete cracks round the tube and the mast works loose.",
        expects: `Two days before anything hangs on it, seven before it meets a storm; twice as long below ${post.say.temperature(5)} (from memory: the bag says more).`,
      }),
  ];
}

function pole({ design, support, high, say }: Post): MaybeStep {
  const { brief, mounting } = design;
  const saidMm = brief.mounting.poleDiameterMm.value;
  return (
    support === "pole" &&
    step(
      "pole",
      "Measure the pole's outside diameter at each clamp, and look for rust, cracks and rot at the ground.",
      {
        cautions: high,
        why: `In the strongest gust everything on it pushes with up to ${say.force(mounting.gustForceN)}, as much as ${say.pull(mounting.gustForceN)} pulling sideways. Its owner or an engineer says whether the pole bears that.`,
        expects:
          saidMm > 0
            ? `${say.said(saidMm, "mm")}, within ${say.said.either("2 mm", "1/16 in")}, and sound metal or wood all round.`
            : "A diameter that the clamps span, and sound metal or wood all round.",
      },
    )
  );
}

function anchor({ design, support, high, say }: Post): MaybeStep {
  const { gustForceN } = design.mounting;
  return (
    (support === "wall" || support === "roof") &&
    step(
      "anchor",
      `Fix the brackets into masonry or timber that holds ${say.force(gustForceN)}, with a fixing rated for it. Never into cladding or tiles alone.${support === "roof" ? " Seal every hole you make." : ""}`,
      {
        cautions: [...high, cautions.hiddenLines],
        why: `That is the push of the strongest gust on everything, as much as ${say.pull(gustForceN)}. If you cannot see what is behind the surface, ask a builder.`,
        expects: "No movement when a grown person pulls hard.",
      },
    )
  );
}

function frame(post: Post): MaybeStep {
  const { mounting, array } = post.design;
  return (
    post.hasFrame &&
    array !== null &&
    step(
      "frame",
      `Dig or screw in the anchors of the panel frame, clear of the ${post.support}'s shadow. They hold ${post.say.force(mounting.panelGustForceN)}; the frame's maker or an engineer chooses them.`,
      {
        cautions: [post.buriedLines, post.openHole],
        why: `The array weighs about ${post.say.weight(array.panels * array.panelKg)}, and in the strongest gust the wind pushes and lifts it as hard as ${post.say.pull(mounting.panelGustForceN)} would pull.`,
        expects: "A frame that does not rock, square and at the panels' tilt.",
      },
    )
  );
}

function trench({ design, say, buriedLines, openHole }: Post): MaybeStep {
  const { link, brief } = design;
  return (
    link?.carrier === "cable" &&
    step(
      "trench",
      `Dig the trench for the data cable, ${say.distance(brief.link.distanceM.value)} long and as deep as your rules ask. Lay pipe with a draw cord and warning tape above it.`,
      {
        cautions: [buriedLines, openHole],
        why: "All digging is done on one day, while the marks are fresh. In a pipe the cable can be drawn again.",
        expects: `At most ${say.said(90, "m away", { places: 1, safe: "down" })} of cable in one piece, cords and loops not counted.`,
      },
    )
  );
}

function earth({ design, standsFree, support, hasFrame, high, buriedLines }: Post): MaybeStep {
  const metal = [support === "mast" || support === "pole" ? support : "brackets", "box"];
  const bonded = listed([...metal, hasFrame ? "panel frame" : "panel", "the bar for the surge protectors"]);
  const isCable = design.link?.carrier === "cable";
  return step(
    "earth",
    standsFree
      ? `Drive the earth rod beside the ${support}, and bond ${bonded} to it with one short, straight conductor.`
      : `Have an electrician bond ${bonded} to the building's own earth.`,
    {
      cautions: standsFree ? [buriedLines, cautions.lightning] : [...high, cautions.lightning],
      why: `All metal and all surge protectors share one earth before any cable is connected: separate rods are worse than none. Rod, size and method follow your local code, and so does the question whether the battery's minus is bonded too: the controller's maker has a say in it.${isCable ? " A data cable joins this earth to the building's: ask an electrician how your code bonds the two." : ""}`,
      expects: "Conductors in one piece, without sharp bends, clamped tight on bare metal.",
    },
  );
}
