import type { BriefStore } from "../store/index.ts";

const mostNamed = 5;

/** What is saved, in a sentence: for somebody who has typed a name that is not there. */
export function savedNames(briefs: BriefStore): string {
  const ids = briefs.list().map(({ id }) => id);
  if (ids.length === 0) return "No brief is saved yet.";
  const more = ids.length > mostNamed ? ` and ${ids.length - mostNamed} more, see: mastwright list` : ".";
  return `Saved: ${ids.slice(0, mostNamed).join(", ")}${more}`;
}
