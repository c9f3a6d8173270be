import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classFor, POE_CLASSES, poeAtDevice, poeLoopOhm } from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

describe("poeAtDevice", () => {
  it("the device never sees more than the source gives; longer, thinner, hotter or fewer pairs is never better", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 57, noNaN: true }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.integer({ min: 22, max: 26 }),
        fc.double({ min: -20, max: 60, noNaN: true }),
        (sourceV, deviceW, lengthM, awg, tempC) => {
          const at = { sourceV, deviceW, lengthM, pairs: 4, awg, tempC } as const;
          const loadV = (input: Parameters<typeof poeAtDevice>[0]): number => {
            const fed = poeAtDevice(input);
            return fed.kind === "carried" ? fed.loadV : 0;
          };
          const here = loadV(at);
          expect(here).toBeLessThanOrEqual(sourceV);
          for (const worse of [
            { ...at, lengthM: lengthM * 1.5 },
            { ...at, awg: awg + 1 },
            { ...at, tempC: tempC + 20 },
            { ...at, pairs: 2 as const },
            { ...at, deviceW: deviceW * 1.3 },
          ]) {
            expect(loadV(worse)).toBeLessThanOrEqual(here);
          }
        },
      ),
    );
  });

  it("two pairs have twice the loop of four", () => {
    const at = { lengthM: 40, awg: 23, tempC: 35 };
    near(poeLoopOhm({ ...at, pairs: 2 }), 2 * poeLoopOhm({ ...at, pairs: 4 }), { within: 1e-12 });
  });

  it("refuses gauges that no data cable has", () =>
    expect(() => poeLoopOhm({ lengthM: 10, pairs: 2, awg: 18, tempC: 20 })).toThrow(/awg is 18/));
});

describe("classFor", () => {
  it("promises at least what is asked, and no weaker class does", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 71.3, noNaN: true }), (deviceW) => {
        const pick = classFor(deviceW);
        if (pick.kind !== "class") throw new Error("no class");
        expect(pick.deviceW).toBeGreaterThanOrEqual(deviceW);
        for (const weaker of POE_CLASSES.slice(0, pick.poeClass - 1)) {
          expect(weaker.deviceW).toBeLessThan(deviceW);
        }
      }),
    );
  });
});
