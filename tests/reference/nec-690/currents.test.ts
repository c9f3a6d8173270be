import { describe, expect, it } from "vitest";
import { pickConductor, pickFuse, pvCircuitCurrents, stringFuse } from "../../../src/core/wiring/index.ts";
import { near } from "../../helpers/near.ts";

describe("NEC 690.8 and 690.9", () => {
  // A published explainer: Isc 9.0 A gives 11.25 A. The second factor and the 15 A device: worked by hand from 690.9(B).
  it("Isc 9.0 A: 11.25 A maximum, 14.06 A least device, 15 A standard", () => {
    const { maxCurrentA, minFuseA } = pvCircuitCurrents({ iscA: 9, stringsInParallel: 1 });
    near(maxCurrentA, 11.25, { within: 1e-9 });
    near(minFuseA, 14.06, { within: 0.005 });
    expect(pickFuse({ continuousCurrentA: maxCurrentA, ampacityA: 20, family: "gpv" })).toMatchObject({
      ratingA: 15,
    });
  });

  // 690.8(B): both conditions, as a trade journal prints them; figures worked by hand.
  it("needs 1.5625 Isc at the terminals before correction, 1.25 Isc after it", () => {
    const run = {
      family: "awg",
      currentA: 8,
      continuousCurrentA: 11.25,
      lengthM: 1,
      systemV: 100,
      maxDropFrac: 0.05,
      terminalTempC: 60,
    } as const;
    // 14 AWG at 60 degrees: 15 A >= 14.06 A. In 75 degree heat: 25 x 0.5 = 12.5 A >= 11.25 A.
    expect(pickConductor({ ...run, ambientTempC: 75 })).toMatchObject({ conductor: { name: "14 AWG" } });
    // In 80 degree heat: 25 x 0.41 = 10.2 A is too little; 12 AWG: 12.2 A.
    expect(pickConductor({ ...run, ambientTempC: 80 })).toMatchObject({
      conductor: { name: "12 AWG" },
      decidedBy: ["ampacity"],
    });
  });
});

// The general course of a trade magazine's article on series fusing: one string never, two normally not, three and more
// nearly always.
describe("string fusing, a module of 9 A with a 15 A series-fuse label", () => {
  const at = { iscA: 9, maxSeriesFuseA: 15, conductorAmpacityA: 40, batteryCanBackfeed: false };
  it("one string has nothing to feed it back", () =>
    expect(stringFuse({ ...at, stringsInParallel: 1 })).toEqual({ kind: "not-needed", backfeedA: 0 }));
  it("two strings normally pass", () =>
    expect(stringFuse({ ...at, stringsInParallel: 2 })).toEqual({ kind: "not-needed", backfeedA: 11.25 }));
  it("three strings need a fuse, and 15 A is it", () =>
    expect(stringFuse({ ...at, stringsInParallel: 3 })).toMatchObject({
      kind: "fuse",
      reasons: ["nec-backfeed", "iec-backfeed"],
      ratingA: 15,
    }));
  // NEC multiplies by 1.25 and IEC 62548 (from memory) does not: the stricter one counts.
  it("three strings of 7 A: only the American test asks for a fuse, and it is given", () =>
    expect(stringFuse({ ...at, iscA: 7, stringsInParallel: 3 })).toMatchObject({
      kind: "fuse",
      reasons: ["nec-backfeed"],
    }));
  // 690.9(A): another source that can deliver a higher fault current.
  it("a battery that can feed back asks for a fuse even on one string", () =>
    expect(stringFuse({ ...at, stringsInParallel: 1, batteryCanBackfeed: true })).toMatchObject({
      kind: "fuse",
      reasons: ["battery-backfeed"],
      ratingA: 15,
    }));
  it("a label below 1.5625 Isc leaves no fuse", () =>
    expect(stringFuse({ ...at, maxSeriesFuseA: 12, stringsInParallel: 3 })).toMatchObject({
      kind: "none-fits",
      ratingA: null,
    }));
});
