import { currencyOf } from "../core/place/index.ts";
import type { Units } from "../interview/conversation.ts";
import { asciiText } from "../plain/index.ts";
import { type BriefFile, type BriefStore, idOf, schemaVersion } from "../store/index.ts";

/** A name's id, whatever it is written in: accents and strokes are spelled out first. */
export function idOfName(name: string): string | null {
  return idOf(asciiText(name).replaceAll("?", " "));
}

/** Why a brief cannot be called so; null where it can. */
export function nameRefusal(briefs: BriefStore, name: string): string | null {
  const id = idOfName(name);
  if (id === null || name.length > 80)
    return "Type a name with at least one Latin letter or digit, such as hill gate.";
  if (briefs.exists(id)) return `There is already a brief ${id}. Type another name.`;
  return null;
}

/** A name nobody has used yet. */
export function freeName(briefs: BriefStore): string {
  for (let number = 1; ; number++) {
    const name = number === 1 ? "my post" : `my post ${number}`;
    if (nameRefusal(briefs, name) === null) return name;
  }
}

/** Units by the name that is typed; null where there are none of that name. */
export function readUnits(text: string): Units | null {
  const name = text.trim().toLowerCase();
  return name === "metric" || name === "us" ? name : null;
}

/** Where feet and pounds are what one thinks in: Unicode CLDR, supplemental data on measurement systems, from memory. */
const feetRegions = new Set(["US", "LR", "MM"]);

/** "GB" of en_GB.UTF-8, of en-GB, of zh-Hans-GB. */
const regionOf = (locale: string): string =>
  /^[a-z]{2,3}(?:[_-][A-Z][a-z]{3})?[_-]([A-Z]{2})(?![A-Za-z])/.exec(locale)?.[1] ?? "";

/** What a locale's own currency commonly is: only a suggestion. */
export function suggestedCurrency(locale: string): string {
  return currencyOf(regionOf(locale)) ?? "USD";
}

export const suggestedUnits = (locale: string): Units =>
  feetRegions.has(regionOf(locale)) ? "us" : "metric";

export function freshBrief(about: {
  readonly name: string;
  readonly currency: string;
  readonly units: Units;
  readonly startedUtc: string;
  readonly topicVersions: Readonly<Record<string, number>>;
}): BriefFile {
  return { schemaVersion, ...about, topicVersions: { ...about.topicVersions }, answers: {} };
}
