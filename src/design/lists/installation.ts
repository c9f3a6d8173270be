import type { Design } from "../design.ts";
import { localCodes } from "./cautions.ts";
import { connectSteps } from "./install-connect.ts";
import { finishSteps } from "./install-finish.ts";
import { groundSteps } from "./install-ground.ts";
import { hangSteps } from "./install-hang.ts";
import { applicable, type List } from "./list.ts";
import { postOf } from "./post.ts";

/** The order in which to build it: each step says why it comes then. */
export function installationList(design: Design): List {
  const post = postOf(design);
  const missing =
    design.battery === null
      ? " No place has been named, so panels, battery, wires and fuses are missing here: name it before you buy or build."
      : "";
  return {
    id: "installation",
    title: "Build it in this order",
    intro: `${localCodes} Nobody works alone: two people, a telephone that has signal there, and somebody who knows when you should be back.${missing}`,
    isOrdered: true,
    steps: applicable([
      ...groundSteps(post),
      ...hangSteps(post),
      ...connectSteps(post),
      ...finishSteps(post),
    ]),
  };
}
