import type { Design } from "../design.ts";
import { pictureProofs } from "./commission-picture.ts";
import { powerProofs } from "./commission-power.ts";
import { applicable, type List } from "./list.ts";
import { postOf } from "./post.ts";

/** Proof that it works: what to measure, what it should be, and how far off is still right. */
export function commissioningList(design: Design): List {
  const post = postOf(design);
  return {
    id: "commissioning",
    title: "Prove that it works",
    intro:
      "Write each value down with date and weather. They are what you compare with when something fails. Where your rules ask for tests by an electrician, these do not replace them.",
    isOrdered: true,
    steps: applicable([...powerProofs(post), ...pictureProofs(post)]),
  };
}
