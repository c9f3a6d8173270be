import { asciiText } from "../plain/index.ts";
import { type BriefFile, type BriefStore, idOf, schemaVersion } from "../store/index.ts";

const currencyForm = /^[A-Z]{3}$/;

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

export function readCurrency(text: string): string | null {
  const code = text.trim().toUpperCase();
  return currencyForm.test(code) ? code : null;
}

/** What a locale's own currency commonly is: only a suggestion, from memory of ISO 4217. */
const currencyByRegion: Readonly<Record<string, string>> = {
  US: "USD",
  GB: "GBP",
  CA: "CAD",
  AU: "AUD",
  NZ: "NZD",
  CH: "CHF",
  NO: "NOK",
  SE: "SEK",
  DK: "DKK",
  PL: "PLN",
  JP: "JPY",
  IN: "INR",
  BR: "BRL",
  MX: "MXN",
  ZA: "ZAR",
};
const euroRegions = new Set("AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK".split(" "));

export function suggestedCurrency(locale: string | undefined): string {
  const region = /^[a-z]{2,3}[_-]([A-Z]{2})/.exec(locale ?? "")?.[1] ?? "";
  return euroRegions.has(region) ? "EUR" : (currencyByRegion[region] ?? "USD");
}

export function freshBrief(about: {
  readonly name: string;
  readonly currency: string;
  readonly startedUtc: string;
  readonly topicVersions: Readonly<Record<string, number>>;
}): BriefFile {
  return { schemaVersion, ...about, topicVersions: { ...about.topicVersions }, answers: {} };
}
