import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { batteryVentilation, boxRise, coolingAreaM2 } from "../../../src/core/mast/index.ts";

const side = fc.double({ min: 0.1, max: 1, noNaN: true });

describe("boxRise", () => {
  it("a bigger box, one that stands free, a shield or less loss is never warmer", () => {
    fc.assert(
      fc.property(
        side,
        side,
        side,
        fc.double({ min: 0, max: 60, noNaN: true }),
        (heightM, widthM, depthM, lossW) => {
          const at = {
            heightM,
            widthM,
            depthM,
            place: "on-wall-or-mast" as const,
            lossW,
            wallWPerM2K: 5.5,
            sunWPerM2: 1000,
            sunlitAreaM2: 0.2,
            solarAbsorptance: 0.3,
          };
          const here = boxRise(at).riseK;
          for (const cooler of [
            { ...at, heightM: heightM * 1.2 },
            { ...at, place: "free-standing" as const },
            { ...at, sunWPerM2: 0 },
            { ...at, lossW: lossW / 2 },
            { ...at, wallWPerM2K: 12 },
          ]) {
            expect(boxRise(cooler).riseK).toBeLessThanOrEqual(here);
          }
        },
      ),
    );
  });
  it("refuses a flat box", () =>
    expect(() => coolingAreaM2({ heightM: 0.3, widthM: 0.3, depthM: 0, place: "free-standing" })).toThrow(
      /depthM is 0/,
    ));
});

describe("batteryVentilation", () => {
  it("goes with cells and capacity; boost always needs more than float", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(
          "vented-lead-acid" as const,
          "valve-regulated" as const,
          "vented-nickel-cadmium" as const,
        ),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (battery, capacityAh) => {
          const at = { battery, capacityAh, cells: 6 };
          const boost = batteryVentilation({ ...at, charge: "boost" });
          expect(boost.airM3PerH).toBeGreaterThan(batteryVentilation({ ...at, charge: "float" }).airM3PerH);
          expect(batteryVentilation({ ...at, cells: 12, charge: "boost" }).openingCm2).toBeCloseTo(
            2 * boost.openingCm2,
            9,
          );
        },
      ),
    );
  });
});
