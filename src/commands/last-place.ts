import type { Site } from "../design/index.ts";
import type { BriefStore } from "../store/index.ts";

/** The place of the brief that was saved last and has one. What only stands typed in a file, unread, does not count. */
export function lastPlace(briefs: BriefStore, about: { readonly exceptId: string | null }): Site | null {
  for (const { id } of briefs.list()) {
    if (id === about.exceptId) continue;
    const loaded = briefs.load(id);
    if (loaded.kind !== "brief") continue;
    for (const answer of Object.values(loaded.file.answers))
      if (typeof answer !== "string" && answer.value.kind === "place" && answer.value.site !== null)
        return answer.value.site;
  }
  return null;
}
