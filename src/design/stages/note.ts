/** What all stages share: values by month, and the note that goes with each figure. */

export const stageNames = [
  "climate",
  "sun",
  "loads",
  "reliability",
  "battery",
  "array",
  "view",
  "link",
  "mounting",
  "wiring",
  "parts",
  "money",
] as const;
export type StageName = (typeof stageNames)[number];

/** Twelve values, January first. */
export type ByMonth = readonly number[];

/** How a figure is made and who says so: kept beside the stage that computes it, one a field, none missing. */
export interface Note {
  readonly what: string;
  /** As one would write it on paper. */
  readonly formula: string;
  /** Paths of what goes in: "brief.loads.devices", "sun.poaDailyKWhPerM2ByMonth". */
  readonly inputs: readonly string[];
  /** Standard or publication with section, data set, "common practice, no source" or "from memory". */
  readonly source: string;
}
export type Notes<Stage> = { readonly [Field in keyof Stage]-?: Note };
