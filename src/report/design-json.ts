import { type Design, listsOf, notesOf } from "../design/index.ts";

/** More digits than any figure of a design is known to, and few enough to hide the noise of arithmetic. */
const digits = 6;

function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(digits));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, below]) => [key, rounded(below)]));
}

/**
 * The whole design for machines: units in the names, the brief as it was given with the origin of each answer, findings,
 * lists, and under `sources` how each figure was worked and who says so.
 */
export function designJson(design: Design): string {
  const { schemaVersion, name, brief, ...worked } = design;
  const told = {
    schemaVersion,
    name,
    brief,
    ...(rounded(worked) as object),
    lists: listsOf(design),
    sources: notesOf(),
  };
  return `${JSON.stringify(told, null, 2)}\n`;
}
