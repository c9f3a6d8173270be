/** The second visit, still without current: box, brackets, panels, cables, devices, and the other end. */
import { declinationAtDeg } from "../chain/compass.ts";
import { PANEL_LOWER_EDGE_M } from "../practice/mounting.ts";
import * as cautions from "./cautions.ts";
import { counted, degrees, fixedDegrees, listed, volts } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import { liftsOf, type Post } from "./post.ts";
import { backAimWords } from "./radio-words.ts";

export const hangSteps = (post: Post): readonly MaybeStep[] => [
  box(post),
  brackets(post),
  panel(post),
  strings(post),
  cables(post),
  devices(post),
  farEnd(post),
];

function box({ design, boxSupport, say }: Post): MaybeStep {
  const { box: it, boxHeightM } = design.mounting;
  const vents =
    it.openingCm2 > 0
      ? ` Keep both vents free: ${say.vent(it.openingCm2)} low down and as much high up, insect screens not counted.`
      : "";
  return step(
    "box",
    it.stands === "ground"
      ? `Set the box on a slab beside the ${boxSupport}, on the shaded side, above standing water and the deepest snow, glands downwards.${vents}`
      : `Hang the empty box on the shaded side of the ${boxSupport}, its middle ${say.length(boxHeightM)} above the ground, glands downwards.${vents}`,
    {
      why: `Cables are measured to the box, so it comes before them. In the shade its inside still gets about ${say.rise(Math.max(1, Math.round(it.riseK)))} warmer than the air, and heat halves a battery's life.`,
      expects: "Level, firm, and its door opens fully.",
    },
  );
}

function brackets(post: Post): MaybeStep {
  const { mounting, array, brief } = post.design;
  const places = [
    ...(brief.view.scenes.length > 0 ? [`${post.cameras} ${post.say.length(mounting.cameraHeightM)}`] : []),
    ...(post.sender === null ? [] : [`${post.sender} ${post.say.length(mounting.radioHeightM)}`]),
    ...(array === null || post.hasFrame
      ? []
      : [`middle of the panels ${post.say.length(mounting.panelHeightM)}`]),
  ];
  return (
    places.length > 0 &&
    step("brackets", `Fix the empty brackets, measured from the ground: ${listed(places)}.${apart(post)}`, {
      cautions: [...post.high, post.overheadLines],
      why: "Empty brackets go up first, so that nobody holds a weight on a ladder while holes are found not to match.",
      expects: "Each bracket takes your full pull without turning.",
    })
  );
}

/** Least room between a camera and the panels' edge. @source judgement */
const CAMERA_CLEAR_M = 0.2;

/** Camera and panels at one height would stand in each other's way. */
function apart(post: Post): string {
  const { design, support, hasFrame } = post;
  const { mounting, array, brief } = design;
  if (array === null || array.panels === 0 || hasFrame || brief.view.scenes.length === 0) return "";
  const halfM = mounting.panelHeightM - PANEL_LOWER_EDGE_M;
  if (Math.abs(mounting.cameraHeightM - mounting.panelHeightM) > halfM + CAMERA_CLEAR_M) return "";
  const both = `The panels and the ${post.cameras} come at about the same height:`;
  return support === "wall" || support === "roof"
    ? ` ${both} put them side by side with at least ${post.say.length(0.5)} between them, where the panels stand neither in the picture nor in its light.`
    : ` ${both} turn the arm of the ${post.cameras} out of the panels' way, so that they stand neither in the picture nor in its light.`;
}

function panel(post: Post): MaybeStep {
  const { array, sun } = post.design;
  if (array === null || sun === null || array.panels === 0) return null;
  const many = array.panels > 1 ? `${array.panels} panels` : "panel";
  const summer =
    sun.summerTiltDeg === null ? "" : ` Mark ${degrees(sun.summerTiltDeg)} too, the tilt for summer.`;
  return step(
    "panel",
    `Fix the ${many} ${post.hasFrame ? "to the frame" : `to the ${post.support}`}, face covered: tilt ${degrees(sun.tiltDeg)} from flat, facing true ${sun.facing} (azimuth ${degrees(sun.azimuthDeg)}).${summer}`,
    {
      cautions: [
        ...(post.hasFrame ? [] : post.high),
        ...liftsOf(post, "panel"),
        cautions.wind,
        post.livePanel,
        post.heat,
      ],
      why: `It is the largest thing the wind can push${post.isNewMast && !post.hasFrame ? ", so the concrete must have hardened" : ""}. Covered, it gives no current yet. ${compassWords(post)}`,
      expects: `Tilt within ${degrees(3)}, direction within ${degrees(10)}, the lower edge ${lowerEdge(post)}.`,
    },
  );
}

/** What a compass reads where the panels look. */
function compassWords({ design, say }: Post): string {
  const declinationDeg = declinationAtDeg(design.brief.place.site.value);
  if (declinationDeg === null || design.sun === null)
    return "A compass shows magnetic north: correct it for the local declination, and do not trust one near the magnetic poles.";
  const readsDeg = (design.sun.azimuthDeg - declinationDeg + 360) % 360;
  return `A compass shows magnetic north: here it reads ${degrees(readsDeg)} for that direction, the declination of ${fixedDegrees(Math.abs(declinationDeg))} ${declinationDeg < 0 ? "west" : "east"} taken off. Read it some ${say.said.either("metres", "yards")} away from steel.`;
}

const lowerEdge = ({ hasFrame, support, say }: Post): string =>
  hasFrame
    ? "clear of snow and grass"
    : support === "roof"
      ? "clear of the gutter and of sliding snow"
      : `${say.length(PANEL_LOWER_EDGE_M)} above the ground or higher`;

function strings({ design, livePanel }: Post): MaybeStep {
  const { array, wiring } = design;
  if (array === null || array.panels < 2) return null;
  const fuse =
    wiring === null || wiring.stringFuseA === null
      ? ""
      : " Put the fuse holder of each string in its plus wire, the fuse left out.";
  return step(
    "strings",
    `Join the panels' plugs while all are covered: ${array.inSeries} in series, ${counted(array.inParallel, "string")}.${fuse} Leave the ends of each string capped.`,
    {
      cautions: [livePanel, cautions.polarity],
      why: "Plugs are joined while no current can flow. Both halves of a plug come from one maker, or they burn.",
      expects: `Uncover one string at a time and measure it: between ${volts(0.85 * array.inSeries * array.openCircuitV)} in hot sun and ${volts(array.coldOpenCircuitV)} on a cold morning, all strings within 2 %. Cover it again.`,
    },
  );
}

function cables(post: Post): MaybeStep {
  const { wiring } = post.design;
  const hasDcSurge = post.design.parts.lines.some(({ id }) => id === "surge.dc");
  const data = wiring?.poeRuns.map(({ device, lengthM }) => `${device} ${post.say.length(lengthM)}`) ?? [];
  return step(
    "cables",
    `Pull the cables and label both ends. ${data.length > 0 ? `Data cables: ${listed(data)}. ` : ""}Leave a drip loop at every gland and tie every ${post.say.said.either("half metre", "foot and a half")} with ties made for the sun.${hasDcSurge ? " Put the panels' surge protector where their cable enters the box, bonded to the earth bar." : ""} Connect nothing yet.`,
    {
      cautions: post.high,
      why: "Water runs along a cable into the box unless it drips off first. Sizes and lengths of the power wires stand in the table of wires.",
      expects: "Every gland grips one cable of its own size, and every unused one has a plug.",
    },
  );
}

function devices(post: Post): MaybeStep {
  const { brief } = post.design;
  const things = [
    ...(brief.view.scenes.length > 0 ? [post.cameras] : []),
    ...(post.sender === null ? [] : [post.sender === "radio" ? "radio" : "router's antenna"]),
  ];
  return (
    things.length > 0 &&
    step(
      "devices",
      `Hang the ${listed(things)} so that ${things.length > 1 || post.cameras === "cameras" ? "they" : "it"} can still be turned, plug in the data cables and close their weather boots. Put a surge protector where each data cable enters the box, its earth wire shorter than ${post.say.said.either("0.5 m", "18 in")}.`,
      {
        cautions: post.high,
        why: "This is done while nothing has current. Aiming comes when everything works.",
        expects: "No open plug out of doors.",
      },
    )
  );
}

function farEnd(post: Post): MaybeStep {
  const { link } = post.design;
  if (link?.radio != null)
    return step(
      "farEnd",
      `At the other end: fix the second radio ${post.say.length(link.radio.farHeightM)} above the ground, ${backAimWords(link)}, with a surge protector where its cable enters the building. Plug in its supply indoors.`,
      {
        cautions: [cautions.ladder, cautions.mains, cautions.lightning, post.radioWaves],
        why: "The post's radio can only be aimed at a radio that is on.",
        expects:
          "It answers at its address, and its bracket is bonded to the building's earth as your code asks.",
      },
    );
  return (
    link?.carrier === "cable" &&
    step(
      "farEnd",
      "Draw the data cable into the building, through a surge protector bonded to the building's earth, and plug it into the network there.",
      {
        cautions: [cautions.lightning],
        why: "A cable in the ground brings in what lightning leaves in the soil.",
        expects: "All eight wires pass a cable tester.",
      },
    )
  );
}
