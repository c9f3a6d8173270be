import { describe, expect, it } from "vitest";
import {
  classFor,
  constantPowerDrop,
  POE_CLASSES,
  poeAtDevice,
  poeLoopOhm,
} from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

// IEEE 802.3-2018 clause 33 and 802.3bt-2018 clause 145, source and device watts as two pages print them.
const PRINTED = [
  [1, 4.0, 3.84, 44],
  [2, 7.0, 6.49, 44],
  [3, 15.4, 12.95, 44],
  [4, 30, 25.5, 50],
  [5, 45, 40, 50],
  [6, 60, 51, 50],
  [7, 75, 62, 52],
  [8, 90, 71.3, 52],
] as const;

describe("IEEE 802.3 classes", () => {
  it.each(PRINTED)("class %d", (poeClass, sourceW, deviceW, minSourceV) => {
    const row = POE_CLASSES.find((c) => c.poeClass === poeClass)!;
    expect(row).toMatchObject({ sourceW, deviceW, minSourceV });
    // The channel model must lead from the published device watts back to the published source watts.
    const fed = constantPowerDrop({ sourceV: row.minSourceV, loadW: row.deviceW, loopOhm: row.loopOhm });
    if (fed.kind !== "carried") throw new Error("a standard class collapses");
    near(row.sourceW - (row.sourceW / row.minSourceV) ** 2 * row.loopOhm, deviceW, { within: 0.07 });
    near(fed.currentA * row.minSourceV, sourceW, { within: 0.1 });
    // Lowest device voltage of types 1 to 4, as printed: 37, 42.5, 42.5 and 41.1 V. The top class of a type reaches it.
    if ([3, 4, 6, 8].includes(poeClass)) near(fed.loadV, row.minDeviceV, { within: 0.15 });
    else expect(fed.loadV).toBeGreaterThan(row.minDeviceV);
  });

  it("classFor gives the weakest class that serves", () => {
    expect(classFor(12.95)).toMatchObject({ kind: "class", poeClass: 3, pairs: 2 });
    expect(classFor(13)).toMatchObject({ poeClass: 4 });
    expect(classFor(71.3)).toMatchObject({ poeClass: 8, pairs: 4 });
    expect(classFor(71.4)).toEqual({ kind: "none-fits", maxDeviceW: 71.3 });
  });
});

// Published: 350 mA, 37.0 V at the device of a Type 1 channel; 600 mA, 42.5 V for Type 2; 1.2 A for Type 3.
describe("constant power at the end of the standard's own channels", () => {
  it.each([
    [44, 12.95, 20, 0.35, 37.0, 2.45],
    [50, 25.5, 12.5, 0.6, 42.5, 4.5],
    [50, 51, 6.25, 1.2, 42.5, 9.0],
  ] as const)("%d V, %d W, %d ohm", (sourceV, loadW, loopOhm, currentA, loadV, lossW) => {
    const fed = constantPowerDrop({ sourceV, loadW, loopOhm });
    if (fed.kind !== "carried") throw new Error("collapses");
    near(fed.currentA, currentA, { within: 0.0005 });
    near(fed.loadV, loadV, { within: 0.05 });
    near(fed.lossW, lossW, { within: 0.005 });
  });
});

// TIA-568 / ASTM D4566 permitted maximum, from memory: one conductor of 24 AWG 9.38 ohm per 100 m.
describe("cable loops, 100 m of 24 AWG at 20 degrees C", () => {
  const at = { lengthM: 100, awg: 24, tempC: 20 };
  it("two pairs 9.38 ohm, inside the standard's 12.5", () =>
    near(poeLoopOhm({ ...at, pairs: 2 }), 9.38, { within: 1e-9 }));
  it("four pairs 4.69 ohm, inside 6.25", () => near(poeLoopOhm({ ...at, pairs: 4 }), 4.69, { within: 1e-9 }));
  it("at 60 degrees 1.157 times as much", () =>
    near(poeLoopOhm({ ...at, tempC: 60, pairs: 2 }) / 9.38, 1.157, { within: 0.0005 }));
});

// Regression values worked from the formula, not evidence: 50 m of 24 AWG, passive, 10 W.
describe("passive feeds", () => {
  it.each([
    [24, 2, 0.4576, 21.85, 0.982],
    [24, 4, 0.4352, 22.98, 0.444],
    [48, 2, 0.2128, 47.0, 0.212],
  ] as const)("%d V over %d pairs", (sourceV, pairs, currentA, loadV, lossW) => {
    const fed = poeAtDevice({ sourceV, deviceW: 10, lengthM: 50, pairs, awg: 24, tempC: 20 });
    if (fed.kind !== "carried") throw new Error("collapses");
    near(fed.currentA, currentA, { within: 0.00006 });
    near(fed.loadV, loadV, { within: 0.006 });
    near(fed.lossW, lossW, { within: 0.0006 });
  });
  it("12 V cannot carry 10 W: 7.68 W is all there is", () => {
    const fed = poeAtDevice({ sourceV: 12, deviceW: 10, lengthM: 50, pairs: 2, awg: 24, tempC: 20 });
    expect(fed.kind).toBe("collapses");
    near(fed.maxLoadW, 7.68, { within: 0.005 });
  });
});
