import { type Brief, type Design, listsOf, notesOf } from "../design/index.ts";

/** More digits than any figure of a design is known to, and few enough to hide the noise of arithmetic. */
const digits = 6;

function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(digits));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, below]) => [key, rounded(below)]));
}

/** A file's hours are input of their own: tens of thousands of letters that nobody looks for among figures. */
function withoutHours(brief: Brief): Brief {
  const { ownSun } = brief.place;
  if (ownSun.value === null) return brief;
  return {
    ...brief,
    place: { ...brief.place, ownSun: { ...ownSun, value: { ...ownSun.value, hours: null } } },
  };
}

/**
 * The whole design for machines: units in the names, the brief as it was given with the origin of each answer (but not the hours of
 * a weather file), findings, lists, and under `sources` how each figure was worked and who says so.
 */
export function designJson(design: Design): string {
  const { schemaVersion, name, brief, ...worked } = design;
  const told = {
    schemaVersion,
    name,
    brief: withoutHours(brief),
    ...(rounded(worked) as object),
    lists: listsOf(design),
    sources: notesOf(),
  };
  return `${JSON.stringify(told, null, 2)}\n`;
}
