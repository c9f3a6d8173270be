import { type Design, listsOf, notesOf } from "../design/index.ts";

/**
 * The whole design for machines: units in the names, origins beside the answers, findings, lists, and under `sources`
 * how each figure was worked and who says so.
 */
export function designJson(design: Design): string {
  return `${JSON.stringify({ ...design, lists: listsOf(design), sources: notesOf() }, null, 2)}\n`;
}
