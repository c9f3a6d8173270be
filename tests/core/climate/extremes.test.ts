import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extremeTemperatures } from "../../../src/core/climate/extremes.ts";

describe("extreme temperatures", () => {
  // Worked by hand: gap 6.56 + 0.348 * 20 = 13.52; record 13.52 * 0.37 + 3.6 = 8.6024 lower; hot gap min(7 + 14, 14).
  it("follow the fitted line", () => {
    const found = extremeTemperatures({ coldestMonthTempC: 0, hottestMonthTempC: 20 });
    expect(found.designColdTempC).toBeCloseTo(-13.52, 6);
    expect(found.recordColdTempC).toBeCloseTo(-22.1224, 6);
    expect(found.designHotTempC).toBeCloseTo(34, 6);
  });

  it("lie close to the means where the year hardly changes", () => {
    // Singapore: typical year's lowest 21.9 (in tests/reference/climate-stations), highest about 34 (from memory).
    const found = extremeTemperatures({ coldestMonthTempC: 26.1, hottestMonthTempC: 27.5 });
    expect(Math.abs(found.designColdTempC - 21.9)).toBeLessThan(3.7);
    expect(Math.abs(found.designHotTempC - 34)).toBeLessThan(2);
  });

  it("keep their order for any months", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 70, noNaN: true }),
        (coldest, rangeK) => {
          const found = extremeTemperatures({
            coldestMonthTempC: coldest,
            hottestMonthTempC: coldest + rangeK,
          });
          return (
            found.recordColdTempC < found.designColdTempC &&
            found.designColdTempC < coldest &&
            found.designHotTempC > coldest + rangeK
          );
        },
      ),
    );
  });
});
