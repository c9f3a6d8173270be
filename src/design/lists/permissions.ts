import type { Design } from "../design.ts";
import { applicable, type List, step } from "./list.ts";

/** Who else has a say: a post taken down is wasted, and a camera sees other people. */
export function permissionsList({ brief, link }: Design): List {
  return {
    id: "permissions",
    title: "Before you buy: ask",
    intro: "None of these costs anything, and each can end the plan.",
    isOrdered: true,
    steps: applicable([
      step("owner", "Ask the owner of the ground, pole, wall or roof, in writing, also for the way there.", {
        why: "A post that has to be taken down is wasted.",
      }),
      step(
        "neighbours",
        "Tell the neighbours, and ask the local planning office whether a mast of this height needs leave.",
        {
          why: "Height, distance to a boundary and protected land have rules that differ from place to place.",
        },
      ),
      step(
        "recording",
        "Check the local rules on recording pictures of people, on signs that say so, and on how long pictures may be kept.",
        {
          why: "A camera sees other people. Aim it at your own ground and mask windows, gardens and public paths. Laws differ by country, state and city: ask a local source.",
        },
      ),
      brief.view.recordsSound.value &&
        step("sound", "Ask a local adviser before sound is switched on.", {
          why: "Recording talk needs everybody's consent in many places.",
        }),
      link?.carrier === "radio" &&
        step("radio", "Check your own country's radio rules for the band, the power and outdoor use.", {
          why: "The limits used here are starting values; the regulator's own page decides.",
        }),
    ]),
  };
}
