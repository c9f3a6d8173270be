import { describe, expect, it } from "vitest";
import { interruptingAdvice, shortCircuitA, typicalShortCircuitA } from "../../../src/core/wiring/index.ts";

describe("shortCircuitA", () => {
  const block = { blockV: 12, blockOhm: 0.005, blocksInSeries: 1, stringsInParallel: 1, leadOhm: 0 };
  it("blocks in series do not add, parallel strings do, leads lessen", () => {
    expect(shortCircuitA(block)).toBeCloseTo(2400, 6);
    expect(shortCircuitA({ ...block, blocksInSeries: 2 })).toBeCloseTo(2400, 6);
    expect(shortCircuitA({ ...block, stringsInParallel: 3 })).toBeCloseTo(7200, 6);
    expect(shortCircuitA({ ...block, leadOhm: 0.001 })).toBeCloseTo(2000, 6);
  });
  it("refuses a block without resistance", () =>
    expect(() => shortCircuitA({ ...block, blockOhm: 0 })).toThrow(/blockOhm is 0/));
});

describe("typicalShortCircuitA", () => {
  it("is no lower than the figures published for single banks", () => {
    // 450 Ah of golf-cart blocks measured 6960 A (a 1992 magazine test).
    expect(typicalShortCircuitA({ capacityAh: 450, chemistry: "lead-acid" })).toBeGreaterThan(6960);
  });
});

describe("interruptingAdvice", () => {
  it("a small 12 V block may have a blade fuse, a 48 V one may not", () => {
    const small = { prospectiveA: 500, capacityAh: 9, chemistry: "lead-acid" } as const;
    expect(interruptingAdvice({ ...small, maxChargeV: 14.7 }).families[0]).toBe("blade");
    expect(interruptingAdvice({ ...small, maxChargeV: 58 }).families).not.toContain("blade");
  });
  it("asks for class T above 50 Ah of lithium and 100 Ah of lead", () => {
    const at = { prospectiveA: 900, maxChargeV: 14.6 };
    expect(interruptingAdvice({ ...at, capacityAh: 50, chemistry: "lithium" }).useClassT).toBe(false);
    expect(interruptingAdvice({ ...at, capacityAh: 51, chemistry: "lithium" }).useClassT).toBe(true);
    expect(interruptingAdvice({ ...at, capacityAh: 100, chemistry: "lead-acid" }).useClassT).toBe(false);
    expect(interruptingAdvice({ ...at, capacityAh: 101, chemistry: "lead-acid" }).useClassT).toBe(true);
  });
});
