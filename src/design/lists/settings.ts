import type { Design } from "../design.ts";
import { applicable, type List } from "./list.ts";
import { postOf } from "./post.ts";
import { networkSettings } from "./settings-network.ts";
import { pictureSettings } from "./settings-picture.ts";
import { powerSettings } from "./settings-power.ts";

/** What to set on each device, to be copied onto paper and kept in the box. */
export function settingsList(design: Design): List {
  const post = postOf(design);
  return {
    id: "settings",
    title: "Settings sheet",
    intro:
      "Copy it, fill in what you chose, keep one copy in the box and one at home. Passwords never stand on the copy in the box.",
    isOrdered: false,
    steps: applicable([...powerSettings(post), ...pictureSettings(post), ...networkSettings(post)]),
  };
}
