import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ambientFactor,
  ampacityA,
  columnAmpacityA,
  conductors,
  groupingFactor,
} from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

const family = fc.constantFrom("mm2" as const, "awg" as const);

describe("ampacity", () => {
  it("never falls with a thicker wire, never rises in warmer surroundings or with more neighbours", () => {
    fc.assert(
      fc.property(
        family,
        fc.integer({ min: 0, max: 13 }),
        fc.double({ min: -40, max: 84, noNaN: true }),
        fc.double({ min: 0, max: 15, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom(60, 75, 90),
        (of, i, ambientTempC, warmerK, loadedConductors, terminalTempC) => {
          const [thin, thick] = [conductors(of)[i]!, conductors(of)[i + 1]!];
          const at = { insulationTempC: 90, terminalTempC, ambientTempC, loadedConductors };
          const thinA = ampacityA({ conductor: thin, ...at });
          expect(ampacityA({ conductor: thick, ...at })).toBeGreaterThanOrEqual(thinA);
          expect(
            ampacityA({ conductor: thin, ...at, ambientTempC: ambientTempC + warmerK }),
          ).toBeLessThanOrEqual(thinA);
          expect(ampacityA({ conductor: thin, ...at, loadedConductors: 20 })).toBeLessThanOrEqual(thinA);
          expect(thinA).toBeLessThanOrEqual(columnAmpacityA({ conductor: thin, tempC: terminalTempC }));
        },
      ),
    );
  });

  it("counts the column at or below the asked temperature, and scales below the lowest", () => {
    const fourMm2 = conductors("mm2").find((c) => c.name === "4 mm2")!;
    expect(columnAmpacityA({ conductor: fourMm2, tempC: 75 })).toBe(32);
    expect(columnAmpacityA({ conductor: fourMm2, tempC: 90 })).toBe(42);
    // A 60 degree terminal on wire rated at 70: worked by hand, 32 sqrt(30 / 40).
    near(columnAmpacityA({ conductor: fourMm2, tempC: 60 }), 27.71, { within: 0.005 });
  });

  it("grouping: 80, 70 and 50 per cent (from memory)", () => {
    expect([3, 4, 6, 7, 9, 10, 20].map(groupingFactor)).toEqual([1, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5]);
    expect(() => groupingFactor(21)).toThrow(/loadedConductors is 21/);
  });

  it("refuses what it has no law for", () => {
    expect(() => ambientFactor({ insulationTempC: 105, ambientTempC: 30 })).toThrow(/insulationTempC is 105/);
    expect(() => ambientFactor({ insulationTempC: 90, ambientTempC: Number.NaN })).toThrow(/ambientTempC/);
    expect(() => columnAmpacityA({ conductor: conductors("awg")[3]!, tempC: 59 })).toThrow(/tempC is 59/);
  });
});
