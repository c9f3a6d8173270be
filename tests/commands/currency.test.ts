import { expect, test } from "vitest";
import { readCurrency, unpricedText } from "../../src/commands/currency.ts";

// codes, names: ISO 4217; signs: Unicode CLDR (both from memory)
test.each([
  [" eur ", "EUR"],
  ["£", "GBP"],
  ["euro", "EUR"],
  ["euros", "EUR"],
  ["Kenyan shillings", "KES"],
  ["british pounds", "GBP"],
  ["US dollars", "USD"],
  ["Argentine pesos", "ARS"],
  ["rand", "ZAR"],
  ["zloty", "PLN"],
])("%s is %s", (typed, code) => {
  expect(readCurrency(typed)).toEqual({ kind: "currency", code });
});

test.each(["eu", "yes", "pou", "", "12", "feet"])("%j is no currency, and it says what would do", (typed) => {
  expect(readCurrency(typed)).toEqual({
    kind: "refused",
    says: "Type its three letters, for example EUR, GBP or USD.",
  });
});

test.each([
  ["pounds", "GBP (British Pound)"],
  ["shillings", "KES (Kenyan Shilling)"],
  ["pesos", "MXN (Mexican Peso)"],
])("%s are several, and some of them are named", (typed, one) => {
  const reading = readCurrency(typed);
  expect(reading).toMatchObject({ kind: "refused" });
  if (reading.kind === "refused") expect(reading.says).toContain(one);
});

test("a currency without a rate is said to have none", () => {
  expect(unpricedText("ARS")).toContain("prices are shown in USD");
  expect(unpricedText("GBP")).toBeNull();
});
