/** Link, picture, time, and what must happen by itself. */
import type { SceneView } from "../design.ts";
import { counted, decibels, megabits } from "./figures.ts";
import { type MaybeStep, step } from "./list.ts";
import type { Post } from "./post.ts";
import { expectedLevels } from "./radio-words.ts";
import { listening } from "./settings-network.ts";

export function pictureProofs(post: Post): readonly MaybeStep[] {
  const { brief, view, battery } = post.design;
  return [
    ...linkProofs(post),
    ...view.scenes.map((scene, i) => picture(post, scene, i)),
    view.scenes.length > 0 &&
      step("privacy", "Walk the boundary while somebody watches the picture, by day and by night.", {
        why: "A mask that covers by day can miss by night, when the camera moves in the wind.",
        expects: "You vanish where your own ground ends, and the sign is read before the camera sees you.",
      }),
    battery !== null &&
      step("powerCut", "Take the load fuse out for a minute and put it back.", {
        cautions: post.bank,
        why: "After a dark spell nobody will be there to press a button.",
        expects: `Everything comes back by itself${post.design.link?.radio?.needsRadarCheck ? `, the radio after ${listening(post.design.link.radio)} or more of listening for radar` : ""}.`,
      }),
    step("time", "Compare the time in the picture with a clock.", {
      expects: "Within 1 second, also after the power cut.",
    }),
    view.scenes.length > 0 &&
      brief.view.keepDays.value > 0 &&
      step(
        "keep",
        `Play back a recording now, and after ${counted(brief.view.keepDays.value, "day")} check that the oldest are gone.`,
        {
          why: "Keeping pictures longer than needed is against the law in many places.",
          expects: "Clear pictures with the right time, and none older than that.",
        },
      ),
    step("rain", "After the first heavy rain, open the box and feel along every gland.", {
      cautions: battery === null ? [] : post.bank,
      why: "A leak found in the first month costs a gland, not a controller.",
      expects: "Dry.",
    }),
  ];
}

/** Less than this fails in bad weather. @source common practice, no source */
const LEAST_MARGIN_DB = 10;

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

function linkProofs(post: Post): readonly MaybeStep[] {
  const { link, view } = post.design;
  if (link === null) return [];
  const radio = link.radio;
  return [
    radio !== null &&
      step("level", "Read the received level at both ends.", {
        cautions: [post.radioWaves],
        why: "The first value is what every later one is compared with.",
        expects: `${sentence(expectedLevels(link))}, in dry, clear weather. ${radio.fadeMarginDb >= 0 ? `${decibels(radio.fadeMarginDb)} are to spare` : "Nothing is to spare"}; with less than ${decibels(LEAST_MARGIN_DB)} it fails in bad weather (common practice, no source).`,
      }),
    link.carrier === "cable" &&
      step("cableLink", "Read the speed that the network port reports at both ends.", {
        why: "A damaged pair makes the port fall back to a lower speed, or the camera restart.",
        expects: `At least 100 Mbit/s, full duplex, and no errors counted in an hour.`,
      }),
    step(
      "throughput",
      `Send data ${link.carrier === "cellular" ? "up to the internet" : "to the other end"} for ten minutes with all cameras running${view.scenes.length > 0 ? ", at night with something moving" : ""}.`,
      {
        why: "A picture is largest when much of it moves or when it is dark and noisy.",
        expects: `At least ${megabits(link.needMbps)} all the time, and no picture that stops.`,
      },
    ),
  ];
}

function picture({ design, say }: Post, seen: SceneView, i: number): MaybeStep {
  const { said } = say;
  const distanceM = design.brief.view.scenes[i]!.distanceM.value;
  return step(
    `picture${i + 1}`,
    `${seen.name}: let somebody stand ${say.scene(distanceM)} away with a ${said.either("metre stick", "yardstick")}, by day and by night, and count the pixels along ${said.either("the stick", "one foot of it")}.`,
    {
      why: "Focus, haze and blur of movement take more than any data sheet says.",
      expects: `About ${said.bare(seen.pxPerM, "a metre")} pixels in a ${said.either("metre", "foot")}, within 10 % (for this purpose IEC 62676-4:2014 asks for ${said.bare(seen.wantedPxPerM, "a metre", { places: 3, safe: "up" })} pixels), and what must be told apart can be.`,
    },
  );
}
