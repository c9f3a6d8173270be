import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readOutlook } from "../../../src/interview/read/outlook.ts";

const heard = (text: string) => {
  const outlook = readOutlook(text);
  if (outlook.kind === "refused") throw new Error(outlook.says);
  return outlook;
};
const refusal = (text: string) => {
  const outlook = readOutlook(text);
  return outlook.kind === "refused" ? outlook.says : "";
};

describe("an outlook as it is typed", () => {
  it.each([
    ["60 %, rain, rain, sunny", { by: "share", socFrac: 0.6 }, ["rain", "rain", "sunny"]],
    ["60% 2 rain then sunny", { by: "share", socFrac: 0.6 }, ["rain", "rain", "sunny"]],
    ["battery 24.6 V; cloudy; partly", { by: "volts", restV: 24.6 }, ["overcast", "partly"]],
    [
      "12,4 volts fog fog 3x clear",
      { by: "volts", restV: 12.4 },
      ["rain", "rain", "sunny", "sunny", "sunny"],
    ],
  ])("%s", (text, charge, kinds) => {
    expect(heard(text).charge).toEqual(charge);
    expect(heard(text).days.map(({ kind }) => kind)).toEqual(kinds);
  });
  it("takes kWh/m2 for a day", () => {
    expect(heard("50 %, 2.4 kWh/m2, 1").days).toEqual([
      { kind: "figure", ghiKWhPerM2: 2.4 },
      { kind: "figure", ghiKWhPerM2: 1 },
    ]);
  });
});

describe("an outlook that cannot be meant", () => {
  it.each([
    ["rain, rain", /Begin with the charge/],
    ["120 %, rain", /fuller than 100 %/],
    ["400 V, rain", /no bank of 12, 24 or 48 V/],
    ["60 %", /Say how the coming days/],
    ["60 %, purple", /"purple" is neither/],
    ["60 %, 40 rain", /30 at most/],
    ["60 %, 99", /"99" is neither/],
  ])("%s: one sentence, and an example", (text, says) => {
    expect(refusal(text)).toMatch(says);
    expect(refusal(text)).toMatch(/Example: 60 %, rain, rain, sunny$/);
  });
  it("never throws", () => {
    fc.assert(fc.property(fc.string({ maxLength: 400 }), (text) => readOutlook(text) !== null));
  });
});
