import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxForceCoefficient,
  exposureCoefficient,
  tubeForceCoefficient,
  velocityPressurePa,
  windForceN,
  windLoad,
} from "../../../src/core/mast/index.ts";
import { near } from "../../helpers/near.ts";

const exposure = fc.constantFrom("B" as const, "C" as const, "D" as const);
const anyPart = fc.record({
  name: fc.constant("part"),
  areaM2: fc.double({ min: 0, max: 3, noNaN: true }),
  forceCoefficient: fc.double({ min: 0.5, max: 2, noNaN: true }),
  heightM: fc.double({ min: 0, max: 30, noNaN: true }),
});

describe("windLoad", () => {
  it("more wind, a part more, a hill or a barer place never gives a smaller force or moment", () => {
    fc.assert(
      fc.property(
        fc.array(anyPart, { maxLength: 5 }),
        anyPart,
        fc.double({ min: 10, max: 70, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (parts, extra, windMPerS, faster) => {
          const at = { parts, windMPerS, exposure: "B" as const };
          const here = windLoad(at);
          for (const harder of [
            { ...at, windMPerS: windMPerS + faster },
            { ...at, parts: [...parts, extra] },
            { ...at, topographicFactor: 1.5 },
            { ...at, exposure: "C" as const },
            { ...at, exposure: "D" as const },
          ]) {
            const there = windLoad(harder);
            expect(there.forceN).toBeGreaterThanOrEqual(here.forceN);
            expect(there.momentNm).toBeGreaterThanOrEqual(here.momentNm);
          }
          near(here.forceN * here.resultantHeightM, here.momentNm, { within: 1e-6 });
        },
      ),
    );
  });

  it("nothing on the mast: no force, no moment, and a resultant at the ground", () =>
    expect(windLoad({ parts: [], windMPerS: 50, exposure: "C" })).toEqual({
      parts: [],
      forceN: 0,
      momentNm: 0,
      resultantHeightM: 0,
    }));

  it("is 0.6 of the strength-level wind unless told otherwise", () => {
    const at = {
      parts: [{ name: "box", areaM2: 0.2, forceCoefficient: 1.3, heightM: 1.5 }],
      windMPerS: 45,
      exposure: "C" as const,
    };
    near(windLoad(at).momentNm, 0.6 * windLoad({ ...at, loadFrac: 1 }).momentNm, { within: 1e-9 });
  });
});

describe("velocityPressurePa", () => {
  // The equation is a plain product: doubling the hill's factor doubles the pressure, doubling the wind quadruples it.
  it("goes with the hill's factor and with the square of the wind", () => {
    const at = { windMPerS: 30, exposure: "C", heightM: 6, directionalityFactor: 0.9 } as const;
    const herePa = velocityPressurePa(at);
    near(velocityPressurePa({ ...at, topographicFactor: 2 }), 2 * herePa, { within: 1e-9 });
    near(velocityPressurePa({ ...at, windMPerS: 60 }), 4 * herePa, { within: 1e-9 });
    near(velocityPressurePa({ ...at, directionalityFactor: 1 }), herePa / 0.9, { within: 1e-9 });
  });
});

describe("exposure", () => {
  it("never falls with height, and holds still below 15 ft", () => {
    fc.assert(
      fc.property(exposure, fc.double({ min: 0, max: 55, noNaN: true }), (of, heightM) => {
        expect(exposureCoefficient({ heightM: heightM + 5, exposure: of })).toBeGreaterThanOrEqual(
          exposureCoefficient({ heightM, exposure: of }),
        );
      }),
    );
    expect(exposureCoefficient({ heightM: 0, exposure: "C" })).toBe(
      exposureCoefficient({ heightM: 4.5, exposure: "C" }),
    );
  });
});

describe("force coefficients (ASCE 7-16 figure 29.4-1, from memory)", () => {
  it("slender bodies catch more", () => {
    expect(tubeForceCoefficient({ heightM: 4, diameterM: 0.06 })).toBe(1.2);
    near(tubeForceCoefficient({ heightM: 0.7, diameterM: 0.1 }), 0.8, { within: 1e-9 });
    expect(boxForceCoefficient({ heightM: 0.4, widthM: 0.4 })).toBe(1.3);
    // Half way between 7 and 25: 1.7.
    near(boxForceCoefficient({ heightM: 1.6, widthM: 0.1 }), 1.7, { within: 1e-9 });
  });
});

describe("edges", () => {
  it("refuses service-level talk: no wind below 10 m/s, none above 100", () => {
    const at = { exposure: "C", heightM: 3, directionalityFactor: 0.85 } as const;
    expect(() => velocityPressurePa({ ...at, windMPerS: 9.9 })).toThrow(/windMPerS is 9.9/);
    expect(() => velocityPressurePa({ ...at, windMPerS: 101 })).toThrow(/windMPerS is 101/);
  });
  it("refuses a negative area", () =>
    expect(() => windForceN({ pressurePa: 1000, areaM2: -1, forceCoefficient: 1 })).toThrow(/areaM2 is -1/));
});
