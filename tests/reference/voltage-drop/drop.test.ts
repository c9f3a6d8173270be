import { describe, it } from "vitest";
import { conductorOhmPerKm, conductors, voltageDrop } from "../../../src/core/wiring/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

function dropV(name: string, conductorTempC: number, currentA: number, lengthM: number): number {
  const conductor = [...conductors("awg"), ...conductors("mm2")].find((c) => c.name === name)!;
  return voltageDrop({ currentA, lengthM, ohmPerKm: conductorOhmPerKm({ conductor, conductorTempC }) }).dropV;
}

// An examination text's worked example, 20 A over 100 ft at 120 V by 2 K I D / CM with K = 12.9: 4.97 V on 10 AWG,
// about 3.1 V on 8 AWG. The circular-mil form and table 8 are two roads to one place.
describe("an examination text's worked example", () => {
  it("10 AWG: 4.97 V", () => nearRatio(dropV("10 AWG", 75, 20, 30.48), 4.97, { withinFrac: 0.005 }));
  it("8 AWG: about 3.1 V", () => near(dropV("8 AWG", 75, 20, 30.48), 3.1, { within: 0.05 }));
  it("2 K I D / CM itself", () =>
    nearRatio(dropV("10 AWG", 75, 20, 30.48), (2 * 12.9 * 20 * 100) / 10380, { withinFrac: 0.005 }));
});

// Regression values worked from the formula, not evidence: 5 A, 10 m one way.
describe("twelve-volt runs", () => {
  it.each([
    ["10 AWG", 75, 20, 30.48, 4.96],
    ["12 AWG", 75, 5, 10, 0.65],
    ["10 AWG", 75, 5, 10, 0.407],
    ["8 AWG", 75, 5, 10, 0.255],
    ["6 AWG", 75, 5, 10, 0.161],
    ["2.5 mm2", 20, 5, 10, 0.798],
    ["4 mm2", 20, 5, 10, 0.495],
    ["6 mm2", 20, 5, 10, 0.33],
    ["10 mm2", 20, 5, 10, 0.191],
  ] as const)("%s at %d degrees, %d A, %d m", (name, tempC, currentA, lengthM, expectedV) =>
    near(dropV(name, tempC, currentA, lengthM), expectedV, { within: expectedV > 1 ? 0.005 : 0.0005 }),
  );
});
