/**
 * The engine, the design and the report as the commands see them: one brief's state in, what follows from it out.
 */
import type { Design } from "../design/design.ts";
import type { Finding } from "../design/finding.ts";
import type { Effect, Event, Said, State, View } from "../interview/index.ts";
import type { BriefFile, FileAnswer, SchemaQuestion } from "../store/index.ts";

export const sheetFormats = ["text", "md", "html", "csv", "json"] as const;
export type SheetFormat = (typeof sheetFormats)[number];

export interface SheetLook {
  readonly columns: number;
  /** It is read aloud: every figure after its name, and no drawing. */
  readonly isSpoken: boolean;
}

/** A brief from a file, as the engine understood it. */
export interface Opened {
  readonly state: State;
  /** Answers that could not be read, with the reason. */
  readonly refused: readonly { readonly id: string; readonly says: string }[];
  /** Questions still without an answer, by id and in words. */
  readonly missing: readonly { readonly id: string; readonly ask: string }[];
  /** What the state has not taken up, kept in the file as it is. */
  readonly untouched: Readonly<Record<string, FileAnswer>>;
}

export interface Program {
  readonly topicVersions: Readonly<Record<string, number>>;
  readonly questions: readonly SchemaQuestion[];
  /** Credit lines of the embedded data. */
  readonly attributions: readonly string[];
  open(file: BriefFile): Opened;
  update(state: State, event: Event): readonly [State, readonly Effect[]];
  view(state: State): View;
  /** Names that a place being typed may become, the likeliest first; an empty text only makes ready for it. */
  suggestedPlaces(text: string, atMost: number): readonly string[];
  designOf(state: State): Design;
  /** The post in a few lines: what is told in the interview, in its short form. */
  shortFacts(design: Design): readonly { readonly label: string; readonly value: string }[];
  drawPost(
    state: State,
    look: { readonly columns: number; readonly isAscii: boolean },
  ): readonly string[] | null;
  /** The design with its lists as a document of the format asked for; as text it is set for how it will be read. */
  sheet(state: State, format: SheetFormat, look?: SheetLook): string;
}

export type { Design, Finding, Said, State };
