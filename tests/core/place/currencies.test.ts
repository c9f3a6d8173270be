import { expect, it } from "vitest";
import { countryName, currencyOf, isPaidIn } from "../../../src/core/place/index.ts";
import { index } from "./gazetteer.ts";

// Which money is paid where is common knowledge.
it.each([
  ["GBP", "GB", true],
  ["GBP", "FR", false],
  ["EUR", "FR", true],
  ["EUR", "CH", false],
  ["USD", "EC", true],
  ["KES", "KE", true],
  ["XTS", "GB", null],
  ["constructor", "GB", null],
])("%s is paid in %s: %s", (currency, countryCode, expected) => {
  expect(isPaidIn({ currency, countryCode })).toBe(expected);
});

it.each([
  ["GB", "GBP"],
  ["DE", "EUR"],
  ["LI", "CHF"],
  ["KE", "KES"],
  ["NO", "NOK"],
  ["AQ", null],
  ["", null],
])("the money of %s is %s", (countryCode, expected) => {
  expect(currencyOf(countryCode)).toBe(expected);
});

it("every country of the table is one, and no country of the gazetteer has two moneys of its own", () => {
  const codes = new Set(index.regions.map((region) => region.countryCode));
  const currencies = Intl.supportedValuesOf("currency");
  for (const code of codes) {
    const paid = currencies.filter((currency) => isPaidIn({ currency, countryCode: code }) === true);
    expect(paid.length, `${code}: ${paid.join(" ")}`).toBeLessThanOrEqual(1);
    expect(currencyOf(code)).toBe(paid[0] ?? null);
    expect(countryName(code)).not.toBe("");
  }
  // Most people are served.
  const served = [...codes].filter((code) => currencyOf(code) !== null);
  expect(served.length).toBeGreaterThan(150);
});
