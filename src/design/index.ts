/** From a brief to everything computed from it. */
import type { Brief } from "./brief.ts";
import { chainOf } from "./chain/chain.ts";
import { notesByStage } from "./chain/notes.ts";
import type { Design, Note, World } from "./design.ts";
import { findingsOf } from "./findings/index.ts";

export type * from "./brief.ts";
export { topicIds } from "./brief.ts";
export { assumedFactWords } from "./chain/assumed.ts";
export { limitText } from "./chain/limit.ts";
export { type Meaning, meaningsOf } from "./chain/meanings.ts";
export { atLeast, bagsFor, conductorText, dug } from "./chain/words.ts";
export type * from "./design.ts";
export { stageNames } from "./design.ts";
export { type Finding, type Severity, severityWord } from "./finding.ts";
export {
  GOVERNING_WORDS,
  governingAh,
  type HandbookSums,
  handbookSums,
  handFigure,
  type MonthSum,
  monthSumText,
  type SumLine,
  withUnit,
} from "./handbook/index.ts";
export { type Caution, type Hazard, type List, type ListId, listsOf, type Step } from "./lists/index.ts";
export {
  type ChargeNow,
  type ComingSky,
  type OutlookAnswer,
  outlookOf,
  type PostOutlook,
  type PostTierOutlook,
  type SkyKind,
  type SwitchedNow,
} from "./outlook.ts";
export { priceCurrency } from "./practice/prices.ts";

/** Works a design out of a brief. */
export function designOf(brief: Brief, world: World): Design {
  const design = chainOf(brief, world);
  return { ...design, findings: findingsOf(design, world) };
}

/** How each figure of a design is made and who says so, by path: "battery.requiredAh". */
export function notesOf(): Readonly<Record<string, Note>> {
  return Object.fromEntries(
    Object.entries(notesByStage).flatMap(([stage, notes]) =>
      Object.entries(notes).map(([field, note]) => [`${stage}.${field}`, note]),
    ),
  );
}
