/** Which answer "change" means: by its number in the review, by its id, or by words of its name. */

import type { Walked } from "./conversation.ts";
import { type ChangeTarget, readChoice } from "./read/index.ts";
import { labelOf } from "./walk.ts";

/** The question meant, or one sentence on what to type instead. */
export function targetOf(
  target: ChangeTarget,
  walked: readonly Walked[],
): { readonly id: string } | { readonly says: string } {
  const range = `a number from 1 to ${walked.length}`;
  switch (target.by) {
    case "nothing":
      return { says: `Type change and ${range}; review shows them.` };
    case "number": {
      const meant = walked[target.number - 1];
      return (
        meant ?? { says: `There is no answer ${target.number}. Type change and ${range}; review shows them.` }
      );
    }
    case "name":
      return named(target.name, walked);
  }
}

function named(name: string, walked: readonly Walked[]): { readonly id: string } | { readonly says: string } {
  const exact = walked.find((each) => each.id.toLowerCase() === name.toLowerCase());
  if (exact !== undefined) return exact;
  // The topic's title before the label, so that "view distance" is understood as well as "distance".
  const options = walked.map((each, index) => ({
    id: String(index),
    label: labelOf(each),
    aliases: [`${each.topic.title} ${labelOf(each)}`],
  }));
  const read = readChoice(name, options);
  if (read.ok) return walked[Number(read.id)]!;
  const shown = name.length > 40 ? `${name.slice(0, 37)}...` : name;
  if (read.refusal.code !== "several-options")
    return {
      says: `No answer here is called "${shown}". Type review to see them, then change and a number.`,
    };
  const labels = new Set(read.refusal.matches);
  const rows = options.filter(({ label }) => labels.has(label)).slice(0, 4);
  const listed = rows.map(({ id, label }) => `${Number(id) + 1} ${label}`).join(", ");
  return { says: `"${shown}" fits several answers: ${listed}. Type change and its number.` };
}
