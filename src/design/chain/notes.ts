/** Every stage's notes together. */
import type { Note, StageName } from "../design.ts";
import { arrayNotes } from "./array.ts";
import { batteryNotes } from "./battery.ts";
import { climateNotes } from "./climate.ts";
import { linkNotes } from "./link.ts";
import { loadsNotes } from "./loads.ts";
import { moneyNotes } from "./money.ts";
import { mountingNotes } from "./mounting.ts";
import { partsNotes } from "./parts-notes.ts";
import { reliabilityNotes } from "./reliability.ts";
import { sunNotes } from "./sun.ts";
import { viewNotes } from "./view.ts";
import { wiringNotes } from "./wiring.ts";

export const notesByStage: Readonly<Record<StageName, Readonly<Record<string, Note>>>> = {
  climate: climateNotes,
  sun: sunNotes,
  loads: loadsNotes,
  reliability: reliabilityNotes,
  battery: batteryNotes,
  array: arrayNotes,
  view: viewNotes,
  link: linkNotes,
  mounting: mountingNotes,
  wiring: wiringNotes,
  parts: partsNotes,
  money: moneyNotes,
};
