import type { Design } from "../design.ts";
import * as cautions from "./cautions.ts";
import { counted, volts } from "./figures.ts";
import { applicable, type List, type MaybeStep, step } from "./list.ts";
import { type Post, postOf } from "./post.ts";

/** Who else has a say: a post taken down is wasted, and a camera sees other people. */
export function permissionsList(design: Design): List {
  const post = postOf(design);
  return {
    id: "permissions",
    title: "Before you buy: look and ask",
    intro: "None of these costs anything, and each can end the plan.",
    isOrdered: true,
    steps: applicable([
      wires(post),
      owner(post),
      planning(post),
      electrician(post),
      path(post),
      recording(post),
      purpose(post),
      design.brief.view.recordsSound.value &&
        step("sound", "Ask a local adviser before sound is switched on.", {
          why: "Recording talk needs everybody's consent in many places, and breaking that can be a crime.",
        }),
      post.sender === "radio" &&
        step("radio", "Check your own country's radio rules for the band, the power and outdoor use.", {
          why: "The limits used here are starting values: the regulator's own page decides.",
        }),
    ]),
  };
}

function wires({ design, say, overheadLines }: Post): MaybeStep {
  const { keepClearM } = design.mounting;
  const clear = say.clear(keepClearM);
  return step("wires", "Stand on the spot and look up, all round.", {
    cautions: [overheadLines],
    why: "A wire cannot be bought away. Find another spot before you spend anything.",
    expects: `No wire within ${clear}.`,
  });
}

const OWNED_THING = { mast: "ground", pole: "pole", wall: "wall", roof: "roof" } as const;

const owner = ({ design, support, standsFree, hasFrame }: Post): MaybeStep =>
  step(
    "owner",
    `Ask the owner of the ${OWNED_THING[support]}, in writing, also for the way there${standsFree || hasFrame || design.link?.carrier === "cable" ? " and for digging" : ""}.`,
    { why: "A post that has to be taken down is wasted." },
  );

function planning({ design, isNewMast, support, say }: Post): MaybeStep {
  const { mounting } = design;
  const figures = [
    `its design gust (${say.said(mounting.gustMPerS, "m/s")} is used here)`,
    ...(isNewMast && mounting.footing !== null
      ? [`its frost depth (${say.dug(mounting.footing.frostDepthM)} is used here)`]
      : []),
  ];
  return step(
    "planning",
    `Tell the neighbours. Ask the local building office whether ${isNewMast ? `a mast of ${say.length(mounting.mastHeightM)}` : `equipment on a ${support}`} needs leave, and for ${figures.join(" and ")}.`,
    {
      why: "Height, distance to a boundary, protected land and wildlife have rules that differ from place to place. Wrong figures make it too weak.",
    },
  );
}

function electrician({ design }: Post): MaybeStep {
  const { array, battery } = design;
  const figures =
    array === null || battery === null
      ? ""
      : ` Tell them: battery ${battery.bankV} V, panels up to ${volts(array.coldOpenCircuitV)} on a cold morning.`;
  return step(
    "electrician",
    `Ask an electrician which of this work your rules keep for licensed people, and how earth and surge protection are done there.${figures}`,
    { why: "Rules differ, and an insurer asks who did it." },
  );
}

function path({ design, sender, say }: Post): MaybeStep {
  const { link } = design;
  if (sender === "radio" && link?.radio != null)
    return step(
      "path",
      `Look from the height of the radio (${say.length(link.radio.nearHeightM)}) to the other end (${say.length(link.radio.farHeightM)} high), with binoculars and a lamp or mirror there.`,
      {
        cautions: [cautions.ladder],
        why: "Without a free line of sight most radios of this kind do not work, and trees grow into it.",
        expects: "The other end itself, with nothing between, in summer leaf too.",
      },
    );
  if (sender === "router")
    return step(
      "path",
      "Measure the signal at the spot with a telephone of the same network, at a busy hour.",
      {
        why: "A map of coverage is a promise, a measurement is not.",
        expects: `Upload of at least ${link === null ? "what the pictures need" : `${(1.5 * link.needMbps).toFixed(1)} Mbit/s, half as much again as the pictures need`}.`,
      },
    );
  return (
    link?.carrier === "cable" &&
    step("path", "Walk the whole way of the trench, and ask the owner of every stretch of it.", {
      why: "One road or drive in between can end the plan.",
    })
  );
}

function recording({ design }: Post): MaybeStep {
  return (
    design.brief.view.scenes.length > 0 &&
    step(
      "recording",
      "Check the local rules on recording people: where a camera may point, what the sign must say, how long pictures may be kept, who may see them, and what staff must be told.",
      {
        why: "A camera sees other people. Aim it at your own ground, never where people undress or rest, and mask windows, gardens and public paths. Laws differ by country, state and city: ask a local source.",
      },
    )
  );
}

function purpose({ design }: Post): MaybeStep {
  const { scenes, keepDays } = design.brief.view;
  const kept = keepDays.value > 0 ? ` for ${counted(keepDays.value, "day")}` : "";
  return (
    scenes.length > 0 &&
    step(
      "purpose",
      `Write down in five lines: what the camera is for, what it sees, who looks at the pictures, that they are kept${kept}, and who answers when somebody asks for theirs.`,
      {
        why: "Whoever is filmed may ask, and in many places has a right to see or to have it deleted. Clips of strangers are not published.",
      },
    )
  );
}
