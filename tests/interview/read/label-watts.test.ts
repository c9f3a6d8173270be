import { describe, expect, it } from "vitest";
import { readQuantity } from "../../../src/interview/read/index.ts";

const power = {
  dimension: "power",
  unit: "W",
  possible: { min: 0, max: 500 },
  usual: { min: 0, max: 500 },
  lean: "high",
} as const;

// power is voltage times current
describe("a label that gives volts and amperes", () => {
  it.each([
    ["12 V 2 A", 24],
    ["12V 0.5A", 6],
    ["12 V DC, 500 mA", 6],
    ["0.5 A at 48 V", 24],
    ["48 V x 0.1 A", 4.8],
    ["24 volts times 1.5 amps", 36],
    ["12 V 2 A label", 24],
    ["about 12 V 1 A", 12],
    ["5 V / 2,4 A", 12],
  ])("%s is %d W", (typed, watts) => {
    const heard = readQuantity(typed, power);
    expect(heard).toMatchObject({ ok: true, best: watts });
  });
  it.each(["12 V", "2 A", "12 V 2 W", "12 V 2 A 3 A"])("%s is none", (typed) => {
    expect(readQuantity(typed, power).ok).toBe(false);
  });
  it("where no power is asked, stays what it says", () => {
    const volts = { ...power, dimension: "voltage", unit: "V" } as const;
    expect(readQuantity("12 V 2 A", volts).ok).toBe(false);
  });
});
