/** Aiming, privacy, closing, and the way back. */
import { CLOSEST_APPROACH_M } from "../../core/link/index.ts";
import * as cautions from "./cautions.ts";

import { type MaybeStep, step } from "./list.ts";
import { liftsOf, type Post } from "./post.ts";
import { aimWords, expectedLevels, lowLevelAdvice } from "./radio-words.ts";

export const finishSteps = (post: Post): readonly MaybeStep[] => [
  aim(post),
  antenna(post),
  sign(post),
  look(post),
  close(post),
  takeDown(post),
];

function aim(post: Post): MaybeStep {
  const { link } = post.design;
  return (
    link?.radio != null &&
    step(
      "aim",
      `Aim the radio, first at the post, then at the other end: sweep slowly far to both sides, then up and down, go back to the strongest level, and tighten. Then once more round. ${aimWords(link, post.say)}`,
      {
        cautions: [...post.high, post.radioWaves],
        why: "It needs both radios on and hard concrete. A wide sweep shows the main beam; beside it lie weaker ones that look like success.",
        expects: `Received level in dry, clear weather: ${expectedLevels(link)}. ${lowLevelAdvice(link)}`,
      },
    )
  );
}

function antenna(post: Post): MaybeStep {
  return (
    post.sender === "router" &&
    step("antenna", "Turn or move the router's antenna until its signal is best, then fix it.", {
      cautions: [...post.high, cautions.radioWaves(post.say, CLOSEST_APPROACH_M)],
      why: `A ${post.say.said.either("metre", "yard")} to the side can be worth more than any setting.`,
      expects: "Received power (RSRP) of -100 dBm or stronger (common practice, no source).",
    })
  );
}

function sign({ design }: Post): MaybeStep {
  return (
    design.brief.view.scenes.length > 0 &&
    step(
      "sign",
      "Put up the sign that says: recording, by whom, what for, and how to reach you. It stands where people read it before they come into the picture.",
      {
        why: "Many places ask for it, everywhere it is fair, and it comes before the first picture is kept. Your local rules say what must stand on it.",
      },
    )
  );
}

function look(post: Post): MaybeStep {
  const { view, brief } = post.design;
  const far = view.scenes.map(
    ({ name }, i) => `${name} ${post.say.scene(brief.view.scenes[i]?.distanceM.value ?? 0)}`,
  );
  return (
    far.length > 0 &&
    step(
      "look",
      `Aim the ${post.cameras}, focus at the distance asked (${far.join(", ")}), and mask what is not yours: windows, gardens, public paths. Look again after dark.`,
      {
        cautions: post.high,
        why: "A mask set in the camera is never recorded. The night shows spider threads and reflections that the day hides.",
        expects: "Nothing of other people's property that the purpose does not need.",
      },
    )
  );
}

function close(post: Post): MaybeStep {
  return step(
    "close",
    "Tighten every terminal to the torque on its label, close the glands, put the wire table and the settings sheet (without passwords) inside the door, photograph everything, and lock the box.",
    {
      cautions: post.design.battery === null ? [] : post.bank,
      why: "Whoever comes in two years needs them, and it may be you.",
      expects: "A tug on each wire moves nothing.",
    },
  );
}

function takeDown(post: Post): MaybeStep {
  const { array, battery } = post.design;
  if (array === null || battery === null) return null;
  return step(
    "takeDown",
    `Write the way back inside the door: panels first (switch open, covered, then unplugged at the controller), then the loads, the battery last, its fuses out first.${post.isNewMast ? " The mast comes down only when it is bare." : ""}`,
    {
      cautions: [
        post.livePanel,
        ...post.bank,
        ...(post.isNewMast ? [cautions.fallingMast, post.overheadLines, ...liftsOf(post, "mast tube")] : []),
      ],
      why: "It is the order of connecting, backwards: a controller never has panels without a battery.",
    },
  );
}
