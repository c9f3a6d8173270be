import { describe, expect, it } from "vitest";
import { tubeSection, tubes } from "../../../src/core/mast/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

const IN = 25.4;

// Schedule 40 steel pipe: outside diameter, wall, area in2, second moment in4, modulus in3 as a machine-design textbook
// prints them (table A16-6); lb/ft as a separate pipe table prints it.
const PRINTED = [
  ["1", 1.315, 0.133, 0.494, 0.0873, 0.1328, 1.68, 0.126],
  ["1-1/4", 1.66, 0.14, 0.669, 0.1947, 0.2346, 2.27, 0.222],
  ["1-1/2", 1.9, 0.145, 0.799, 0.3099, 0.3262, 2.72, 0.308],
  ["2", 2.375, 0.154, 1.075, 0.6657, 0.5606, 3.65, 0.529],
  ["2-1/2", 2.875, 0.203, 1.704, 1.53, 1.064, 5.79, 1.0],
  ["3", 3.5, 0.216, 2.228, 3.017, 1.724, 7.58, 1.62],
] as const;

describe("schedule 40 pipe", () => {
  it.each(PRINTED)(
    "%s in",
    (nominal, outerIn, wallIn, areaIn2, momentIn4, modulusIn3, lbPerFt, designIn3) => {
      const section = tubeSection({ outerMm: outerIn * IN, wallMm: wallIn * IN });
      nearRatio(section.areaMm2 / IN ** 2, areaIn2, { withinFrac: 0.001 });
      nearRatio(section.secondMomentMm4 / IN ** 4, momentIn4, { withinFrac: 0.001 });
      nearRatio(section.modulusMm3 / IN ** 3, modulusIn3, { withinFrac: 0.001 });
      nearRatio(section.massKgPerM * 0.671969, lbPerFt, { withinFrac: 0.003 });

      const tube = tubes("schedule-40").find(({ name }) => name === `${nominal} in schedule 40`)!;
      near(tube.outerMm, outerIn * IN, { within: 1e-3 });
      near(tube.wallMm, wallIn * IN, { within: 1e-3 });
      // The AISC Manual's modulus with 0.93 of the wall, from memory.
      const design = tubeSection({ outerMm: tube.outerMm, wallMm: tube.designWallMm });
      nearRatio(design.modulusMm3 / IN ** 3, designIn3, { withinFrac: 0.006 });
    },
  );
});

// AISC Manual, standard-weight pipe 4, 5 and 6 in: modulus in3 with the design wall, from memory.
describe("larger pipe", () => {
  it.each([
    ["4", 3.03],
    ["5", 5.14],
    ["6", 7.99],
  ] as const)("%s in", (nominal, modulusIn3) => {
    const tube = tubes("schedule-40").find(({ name }) => name === `${nominal} in schedule 40`)!;
    const design = tubeSection({ outerMm: tube.outerMm, wallMm: tube.designWallMm });
    nearRatio(design.modulusMm3 / IN ** 3, modulusIn3, { withinFrac: 0.01 });
  });
});

// Schedule 80, nominal wall: regression values worked from ASME B36.10 walls, not evidence.
describe("schedule 80 pipe", () => {
  it.each([
    ["1", 0.161],
    ["1-1/4", 0.291],
    ["1-1/2", 0.412],
    ["2", 0.731],
    ["2-1/2", 1.339],
    ["3", 2.225],
  ] as const)("%s in", (nominal, modulusIn3) => {
    const tube = tubes("schedule-80").find(({ name }) => name === `${nominal} in schedule 80`)!;
    const section = tubeSection({ outerMm: tube.outerMm, wallMm: tube.wallMm });
    near(section.modulusMm3 / IN ** 3, modulusIn3, { within: 0.001 });
  });
});

// EN 10219-2 properties of common sizes, from memory: area cm2, second moment cm4, elastic modulus cm3, kg/m.
describe("metric structural tube", () => {
  it.each([
    [48.3, 3.2, 4.53, 11.6, 4.8, 3.56],
    [60.3, 3.2, 5.74, 23.5, 7.78, 4.51],
    [88.9, 4, 10.7, 96.3, 21.7, 8.38],
  ] as const)("%d x %d mm", (outerMm, wallMm, areaCm2, momentCm4, modulusCm3, kgPerM) => {
    const section = tubeSection({ outerMm, wallMm });
    nearRatio(section.areaMm2 / 100, areaCm2, { withinFrac: 0.005 });
    nearRatio(section.secondMomentMm4 / 1e4, momentCm4, { withinFrac: 0.005 });
    nearRatio(section.modulusMm3 / 1000, modulusCm3, { withinFrac: 0.005 });
    nearRatio(section.massKgPerM, kgPerM, { withinFrac: 0.005 });
    expect(tubes("metric").some((tube) => tube.outerMm === outerMm && tube.wallMm === wallMm)).toBe(true);
  });
});
