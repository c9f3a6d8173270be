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

describe("what is seen of the loads", () => {
  it.each([
    ["60 %, rain", null],
    ["30 % and off, rain", "off"],
    ["30 % off rain", "off"],
    ["off, 30 %, rain", "off"],
    ["it is off at 30 %, rain", "off"],
    ["30 %, it's off, rain", "off"],
    ["30 %, the picture is still off, rain", "off"],
    ["30 %, rain, and it went dark", "off"],
    ["30 %, not running, rain", "off"],
    ["30 % and on, rain", "on"],
    ["30 %, everything is on, rain", "on"],
    ["30 %, not off, rain", "on"],
    ["24.1 V, off, rain", "off"],
    ["40 % and extras off, rain", "extrasOff"],
    ["40 %, picture on, lamp off, rain", "extrasOff"],
    ["20 %, picture off, extras off, rain", "off"],
  ] as const)("%s", (text, switched) => {
    expect(heard(text).switched).toBe(switched);
    expect(heard(text).days).toEqual([{ kind: "rain" }]);
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
    ["60 %, picture on, picture off, rain", /on or that it is off, not both/],
  ])("%s: one sentence, and an example", (text, says) => {
    expect(refusal(text)).toMatch(says);
    expect(refusal(text)).toMatch(/Example: 60 %, rain, rain, sunny$/);
  });
  it("never throws", () => {
    fc.assert(fc.property(fc.string({ maxLength: 400 }), (text) => readOutlook(text) !== null));
  });
});
