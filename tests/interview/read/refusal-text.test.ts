import { describe, expect, it } from "vitest";
import { type Refusal, refusalText } from "../../../src/interview/read/index.ts";

const DISTANCE = { label: "Distance", example: "30 ft" };

/** Every code at least once, read as a person reads it. */
const MESSAGES: readonly (readonly [Refusal, string])[] = [
  [{ code: "empty" }, "Type the distance, for example 30 ft. If you are not sure, type: not sure."],
  [
    { code: "not-a-number", typed: "quite far" },
    'There is no figure for the distance in "quite far". Type it like this: 30 ft.',
  ],
  [
    { code: "unknown-unit", typed: "fx", known: ["m", "cm", "ft", "in"] },
    'I don\'t know the unit "fx". For the distance use m, cm, ft or in.',
  ],
  [
    { code: "unknown-unit", typed: "fx", known: [] },
    'I don\'t know "fx" here. Type only the number, for example 30 ft.',
  ],
  [
    {
      code: "wrong-kind",
      typed: "12 V",
      typedDimension: "voltage",
      wantedDimension: "length",
      example: "10 m",
    },
    "12 V is a voltage. This asks for a length, for example 30 ft.",
  ],
  [
    { code: "too-large", typed: "2000 m", min: 0.1, max: 200, got: 2000, unit: "m", didYouMean: 200 },
    "Distance must be between 0.1 and 200 m; 2000 m is above that. Did you mean 200 m?",
  ],
  [
    {
      code: "too-large",
      typed: "2000 ft",
      min: 0.1,
      max: 200,
      got: 609.6,
      unit: "m",
      didYouMean: 60.96,
      didYouMeanTyped: "200 ft",
    },
    "Distance must be between 0.1 and 200 m; 2000 ft (610 m) is above that. Did you mean 200 ft (61 m)?",
  ],
  [
    { code: "too-large", typed: "656.2 ft", min: 0.1, max: 200, got: 200.00976, unit: "m" },
    "Distance must be between 0.1 and 200 m; 656.2 ft (200.01 m) is above that.",
  ],
  [
    { code: "too-small", typed: "1 in", min: 0.1, max: 200, got: 0.0254, unit: "m" },
    "Distance must be between 0.1 and 200 m; 1 in (0.0254 m) is below that.",
  ],
  [
    { code: "too-small", typed: "-5 m", min: 0.1, max: 200, got: -5, unit: "m", didYouMean: 5 },
    "Distance must be between 0.1 and 200 m; -5 m is below that. Did you mean 5 m?",
  ],
  [
    { code: "ambiguous-comma", typed: "1,500", asThousands: 1500, asDecimal: 1.5 },
    '"1,500" can be read two ways. Type 1500 or 1.5.',
  ],
  [
    { code: "not-an-option", typed: "purple", options: ["Yes, all year", "It may pause"] },
    '"purple" is not in the list. Type 1 for "Yes, all year" or 2 for "It may pause".',
  ],
  [
    { code: "not-an-option", typed: "purple", options: ["A", "B", "C", "D", "E"] },
    '"purple" is not in the list. Type a number from 1 to 5, or the first words of one of them.',
  ],
  [
    { code: "several-options", typed: "rec", matches: ["Recognise", "Record", "Recover"] },
    '"rec" fits "Recognise", "Record" and "Recover". Type the one you mean.',
  ],
  [
    { code: "no-option-said", typed: "not a wall", options: ["A wall", "A roof"] },
    '"not a wall" does not say which one it is. Type 1 for "A wall" or 2 for "A roof".',
  ],
  [
    { code: "asked-back", typed: "is a roof better", options: ["A wall", "A roof"] },
    '"is a roof better" is a question. Type why or how to be told more, or answer with 1 for "A wall" or 2 for "A roof".',
  ],
  [
    { code: "not-a-time", typed: "25:00" },
    'I could not read "25:00" as a time of day. Type it like this: 30 ft.',
  ],
  [
    { code: "ambiguous-time", typed: "9 to 5", readings: ["9:00 to 17:00", "21:00 to 5:00"] },
    '"9 to 5" can be read two ways. Type 9:00 to 17:00 or 21:00 to 5:00.',
  ],
  [
    { code: "not-a-place", typed: "Xyzzy" },
    'I could not find "Xyzzy". Type a town nearby or coordinates, for example 30 ft.',
  ],
  [
    { code: "not-a-count", typed: "2.5", got: 2.5 },
    "Distance counts whole things, and 2.5 is not whole. Type 2 or 3.",
  ],
];

/** Held against the union by the compiler: a new code without a message here does not compile. */
const EVERY_CODE: Readonly<Record<Refusal["code"], true>> = {
  empty: true,
  "not-a-number": true,
  "unknown-unit": true,
  "wrong-kind": true,
  "too-small": true,
  "too-large": true,
  "ambiguous-comma": true,
  "not-an-option": true,
  "several-options": true,
  "no-option-said": true,
  "asked-back": true,
  "not-a-time": true,
  "ambiguous-time": true,
  "not-a-place": true,
  "not-a-count": true,
};

describe("what a refusal says", () => {
  it.each(MESSAGES)("%j", (refusal, says) => {
    expect(refusalText(refusal, DISTANCE)).toBe(says);
  });

  it("is read here for every code", () => {
    expect(new Set(MESSAGES.map(([refusal]) => refusal.code))).toEqual(new Set(Object.keys(EVERY_CODE)));
  });

  it("is at most two sentences, in plain ASCII, and blames nobody", () => {
    for (const [refusal] of MESSAGES) {
      const says = refusalText(refusal, DISTANCE);
      expect(says).toMatch(/^[ -~]+[.?]$/);
      expect(says.replace(/"[^"]*"/g, "").match(/[.?](?= |$)/g)!.length, says).toBeLessThanOrEqual(2);
      expect(says).not.toMatch(/invalid|illegal|please|sorry|oops|error|wrong|fail|must enter|required/i);
    }
  });

  it("keeps the capitals of an abbreviation, and begins a sentence with one", () => {
    expect(refusalText({ code: "empty" }, { label: "PoE class", example: "2" })).toContain(
      "Type the PoE class,",
    );
    expect(refusalText({ code: "empty" }, { label: "MPPT voltage", example: "2" })).toContain(
      "the MPPT voltage",
    );
    expect(refusalText({ code: "empty" }, { label: "Mast height", example: "6 m" })).toContain(
      "the mast height",
    );
    expect(
      refusalText(
        { code: "too-large", typed: "9", min: 1, max: 8, got: 9, unit: "" },
        { label: "cameras", example: "2" },
      ),
    ).toBe("Cameras must be between 1 and 8; 9 is above that.");
  });

  it("falls back on the example of the refusal where the question has none", () => {
    const refusal: Refusal = {
      code: "wrong-kind",
      typed: "12 V",
      typedDimension: "voltage",
      wantedDimension: "length",
      example: "10 m",
    };
    expect(refusalText(refusal, { label: "Distance", example: "" })).toBe(
      "12 V is a voltage. This asks for a length, for example 10 m.",
    );
  });
});
