// Laws of an insulated box: no outside value (that one stands in tests/reference/holman).
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insulatedBoxLossWPerK } from "../../../src/core/energy/index.ts";
import { RangeFault } from "../../../src/core/numerics/index.ts";
import { near } from "../../helpers/near.ts";

const foam = { wallM: 0.03, conductivityWPerMK: 0.035 };
const lossOf = (insideM3: number, box = foam) => insulatedBoxLossWPerK({ ...box, insideM3 });

describe("insulatedBoxLossWPerK", () => {
  it("eight times the volume loses two to four times as much, the more nearly four the thinner the wall against it", () => {
    fc.assert(
      fc.property(fc.integer({ min: -3, max: 1 }), fc.integer({ min: 1, max: 9 }), (power, digit) => {
        const insideM3 = digit * 10 ** power;
        const ratio = lossOf(8 * insideM3) / lossOf(insideM3);
        expect(ratio).toBeGreaterThan(2);
        expect(ratio).toBeLessThan(4);
        expect(lossOf(64 * insideM3) / lossOf(8 * insideM3)).toBeGreaterThan(ratio);
      }),
    );
    near(lossOf(8000) / lossOf(1000), 4, { within: 0.02 });
  });
  it("a thicker wall loses less, a better conductor more in proportion, nothing in it nothing", () => {
    expect(lossOf(0.1, { ...foam, wallM: 0.06 })).toBeLessThan(lossOf(0.1));
    near(lossOf(0.1, { ...foam, conductivityWPerMK: 0.07 }), 2 * lossOf(0.1), { within: 1e-12 });
    expect(lossOf(0)).toBe(0);
  });
  it("refuses what is no box", () => {
    expect(() => lossOf(-1)).toThrow(RangeFault);
    expect(() => lossOf(1, { ...foam, wallM: 0 })).toThrow(RangeFault);
  });
});
