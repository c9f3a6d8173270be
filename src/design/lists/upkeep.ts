import type { Design } from "../design.ts";
import { applicable, type List } from "./list.ts";
import { postOf } from "./post.ts";
import { calendar } from "./upkeep-calendar.ts";
import { occasions } from "./upkeep-occasions.ts";

/** What to look at and when. */
export function upkeepList(design: Design): List {
  const post = postOf(design);
  return {
    id: "upkeep",
    title: "Look after it",
    intro:
      "Put these into a calendar now, with the names of who does them. Local rules may ask for inspections of their own.",
    isOrdered: false,
    steps: applicable([...calendar(post), ...occasions(post)]),
  };
}
