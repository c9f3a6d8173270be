/** From a brief to everything computed from it. */
import type { Brief } from "./brief.ts";
import { arrayNotes } from "./chain/array.ts";
import { batteryNotes } from "./chain/battery.ts";
import { chainOf } from "./chain/chain.ts";
import { climateNotes } from "./chain/climate.ts";
import { linkNotes } from "./chain/link.ts";
import { loadsNotes } from "./chain/loads.ts";
import { moneyNotes } from "./chain/money.ts";
import { mountingNotes } from "./chain/mounting.ts";
import { partsNotes } from "./chain/parts.ts";
import { sunNotes } from "./chain/sun.ts";
import { viewNotes } from "./chain/view.ts";
import { wiringNotes } from "./chain/wiring.ts";
import type { Design, Note, StageName, World } from "./design.ts";
import { findingsOf } from "./findings/index.ts";

export type * from "./brief.ts";
export { topicIds } from "./brief.ts";
export type * from "./design.ts";
export { stageNames } from "./design.ts";
export type { Finding, Severity } from "./finding.ts";
export { type List, type ListId, listsOf, type Step } from "./lists/index.ts";

/** Works a design out of a brief. */
export function designOf(brief: Brief, world: World): Design {
  const design = chainOf(brief, world);
  return { ...design, findings: findingsOf(design, world) };
}

const NOTES: Readonly<Record<StageName, Readonly<Record<string, Note>>>> = {
  climate: climateNotes,
  sun: sunNotes,
  loads: loadsNotes,
  battery: batteryNotes,
  array: arrayNotes,
  view: viewNotes,
  link: linkNotes,
  mounting: mountingNotes,
  wiring: wiringNotes,
  parts: partsNotes,
  money: moneyNotes,
};

/** How each figure of a design is made and who says so, by path: "battery.requiredAh". */
export function notesOf(): Readonly<Record<string, Note>> {
  return Object.fromEntries(
    Object.entries(NOTES).flatMap(([stage, notes]) =>
      Object.entries(notes).map(([field, note]) => [`${stage}.${field}`, note]),
    ),
  );
}
