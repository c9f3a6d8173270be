import { describe, expect, it } from "vitest";
import { readCount } from "../../../src/interview/read/index.ts";

describe("a whole number of things", () => {
  it.each([
    ["3", 3],
    ["three", 3],
    ["Twelve", 12],
    ["a dozen", 12],
    ["a couple", 2],
    ["3 cameras", 3],
    ["three cameras", 3],
    ["two posts.", 2],
    ["none", 0],
    ["zero", 0],
    ["a camera", 1],
    ["2.0", 2],
    ["1 500", 1500],
    ["1500", 1500],
    ["about 3", 3],
    ["twenty-one", 21],
  ] as const)("%s", (text, count) => {
    expect(readCount(text)).toEqual({ ok: true, count, heard: String(count) });
  });

  it("refuses a fraction with the fraction in hand", () => {
    expect(readCount("2.5")).toEqual({ ok: false, refusal: { code: "not-a-count", typed: "2.5", got: 2.5 } });
    expect(readCount("two and a half")).toMatchObject({
      ok: false,
      refusal: { code: "not-a-count", got: 2.5 },
    });
    expect(readCount("half")).toMatchObject({ ok: false, refusal: { code: "not-a-count", got: 0.5 } });
  });

  it("refuses what is outside the range, with both ends", () => {
    const possible = { min: 1, max: 8 };
    expect(readCount("9", possible)).toEqual({
      ok: false,
      refusal: { code: "too-large", typed: "9", min: 1, max: 8, got: 9, unit: "" },
    });
    expect(readCount("0", possible)).toMatchObject({ ok: false, refusal: { code: "too-small", got: 0 } });
    expect(readCount("-3")).toMatchObject({ ok: false, refusal: { code: "too-small", got: -3 } });
    expect(readCount("minus two")).toMatchObject({ ok: false, refusal: { code: "too-small", got: -2 } });
  });

  it("refuses a measure as the wrong kind", () => {
    expect(readCount("3 ft")).toEqual({
      ok: false,
      refusal: {
        code: "wrong-kind",
        typed: "3 ft",
        typedDimension: "length",
        wantedDimension: "count",
        example: "1",
      },
    });
  });

  it("asks about a comma that can be read two ways", () => {
    expect(readCount("1,500")).toEqual({
      ok: false,
      refusal: { code: "ambiguous-comma", typed: "1,500", asThousands: 1500, asDecimal: 1.5 },
    });
  });

  it.each(["many", "two or three", "2-3", "3 4", "cameras", "?"])("%s is no count", (text) => {
    expect(readCount(text)).toEqual({ ok: false, refusal: { code: "not-a-number", typed: text } });
  });
});
