/** What may be drawn when a topic closes. */
export interface Chart {
  readonly title: string;
  readonly words: string;
  /** 46 columns at most, in signs that plain terminals can spell. */
  readonly lines: readonly string[];
  /** What it is drawn of, in short; left out: drawn only with its topic. */
  readonly of?: string;
}
