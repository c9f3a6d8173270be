/** What to do with a design, in the order in which it is done. What to buy is the design's own parts stage. */
import type { Design } from "../design.ts";
import { commissioningList } from "./commissioning.ts";
import { installationList } from "./installation.ts";
import type { List } from "./list.ts";
import { permissionsList } from "./permissions.ts";
import { settingsList } from "./settings.ts";
import { toolsList } from "./tools.ts";
import { upkeepList } from "./upkeep.ts";

export type { Caution, Hazard } from "./cautions.ts";
export type { List, ListId, Step } from "./list.ts";

export const listsOf = (design: Design): readonly List[] => [
  permissionsList(design),
  toolsList(design),
  installationList(design),
  settingsList(design),
  commissioningList(design),
  upkeepList(design),
];
