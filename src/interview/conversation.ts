/**
 * The words in which the engine and its three faces talk: answers, state, events, effects, what is said, what is shown.
 * Types only. A face turns keys or lines into events and draws what it is handed; it decides nothing.
 */

import type { HorizonProfile } from "../core/sun/index.ts";
import type { UnitSystem } from "../core/units/index.ts";
import type { Origin, OwnGround, OwnSun, Site, Spot } from "../design/brief.ts";
import type { Finding } from "../design/finding.ts";
import type { ChargeNow, ComingSky, SwitchedNow } from "../design/index.ts";
import type { AnyValue, SiteFacts, Telling, Topic } from "./define.ts";

/** A value as it is kept: a quantity with both ends, in the question's own unit. */
export type StoredValue =
  | {
      readonly kind: "quantity";
      readonly low: number;
      readonly best: number;
      readonly high: number;
      readonly unit: string;
      /** Where the length was given by coordinates: its other end. */
      readonly spot?: Spot | undefined;
    }
  | { readonly kind: "choice"; readonly option: string }
  | { readonly kind: "place"; readonly site: Site | null }
  | { readonly kind: "clock"; readonly fromMin: number; readonly toMin: number }
  | { readonly kind: "horizon"; readonly points: HorizonProfile }
  | { readonly kind: "sun"; readonly figures: OwnSun | null }
  | { readonly kind: "obstacles"; readonly words: string }
  | { readonly kind: "ground"; readonly ground: OwnGround | null };

export interface Answer {
  /** Exactly what was typed; "unsure" where the stand-in was taken. */
  readonly typed: string;
  readonly value: StoredValue;
  readonly origin: Origin;
}

/** Which unit a bare number is taken in where a question names two, and in which everything is told. */
export type Units = UnitSystem;

/** By full question id, in the order first answered. */
export type Answers = Readonly<Record<string, Answer>>;

/** A question that the answers so far call for, with the value that holds for it now. */
export interface Walked {
  readonly id: string;
  readonly topic: Topic;
  readonly question: import("./define.ts").Question;
  /** null where the builder has not answered yet. */
  readonly answer: Answer | null;
  /** The answer's value, or the stand-in's, in the unit that is shown. */
  readonly value: StoredValue;
  /** The same in the flow's own unit, whole and as rules and briefs see it: the cautious end of a quantity. */
  readonly own: { readonly value: StoredValue; readonly rule: AnyValue };
  /** False where the other answers make it needless: it is not shown, and its stand-in counts. */
  readonly isAsked: boolean;
  /** The stand-in that "unsure" would take here now, with its reason. */
  readonly standIn: { readonly value: StoredValue; readonly because: string };
}

export interface PlaceMatch {
  readonly label: string;
  readonly site: Site;
}

/** What else is known when a place is typed. */
export interface PlaceHints {
  /** The place before: this brief's, or the last one used. */
  readonly near: Site | null;
  /** ISO 4217, of the brief. */
  readonly currency: string;
  /** In which distances are told; metric where nothing is said. */
  readonly units?: Units;
}

/** What a typed place may turn out to be. */
export type PlaceReading =
  /** `says`: one sentence to be said beside it. */
  | { readonly kind: "sites"; readonly matches: readonly PlaceMatch[]; readonly says?: string }
  /** More likely a slip than meant: kept only after a yes. */
  | { readonly kind: "doubtful"; readonly match: PlaceMatch; readonly says: string }
  | { readonly kind: "refused"; readonly says: string };

/** What a typed answer about the builder's own sun figures came to. */
export type SunReading =
  /** `says`: what was read, in one sentence; null where there is nothing to add. */
  | { readonly kind: "figures"; readonly figures: OwnSun | null; readonly says: string | null }
  /** Something would leave this machine: it is done only after a yes to this. */
  | { readonly kind: "consent"; readonly says: string }
  | { readonly kind: "refused"; readonly says: string };

/** The line whose ground is asked for. */
export interface Line {
  readonly lengthM: number;
  /** In which bare numbers along it are taken, and what was heard is told. */
  readonly units: Units;
  /** null where it is known no better than by a town, or not at all. */
  readonly near: Spot | null;
  readonly far: Spot | null;
}

/** What a typed answer about the ground under a line came to. */
export type GroundReading =
  /** `says`: what was read, in one sentence; null where there is nothing to add. */
  | { readonly kind: "ground"; readonly ground: OwnGround | null; readonly says: string | null }
  | { readonly kind: "refused"; readonly says: string };

/** Everything the engine is given: it imports no flow, no data and no clock. D is the design's type. */
export interface Interview<D> {
  readonly topics: readonly Topic[];
  readonly tellings: readonly Telling<D>[];
  /** null at sea or outside the grids. */
  readonly siteFacts: (site: Site) => SiteFacts | null;
  readonly readPlace: (text: string, hints: PlaceHints) => PlaceReading;
  /** @param isAgreed the builder has agreed to what the reading asked consent for */
  readonly readSun: (text: string, site: Site | null, isAgreed: boolean, units: Units) => SunReading;
  readonly readGround: (text: string, line: Line) => GroundReading;
  /** Handed every question, also those not asked. */
  readonly designOf: (
    walked: readonly Walked[],
    about: { readonly name: string; readonly currency: string; readonly units: Units },
  ) => D;
  readonly findingsOf: (design: D) => readonly Finding[];
  /** What the options of a choice mean for this design, by option id: "about 200 W and 100 Ah". Nothing for most questions. */
  readonly optionNotes: (questionId: string, design: () => D) => Readonly<Record<string, string>>;
  /** What is drawn when a topic closes, beside its summary, and behind "more"; null: at the end of all questions. */
  readonly charts: (topicId: string | null, design: D) => readonly Chart[];
  /** What "more" tells at a question of a topic beside the design so far; null: at the end of all questions. */
  readonly details: (topicId: string | null, design: D) => readonly Detail[];
  /** What the coming days do to the post, from the clock's hour on: in sentences, and drawn where it could be worked. */
  readonly outlook: (asked: OutlookAsked, design: D) => OutlookSaid;
}

/** How full the battery is, and the days to come. */
export interface OutlookAsked {
  readonly charge: ChargeNow;
  /** Null: nothing was said of the loads. */
  readonly switched: SwitchedNow | null;
  /** Today first. */
  readonly days: readonly ComingSky[];
}

export interface OutlookSaid {
  readonly lines: readonly string[];
  readonly chart: Chart | null;
}

/** Figures that are told when somebody asks for more. */
export interface Detail {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A drawing in characters, with the same in words for whoever does not see it. */
export interface Chart {
  readonly title: string;
  /** One or two sentences with the numbers in them. */
  readonly words: string;
  /** Set as they are, none wider than chartColumns. */
  readonly lines: readonly string[];
  /** What it is drawn of, in short: drawn anew as soon as an answer moves that. Left out: only with its topic. */
  readonly of?: string;
}

/** So wide may a chart be: it still stands beside the margin of a screen of 60 columns. */
export const chartColumns = 46;

/** What the next typed line means: an answer to the question at the cursor, or to a question about it. */
export type Mode =
  | { readonly kind: "asking" }
  /** An answer outside the usual range, or a place that is more likely a slip, waiting for yes or no. */
  | { readonly kind: "confirming"; readonly pending: Answer; readonly says: string }
  /** Something that leaves this machine, waiting for yes or no. */
  | { readonly kind: "consenting"; readonly typed: string; readonly says: string }
  /** Several places of that name, waiting for a number. */
  | { readonly kind: "choosingPlace"; readonly typed: string; readonly matches: readonly PlaceMatch[] };

export interface State {
  readonly name: string;
  readonly currency: string;
  readonly units: Units;
  readonly answers: Answers;
  /** Id of the question being asked; null when every question is answered. */
  readonly cursor: string | null;
  /** Where to return after one answer has been changed: a question, or "finished" for the end of the interview. */
  readonly returnTo: string | null;
  readonly mode: Mode;
  /** Topics whose opening has been said and whose closing summary has been shown. */
  readonly opened: readonly string[];
  readonly closed: readonly string[];
  /** By title, each chart as it was drawn last: it is not drawn twice for the same numbers. */
  readonly drawn: Readonly<Record<string, string>>;
  /** Earlier sets of answers, newest last, for "undo"; bounded. */
  readonly past: readonly Answers[];
}

export type Event =
  | { readonly type: "start" }
  | { readonly type: "line"; readonly text: string }
  /** An answer to the question at the cursor as it was kept once, taken as it is: from a file of answers. */
  | { readonly type: "record"; readonly answer: Answer }
  /** The input has ended (end of file, Ctrl-D). */
  | { readonly type: "end" }
  | { readonly type: "interrupt" };

export type Effect =
  | { readonly type: "say"; readonly said: Said }
  /** State's answers are to be saved now. */
  | { readonly type: "save" }
  /** The builder asked for the lists. */
  | { readonly type: "lists" }
  /** The conversation ends; 0 done, 3 ended with answers missing (end of input), 130 interrupted and saved. */
  | { readonly type: "leave"; readonly code: 0 | 3 | 130 };

export interface ReviewRow {
  readonly number: number;
  readonly id: string;
  readonly topic: string;
  readonly label: string;
  /** "30 ft = 9.1 m", "assumed: 15 m", "not answered". */
  readonly answer: string;
  readonly origin: Origin | null;
}

export type Said =
  | {
      readonly kind: "topicOpened";
      readonly title: string;
      readonly opening: string;
      readonly number: number;
      readonly of: number;
    }
  /** The question just answered and the answer as typed; `heard` only where it adds something ("30 ft = 9.1 m"). */
  | { readonly kind: "answered"; readonly ask: string; readonly typed: string; readonly heard: string | null }
  /** What the answer means: one plain sentence. */
  | { readonly kind: "meaning"; readonly text: string }
  | { readonly kind: "finding"; readonly finding: Finding; readonly isGone: boolean }
  | { readonly kind: "refusal"; readonly text: string }
  /** why, how, more, help: asked for, so as long as it needs. */
  | { readonly kind: "aside"; readonly title: string; readonly lines: readonly string[] }
  | {
      readonly kind: "changed";
      readonly rows: readonly { readonly label: string; readonly before: string; readonly after: string }[];
    }
  | { readonly kind: "review"; readonly rows: readonly ReviewRow[] }
  | { readonly kind: "chart"; readonly chart: Chart }
  /** A topic's summary; beside it the faces may draw the post. */
  | {
      readonly kind: "topicClosed";
      readonly title: string;
      readonly rows: readonly { readonly label: string; readonly value: string }[];
    };

/** What is shown now, waiting for one line. */
export interface View {
  readonly isFinished: boolean;
  /** "Power, question 3 of about 9"; empty when finished. */
  readonly position: string;
  readonly ask: string;
  readonly hint: string;
  readonly options: readonly { readonly number: number; readonly label: string }[];
  /** "Distance (m)": what stands before the cursor. */
  readonly prompt: string;
  /** The answer that Enter keeps: as typed, but an option or a place by its name; null where there is none. */
  readonly keeps: string | null;
  /** What a face may offer while the line is being typed; null where nothing but the builder knows. */
  readonly suggests: "places" | null;
  /** The words that always work, in one line. */
  readonly commands: string;
}
