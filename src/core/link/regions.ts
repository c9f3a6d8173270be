/**
 * Whose radio rules apply. `EU` stands for every member of the CEPT that this table knows, in the European Union or not,
 * but the United Kingdom. `other`: ask the country's own authority.
 */
export type RadioRegion = "US" | "CA" | "EU" | "UK" | "AU" | "NZ" | "other";

/**
 * Members of the European Conference of Postal and Telecommunications Administrations, without the United Kingdom and
 * without Belarus and the Russian Federation, whose membership is suspended. From memory, as of 2025.
 */
const CEPT_MEMBERS =
  "AD AL AT AZ BA BE BG CH CY CZ DE DK EE ES FI FR GE GR HR HU IE IS IT LI LT LU LV MC MD ME MK MT NL NO PL PT RO " +
  "RS SE SI SK SM TR UA VA";

/** Places whose radio rules are another country's: United States territories and Crown dependencies (from memory). */
const SAME_RULES: Readonly<Record<string, RadioRegion>> = {
  US: "US",
  PR: "US",
  VI: "US",
  GU: "US",
  AS: "US",
  MP: "US",
  CA: "CA",
  GB: "UK",
  GG: "UK",
  JE: "UK",
  IM: "UK",
  AU: "AU",
  NZ: "NZ",
};

/**
 * The region of radio rules in which a country lies.
 *
 * @param countryCode  ISO 3166-1 alpha-2, either case
 * @returns `other` for every country that the tables do not know
 * @source CEPT membership, from memory
 */
export function regionOfCountry(countryCode: string): RadioRegion {
  const code = countryCode.trim().toUpperCase();
  if (Object.hasOwn(SAME_RULES, code)) return SAME_RULES[code]!;
  return CEPT_MEMBERS.split(" ").includes(code) ? "EU" : "other";
}
