/** A currency as people type it: its ISO 4217 letters, its sign, or its name. */
import { priceCurrency } from "../design/index.ts";

export type CurrencyReading =
  | { readonly kind: "currency"; readonly code: string }
  | { readonly kind: "refused"; readonly says: string };

const lettersDo = "Type its three letters, for example EUR, GBP or USD.";
/** Signs that belong to one currency alone; a dollar sign does not. */
const codeBySign: Readonly<Record<string, string>> = { "€": "EUR", "£": "GBP", "₹": "INR", "₦": "NGN" };
const namedAtMost = 4;

const singular = (word: string): string => word.replace(/(?:e?s)$/, "");
const plain = (text: string): string => text.trim().toLowerCase().split(/\s+/).map(singular).join(" ");

export function readCurrency(text: string): CurrencyReading {
  const typed = text.trim();
  const codes = Intl.supportedValuesOf("currency");
  const code = codeBySign[typed] ?? typed.toUpperCase();
  if (codes.includes(code)) return { kind: "currency", code };
  const names = new Intl.DisplayNames("en", { type: "currency" });
  const wanted = plain(typed);
  if (wanted.length < 3) return { kind: "refused", says: lettersDo };
  const found = codes
    .map((each) => ({ code: each, name: names.of(each) ?? each }))
    // years in brackets mark what is no longer money
    .filter(({ name }) => !/\d/.test(name))
    .filter(({ name }) => plain(name) === wanted || plain(name).endsWith(` ${wanted}`));
  const exact = found.find(({ name }) => plain(name) === wanted);
  const [only, ...others] = found;
  if (only === undefined) return { kind: "refused", says: lettersDo };
  if (exact !== undefined || others.length === 0) return { kind: "currency", code: (exact ?? only).code };
  const isPriced = (each: { readonly code: string }): boolean =>
    priceCurrency(each.code).currency === each.code;
  const shown = [...found.filter(isPriced), ...found.filter((each) => !isPriced(each))].slice(0, namedAtMost);
  const listed = shown.map((each) => `${each.code} (${each.name})`).join(", ");
  return { kind: "refused", says: `Several are called so: type ${listed} or the letters of yours.` };
}

/** What must be said of a currency in which no prices are kept; null where they are. */
export function unpricedText(code: string): string | null {
  const { currency } = priceCurrency(code);
  return currency === code
    ? null
    : `No exchange rate for ${code} is kept here, so prices are shown in ${currency}, and a ceiling in ${code} cannot be compared with them.`;
}
