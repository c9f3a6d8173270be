import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { constantPowerDrop, voltageDrop } from "../../../src/core/wiring/index.ts";
import { near, nearRatio } from "../../helpers/near.ts";

describe("voltageDrop", () => {
  it("counts the return wire: 1 A over 1 m of 1000 ohm per km loses 2 V and 2 W", () =>
    expect(voltageDrop({ currentA: 1, lengthM: 1, ohmPerKm: 1000 })).toEqual({
      loopOhm: 2,
      dropV: 2,
      lossW: 2,
    }));
  it("refuses a negative length", () =>
    expect(() => voltageDrop({ currentA: 1, lengthM: -1, ohmPerKm: 1 })).toThrow(/lengthM is -1/));
});

describe("constantPowerDrop", () => {
  it("balances: what the source gives is load and loss, and nothing is NaN", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0.001, max: 50, noNaN: true }),
        (sourceV, loadW, loopOhm) => {
          const fed = constantPowerDrop({ sourceV, loadW, loopOhm });
          if (fed.kind === "collapses") {
            expect(loadW).toBeGreaterThan(fed.maxLoadW * (1 - 1e-9));
            return;
          }
          near(sourceV * fed.currentA, loadW + fed.lossW, { within: 1e-9 * Math.max(1, loadW) });
          // The stable answer keeps at least half the voltage.
          expect(fed.loadV).toBeGreaterThanOrEqual((sourceV / 2) * (1 - 1e-9));
          expect(fed.loadV).toBeLessThanOrEqual(sourceV);
          expect(fed.strainFrac).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it("keeps its digits for a tiny load on a tiny resistance, where the textbook root loses them", () => {
    const fed = constantPowerDrop({ sourceV: 48, loadW: 1e-6, loopOhm: 1e-6 });
    if (fed.kind !== "carried") throw new Error("collapses");
    nearRatio(fed.currentA, 1e-6 / 48, { withinFrac: 1e-12 });
  });

  it("is carried at exactly V2 / 4R, at half the voltage, and collapses just beyond", () => {
    // 12 V over 6 ohm: 6 W.
    expect(constantPowerDrop({ sourceV: 12, loadW: 6, loopOhm: 6 })).toMatchObject({
      kind: "carried",
      loadV: 6,
    });
    expect(constantPowerDrop({ sourceV: 12, loadW: 6.001, loopOhm: 6 })).toEqual({
      kind: "collapses",
      maxLoadW: 6,
    });
  });
});
