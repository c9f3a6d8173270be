import { describe, expect, it } from "vitest";
import { plainText } from "../../src/report/index.ts";
import { documents } from "./sheets.ts";

const textOf = (variant: string) => {
  const found = documents.find(([name]) => name === variant);
  return plainText(found![1], 2000);
};

describe("what could not be worked", () => {
  it("is named with its reason in one sentence, and the price says what it lacks", () => {
    const text = textOf("no place");
    expect(text).toContain(
      "Not worked, because the place is not known: climate, sun, reliability, battery, array, wiring.",
    );
    expect(text).toContain("Cost of parts, without battery and panels");
  });

  it("is not spoken of where everything was worked", () => {
    const text = textOf("snow and dust");
    expect(text).not.toContain("Not worked");
    expect(text).not.toContain("without battery and panels");
  });
});
