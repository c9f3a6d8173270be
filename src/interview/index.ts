/** The door of the room: what the faces, the report and the command line may use of the interview. */

export { checkFlow } from "./check-flow.ts";
export type {
  Answer,
  Answers,
  Chart,
  Effect,
  Event,
  GroundReading,
  Interview,
  Line,
  PlaceHints,
  PlaceMatch,
  PlaceReading,
  ReviewRow,
  Said,
  State,
  StoredValue,
  SunReading,
  View,
  Walked,
} from "./conversation.ts";
export type { SiteFacts, Telling, Topic } from "./define.ts";
export { looksLikeFigures, readMonthlyFigures } from "./monthly-figures.ts";
export { beginsWithCharge, isCommand, readOutlook } from "./read/index.ts";
export { runScript, type ScriptRun } from "./script.ts";
export { begin, designNow, update, view, walkNow } from "./session.ts";
export { reviewRows } from "./shown.ts";
