/** How grave: a stop means "do not buy this yet". */
export type Severity = "note" | "caution" | "stop";

/** The word for it wherever a finding is read: colour and signs only ever come on top of it. */
export const severityWord = { note: "Note", caution: "Caution", stop: "Stop" } as const satisfies Record<
  Severity,
  string
>;

/** One thing the builder must know, with the numbers behind it and what would change it. */
export interface Finding {
  /** Stable, "field.what", for machines and tests. */
  readonly id: string;
  readonly severity: Severity;
  /** One or two plain sentences with the numbers in them. */
  readonly says: string;
  /** What to change, as a sentence; empty where nothing needs to be done. */
  readonly change: string;
  /** The numbers behind it, names carrying their unit. */
  readonly numbers: Readonly<Record<string, number | string>>;
  /** Questions whose answers could change it (ids as in the flow's topics, "topic.name"). */
  readonly topics: readonly string[];
}
