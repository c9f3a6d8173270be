import { folded } from "./fold.ts";

/** What people call a country besides its English name; common practice, no source. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  uk: "GB",
  "great britain": "GB",
  britain: "GB",
  usa: "US",
  america: "US",
  uae: "AE",
  holland: "NL",
  "czech republic": "CZ",
  turkey: "TR",
  "ivory coast": "CI",
};

/**
 * English name of a country, "" when the code is not one.
 *
 * @param countryCode  ISO 3166-1 alpha-2
 * @source Unicode CLDR, as the JavaScript engine carries it
 */
export function countryName(countryCode: string): string {
  if (!/^[A-Z]{2}$/.test(countryCode)) return "";
  const name = new Intl.DisplayNames("en", { type: "region" }).of(countryCode);
  return name === undefined || name === countryCode ? "" : name;
}

/**
 * Which of some countries a typed word may mean: by code, by other names, or by the beginning of the English name.
 *
 * @param word   folded, not empty
 * @param codes  ISO 3166-1 alpha-2, the countries to choose from
 */
export function countriesCalled({
  word,
  codes,
}: {
  readonly word: string;
  readonly codes: Iterable<string>;
}): Set<string> {
  const found = new Set<string>();
  const names = new Intl.DisplayNames("en", { type: "region" });
  for (const code of codes) {
    const name = word.length > 2 ? folded(names.of(code) ?? "") : "";
    if (word === code.toLowerCase() || OTHER_NAMES[word] === code || name.startsWith(word)) found.add(code);
  }
  return found;
}
