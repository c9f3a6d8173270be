import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  naturalFrequencyHz,
  tipDeflectionM,
  tubeSection,
  uniformTipDeflectionM,
} from "../../../src/core/mast/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

describe("deflection of a fixed tube", () => {
  it("many small forces in a row come to the evenly spread one", () => {
    const beam = { heightM: 4, secondMomentMm4: 3e5 };
    const n = 400;
    let byParts = 0;
    for (let i = 0; i < n; i++)
      byParts += tipDeflectionM({ ...beam, forceN: 300 / n, atM: (4 * (i + 0.5)) / n });
    nearRatio(byParts, uniformTipDeflectionM({ ...beam, forceN: 300 }), { withinFrac: 1e-4 });
  });

  // Worked by hand: P L3 / 3 E I = 100 x 27 / (3 x 200e9 x 1e-6 m4) = 4.5 mm.
  it("100 N at the top of 3 m with 1e6 mm4: 4.5 mm", () =>
    near(tipDeflectionM({ forceN: 100, atM: 3, heightM: 3, secondMomentMm4: 1e6 }), 0.0045, {
      within: 1e-9,
    }));

  it("a force higher up never moves the top less", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4.9, noNaN: true }), (atM) => {
        const at = { forceN: 100, heightM: 5, secondMomentMm4: 2e5 };
        expect(tipDeflectionM({ ...at, atM: atM + 0.1 })).toBeGreaterThanOrEqual(
          tipDeflectionM({ ...at, atM }),
        );
      }),
    );
  });

  it("refuses a force above the top", () =>
    expect(() => tipDeflectionM({ forceN: 1, atM: 5.1, heightM: 5, secondMomentMm4: 1e5 })).toThrow(
      /atM is 5.1/,
    ));
});

describe("naturalFrequencyHz", () => {
  // A bare cantilever's exact first root is 1.8751: f = 1.8751^2 / 2 pi sqrt(E I / m L^4) (textbook beam vibration).
  it("lies within 2 % of the exact root for a bare tube", () => {
    const section = tubeSection({ outerMm: 60.3, wallMm: 3.2 });
    const heightM = 4;
    const exactHz =
      (1.8751 ** 2 / (2 * Math.PI)) *
      Math.sqrt((200e9 * section.secondMomentMm4 * 1e-12) / (section.massKgPerM * heightM ** 4));
    const tubeMassKg = section.massKgPerM * heightM;
    nearRatio(
      naturalFrequencyHz({ headMassKg: 0, tubeMassKg, heightM, secondMomentMm4: section.secondMomentMm4 }),
      exactHz,
      { withinFrac: 0.02 },
    );
  });
});
